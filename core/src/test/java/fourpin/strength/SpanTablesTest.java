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
}
