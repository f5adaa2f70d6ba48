package fourpin.boring.tolerance;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.tolerance.ErrorModel.Cause;
import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.Miss.Point;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Method;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Way;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Deviations worked out by hand; settings hold two standard deviations. */
class ErrorModelsTest {

  /** About 0.5 mm: 0.25 mm of standard deviation for 0.02 in. */
  static final String HALF_MM = "0.02";

  static final double SIGMA = 0.254;

  private static Spread gap(ErrorModel model, int position) {
    return spread(model, position, Miss.GAP);
  }

  private static Spread spread(ErrorModel model, int position, Miss miss) {
    return NetError.of(model, model.positions().get(position), miss).spread();
  }

  private static ErrorModel guided(Settings settings, String play, Alteration alteration) {
    Workshop shop = Workshop.with(settings);
    return shop.model(Way.CENTRING_GUIDE, shop.guided(play), alteration);
  }

  static void deviates(ErrorModel model, double expected) {
    for (int p = 0; p < model.positions().size(); p++) {
      assertThat(gap(model, p).deviation())
          .as("%s", model.positions().get(p).level())
          .isCloseTo(expected, within(1e-9));
    }
  }

  @Test
  void everyLevelOfBothBaysIsAPosition() {
    Workshop shop = Workshop.with(Workshop.defaults());
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.guided("0.005"), Alteration.NONE);
    assertThat(model.positions())
        .hasSize(2 * shop.grids().getFirst().levels().size())
        .hasSizeGreaterThan(100);
  }

  /** Factor by factor: which guide hole serves which corner, and with which sign. */
  @ParameterizedTest
  @CsvSource({
    // what is done, gap in σ, slope in σ
    "NONE, 0, 0",
    "SLEEVED, 0, 0",
    // front and back rows of a panel share the hole, so even two guides only slope the shelf
    "SECOND_GUIDE_RIGHT, 0, 1.41421356",
    "RIGHT_FROM_TOP, 0, 1.41421356",
    // one row on another hole, with factor 1 against -1: √2 σ
    "ONE_ROW_NEW_GUIDE, 1.41421356, 0.70710678",
    // the hole of the three others and, its sign turned, that of the last row: -1 and -1
    "ONE_ROW_FROM_TOP, 1.41421356, 0.70710678",
    "ROWS_TOGETHER, 0, 0"
  })
  void errorsOfTheGuidesHolesCancel(Alteration alteration, double gap, double slope) {
    ErrorModel model = guided(Workshop.only(Setting.GUIDE_HOLE_ERROR, HALF_MM), "0", alteration);
    assertThat(gap(model, 0).deviation()).isCloseTo(gap * SIGMA, within(1e-9));
    assertThat(spread(model, 0, Miss.SLOPE).deviation()).isCloseTo(slope * SIGMA, within(1e-9));
  }

  /** Each of four clampings with its own error: 2 σ; both rows in one clamping: none. */
  @ParameterizedTest
  @CsvSource({"NONE, 2", "ROWS_TOGETHER, 0"})
  void seats(Alteration alteration, double gap) {
    deviates(guided(Workshop.only(Setting.SEAT_ERROR, HALF_MM), "0", alteration), gap * SIGMA);
  }

  @Test
  void wanderOfFourHolesIsTwiceThatOfOne() {
    deviates(guided(Workshop.only(Setting.DRILL_WANDER, HALF_MM), "0", Alteration.NONE), 2 * SIGMA);
  }

  /** Play of 0.02 in reaches 0.254 mm to either side: σ = 0.254 / √3, four of them. */
  @Test
  void playIsUniform() {
    ErrorModel model = guided(Workshop.only(Setting.DRILL_WANDER, "0"), "0.02", Alteration.NONE);
    deviates(model, 2 * 0.254 / Math.sqrt(3));
    assertThat(gap(model, 0).reaches())
        .hasSize(4)
        .allSatisfy(r -> assertThat(r).isCloseTo(0.254, within(1e-9)));
  }

  /** The bit that is thicker than the hole, a taper, finds the middle. */
  @Test
  void aTaperHasNoPlay() {
    Workshop shop = Workshop.with(Workshop.only(Setting.DRILL_WANDER, "0"));
    deviates(shop.model(Way.STEEL_STRAP, shop.tapered("0.02"), Alteration.NONE), 0);
  }

  /** One partition stands on the bottom, so each bay has one spacer; it lifts both its rows. */
  @Test
  void oneSpacerForBothRowsCancels() {
    ErrorModel model = guided(Workshop.only(Setting.SPACER_ERROR, HALF_MM), "0", Alteration.NONE);
    deviates(model, 0);
    assertThat(spread(model, 0, Miss.SLOPE).deviation()).isCloseTo(SIGMA, within(1e-9));
  }

  /** After n steps four rows each have n pin fits: 2 √n σ. */
  @Test
  void stepsAddUp() {
    Workshop shop = Workshop.with(Workshop.only(Setting.PIN_STEP_ERROR, HALF_MM));
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.stepped("0"), Alteration.NONE);
    for (int level : List.of(1, 20, 21, 39, 40, 58, 59)) {
      int steps = (level - 2) / 19;
      assertThat(gap(model, level - 1).deviation())
          .as("level %d after %d steps", level, steps)
          .isCloseTo(2 * Math.sqrt(steps) * SIGMA, within(1e-9));
    }
    deviates(shop.model(Way.CENTRING_GUIDE, shop.stepped("0"), Alteration.WHOLE_LENGTH), 0);
  }

  /** After n steps four rows have slipped 2 n times by up to half the slip. */
  @Test
  void thePinSlipsInBothItsHoles() {
    Workshop shop = Workshop.with(Workshop.only(Setting.STEP_PIN_SLIP, HALF_MM));
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.stepped("0"), Alteration.NONE);
    for (int level : List.of(1, 20, 21, 39, 40, 58, 59)) {
      int steps = (level - 2) / 19;
      assertThat(gap(model, level - 1).deviation())
          .as("level %d after %d steps", level, steps)
          .isCloseTo(Math.sqrt(8 * steps / 3.0) * SIGMA, within(1e-9));
      assertThat(gap(model, level - 1).reaches())
          .hasSize(8 * steps)
          .allSatisfy(r -> assertThat(r).isCloseTo(SIGMA, within(1e-9)));
    }
  }

  /** The first row steps through a hole bored through once, which is 0.008 mm wider by then. */
  @Test
  void aWornHoleOfTheGuideLetsThePinSlipMore() {
    Settings worn =
        Workshop.only(Setting.STEP_PIN_SLIP, HALF_MM)
            .with(Setting.WEAR_NOSE, new SettingValue.OfNumber(0.8));
    Workshop shop = Workshop.with(worn);
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.stepped("0"), Alteration.NONE);
    Cause first =
        model.causes().stream()
            .filter(c -> c.kind() == CauseKind.STEP_IN_GUIDE)
            .findFirst()
            .orElseThrow();
    assertThat(Spread.reachOf(first.deviation())).isCloseTo(SIGMA + 0.004, within(1e-9));
  }

  /** A plain pin, as thick above as below, has no two thicknesses to be out of line. */
  @Test
  void aPlainPinIsInLineWithItself() {
    Workshop shop = Workshop.with(Workshop.only(Setting.PIN_STEP_ERROR, HALF_MM));
    Method.Guided stepped = shop.stepped("0");
    BitSetting plain =
        new BitSetting("plain", in("3/8"), in("3/8"), in("1/4"), in("3/8"), in("1/8"), in("3/16"));
    Method.Guided through =
        new Method.Guided(stepped.how(), stepped.guide(), plain, stepped.clampings());
    deviates(shop.model(Way.HARDBOARD_STRIP, through, Alteration.NONE), 0);
  }

  /**
   * Screwed on again for each of four rows: 2 σ, and half their sum in the slope, 1 σ. Where it
   * stays on, or serves both rows at once, the rows of a side share a batten, which cancels in the
   * gap; the left and the right side have one each: √2 σ of slope.
   */
  @ParameterizedTest
  @CsvSource({
    "NONE, 2, 1",
    "BLOCK_STAYS_ON, 0, 1.41421356",
    "WHOLE_LENGTH, 0, 1.41421356",
    "ROWS_TOGETHER, 0, 1.41421356"
  })
  void theBlockComesOffWhereAGuideIsMovedAlong(Alteration alteration, double gap, double slope) {
    Workshop shop = Workshop.with(Workshop.only(Setting.BLOCK_ERROR, HALF_MM));
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.stepped("0"), alteration);
    deviates(model, gap * SIGMA);
    for (int p = 0; p < model.positions().size(); p++) {
      assertThat(spread(model, p, Miss.SLOPE).deviation()).isCloseTo(slope * SIGMA, within(1e-8));
    }
  }

  /**
   * Battens B at the left and A at the right, whatever runs in the guide. From the top the other
   * batten bears and its sign turns: B and -B slope by 2 σ; for one row, B - B - A - B rocks by √2
   * σ. Another guide has other battens.
   */
  @ParameterizedTest
  @CsvSource({
    "NONE, 0, 1.41421356",
    "SLEEVED, 0, 1.41421356",
    "ROWS_TOGETHER, 0, 1.41421356",
    "SECOND_GUIDE_RIGHT, 0, 1.41421356",
    "RIGHT_FROM_TOP, 0, 2",
    "ONE_ROW_NEW_GUIDE, 1.41421356, 1.22474487",
    "ONE_ROW_FROM_TOP, 1.41421356, 1.58113883"
  })
  void eachSideOfAGuideHasABattenOfItsOwn(Alteration alteration, double gap, double slope) {
    Workshop shop = Workshop.with(Workshop.only(Setting.BLOCK_ERROR, HALF_MM));
    for (Way way : List.of(Way.CENTRING_GUIDE, Way.ROUTER_GUIDE)) {
      ErrorModel model = shop.model(way, shop.guided("0"), alteration);
      assertThat(gap(model, 0).deviation()).isCloseTo(gap * SIGMA, within(1e-8));
      assertThat(spread(model, 0, Miss.SLOPE).deviation()).isCloseTo(slope * SIGMA, within(1e-8));
    }
  }

  /** Both bays' left rows are bored with the same batten, on either side of the partition. */
  @Test
  void aBattenServesTheSameSideOfEveryBay() {
    Workshop shop = Workshop.with(Workshop.only(Setting.BLOCK_ERROR, HALF_MM));
    ErrorModel model = shop.model(Way.ROUTER_GUIDE, shop.guided("0"), Alteration.NONE);
    assertThat(model.causes().stream().filter(c -> c.kind() == CauseKind.BLOCK).map(Cause::which))
        .containsExactly("0 B", "0 A");
  }

  /** One wide guide takes both rows along by one pin: what came before is common to them. */
  @ParameterizedTest
  @CsvSource({"NONE, 2.82842712", "ROWS_TOGETHER, 2"})
  void rowsThatAreMovedTogetherShareThePinnedHole(Alteration alteration, double gap) {
    Workshop shop = Workshop.with(Workshop.only(Setting.DRILL_WANDER, HALF_MM));
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.stepped("0"), alteration);
    assertThat(gap(model, 20).deviation()).isCloseTo(gap * SIGMA, within(1e-7));
    Workshop pin = Workshop.with(Workshop.only(Setting.STEP_PIN_SLIP, HALF_MM));
    deviates(pin.model(Way.CENTRING_GUIDE, pin.stepped("0"), Alteration.ROWS_TOGETHER), 0);
  }

  /** A hole that wandered takes all holes after the step with it. */
  @Test
  void theHoleThatIsPinnedIntoPassesItsErrorOn() {
    Workshop shop = Workshop.with(Workshop.only(Setting.DRILL_WANDER, HALF_MM));
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.stepped("0"), Alteration.NONE);
    assertThat(gap(model, 19).deviation()).isCloseTo(2 * SIGMA, within(1e-9));
    assertThat(gap(model, 20).deviation()).isCloseTo(2 * Math.sqrt(2) * SIGMA, within(1e-9));
  }

  @Test
  void wearWidensTheHolesThatAreBoredLater() {
    Settings worn =
        Workshop.only(Setting.DRILL_WANDER, "0")
            .with(Setting.WEAR_BIT, new SettingValue.OfNumber(0.8));
    Workshop shop = Workshop.with(worn);
    ErrorModel model = shop.model(Way.HARDBOARD_STRIP, shop.guided("0"), Alteration.NONE);
    // 0.8 mm in 100 holes: the clampings find 0, 1, 2 ... times 0.008 mm, half to either side.
    assertThat(gap(model, 0).reaches())
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
        .containsExactly(0.004, 0.008, 0.012);
    int second = model.positions().size() / 2;
    assertThat(gap(model, second).deviation()).isGreaterThan(gap(model, 0).deviation());
    deviates(shop.model(Way.HARDBOARD_STRIP, shop.guided("0"), Alteration.SLEEVED), 0);
  }

  /** A pin of 0.23 in in a hole that is 0.3 mm wider, the allowance: reaches 0.15 mm. */
  @Test
  void loosePinsSitAnywhereInTheirHoles() {
    Settings loose =
        Workshop.only(Setting.DRILL_WANDER, "0")
            .with(Setting.HOLE_ALLOWANCE, new SettingValue.OfNumber(0.3));
    Workshop shop = Workshop.with(loose);
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.guided("0"), Alteration.NONE);
    assertThat(gap(model, 0).reaches())
        .hasSize(4)
        .allSatisfy(reach -> assertThat(reach).isCloseTo(0.15, within(1e-3)));
  }

  @ParameterizedTest
  @EnumSource(
      value = Setting.class,
      names = {"SEAT_ERROR", "DRILL_WANDER"})
  void moreErrorMeansMoreGap(Setting setting) {
    double before = 0;
    for (String twice : List.of("0", "0.01", "0.02", "0.05")) {
      Settings settings = Workshop.defaults().with(setting, new SettingValue.OfLength(in(twice)));
      ErrorModel model = guided(settings, "0.005", Alteration.NONE);
      double odds = gap(model, 0).oddsBeyond(0.8);
      assertThat(odds).as("%s %s", setting.key(), twice).isGreaterThan(before);
      before = odds;
    }
  }

  @Test
  void aMirroredCaseRocksAsReadily() {
    Workshop shop = Workshop.with(Workshop.defaults());
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.stepped("0.01"), Alteration.NONE);
    ErrorModel mirrored =
        new ErrorModel(
            model.causes(),
            model.positions().stream()
                .map(
                    p ->
                        Position.of(
                            p.bay(),
                            p.level(),
                            Objects.requireNonNull(p.points().get(Point.RIGHT_FRONT)),
                            Objects.requireNonNull(p.points().get(Point.RIGHT_BACK)),
                            Objects.requireNonNull(p.points().get(Point.LEFT_FRONT)),
                            Objects.requireNonNull(p.points().get(Point.LEFT_BACK))))
                .toList());
    for (int p = 0; p < model.positions().size(); p++) {
      assertThat(gap(mirrored, p).oddsBeyond(0.8))
          .isCloseTo(gap(model, p).oddsBeyond(0.8), within(1e-12));
    }
  }

  @Test
  void refusesToPinIntoAHoleThatIsNotThere() {
    Workshop shop = Workshop.with(Workshop.defaults());
    Method.Guided good = shop.stepped("0");
    Method.Guided bad =
        new Method.Guided(
            Method.How.BY_HAND,
            good.guide(),
            good.bit(),
            good.clampings().stream()
                .map(
                    c ->
                        new Clamping(
                            c.bay(),
                            c.part(),
                            c.face(),
                            c.row(),
                            c.edge(),
                            c.across(),
                            c.along(),
                            c.bearing(),
                            c.reaches().reversed()))
                .toList());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> shop.model(Way.CENTRING_GUIDE, bad, Alteration.NONE))
        .withMessageContaining("pinned into hole 20");
  }
}
