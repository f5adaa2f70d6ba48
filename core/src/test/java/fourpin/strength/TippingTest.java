package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.FaceFrame;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Floors that fall away, and doors that swing out. */
@ExtendWith(CommaDecimals.class)
class TippingTest {

  private static Strength of(Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    change.accept(draft);
    return check(SampleJobs.job(draft.order()));
  }

  private static Figure find(Strength strength, String last) {
    return Shelving.find(strength, "north/" + last).orElseThrow();
  }

  private static double value(Strength strength, String last) {
    return find(strength, last).value().value();
  }

  private static final double POUND_FORCE = 4.4482216;

  /**
   * By hand: the weight of an empty case keeps it standing by its lever behind the foot; a push of
   * 10 lbf at 56 in (ASTM F2057-23, 9.2.2, from memory) turns it by 10 lbf × 56 in, or × its height
   * where that is less.
   */
  @ParameterizedTest
  @CsvSource({"84, 56", "56, 56", "40, 40"})
  void aLightPushIsTakenNoHigherThanAHandReaches(String height, double at) {
    Figure pushed = find(of(d -> tall(d, height)), "tips-pushed");
    double holds =
        input(pushed, "F") * (input(pushed, "y") - input(pushed, "n") * input(pushed, "z") / 1000);
    assertThat(pushed.value().value() * at * 25.4).isCloseTo(holds, within(1e-6));
  }

  private static void tall(CaseDraft draft, String height) {
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in(height), in("12"));
  }

  /** On either side of the push at which it falls. */
  @ParameterizedTest
  @CsvSource({"0.01, 1", "-0.01, 0"})
  void aCaseThatALightPushTipsIsTold(double more, int times) {
    double tips = value(of(d -> tall(d, "84")), "tips-pushed");
    Strength strength =
        of(
            d -> {
              tall(d, "84");
              d.set(Setting.LIGHT_PUSH, tips + more);
            });
    assertThat(ofKind(strength, "case-tips"))
        .hasSize(times)
        .allSatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.DOUBT);
              assertThat(finding.what())
                  .startsWith("empty and not fastened")
                  .contains("a push of")
                  .endsWith("56 in above the floor, tips it forward");
              assertThat(finding.remedies().getFirst().what()).startsWith("fasten it to the wall");
            });
  }

  @Test
  void theDefaultPushIsTenPoundsForce() {
    assertThat(SampleJobs.job(new CaseDraft().order()).cases().getFirst().settings())
        .satisfies(
            settings ->
                assertThat(settings.number(Setting.LIGHT_PUSH))
                    .isCloseTo(10 * POUND_FORCE, within(0.5)));
  }

  /** Moments by hand: every weight comes forward by the slope times its height. */
  @ParameterizedTest
  @CsvSource({"empty", "top-heavy", "loaded"})
  void theFloorFallsUnderEveryLoad(String when) {
    Figure tips = find(of(d -> d.set(Setting.FLOOR_SLOPE, 20)), "tips-at-" + when);
    double behind = input(tips, "y") - 0.020 * input(tips, "z");
    assertThat(tips.value().value() * input(tips, "H"))
        .isCloseTo(input(tips, "F") * behind, within(1e-6));
    assertThat(tips.title()).endsWith("on a floor that falls forward by 20 mm on each metre");
    Figure level = find(of(d -> d.set(Setting.FLOOR_SLOPE, 0)), "tips-at-" + when);
    assertThat(level.value().value() * input(level, "H"))
        .isCloseTo(input(level, "F") * input(level, "y"), within(1e-6));
    assertThat(level.title()).endsWith("on a level floor");
  }

  /** Empty it stands 4.7 mm from falling, with its upper shelves loaded it falls. */
  @Test
  void onASlopeTheUpperShelvesAloneTipIt() {
    Strength strength =
        of(
            d -> {
              d.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("32"), in("72"), in("4"));
              d.bays = List.of(SampleJobs.bay(4));
              d.set(Setting.FLOOR_SLOPE, 35);
            });
    assertThat(value(strength, "tips-at-empty")).isPositive();
    assertThat(value(strength, "tips-at-top-heavy")).isZero();
    Finding finding = ofKind(strength, "case-tips").getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.what())
        .isEqualTo(
            "loaded above half its height alone, on a floor that falls forward by 35 mm on each"
                + " metre, it falls forward by itself");
  }

  /** A push of 222 N against what holds it least on the slope. */
  @Test
  void anchorsPullForTheSlope() {
    Strength level = of(d -> d.set(Setting.FLOOR_SLOPE, 0));
    Strength falls = of(d -> d.set(Setting.FLOOR_SLOPE, 20));
    Figure tips = find(falls, "tips-at-empty");
    Figure pull = find(falls, "anchor-pull");
    assertThat(pull.value().value() - value(level, "anchor-pull"))
        .isCloseTo(input(tips, "F") * 0.020 * input(tips, "z") / input(pull, "h"), within(1e-6));
  }

  /**
   * By hand: who hangs on the open door of a low case turns it by more than the push that is asked
   * for does: the anchors hold the force by which it lacks, at their height.
   */
  @ParameterizedTest
  @CsvSource({"24, 600", "84, 2000"})
  void anchorsHoldWhoHangsOnADoor(String height, double hangs) {
    Strength strength =
        of(
            d -> {
              tall(d, height);
              d.overlayDoors(1);
              d.set(Setting.DOOR_PULL, hangs);
            });
    Figure hung = find(strength, "tips-at-hung");
    Figure pull = find(strength, "anchor-pull");
    double holds =
        input(hung, "F") * (input(hung, "y") - input(hung, "n") * input(hung, "z") / 1000)
            - input(hung, "G") * (input(hung, "m") + input(hung, "n") * input(hung, "w") / 1000);
    double lacks =
        hangs * (input(hung, "b") + input(hung, "a") + input(hung, "n") * input(hung, "c") / 1000)
            - holds;
    assertThat(lacks).isGreaterThan(input(pull, "P") * input(pull, "H") - holds);
    assertThat(pull.value().value()).isCloseTo(lacks / input(pull, "h"), within(1e-6));
    assertThat(pull.inputs()).anySatisfy(i -> assertThat(i.meaning()).contains("hanging on one"));
  }

  /** By hand: a light push that is harder than the push that is asked for. */
  @Test
  void anchorsHoldTheLightPush() {
    Strength strength =
        of(
            d -> {
              tall(d, "84");
              d.set(Setting.TIP_PUSH, 10);
              d.set(Setting.LIGHT_PUSH, 100);
            });
    Figure tips = find(strength, "tips-pushed");
    Figure pull = find(strength, "anchor-pull");
    double lacks = (100 - tips.value().value()) * 56 * 25.4;
    assertThat(lacks).isPositive();
    assertThat(pull.value().value()).isCloseTo(lacks / input(pull, "h"), within(1e-6));
  }

  /** Doors and who hangs on them come forward as well, by the slope times their heights. */
  @Test
  void theFloorFallsUnderOpenDoors() {
    Strength strength =
        of(
            d -> {
              d.overlayDoors(2);
              d.set(Setting.FLOOR_SLOPE, 20);
              d.set(Setting.DOOR_PULL, 20);
            });
    Figure hung = find(strength, "tips-at-hung");
    double behind = input(hung, "F") * (input(hung, "y") - 0.02 * input(hung, "z"));
    double doors = input(hung, "G") * (input(hung, "m") + 0.02 * input(hung, "w"));
    double pull = 20 * (input(hung, "b") + input(hung, "a") + 0.02 * input(hung, "c"));
    assertThat(input(hung, "c")).isGreaterThan(input(hung, "w"));
    assertThat(hung.value().value() * input(hung, "H"))
        .isCloseTo(Math.max(0, behind - doors - pull), within(1e-6));
  }

  /** Moments about the front foot: the case behind it, doors and a child before it. */
  @Test
  void openDoorsPullForward() {
    Strength strength =
        of(
            d -> {
              d.overlayDoors(2);
              d.set(Setting.FLOOR_SLOPE, 0);
              d.set(Setting.DOOR_PULL, 20);
            });
    Figure hung = find(strength, "tips-at-hung");
    double behind = input(hung, "F") * input(hung, "y");
    double before =
        input(hung, "G") * input(hung, "m") + 20 * (input(hung, "b") + input(hung, "a"));
    assertThat(hung.value().value() * input(hung, "H"))
        .isCloseTo(Math.max(0, behind - before), within(1e-6));
  }

  /**
   * By hand: overlay doors over a case 72 in wide with two bays, 1/8 in from each other in the
   * middle of the partition, 3/4 in thick, from the bottom to the top: each (72 - 1/8) / 2 wide.
   * Their middles stand half their width before the case, which a frame of 3/4 in brings forward.
   */
  @ParameterizedTest
  @CsvSource({"false, 0", "true, 0.75"})
  void doorsAreAsWideAsTheyHang(boolean framed, double frame) {
    Strength strength =
        of(
            d -> {
              d.overlayDoors(1);
              d.faceFrame = framed ? Optional.of(frame()) : Optional.empty();
            });
    double width = (72 - 0.125) / 2 * 25.4;
    Figure hung = find(strength, "tips-at-hung");
    assertThat(input(hung, "b")).isCloseTo(width, within(0.01));
    assertThat(input(hung, "a")).isCloseTo(frame * 25.4, within(0.01));
    assertThat(input(hung, "m")).isCloseTo(width / 2 + frame * 25.4, within(0.01));
    Figure one = find(strength, "door-weight");
    assertThat(input(one, "b")).isCloseTo(width, within(0.01));
    assertThat(input(hung, "G")).isCloseTo(2 * one.value().value(), within(1e-6));
  }

  private static FaceFrame frame() {
    return new FaceFrame(
        "oak", in("2"), Optional.empty(), in("2"), in("1/2"), in("0"), FaceFrame.Scribe.NONE);
  }

  @Test
  void narrowDoorsPullLess() {
    double wide = value(of(d -> d.overlayDoors(1)), "tips-at-open");
    double narrow = value(of(d -> d.overlayDoors(2)), "tips-at-open");
    assertThat(narrow).isGreaterThan(wide);
  }

  @Test
  void someoneOnADoorIsADoubt() {
    Finding hangs = ofKind(of(d -> d.overlayDoors(2)), "case-tips").getFirst();
    assertThat(hangs.severity()).isEqualTo(Severity.DOUBT);
    assertThat(hangs.what()).contains("hang on one of them");
    assertThat(ofKind(of(d -> {}), "case-tips")).isEmpty();
  }

  /** Doors are opened every day. */
  @Test
  void doorsThatTipItAreAnError() {
    Finding opens =
        ofKind(
                of(
                    d -> {
                      d.overlayDoors(1);
                      d.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("60"), in("8"));
                    }),
                "case-tips")
            .getFirst();
    assertThat(opens.severity()).isEqualTo(Severity.ERROR);
    assertThat(opens.what())
        .endsWith(
            "it falls forward when all its doors are open, the more when 45 lbf hang on one of"
                + " them, which cures count too");
    assertThat(opens.figures()).extracting(Figure::id).containsExactly("north/tips-at-open");
  }

  @Test
  void aThinTallCaseOnASteepFloorFallsByItself() {
    Strength strength =
        of(
            d -> {
              d.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("180"), in("5"));
              d.bays = List.of(SampleJobs.bay(0).with(SampleJobs.shelves(1)));
              d.set(Setting.FLOOR_SLOPE, 50);
            });
    assertThat(ofKind(strength, "case-tips").getFirst().severity()).isEqualTo(Severity.ERROR);
  }
}
