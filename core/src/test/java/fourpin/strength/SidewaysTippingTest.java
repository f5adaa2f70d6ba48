package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Joint;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What tips cases, and stacks, about the foot of a side. */
@ExtendWith(CommaDecimals.class)
class SidewaysTippingTest {

  private static final double MM = 25.4;

  /** Deep enough that no push tips it forward. */
  private static Strength of(String width, Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in("84"), in("24"));
    draft.bays = List.of(SampleJobs.bay(4));
    change.accept(draft);
    return check(SampleJobs.job(draft.order()));
  }

  private static Figure figure(Strength strength, String last) {
    return Shelving.find(strength, "north/tips-sideways-" + last).orElseThrow();
  }

  private static double held(Figure tips) {
    return input(tips, "F") * (input(tips, "x") - input(tips, "n") * input(tips, "z") / 1000);
  }

  /** By hand: a case that is alike on both sides hangs in the middle of its width. */
  @ParameterizedTest
  @CsvSource({"10, empty", "10, loaded", "36, empty"})
  void theMiddleHangsHalfTheWidthFromTheFoot(String width, String when) {
    Figure tips = figure(of(width, d -> d.set(Setting.FLOOR_SLOPE_SIDEWAYS, 20)), when);
    assertThat(input(tips, "x")).isCloseTo(Double.parseDouble(width) * MM / 2, within(1e-6));
    assertThat(tips.value().value() * 84 * MM).isCloseTo(held(tips), within(1e-6));
    assertThat(tips.title())
        .contains("to either side")
        .contains("nothing beside it")
        .endsWith("on a floor that falls to that side by 20 mm on each metre");
  }

  /** By hand: half of what stands in it, its middle a quarter of the clear width from a side. */
  @Test
  void aLoadOnOneSideIsHalfOfIt() {
    Strength strength = of("36", d -> d.set(Setting.FLOOR_SLOPE_SIDEWAYS, 0));
    Figure empty = figure(strength, "empty");
    Figure all = figure(strength, "loaded");
    Figure one = figure(strength, "one-side");
    double things = (input(all, "F") - input(empty, "F")) / 2;
    double thick = 0.72 * MM;
    double from = thick + (18 * MM - thick) / 2;
    assertThat(input(one, "F")).isCloseTo(input(empty, "F") + things, within(1e-6));
    assertThat(held(one)).isCloseTo(held(empty) + things * from, within(0.001 * held(one)));
  }

  /** A wide bay, and a narrow one on the right: empty, it is heavier on the right. */
  @Test
  void theSideThatHoldsLessIsNamed() {
    Bay narrow = SampleJobs.bay(4);
    Bay right =
        new Bay(
            Optional.of(in("10")),
            narrow.fixedShelves(),
            narrow.shelves(),
            narrow.supports(),
            Optional.empty());
    Figure empty = figure(of("48", d -> d.bays = List.of(SampleJobs.bay(1), right)), "empty");
    assertThat(empty.title()).contains("to the right");
    assertThat(input(empty, "x")).isLessThan(24 * MM);
  }

  /** On a steep floor things that stand low over the side below hold, and those above turn it. */
  @Test
  void thingsTurnItWhereTheyStandOutOverItsFoot() {
    Strength steep = of("12", d -> d.set(Setting.FLOOR_SLOPE_SIDEWAYS, 50));
    Figure turning = figure(steep, "turning");
    assertThat(held(turning)).isLessThan(held(figure(steep, "empty")));
    assertThat(held(turning)).isLessThan(held(figure(steep, "one-side")));
    assertThat(figure(steep, "pushed").title()).contains("only where things turn it");
    Strength level = of("12", d -> d.set(Setting.FLOOR_SLOPE_SIDEWAYS, 0));
    assertThat(Shelving.find(level, "north/tips-sideways-turning")).isEmpty();
  }

  /** On either side of the push at which it falls. */
  @ParameterizedTest
  @CsvSource({"0.01, 1", "-0.01, 0"})
  void aCaseThatALightPushTipsSidewaysIsTold(double more, int times) {
    Consumer<CaseDraft> bare =
        d ->
            d.settings = d.settings.with(Setting.TOP_REACH, new SettingValue.OfLength(Length.ZERO));
    Figure pushed = figure(of("8", bare), "pushed");
    assertThat(pushed.value().value() * 56 * MM).isCloseTo(held(pushed), within(1e-6));
    Strength strength =
        of("8", bare.andThen(d -> d.set(Setting.LIGHT_PUSH, pushed.value().value() + more)));
    assertThat(ofKind(strength, "case-tips"))
        .hasSize(times)
        .allSatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.DOUBT);
              assertThat(finding.what())
                  .startsWith("empty and not fastened, nothing beside it")
                  .endsWith("56 in above the floor, tips it sideways, to either side");
            });
  }

  @Test
  void aNarrowCaseOnASteepFloorFallsByItself() {
    Finding falls =
        ofKind(of("4", d -> d.set(Setting.FLOOR_SLOPE_SIDEWAYS, 50)), "case-tips").getFirst();
    assertThat(falls.severity()).isEqualTo(Severity.ERROR);
    assertThat(falls.what()).endsWith("it falls sideways by itself, to either side");
  }

  /** Each cure that says so is so: a level floor, and a weight in the middle. */
  @Test
  void curesAreThoseOfTheSide() {
    Strength narrow = of("9", d -> d.set(Setting.FLOOR_SLOPE_SIDEWAYS, 30));
    List<String> cures =
        ofKind(narrow, "case-tips").getFirst().remedies().stream().map(Remedy::what).toList();
    assertThat(cures.getFirst()).contains("what stands beside it");
    assertThat(cures)
        .anyMatch(cure -> cure.startsWith("weigh its bottom down") && cure.contains("stands then"))
        .anyMatch(cure -> cure.contains("under its lower side, and set floor-slope-sideways to 0"))
        .noneMatch(cure -> cure.contains("slides") || cure.contains("doors"));
  }

  private static CaseOrder stacked(String name, String width, String height, Optional<String> on) {
    CaseDraft draft = new CaseDraft();
    draft.name = name;
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in(height), in("24"));
    draft.bays = List.of(SampleJobs.bay(2));
    draft.kick = Optional.empty();
    draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    return draft.order().standingOn(on);
  }

  /** By hand: both hang in the middle of the lower one, the upper one by so much higher. */
  @Test
  void bothOfAStackTipTogether() {
    Strength strength =
        check(
            SampleJobs.job(
                stacked("Base", "10", "30", Optional.empty()),
                stacked("Upper", "8", "60", Optional.of("Base"))));
    Figure empty = Shelving.find(strength, "upper/stack-tips-sideways-empty").orElseThrow();
    Figure base = Shelving.find(strength, "base/tips-sideways-empty").orElseThrow();
    Figure upper = Shelving.find(strength, "upper/tips-sideways-empty").orElseThrow();
    double weight = input(base, "F") + input(upper, "F");
    double up =
        (input(base, "F") * input(base, "z") + input(upper, "F") * (input(upper, "z") + 30 * MM))
            / weight;
    assertThat(empty.value().value() * 90 * MM)
        .isCloseTo(weight * (5 * MM - 0.005 * up), within(1e-3));
    Finding tips = ofKind(strength, "stack-tips").getFirst();
    assertThat(tips.what())
        .startsWith("screwed to Base, empty and not fastened, nothing beside it")
        .endsWith("tips both sideways, to either side");
    assertThat(tips.remedies())
        .extracting(Remedy::what)
        .anyMatch(cure -> cure.startsWith("weigh the bottom of Base down"));
  }

  /**
   * By hand: a door that hangs on the side it tips over brings its weight from its middle there.
   */
  @Test
  void anOpenDoorTurnsItTowardsItsHinges() {
    Strength level =
        of(
            "12",
            d -> {
              d.set(Setting.FLOOR_SLOPE_SIDEWAYS, 0);
              d.overlayDoors(1);
            });
    Figure turning = figure(level, "turning");
    Figure shut = figure(level, "empty");
    assertThat(turning.title()).contains("to the left", "doors open where they do");
    assertThat(input(turning, "F")).isCloseTo(input(shut, "F"), within(1e-6));
    double door = (input(shut, "x") - input(turning, "x")) * input(shut, "F") / (6 * MM);
    double density = 550;
    double volume = 12 * 80 * 0.75 * MM * MM * MM;
    assertThat(door).isBetween(0.7 * volume * density * 9.81e-9, 1.3 * volume * density * 9.81e-9);
  }
}
