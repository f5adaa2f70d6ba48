package fourpin.strength;

import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Part;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far shelves span. */
@ExtendWith(CommaDecimals.class)
class SpanTablesTest {

  private static List<SpanTable> tables() {
    return check(SampleJobs.bay(2), SampleJobs.bay(2)).cases().getFirst().spans();
  }

  private static Figure find(List<SpanTable> tables, String id) {
    return tables.stream()
        .flatMap(t -> t.figures().stream())
        .filter(f -> f.id().equals("north/spans/" + id))
        .findFirst()
        .orElseThrow();
  }

  private static double value(List<SpanTable> tables, String id) {
    return find(tables, id).value().value();
  }

  @Test
  void oneForEachMaterialOfShelvesAndNoneForBacks() {
    assertThat(tables()).extracting(SpanTable::material).containsExactly("ply", "oak");
  }

  /** A plate of that span, bent anew, uses what it may, and no more, however its load lies. */
  @ParameterizedTest
  @CsvSource({"plain", "strip", "strips", "doubled"})
  void thePlateAgrees(String made) {
    Job job = SampleJobs.job(SampleJobs.bookcase(SampleJobs.bay(2), SampleJobs.bay(2)));
    BuiltCase built = CaseworkBuilder.build(job).cases().getFirst();
    ShelfReader reader = new ShelfReader(job, built);
    Part first = reader.shelves().getFirst();
    SupportReader supports = new SupportReader(job, built);
    Candidate on = Candidate.of(reader.read(first), supports.limits(first, reader));
    PlateBending.Memory plates = new PlateBending.Memory();
    Material ply = job.material("ply");
    Material oak = job.material("oak");
    double depth = reader.shelves().getFirst().box().size(Axis.Y).mm();
    Made shelf =
        switch (made) {
          case "plain" -> Made.plain(ply, depth, Made.Layers.ONE);
          case "doubled" -> Made.plain(ply, depth, Made.Layers.TWO);
          case "strip" ->
              Made.stripped(ply, oak, depth, SampleJobs.in("1 1/2"), Made.Stripped.FRONT);
          default ->
              Made.stripped(ply, oak, depth, SampleJobs.in("1 1/2"), Made.Stripped.FRONT_AND_BACK);
        };
    for (String load : List.of("kitchen-shelf", "ordinary-shelf", "library-shelf")) {
      Figure span = find(tables(), "ply/" + made + "-" + load);
      LoadedShelf at = new LoadedShelf(shelf.section(), span.value().value(), 0, input(span, "q"));
      Verdict verdict = new Verdict(on.made(at.section(), reader.limits(ply)).with(at), plates);
      assertThat(verdict.holds()).isTrue();
      assertThat(verdict.worst().share()).isCloseTo(1, withPercentage(1.1));
    }
  }

  /**
   * Architectural Woodwork Standards, 1st ed. (2009), 4.4.14.10.11: Douglas-fir plywood of 3/4 in
   * spans 40 in at 40 lb/sq ft, 37 in at 50, at L/144 without creep. On pins, front and back edge
   * sag a little more than the middle.
   */
  @ParameterizedTest
  @CsvSource({"plain-ordinary-shelf, 40", "plain-library-shelf, 37"})
  void asTheWoodworkStandardPrints(String id, double inches) {
    CaseDraft draft = new CaseDraft();
    draft.settings =
        draft
            .settings
            .with(Setting.SAG_LIMIT, new SettingValue.OfNumber(144))
            .with(Setting.SAG_LIMIT_YEARS, new SettingValue.OfNumber(144))
            .with(Setting.CREEP_PANEL, new SettingValue.OfNumber(1))
            .with(Setting.ROW_DEPTH, new SettingValue.OfLength(Length.inches(40)));
    draft.load = Optional.of(new Load.PerLength(Quantity.of(0.3, QuantityUnit.LINE_LOAD)));
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(SampleJobs.sheet("fir", "plywood, douglas-fir veneer core", "3/4", "3/4"));
    List<SpanTable> tables =
        check(JobDraft.changed(job, d -> d.materials = materials)).cases().getFirst().spans();
    assertThat(value(tables, "fir/" + id + "-bending") / 25.4).isCloseTo(inches, withPercentage(3));
  }

  /**
   * Shelves that are soft from front to back, on pins that bear little: a span short enough for the
   * pins is too short for what it sags between the rows, so that none holds.
   */
  @ParameterizedTest
  @CsvSource({
    "3/16, 3/8, 3/4, 24, 16",
    "3/16, 3/8, 3/4, 36, 12",
    "3/16, 3/8, 1/2, 24, 20",
    "1/4, 1/2, 3/4, 30, 16",
    "1/4, 1/2, 1, 48, 12",
  })
  void everySpanHoldsOnTheSupportsItIsPrintedFor(
      String pin, String deep, String thick, String width, String depth) {
    Job job = withSoftShelves(pin, deep, thick, width, depth);
    BuiltCase built = CaseworkBuilder.build(job).cases().getFirst();
    ShelfReader reader = new ShelfReader(job, built);
    SupportReader supports = new SupportReader(job, built);
    Part shelf = reader.shelves().getFirst();
    Candidate on = Candidate.of(reader.read(shelf), supports.limits(shelf, reader));
    assertThat(on.supports()).isNotEmpty();
    for (SpanTable table : new SpanTables(job, reader, supports).all()) {
      Material material = job.material(table.material());
      for (SpanTable.Row row : table.rows()) {
        Made made = made(job, material, row.made(), table.depth().value().value());
        Candidate of = on.made(made.section(), reader.limits(material));
        double before = Double.POSITIVE_INFINITY;
        for (SpanTable.Span span : row.spans()) {
          double far = span.longest().value().value();
          assertThat(far).as(span.longest().id()).isLessThanOrEqualTo(1.01 * before);
          before = far;
          assertThat(far == 0 || holds(of, span.longest(), far)).as(span.longest().id()).isTrue();
          span.onOthers()
              .ifPresent(
                  other -> {
                    double further = other.value().value();
                    assertThat(further).isGreaterThan(far);
                    assertThat(holds(of, other, further)).as(other.id()).isFalse();
                    assertThat(holds(of.on(List.of()), other, further)).as(other.id()).isTrue();
                  });
        }
      }
    }
  }

  private static boolean holds(Candidate of, Figure span, double far) {
    LoadedShelf at = new LoadedShelf(of.beam().section(), far, 0, input(span, "q"));
    return new Verdict(of.with(at), new PlateBending.Memory()).holds();
  }

  private static Made made(Job job, Material material, String words, double depth) {
    Material board = job.material("oak");
    Length height = SampleJobs.in("1 1/2");
    return words.equals("plain")
        ? Made.plain(material, depth, Made.Layers.ONE)
        : words.equals("two layers glued")
            ? Made.plain(material, depth, Made.Layers.TWO)
            : words.startsWith("a strip")
                ? Made.stripped(material, board, depth, height, Made.Stripped.FRONT)
                : Made.stripped(material, board, depth, height, Made.Stripped.FRONT_AND_BACK);
  }

  private static Job withSoftShelves(
      String pin, String deep, String thick, String width, String depth) {
    CaseDraft draft = new CaseDraft();
    draft.sizes =
        new Sizes(
            Sizes.Measured.OUTSIDE,
            SampleJobs.in(width),
            SampleJobs.in("84"),
            SampleJobs.in(depth));
    Support pins =
        new Support.Pins(
            SampleJobs.in(pin), SampleJobs.in(deep), SampleJobs.in("3/8"), SampleJobs.in("1/8"));
    draft.bays = List.of(Shelving.bay(Shelving.shelves("soft", List.of()), pins));
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(SampleJobs.board("soft", "oak, white", thick));
    materials.add(SampleJobs.board("white-pine", "pine, eastern white", thick));
    materials.add(SampleJobs.sheet("chip", "particleboard", thick, thick));
    return JobDraft.changed(job, d -> d.materials = materials);
  }

  @Test
  void heavierLoadsSpanLessAndMoreWoodSpansFurther() {
    List<SpanTable> tables = tables();
    assertThat(value(tables, "ply/plain-library-shelf"))
        .isLessThan(value(tables, "ply/plain-kitchen-shelf"));
    assertThat(
            List.of(
                value(tables, "ply/plain-library-shelf-bending"),
                value(tables, "ply/strips-library-shelf-bending"),
                value(tables, "ply/doubled-library-shelf-bending")))
        .isSorted();
  }

  /** The back edge has none, and sags as before. */
  @Test
  void aStripInFrontAloneHardlyHelps() {
    List<SpanTable> tables = tables();
    assertThat(value(tables, "ply/strip-library-shelf"))
        .isCloseTo(value(tables, "ply/plain-library-shelf"), withPercentage(5));
  }

  /** On two rows far apart it sags too much between them, however short it is. */
  @Test
  void deepGlassSpansNothing() {
    CaseDraft draft = new CaseDraft();
    draft.sizes =
        new Sizes(
            Sizes.Measured.OUTSIDE, SampleJobs.in("72"), SampleJobs.in("84"), SampleJobs.in("27"));
    draft.settings =
        draft.settings.with(
            Setting.MIDDLE_ROW_FROM, new SettingValue.OfLength(SampleJobs.in("40")));
    Material glass =
        new Material(
            "glass",
            Material.Kind.GLASS,
            "glass, tempered",
            SampleJobs.in("1/4"),
            Optional.empty(),
            Material.Grain.NONE,
            Optional.empty(),
            Optional.empty());
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(glass);
    Figure span =
        find(
            check(JobDraft.changed(job, d -> d.materials = materials)).cases().getFirst().spans(),
            "glass/plain-library-shelf");
    assertThat(span.value().value()).isZero();
    assertThat(span.title()).startsWith("no span holds");
  }

  /** A short light shelf is tipped by a hand, which no other limit that is listed tells. */
  @Test
  void whatTipsIsAmongTheLimits() {
    Figure span = find(tables(), "ply/plain-library-shelf");
    assertThat(span.formula()).endsWith("neither its load nor P tips it");
    assertThat(input(span, "P")).isEqualTo(20);
  }
}
