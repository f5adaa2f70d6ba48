package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.bay;
import static fourpin.strength.Shelving.named;
import static fourpin.strength.Shelving.ofKind;
import static fourpin.strength.Shelving.shelves;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.Material.Grain;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.Section.Matter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wood and panels that are bent until they break. */
@ExtendWith(CommaDecimals.class)
class BreakingTest {

  private static double allowed(String of, ServiceClass air, LoadCase how) {
    return Breaking.of(Reference.substances().get(of)).orElseThrow().allowed(air, how).number();
  }

  /**
   * EN 1995-1-1, Eq. 2.17: f_m,k k_mod / γ_M, over γ_Q of 1.5, by hand. f_m,k of C14 and D18 by EN
   * 338, of OSB/3 by EN 12369-1; k_mod of Table 3.1 for loads that stay, γ_M of Table 2.3.
   */
  @ParameterizedTest
  @CsvSource({
    "'pine, eastern white', FIRST, 5.0256", // 14 x 0.7 / (1.3 x 1.5)
    "'pine, eastern white', THIRD, 3.9487", // 14 x 0.55 / (1.3 x 1.5)
    "'oak, white', SECOND, 6.4615", // 18 x 0.7 / (1.3 x 1.5)
    "'plywood, birch throughout', FIRST, 14.7778", // 38 x 0.7 / (1.2 x 1.5)
    "'plywood, veneer core', FIRST, 9.6444", // 24.8 x 0.7 / (1.2 x 1.5)
    "OSB, FIRST, 4.1111", // 14.8 x 0.5 / (1.2 x 1.5)
    "OSB, SECOND, 3.2889", // 14.8 x 0.4 / (1.2 x 1.5)
    "particleboard, FIRST, 2.1923", // 9.5 x 0.45 / (1.3 x 1.5)
    "'plywood, particleboard core', SECOND, 1.4615", // 9.5 x 0.3 / (1.3 x 1.5)
    "MDF, FIRST, 3.6923" // 18 x 0.4 / (1.3 x 1.5)
  })
  void whatIsAllowedIsThatOfEurocode5(String of, ServiceClass air, double mpa) {
    assertThat(allowed(of, air, LoadCase.EVEN)).isCloseTo(mpa, within(1e-4));
  }

  /** k_mod of 0.9 over 0.7. */
  @Test
  void woodStandsMoreForAMinute() {
    LoadCase hand = new LoadCase.Hand(Sourced.stated(Quantity.of(100, QuantityUnit.FORCE)));
    assertThat(allowed("oak, white", ServiceClass.FIRST, hand))
        .isCloseTo(18 * 0.9 / (1.3 * 1.5), within(1e-9));
  }

  /** No factor is known for MDF in damp air: that of dry air is taken, and said. */
  @Test
  void boardsInAirThatTheyAreNotForAreToldSo() {
    Breaking breaking = Breaking.of(Reference.substances().get("MDF")).orElseThrow();
    assertThat(breaking.inputs(ServiceClass.THIRD))
        .anySatisfy(
            i ->
                assertThat(i.meaning())
                    .contains("service class 1, for want of a factor for class 3"));
    assertThat(Breaking.of(Reference.substances().get("glass, annealed"))).isEmpty();
  }

  /**
   * Every wood and every panel but glass has a strength, lower than what its handbook breaks at.
   */
  @Test
  void allButGlassHasAStrength() {
    assertThat(Reference.woods().rows())
        .allSatisfy(
            wood ->
                assertThat(Breaking.of(wood).orElseThrow().strength().number())
                    .isLessThan(wood.rupture().value() / 2));
    assertThat(Reference.panels().rows())
        .allSatisfy(
            panel ->
                assertThat(Breaking.of(panel).isEmpty())
                    .isEqualTo(panel.name().startsWith("glass")));
  }

  private static Material strong(Material of, double mpa) {
    return SampleJobs.strong(of, Optional.of(Quantity.of(mpa, QuantityUnit.STRESS)));
  }

  /** Of a maker's own, by the factors of its family; what it is glued up of no longer counts. */
  @Test
  void whatTheJobStatesGoesOverTheTables() {
    Material own = strong(sheet(Grain.LENGTHWISE), 50);
    Breaking breaking = Breaking.of(own).orElseThrow();
    assertThat(breaking.allowed().number()).isCloseTo(50 * 0.7 / (1.2 * 1.5), within(1e-9));
    assertThat(breaking.strength().source()).isEqualTo(Source.STATED);
    assertThat(breaking.by()).isEqualTo("as the job states it");
    assertThat(Breaking.of(sheet(Grain.LENGTHWISE)).orElseThrow().by())
        .isEqualTo("as the tables have it");
    Material.Layer face =
        new Material.Layer("particleboard, M-2", in("3/8"), 1, Material.Turn.ALONG);
    Material doubled =
        new Material(
            own.name(),
            own.kind(),
            own.of(),
            own.nominal(),
            own.measured(),
            own.grain(),
            own.stiffness(),
            own.density(),
            own.strength(),
            List.of(face, face));
    assertThat(Breaking.of(doubled).orElseThrow().strength().number()).isEqualTo(50);
    assertThat(
            Breaking.of(SampleJobs.strong(doubled, Optional.empty()))
                .orElseThrow()
                .strength()
                .number())
        .isEqualTo(9.5);
  }

  /** The same shelf holds or may break by what is stated, and the words say so. */
  @ParameterizedTest
  @CsvSource({"200, 0", "10, 1"})
  void aShelfIsHeldAgainstWhatTheJobStates(double mpa, int broken) {
    CaseDraft draft = new CaseDraft();
    draft.name = "Low";
    draft.bays = List.of(bay(shelves("own", List.of()), SampleJobs.pins()));
    draft.load = Optional.of(new Load.PerLength(Quantity.of(1, QuantityUnit.LINE_LOAD)));
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(strong(SampleJobs.board("own", "oak, white", "3/4"), mpa));
    List<Finding> found =
        ofKind(Shelving.check(JobDraft.changed(job, d -> d.materials = materials)), "shelf-breaks");
    assertThat(found).hasSize(broken);
    assertThat(found).allMatch(f -> f.what().contains("by its strength as the job states it"));
  }

  /** Weaker by as much as its weaker way is less stiff. */
  @Test
  void whatIsCutEitherWayIsWeaker() {
    Matter laid = Matters.of(sheet(Grain.LENGTHWISE));
    Matter either = Matters.of(sheet(Grain.NONE));
    assertThat(either.breaking().orElseThrow().strength().number())
        .isCloseTo(
            laid.breaking().orElseThrow().strength().number()
                * laid.flat().across().number()
                / laid.flat().along().number(),
            within(1e-9));
  }

  private static Material sheet(Grain grain) {
    return new Material(
        "sheet",
        Material.Kind.SHEET,
        "plywood, birch throughout",
        in("3/4"),
        Optional.empty(),
        grain,
        Optional.empty(),
        Optional.empty());
  }

  /** Pine on limits of sag that no shelf comes near. @param load N/mm */
  private static Strength pine(double load) {
    Bay like =
        bay(
            shelves("pine", List.of()),
            new Support.Standards(
                Support.Mounting.LET_IN,
                in("5/8"),
                in("3/16"),
                in("1/2"),
                in("1/4"),
                in("1/16"),
                in("1/8"),
                in("72")));
    Bay loaded =
        new Bay(
            like.width(),
            like.fixedShelves(),
            like.shelves(),
            like.supports(),
            Optional.of(new Load.PerLength(Quantity.of(load, QuantityUnit.LINE_LOAD))));
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("24"), in("40"), in("12"));
    draft.bays = List.of(loaded);
    draft.settings =
        draft
            .settings
            .with(Setting.SAG_LIMIT, new SettingValue.OfNumber(60))
            .with(Setting.SAG_LIMIT_YEARS, new SettingValue.OfNumber(60))
            .with(Setting.SUPPORT_RATING, new SettingValue.OfNumber(5000));
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(SampleJobs.board("pine", "pine, eastern white", "3/4"));
    return Shelving.check(JobDraft.changed(job, d -> d.materials = materials));
  }

  /** q L² / 8 over b t² / 6, by hand; a thin plate of wood is bent no more than by its edges. */
  @Test
  void aShelfIsStressedAsABeam() {
    ShelfAnswer shelf = pine(1).shelves().getFirst();
    Figure stress = named(shelf, "stress");
    double span = shelf.span().value().value();
    double depth = input(named(shelf, "weight"), "b");
    double moment = (1 + input(stress, "g")) * span * span / 8;
    assertThat(stress.value().value())
        .isCloseTo(moment / (depth * 19.05 * 19.05 / 6), withPercentage(3));
  }

  /** On either side of the load that breaks it, which sag alone does not limit. */
  @ParameterizedTest
  @CsvSource({"0.999, 0", "1.02, 1"})
  void aShelfThatMayBreakIsAnError(double share, int times) {
    double most = named(pine(1).shelves().getFirst(), "largest-load").value().value();
    assertThat(named(pine(1).shelves().getFirst(), "largest-load").title()).contains("(stress, ");
    Strength strength = pine(share * most);
    List<Finding> breaks =
        strength.findings().stream()
            .filter(f -> f.kind().endsWith("-breaks") && f.place().toString().contains("S1"))
            .toList();
    assertThat(breaks).hasSize(times);
    assertThat(breaks)
        .allSatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
              assertThat(finding.remedies()).isNotEmpty();
            });
  }

  /** Where all of it is looked at, nowhere does it break sooner than the short look allows for. */
  @ParameterizedTest
  @CsvSource({"ply, 6", "ply, 11", "oak, 8", "mdf, 10", "mdf, 22", "ply, 22"})
  void noPlaceIsStressedFarMoreThanTheMiddle(String of, double deep) {
    List<Material> materials =
        List.of(
            SampleJobs.board("ply", "plywood, veneer core", "3/4"),
            SampleJobs.board("oak", "oak, white", "3/4"),
            SampleJobs.board("mdf", "MDF", "3/4"));
    Material material =
        materials.stream().filter(m -> m.name().equals(of)).findFirst().orElseThrow();
    for (double span : List.of(400.0, 800.0, 1200.0)) {
      for (Bends bends : bent(material, deep * 25.4, span)) {
        double middle = bends.across().get().getFirst().all();
        assertThat(bends.stresses().get().getFirst().all()).isBetween(0.999 * middle, 1.5 * middle);
      }
    }
  }

  private static List<Bends> bent(Material of, double depth, double span) {
    Section section = Made.plain(of, depth, Made.Layers.ONE).section();
    LoadedShelf beam = new LoadedShelf(section, span, 5, 0.3);
    ShelfOnSupports.Bearing rows =
        new ShelfOnSupports.Bearing.Rows(
            millimetres(37), millimetres(37), ShelfOnSupports.Bearing.Count.TWO);
    PlateBending plate =
        new PlateBending.Memory().of(ShelfPlate.of(beam, rows, ShelfPlate.Prop.NONE).orElseThrow());
    LoadCases cases = new LoadCases(Optional.of(millimetres(depth * 0.6)), depth, millimetres(100));
    List<Bends> all = new ArrayList<>();
    cases.loaded().forEach(how -> plate.under(how, 0.3).ifPresent(all::add));
    assertThat(all).hasSizeGreaterThan(2);
    return all;
  }

  private static Sourced millimetres(double mm) {
    return Sourced.stated(Quantity.of(mm, QuantityUnit.LENGTH));
  }

  /** A strip is held against its own wood, not against the panel's. */
  @Test
  void aStripHasAStrengthOfItsOwn() {
    ShelfAnswer shelf =
        Shelving.check(
                bay(shelves("ply", List.of(SampleJobs.strip("3/4", "1 1/2"))), SampleJobs.pins()))
            .shelves()
            .getFirst();
    assertThat(named(shelf, "stress-allowed").value().value()).isCloseTo(9.6444, within(1e-4));
    assertThat(named(shelf, "strip-stress-allowed").value().value())
        .isCloseTo(6.4615, within(1e-4));
  }

  /**
   * Where a strip in front is nearest to breaking, it is named, and what it is allowed shown: by
   * all the ways in which a load may lie.
   */
  @ParameterizedTest
  @CsvSource({"0.35, row-breaks", "1.1, shelf-breaks"})
  void aStripThatMayBreakIsNamed(double load, String kind) {
    Finding breaks = ofKind(withStrip(load), kind).getFirst();
    assertThat(breaks.what()).contains(" in the front strip");
    assertThat(breaks.figures())
        .extracting(Figure::id)
        .anyMatch(id -> id.endsWith("/strip-stress-allowed"));
  }

  private static Strength withStrip(double newtonEachMm) {
    CaseDraft draft = new CaseDraft();
    draft.name = "Low";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("48"), in("40"), in("12"));
    draft.bays =
        List.of(bay(shelves("ply", List.of(SampleJobs.strip("3/4", "1 1/2"))), SampleJobs.pins()));
    draft.load = Optional.of(new Load.PerLength(Quantity.of(newtonEachMm, QuantityUnit.LINE_LOAD)));
    return Shelving.check(SampleJobs.job(draft.order()));
  }

  /** A bottom that nothing carries from side to side, under two bays of records. */
  @Test
  void aBottomThatMayBreakIsAnError() {
    CaseDraft draft = new CaseDraft();
    draft.name = "Low";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("90"), in("80"), in("12"));
    draft.bays = List.of(SampleJobs.bay(4), SampleJobs.bay(4));
    draft.load = Optional.of(new Load.Holds("records, 12 in"));
    draft.settings = draft.settings.with(Setting.BEHIND_KICK, new SettingValue.OfChoice("nothing"));
    Strength strength = Shelving.check(SampleJobs.job(draft.order()));
    Finding breaks = ofKind(strength, "bottom-breaks").getFirst();
    assertThat(breaks.severity()).isEqualTo(Severity.ERROR);
    double stress = breaks.figures().getFirst().value().value();
    assertThat(stress).isGreaterThan(breaks.figures().getLast().value().value());
    assertThat(breaks.figures().getLast().value().value()).isCloseTo(9.6444, within(1e-4));
  }

  @Test
  void aTopThatMayBreakIsAnError() {
    CaseDraft draft = new CaseDraft();
    draft.name = "Low";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("48"), in("40"), in("12"));
    draft.bays = List.of(SampleJobs.bay(1));
    draft.settings =
        draft.settings.with(
            Setting.TOP_LOAD, new SettingValue.OfLoad(Quantity.of(3, QuantityUnit.LINE_LOAD)));
    Strength strength = Shelving.check(SampleJobs.job(draft.order()));
    Finding breaks = ofKind(strength, "top-breaks").getFirst();
    assertThat(breaks.severity()).isEqualTo(Severity.ERROR);
    assertThat(breaks.what()).contains("1399 psi are allowed").contains("it may break");
  }
}
