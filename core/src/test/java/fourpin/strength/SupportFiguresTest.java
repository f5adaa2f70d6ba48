package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
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
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Support;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.wood.DowelInWood;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What supports do to the sides. */
@ExtendWith(CommaDecimals.class)
class SupportFiguresTest {

  private static final Pattern RATED = Pattern.compile("rated for ([0-9.]+) lbf or more");
  private static final double NEWTON_PER_POUND = 4.4482216152605;

  private static Figure figure(ShelfAnswer shelf, String last) {
    return shelf.inSides().stream()
        .filter(f -> f.id().endsWith("/" + last))
        .findFirst()
        .orElseThrow();
  }

  private static double evenPush(ShelfAnswer shelf) {
    return shelf.plate().stream()
        .filter(f -> f.id().endsWith("/plate-load-front"))
        .mapToDouble(f -> f.value().value())
        .findFirst()
        .orElseThrow();
  }

  /**
   * Without a lever, 0.414 of bearing times area: the rotation of a stiff dowel in one member (NDS
   * 2018, Table 12.3.1A, mode II for members alike; EN 1995-1-1, Eq. 8.6 c); by a lever of the
   * depth, from the same balance of forces, √10 - 3.
   */
  @ParameterizedTest
  @CsvSource({"0, 0.41421", "10, 0.16228", "1e6, 0.0000025"})
  void aStiffDowelTurnsAtTheLoadOfTheCodes(double lever, double share) {
    DowelInWood dowel = new DowelInWood(5, 10, lever);
    assertThat(dowel.yieldsAt(30) / (30 * 5 * 10)).isCloseTo(share, within(1e-5));
  }

  /** The forces of that state balance: what presses up less what presses down is the push. */
  @ParameterizedTest
  @CsvSource({"6.35, 9.5, 5", "5, 12, 1", "8, 20, 30"})
  void theForcesInTheHoleBalance(double diameter, double depth, double lever) {
    double push = new DowelInWood(diameter, depth, lever).yieldsAt(25);
    double line = 25 * diameter;
    double mouth = (push / line + depth) / 2;
    double bottom = depth - mouth;
    assertThat(line * (mouth - bottom)).isCloseTo(push, within(1e-9));
    assertThat(line * bottom * (mouth + bottom / 2))
        .isCloseTo(push * lever + line * mouth * mouth / 2, within(1e-6 * push * depth));
  }

  /** The formulas that are printed, worked out from the inputs that are printed. */
  @Test
  void thePrintedWorkingGivesThePrintedLoads() {
    ShelfAnswer shelf = check(SampleJobs.bay(2), SampleJobs.bay(2)).shelves().getFirst();
    Figure nds = figure(shelf, "support-allowed-nds");
    double yields = input(nds, "Fₑ") * input(nds, "d") * share(nds);
    assertThat(nds.value().value())
        .isCloseTo(yields * input(nds, "C_D") / input(nds, "R_d"), within(1e-9));
    Figure ec5 = figure(shelf, "support-allowed-ec5");
    assertThat(ec5.value().value())
        .isCloseTo(
            input(ec5, "f")
                * input(ec5, "d")
                * share(ec5)
                * input(ec5, "k_mod")
                / (input(ec5, "γ_M") * input(ec5, "γ_Q")),
            within(1e-9));
    Figure stress = figure(shelf, "pin-stress");
    double lever = input(stress, "P") / (2 * input(stress, "f") * input(stress, "d"));
    assertThat(stress.value().value())
        .isCloseTo(
            6 * input(stress, "P") * (input(stress, "e") + lever) / Math.pow(input(stress, "s"), 3),
            within(1e-9));
    assertThat(stress.title()).endsWith(", yielding through its whole section");
    assertThat(stress.inputs().getLast().meaning()).contains("s³ / 6 is plastic", "π s³ / 32");
    assertThat(32 / Math.PI / 6).isCloseTo(1.7, within(0.005));
  }

  private static double share(Figure figure) {
    double t = input(figure, "t");
    double reach = t + 2 * input(figure, "e");
    return Math.hypot(reach, t) - reach;
  }

  /** All supports of a shelf of plain plywood carry alike, the load spread evenly. */
  @Test
  void theMostLoadedSupportCarriesAQuarterOrMore() {
    ShelfAnswer shelf = check(SampleJobs.bay(1), SampleJobs.bay(1)).shelves().getFirst();
    double all = 2 * shelf.supports().stream().mapToDouble(f -> f.value().value()).sum();
    double push = evenPush(shelf);
    assertThat(push).isGreaterThanOrEqualTo(all / 4).isCloseTo(all / 4, withPercentage(3));
  }

  /** Holes crush when both codes say so; one of them alone is a doubt. */
  @Test
  void heavyShelvesCrushTheirHoles() {
    ShelfAnswer shelf = check(SampleJobs.bay(1), SampleJobs.bay(1)).shelves().getFirst();
    double push = evenPush(shelf);
    double load = shelf.load().value().value();
    double nds = figure(shelf, "support-allowed-nds").value().value();
    double ec5 = figure(shelf, "support-allowed-ec5").value().value();
    assertThat(crushes(0.8 * load * Math.min(nds, ec5) / push)).isEmpty();
    assertThat(crushes(load * (nds + ec5) / 2 / push))
        .extracting(Finding::severity)
        .containsExactly(Severity.DOUBT);
    assertThat(crushes(1.2 * load * Math.max(nds, ec5) / push))
        .extracting(Finding::severity)
        .containsExactly(Severity.ERROR);
  }

  /** By statics each of four clips carries a quarter of load and weight, that lie evenly. */
  @Test
  void clipsAreRatedForWhatNoPinBears() {
    ShelfAnswer shelf = check(SampleJobs.bay(1), SampleJobs.bay(1)).shelves().getFirst();
    Figure front = shelf.supports().getFirst();
    double load = 12 * shelf.load().value().value();
    double quarter = (load + input(front, "g")) * (input(front, "L") + 2 * input(front, "c")) / 4;
    String cure = crushes(load).getFirst().remedies().getFirst().what();
    assertThat(cure).startsWith("carry the shelf on clips in standards, ");
    String rated = cure.substring(cure.indexOf("rates for ") + 10, cure.indexOf(" lbf"));
    assertThat(Double.parseDouble(rated) * 4.4482216).isBetween(quarter, 1.03 * quarter);
  }

  private static List<Finding> crushes(double newtonPerMm) {
    Bay bay = Shelving.bay(1, new Load.PerLength(Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD)));
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bay, bay);
    draft.settings =
        draft.settings.with(Setting.ROW_DEPTH, new SettingValue.OfLength(Length.inches(40)));
    return ofKind(check(SampleJobs.job(draft.order())), "support-crushes");
  }

  /**
   * k_mod of EN 1995-1-1, Table 3.1, service class 1, long-term, as the ICE Manual of Structural
   * Design, Table 19.9, prints it, over γ_M of 1.3 (Table 2.3) and γ_Q of 1.5 (EN 1990); embedment
   * for a pin of 1/4 in in sides of 0.72 in by hand: 0.11 (1 - 0.0635) 450, 50 × 6.35^-0.6 ×
   * 18.288^0.2, and for laminated wood as for solid, 0.082 (1 - 0.0635) 400.
   */
  @ParameterizedTest
  @CsvSource({
    "'plywood, veneer core', 0.7, 46.357",
    "OSB, 0.5, 29.494",
    "particleboard, 0.45, 29.494",
    "MDF, 0.4, 29.494",
    "laminated veneer lumber, 0.7, 30.717"
  })
  void boardsOfParticlesAndFibresBearLessForYears(String of, double duration, double embedment) {
    Figure ec5 = figure(sidesOf(of).shelves().getFirst(), "support-allowed-ec5");
    assertThat(input(ec5, "f")).isCloseTo(embedment, withPercentage(0.01));
    boolean byDensity = of.contains("plywood") || of.contains("lumber");
    assertThat(ec5.inputs())
        .extracting(Figure.Input::symbol)
        .contains(byDensity ? "ρ" : "T")
        .doesNotContain(byDensity ? "T" : "ρ");
    assertThat(ec5.value().value())
        .isCloseTo(embedment * 6.35 * share(ec5) * duration / 1.3 / 1.5, withPercentage(0.01));
  }

  /** The NDS says nothing of MDF: what is over the one code that speaks is over all that do. */
  @Test
  void theOnlyCodeThatSpeaksIsEnoughForAnError() {
    assertThat(ofKind(sidesOf("MDF"), "support-crushes"))
        .extracting(Finding::severity)
        .containsExactly(Severity.ERROR);
  }

  private static Strength sidesOf(String of) {
    Job job = SampleJobs.job(SampleJobs.bookcase(SampleJobs.bay(1)));
    List<Material> materials =
        job.materials().stream()
            .map(m -> m.name().equals("ply") ? SampleJobs.sheet("ply", of, "3/4", "0.72") : m)
            .toList();
    return check(JobDraft.changed(job, d -> d.materials = materials));
  }

  /** Sleeves bear on more wood. */
  @Test
  void sleevesCarryMore() {
    Support.Pins pins = (Support.Pins) SampleJobs.pins();
    Support sleeved = new Support.Sleeved(pins, in("3/8"), in("1/2"), in("1/32"));
    double bare = allowed(pins);
    assertThat(allowed(sleeved)).isGreaterThan(1.5 * bare);
  }

  private static double allowed(Support support) {
    Bay bay = Shelving.bay(Shelving.shelves("ply", List.of()), support);
    return figure(check(bay, bay).shelves().getFirst(), "support-allowed-ec5").value().value();
  }

  /** A rating is held against where it is stated, and only there. */
  @Test
  void ratingsAreHeldAgainst() {
    assertThat(ofKind(rated("5"), "support-rating").getFirst().severity())
        .isEqualTo(Severity.ERROR);
    assertThat(ofKind(rated("5000"), "support-rating")).isEmpty();
    assertThat(ofKind(check(SampleJobs.bay(1)), "support-rating")).isEmpty();
  }

  private static Strength rated(String newton) {
    CaseDraft draft = new CaseDraft();
    draft.settings =
        draft.settings.with(
            Setting.SUPPORT_RATING, new SettingValue.OfNumber(Double.parseDouble(newton)));
    return check(SampleJobs.job(draft.order()));
  }

  /** The rating named is enough however the load lies, and a tenth less is not. */
  @Test
  void theRatingThatIsNeededIsNamed() {
    Finding low = ofKind(discs(Setting.SUPPORT_RATING, 5), "support-rating").getFirst();
    Matcher named = RATED.matcher(low.remedies().getFirst().what());
    assertThat(named.find()).isTrue();
    double needed = Double.parseDouble(named.group(1)) * NEWTON_PER_POUND;
    assertThat(overRated(needed)).isEmpty();
    assertThat(overRated(0.95 * needed)).isNotEmpty();
  }

  private static List<Finding> overRated(double newton) {
    return discs(Setting.SUPPORT_RATING, newton).findings().stream()
        .filter(f -> f.what().contains("maker"))
        .toList();
  }

  /** So light that supports carry them by all codes. */
  private static Strength discs(Setting setting, double number) {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.Holds("discs in cases"));
    draft.settings = draft.settings.with(setting, new SettingValue.OfNumber(number));
    return check(SampleJobs.job(draft.order()));
  }

  /** The row presses harder than the even load, and bends the pin too far. */
  @Test
  void pinsBendUnderARowToo() {
    ShelfAnswer shelf = discs(Setting.PIN_STRESS, 160).shelves().getFirst();
    double most = figure(shelf, "pin-stress").value().value();
    Finding bends = ofKind(discs(Setting.PIN_STRESS, 0.99 * most), "pin-bends").getFirst();
    assertThat(bends.what()).contains(": with its load in a row 5.31 in deep along the front edge");
    assertThat(bends.remedies())
        .isNotEmpty()
        .noneMatch(cure -> cure.what().equals("use thicker pins"));
    assertThat(bends.remedies().stream().filter(cure -> cure.what().startsWith("use pins of ")))
        .singleElement()
        .satisfies(cure -> assertThat(cure.what()).startsWith("use pins of 7 mm: then "));
  }

  /** Soft pins are told; a shelf in joints has no supports to speak of. */
  @Test
  void softPinsBend() {
    CaseDraft draft = new CaseDraft();
    draft.settings = draft.settings.with(Setting.PIN_STRESS, new SettingValue.OfNumber(20));
    draft.load = Optional.of(new Load.PerLength(Quantity.of(1, QuantityUnit.LINE_LOAD)));
    assertThat(ofKind(check(SampleJobs.job(draft.order())), "pin-bends")).isNotEmpty();
  }
}
