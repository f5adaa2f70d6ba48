package fourpin.boring.tolerance;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Method;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is worked out against what is simulated, each kind of way in turn. The figures stand in
 * {@code docs/levelness.md}, which is held to them; {@code -Ddocuments=write} writes it anew.
 */
class LevelnessDocumentTest {

  private static final Path DOCUMENT = Path.of("..", "docs", "levelness.md");
  private static final int CASES = 20_000;
  private static final long SEED = 11;

  /** Four standard errors are exceeded by chance once in 16,000 comparisons. */
  private static final double ERRORS_ALLOWED = 4;

  private static final BitSetting BIT =
      new BitSetting("bit", in("1/4"), in("0"), in("0"), in("3/8"), in("1/8"), in("3/16"));

  /** One kind of way, and the limit that makes its odds neither rare nor certain. */
  private record Example(String name, ErrorModel model, double limit) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** The worst place of an example, both ways. */
  private record Compared(
      Example example, Spread exact, double odds, Tally tally, int place, int places) {

    static Compared of(Example example) {
      GapTable table = GapTable.of(example.model(), example.limit());
      int place = table.places().indexOf(table.worst());
      Tally tally = Simulation.run(example.model(), example.limit(), CASES, SEED);
      Spread exact = (Spread) table.worst().gap();
      return new Compared(
          example, exact, table.worst().odds(), tally, place, table.places().size());
    }

    /** Standard error of simulated odds. */
    double error() {
      return Math.sqrt(odds * (1 - odds) / CASES);
    }

    double oddsOff() {
      return error() == 0 ? 0 : (tally.odds(place) - odds) / error();
    }

    double meanOff() {
      double spread = Math.sqrt(square(exact.deviation()) - square(exact.mean()));
      return spread == 0 ? 0 : (tally.mean(place) - exact.mean()) / (spread / Math.sqrt(CASES));
    }

    private static double square(double x) {
      return x * x;
    }

    String row() {
      return String.format(
          Locale.ROOT,
          "| %s | %d | %.4f | %.2f | %.4f | %.4f | %.4f | %.2f | %.4f | %.4f | %.2f | %.4f |%n",
          example.name(),
          places,
          exact.deviation(),
          example.limit(),
          odds,
          tally.odds(place),
          error(),
          oddsOff(),
          exact.mean(),
          tally.mean(place),
          meanOff(),
          exact.within(0.95));
    }
  }

  private static final List<Example> EXAMPLES = made().toList();

  static List<Example> examples() {
    return EXAMPLES;
  }

  private static Stream<Example> made() {
    Workshop shop = Workshop.with(Workshop.defaults());
    Workshop loose =
        Workshop.with(
            Workshop.defaults().with(Setting.HOLE_ALLOWANCE, new SettingValue.OfNumber(0.3)));
    Workshop soft =
        Workshop.with(Workshop.defaults().with(Setting.WEAR_BIT, new SettingValue.OfNumber(2)));
    Workshop slip = Workshop.with(Workshop.only(Setting.STEP_PIN_SLIP, "1 mm"));
    return Stream.of(
        new Example("guide's holes alone, 0.5 mm, one guide", holes(Alteration.NONE), 0.1),
        new Example("the same, one panel turned", holes(Alteration.RIGHT_FROM_TOP), 0.1),
        new Example("the same, one row turned", holes(Alteration.ONE_ROW_FROM_TOP), 0.5),
        new Example("the same, guide made anew", holes(Alteration.ONE_ROW_NEW_GUIDE), 0.5),
        guided("centring bit in a guide", shop, Way.CENTRING_GUIDE, shop.guided("0.005"), 0.8),
        guided("the same, loose pins", loose, Way.CENTRING_GUIDE, loose.guided("0.005"), 0.8),
        guided("router, slip 1/64 in", shop, Way.ROUTER_GUIDE, shop.guided("1/64"), 0.6),
        guided(
            "hardboard, wears 2 mm in 100 holes", soft, Way.HARDBOARD_STRIP, soft.guided("0"), 0.8),
        guided("tapered nose in a strap", shop, Way.STEEL_STRAP, shop.tapered("0.01"), 0.8),
        guided("short guide, moved along", shop, Way.CENTRING_GUIDE, shop.stepped("0.005"), 0.8),
        new Example(
            "the same, block left on for all first places",
            shop.model(Way.CENTRING_GUIDE, shop.stepped("0.005"), Alteration.BLOCK_STAYS_ON),
            0.8),
        new Example(
            "the same, both rows in one clamping",
            shop.model(Way.CENTRING_GUIDE, shop.stepped("0.005"), Alteration.ROWS_TOGETHER),
            0.8),
        guided(
            "slip of the locating pin alone, 1 mm",
            slip,
            Way.CENTRING_GUIDE,
            slip.stepped("0"),
            0.8),
        new Example(
            "whole guide, both rows in one clamping",
            shop.model(Way.CENTRING_GUIDE, shop.guided("0.005"), Alteration.ROWS_TOGETHER),
            0.8),
        unguided("story stick by hand", shop, marked(Method.How.BY_HAND), 0.8),
        unguided("drill press at marks", shop, marked(Method.How.DRILL_PRESS), 0.8),
        unguided("story stick, uprights in pairs", shop, inPairs(Method.How.BY_HAND), 0.8),
        unguided("drill press, uprights in pairs", shop, inPairs(Method.How.DRILL_PRESS), 0.8),
        unguided("machine", shop, new Method.Programmed("borer", BIT), 0.2),
        unguided("standards", shop, new Method.ScrewedOn(), 0.8),
        unguided("cleats", shop, new Method.Blanks(Method.How.DRILL_PRESS, BIT, 1), 0.4));
  }

  private static final List<OnSix> SIX_POINTS = onSix().toList();

  static List<OnSix> sixPoints() {
    return SIX_POINTS;
  }

  private static Stream<OnSix> onSix() {
    Workshop shop = OnSix.shop(Workshop.defaults());
    Workshop normal =
        OnSix.shop(
            Workshop.defaults()
                .with(Setting.WEAR_NOSE, new SettingValue.OfNumber(0))
                .with(Setting.STEP_PIN_SLIP, new SettingValue.OfLength(Length.ZERO)));
    return Stream.of(
        six("guide without play or wear", normal, Way.CENTRING_GUIDE, normal.guided("0"), 1),
        six("short guide, moved along", normal, Way.CENTRING_GUIDE, normal.stepped("0"), 2),
        six("router without play or wear", normal, Way.ROUTER_GUIDE, normal.guided("0"), 0.6),
        six("story stick by hand", normal, Way.STORY_STICK, marked(Method.How.BY_HAND), 2),
        six("drill press at marks", normal, Way.DRILL_PRESS, marked(Method.How.DRILL_PRESS), 1),
        six("machine", normal, Way.MACHINE, new Method.Programmed("borer", BIT), 0.2),
        six("standards", normal, Way.GROOVED_STANDARDS, new Method.ScrewedOn(), 1),
        six("centring bit in a guide", shop, Way.CENTRING_GUIDE, shop.guided("0.005"), 1),
        six("router, slip 1/64 in", shop, Way.ROUTER_GUIDE, shop.guided("1/64"), 0.8),
        six("short guide that slips", shop, Way.CENTRING_GUIDE, shop.stepped("0.005"), 2));
  }

  private static OnSix six(String name, Workshop shop, Way way, Method method, double limit) {
    return OnSix.of(name, shop.model(way, method, Alteration.NONE), limit);
  }

  @ParameterizedTest
  @MethodSource("sixPoints")
  void sixPointsAgreeThrice(OnSix example) {
    if (example.isIntegrable()) {
      double odds = example.integrated();
      assertThat(Math.abs(OnSix.off(odds, example.worst().odds(), OnSix.DRAWN)))
          .isLessThan(ERRORS_ALLOWED);
      assertThat(Math.abs(OnSix.off(odds, example.whole(), OnSix.CASES)))
          .isLessThan(ERRORS_ALLOWED);
    }
    assertThat(Math.abs(example.apart())).isLessThan(ERRORS_ALLOWED);
  }

  @Test
  void mostOfThemAreIntegrated() {
    assertThat(SIX_POINTS.stream().filter(OnSix::isIntegrable)).hasSizeGreaterThanOrEqualTo(7);
  }

  /** Two standard deviations are 1 mm. */
  private static ErrorModel holes(Alteration alteration) {
    Settings settings = Workshop.only(Setting.GUIDE_HOLE_ERROR, "1 mm");
    Workshop shop = Workshop.with(settings);
    return shop.model(Way.CENTRING_GUIDE, shop.guided("0"), alteration);
  }

  private static Example guided(
      String name, Workshop shop, Way way, Method.Guided method, double limit) {
    return new Example(name, shop.model(way, method, Alteration.NONE), limit);
  }

  private static Example unguided(String name, Workshop shop, Method method, double limit) {
    return new Example(name, shop.model(Way.STORY_STICK, method, Alteration.NONE), limit);
  }

  private static Method marked(Method.How how) {
    return new Method.Marked(how, BIT, List.of());
  }

  /** With the uprights of both bays marked by lines squared across them. */
  private static Method inPairs(Method.How how) {
    return new Method.Marked(
        how, BIT, List.of(Workshop.pair(1, "L", "P1"), Workshop.pair(2, "P1", "R")));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void workedOutAndSimulatedAgree(Example example) {
    Compared compared = Compared.of(example);
    assertThat(Math.abs(compared.oddsOff())).isLessThan(ERRORS_ALLOWED);
    assertThat(Math.abs(compared.meanOff())).isLessThan(ERRORS_ALLOWED);
    double deviation = compared.exact().deviation();
    assertThat(Math.abs(compared.tally().deviation(compared.place()) - deviation))
        .isLessThanOrEqualTo(ERRORS_ALLOWED * deviation / Math.sqrt(2.0 * CASES));
  }

  /** All places at once: the mean of as many numbers leaves no room for a small bias. */
  @ParameterizedTest
  @MethodSource("examples")
  void expectedNumbersAgree(Example example) {
    GapTable table = GapTable.of(example.model(), example.limit());
    Tally tally = Simulation.run(example.model(), example.limit(), CASES, SEED + 1);
    // Places of one case hang together: at worst all of them miss at once.
    double worst = Math.sqrt(table.worst().odds() / CASES) * table.places().size();
    assertThat(Math.abs(tally.expected() - table.expected()))
        .isLessThanOrEqualTo(ERRORS_ALLOWED * worst);
  }

  /** Exactly: nothing is left to be drawn. */
  @Test
  void oneGuideFromOneEndLeavesNoGapAtAll() {
    for (Alteration alteration : List.of(Alteration.NONE, Alteration.RIGHT_FROM_TOP)) {
      Tally tally = Simulation.run(holes(alteration), 0, CASES, SEED);
      assertThat(tally.casesBeyond()).isZero();
    }
    Tally turned = Simulation.run(holes(Alteration.ONE_ROW_FROM_TOP), 0.1, CASES, SEED);
    assertThat(turned.odds(0)).isGreaterThan(0.8);
  }

  @Test
  void theDocumentIsCurrent() throws IOException {
    StringBuilder text = new StringBuilder(HEAD);
    EXAMPLES.stream().map(Compared::of).forEach(c -> text.append(c.row()));
    text.append(SIX);
    SIX_POINTS.forEach(c -> text.append(c.row()));
    text.append(BY_HAND);
    CaseByHandTest.compared().forEach(c -> text.append(c.row()));
    text.append(FOOT);
    if ("write".equals(System.getProperty("documents"))) {
      Files.writeString(DOCUMENT, text);
    }
    assertThat(Files.readString(DOCUMENT))
        .as("mvn test -pl core -Ddocuments=write writes docs/levelness.md anew")
        .isEqualTo(text.toString());
  }

  private static final String HEAD =
      """
      # How level shelves lie: worked out and simulated

      A rigid flat shelf lies on three of its four supports. The gap under the fourth is
      |LF - LB - RF + RB|, the errors in height of the holes at the left front, left back, right front and right back
      (`Miss` derives it). Each error is a sum of causes: those that holes share enter the sum once, with the sum of their
      signs, and drop out where that is zero. Normal causes add up to a normal gap, whose odds are erfc(L / (σ √2));
      with uniform ones (play, loose pins) they are a Fourier series of the characteristic function (`CosineSeries`).

      Below, both are held against 20,000 seeded cases of a bookcase of two bays, at the place with the widest gap. The
      standard error of simulated odds p is √(p (1 - p) / 20,000); "off" is the difference in standard errors, and the
      test allows 4. Lengths in mm. Settings at their defaults for inches, unless said otherwise.

      | way | places | σ | limit | odds, worked out | odds, simulated | standard error | off | mean gap, worked out | mean gap, simulated | off | 95 of 100 within |
      |---|---|---|---|---|---|---|---|---|---|---|---|
      """;

  private static final String SIX =
      """

      ## On six points

      A shelf on three rows rocks over its middle pins as well, where one stands above the line from the front to the back
      pin of its side (P = LM - (LF + LB) / 2, Q on the right). Pushed down at its front and at its back edge in turn, a rigid
      shelf leaves a corner pin by at most G = |X| + 2 max(0, P, Q), X = LF - LB - RF + RB (`SixPoints` derives it; a
      test lays shelves on every three of their six pins and finds the same). A middle pin below its line is not reached.
      G has no closed form in general: it is drawn 10,000 times with a fixed seed for each place that has causes of its own.
      Where X, P and Q are normal and independent, the odds are also an integral,
      1 - ∫ f(x) F((L - |x|) / 2)² dx from -L to L, f of X and F of P. Whole cases are drawn apart, 5,000 of them.
      "Off" is in standard errors again, and the test allows 4; all places are drawn with one seed, so that the first "off"
      of all rows leans one way.

      | way | σ of X | σ of P | limit | odds, integrated | odds, place drawn | off | odds, whole cases | off from the place drawn | 95 of 100 within |
      |---|---|---|---|---|---|---|---|---|---|
      """;

  private static final String BY_HAND =
      """

      ## Bored and measured one by one

      Closed form and simulation above share one model: which causes holes have in common. Here 1,000 cases are bored through
      a guide as a maker does it (`CaseByHand`, of the tests): the guide is made with its holes and both battens of its block
      a little off, each row lays it on again, moved along it hangs on its pin, and then the block is screwed on again.
      Heights of the holes are measured, and gap and slope (how much higher the left end lies) taken of them. "Off" is in
      standard errors of a deviation, σ / √(2 · 1,000); the test allows 4. Nothing wears. Places of bay 2.

      | way | level | σ of the gap, worked out | measured | off | σ of the slope, worked out | measured | off |
      |---|---|---|---|---|---|---|---|
      """;

  private static final String FOOT =
      """

      What to see in it:

      * Errors of the guide's own holes cancel, to the last digit, where all rows of a level were bored through the same
        hole. They also cancel where one panel was bored wholly from its other end, or through another guide: both its
        rows share the hole, so the shelf slopes, but does not rock. They do not cancel where one row alone was turned, or
        bored after the guide was made anew.
      * Errors of clampings do not cancel from row to row; both rows in one clamping take them out, and leave the wander of
        the drill.
      * Front and back rows are stepped apart. Each step along adds the slip of the pin in the guide's hole, which wears,
        and in the bored hole, what the pin's thicknesses are out of line, and all that the hole missed which the pin goes
        into; all of it is common to the holes of that step, and to all later ones of the row.
      * The index block is two battens, one on either side of the guide, and the one below bears on the end of the panel. The
        left uprights of bays are bored with side B showing and the right ones with side A, so both rows of a panel share a
        batten, which cancels, and the two panels of a bay do not: the shelf slopes by what both battens miss, √2 of one.
        This holds for a router's guide too: its base is kept off the block, so that no batten has to change sides.
      * The index block is off while a guide is moved along. Screwed on again for each row, both battens miss anew for each;
        bored from the first place of every row before it comes off, they miss alike, which cancels in the gap. A guide for
        both rows, moved along by one pin, cancels the pin's errors as well.
      * A third row makes shelves rock more often: a middle pin that stands proud counts double at the corners.
      * A stick's marks cancel; what is lost is lost in marking and punching, hole by hole. A line squared across both
        uprights of a bay is common to all holes of a level: of marking only the punch is left, and the slope of the
        lines, which counts twice from front to back row, since the panels lie as mirror images.
      """;
}
