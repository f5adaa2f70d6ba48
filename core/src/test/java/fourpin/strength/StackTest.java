package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Drawers;
import fourpin.job.FaceFrame;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.QuantityReader;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A case on another one. */
@ExtendWith(CommaDecimals.class)
class StackTest {

  private static CaseOrder base(String width) {
    CaseDraft draft = new CaseDraft();
    draft.name = "Base";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in("30"), in("18"));
    draft.bays = List.of(SampleJobs.bay(1));
    return draft.order();
  }

  private static CaseOrder upper(String width) {
    CaseDraft draft = new CaseDraft();
    draft.name = "Upper";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in("48"), in("12"));
    draft.bays = List.of(SampleJobs.bay(3));
    draft.kick = Optional.empty();
    draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    return draft.order().standingOn(Optional.of("Base"));
  }

  private static Strength stack(String upper, String base) {
    return stack(upper(upper), base(base));
  }

  private static CaseOrder framed(CaseOrder order) {
    CaseDraft draft = CaseDraft.of(order);
    draft.faceFrame =
        Optional.of(
            new FaceFrame(
                "oak",
                in("2"),
                Optional.empty(),
                in("2"),
                in("1/2"),
                in("0"),
                FaceFrame.Scribe.NONE));
    return draft.order().standingOn(order.standsOn());
  }

  private static Strength stack(CaseOrder upper, CaseOrder base) {
    Job job = SampleJobs.job(upper, base);
    return StrengthChecker.check(job, CaseworkBuilder.build(job).cases());
  }

  private static Figure find(Strength strength, String id) {
    return Shelving.find(strength, id).orElseThrow();
  }

  /** Both weights balance the push about the front foot of the lower case. */
  @Test
  void bothTipTogether() {
    Strength strength = stack("36", "36");
    Figure tips = find(strength, "upper/stack-tips-at-empty");
    double alone = find(strength, "base/tips-at-empty").value().value();
    assertThat(tips.value().value() * input(tips, "H"))
        .isCloseTo(
            input(tips, "F₁") * (input(tips, "y₁") - 0.005 * input(tips, "z₁"))
                + input(tips, "F₂") * (input(tips, "y₂") - 0.005 * input(tips, "z₂")),
            within(1e-6));
    assertThat(input(tips, "H")).isCloseTo(78 * 25.4, within(1e-6));
    assertThat(input(tips, "y₁")).isGreaterThan(6 * 25.4);
    assertThat(alone).isPositive();
  }

  private static CaseOrder withDrawers(CaseOrder order, String mass) {
    Drawers drawers =
        new Drawers(2, in("24"), in("16"), in("14"), QuantityReader.MASS.read(mass).orThrow());
    return order.holding(Optional.of(drawers));
  }

  /**
   * By hand: two drawers of 10 kg, 16 in long and 14 in out, turn both forward by 2 × 98.0665 N ×
   * (14 - 8) in, and by as much of their weight as the floor falls, 5 mm on each metre, at 24 in.
   */
  @Test
  void drawersOfTheLowerOneTurnBothForward() {
    Strength strength = stack(upper("36"), withDrawers(base("36"), "10 kg"));
    Figure open = find(strength, "upper/stack-tips-at-open");
    double drawers = 2 * 98.0665 * (6 * 25.4 + 0.005 * 24 * 25.4);
    assertThat(input(open, "M")).isCloseTo(drawers, within(1e-6));
    assertThat(input(open, "z₁")).isGreaterThan(30 * 25.4);
    double holds =
        input(open, "F₁") * (input(open, "y₁") - 0.005 * input(open, "z₁"))
            + input(open, "F₂") * (input(open, "y₂") - 0.005 * input(open, "z₂"));
    assertThat(open.value().value() * input(open, "H")).isCloseTo(holds - drawers, within(1e-6));
    Figure leant = find(strength, "upper/stack-tips-at-leant");
    assertThat(leant.value().value())
        .isCloseTo(
            Math.max(0, (holds - drawers - input(leant, "Q") * 14.12 * 25.4) / input(leant, "H")),
            within(1e-6));
  }

  @Test
  void heavyDrawersTipBoth() {
    Finding heavy =
        ofKind(stack(upper("36"), withDrawers(base("36"), "60 kg")), "stack-tips").getFirst();
    assertThat(heavy.what())
        .contains("Base")
        .endsWith(
            "when all drawers are out, full, the more when someone leans on what is open, which"
                + " cures count too");
    assertThat(heavy.remedies())
        .extracting(Remedy::what)
        .anyMatch(cure -> cure.startsWith("take slides that") && cure.contains("it stands then"))
        .anyMatch(cure -> cure.startsWith("weigh the bottom of Base down"))
        .noneMatch(cure -> cure.startsWith("hang two narrow doors"));
    assertThat(heavy.severity()).isEqualTo(Severity.DOUBT);
    assertThat(
            ofKind(stack(upper("36"), withDrawers(base("36"), "60 kg")), "case-tips")
                .getFirst()
                .what())
        .startsWith("alone, before anything stands on it, empty otherwise");
    assertThat(ofKind(stack("36", "36"), "stack-tips")).isEmpty();
  }

  /** By hand, about the foot of the lower one: what holds shut, less one drawer that is out. */
  @Test
  void oneDrawerThatTipsBothIsAnError() {
    Strength strength = stack(upper("36"), withDrawers(base("36"), "150 kg"));
    Figure one = find(strength, "upper/stack-tips-at-drawer");
    assertThat(input(one, "M"))
        .isCloseTo(150 * 9.80665 * (6 * 25.4 + 0.005 * 24 * 25.4), within(1e-6));
    Finding falls = ofKind(strength, "stack-tips").getFirst();
    assertThat(falls.severity()).isEqualTo(Severity.ERROR);
    assertThat(falls.what())
        .endsWith(
            "both fall forward when one full drawer is pulled out, the more when someone leans on"
                + " what is open, which cures count too");
    assertThat(falls.figures()).containsExactly(one);
    assertThat(ofKind(strength, "case-tips").getFirst().severity()).isEqualTo(Severity.DOUBT);
  }

  /**
   * By hand: a push of 222 N on top of both against what keeps both standing with all drawers out,
   * over the height of the anchors of the upper one above the floor.
   */
  @Test
  void anchorsOfTheUpperOneHoldBoth() {
    Strength strength = stack(upper("36"), withDrawers(base("36"), "60 kg"));
    Figure pull = find(strength, "upper/anchor-pull");
    Figure open = find(strength, "upper/stack-tips-at-open");
    double holds =
        input(open, "F₁") * (input(open, "y₁") - 0.005 * input(open, "z₁"))
            + input(open, "F₂") * (input(open, "y₂") - 0.005 * input(open, "z₂"))
            - input(open, "M");
    Figure height = find(strength, "upper/anchor-height");
    double anchors = input(height, "t") - input(height, "b");
    assertThat(input(height, "t")).isCloseTo((78 - 0.75) * 25.4, within(1.0));
    assertThat(holds).isNegative();
    assertThat(pull.value().value()).isCloseTo((222 * 78 * 25.4 - holds) / anchors, within(1e-6));
    assertThat(pull.title()).contains("which hold both cases");
    assertThat(find(strength, "base/anchor-pull").title())
        .contains("alone, before anything stands on it");
  }

  /** By hand: someone who leans on a drawer turns both by more than the push on top does. */
  @Test
  void anchorsOfTheUpperOneHoldWhoLeans() {
    CaseDraft lower = CaseDraft.of(withDrawers(base("36"), "10 kg"));
    lower.settings = lower.settings.with(Setting.DOOR_PULL, new SettingValue.OfNumber(2000));
    Strength strength = stack(upper("36"), lower.order());
    Figure leant = find(strength, "upper/stack-tips-at-leant");
    Figure pull = find(strength, "upper/anchor-pull");
    double open =
        input(leant, "F₁") * (input(leant, "y₁") - 0.005 * input(leant, "z₁"))
            + input(leant, "F₂") * (input(leant, "y₂") - 0.005 * input(leant, "z₂"))
            - input(leant, "M");
    assertThat(pull.value().value())
        .isCloseTo((2000 * input(leant, "e") - open) / input(pull, "h"), within(1e-6));
  }

  /**
   * By hand: what keeps both standing, over 56 in; what tips both is told once, of both, and
   * neither case alone is pushed.
   */
  @Test
  void aLightPushTipsBothTogether() {
    Figure pushed = find(stack("36", "36"), "upper/stack-tips-pushed");
    double holds =
        input(pushed, "F₁") * (input(pushed, "y₁") - 0.005 * input(pushed, "z₁"))
            + input(pushed, "F₂") * (input(pushed, "y₂") - 0.005 * input(pushed, "z₂"));
    assertThat(pushed.value().value() * 56 * 25.4).isCloseTo(holds, within(1e-6));
    double more = pushed.value().value() + 0.01;
    Strength tipped = stack(pushed(upper("36"), more), pushed(base("36"), more));
    assertThat(ofKind(tipped, "stack-tips"))
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.what())
                    .contains("empty and not fastened to the wall")
                    .endsWith("56 in above the floor, tips both forward"));
    assertThat(ofKind(tipped, "case-tips")).isEmpty();
  }

  private static CaseOrder pushed(CaseOrder order, double push) {
    return order.with(order.settings().with(Setting.LIGHT_PUSH, new SettingValue.OfNumber(push)));
  }

  /** Backs in line, the upper case moves as far forward over the sides as the frame is thick. */
  @Test
  void aFaceFrameBelowTakesDepthFromTheSides() {
    Strength plain = stack("36", "36");
    Strength framed = stack(upper("36"), framed(base("36")));
    double thickness = 0.75 * 25.4;
    assertThat(input(find(framed, "upper/stack-tips-at-empty"), "y₁"))
        .isCloseTo(input(find(plain, "upper/stack-tips-at-empty"), "y₁") - thickness, within(1e-6));
  }

  /** Screws along the back pull about the front of the sides, not of the frame. */
  @Test
  void aFaceFrameShortensTheArmOfTheScrews() {
    Figure pull = find(stack(framed(upper("36")), base("36")), "upper/stack-pull");
    double plain = input(find(stack("36", "36"), "upper/stack-pull"), "d");
    assertThat(input(pull, "d")).isCloseTo(plain - 0.75 * 25.4, within(1e-6));
  }

  /** The pull along the back balances the push about the upper one's front foot. */
  @Test
  void screwsHoldTheUpperOne() {
    Figure pull = find(stack("36", "36"), "upper/stack-pull");
    assertThat(pull.value().value() * input(pull, "d"))
        .isCloseTo(input(pull, "P") * input(pull, "H") - input(pull, "M"), within(1e-6));
    assertThat(ofKind(stack("36", "36"), "stack-loose")).hasSize(1);
  }

  /** Steps drive them 1 in from its back, 12 in deep; 3/4 in of a frame stand in front. */
  @Test
  void screwsPullWhereTheyAreDriven() {
    Figure pull = find(stack("36", "36"), "upper/stack-pull");
    assertThat(input(pull, "d")).isCloseTo(11 * 25.4, within(1e-6));
  }

  /** A bottom in dadoes at the height of a kick stands off the case below. */
  @Test
  void aBottomAboveTheTopBelowIsNotScrewedDown() {
    CaseDraft raised = CaseDraft.of(upper("36"));
    raised.kick = new CaseDraft().kick;
    raised.bottomJoint = new CaseDraft().bottomJoint;
    Strength strength = stack(raised.order().standingOn(Optional.of("Base")), base("36"));
    assertThat(ofKind(strength, "stack-loose")).isEmpty();
    assertThat(ofKind(strength, "stack-raised").getFirst().what())
        .contains("3 1/2 in above the top");
  }

  @Test
  void theLowerOneLeansWithWhatStandsOnIt() {
    Job alone = SampleJobs.job(base("36"));
    Strength free = StrengthChecker.check(alone, CaseworkBuilder.build(alone).cases());
    double before = input(find(free, "base/sway"), "B");
    assertThat(input(find(stack("36", "36"), "base/sway"), "B")).isGreaterThan(2 * before);
  }

  /** By hand: the whole upper case leans the legs of the lower one, as high as they are. */
  @Test
  void theLegsOfTheLowerOneCarryBoth() {
    Job alone = SampleJobs.job(base("36"));
    Strength free = StrengthChecker.check(alone, CaseworkBuilder.build(alone).cases());
    Strength strength = stack("36", "36");
    Figure legs = find(strength, "base/sway");
    double above = input(find(strength, "base/floor-load"), "F₂");
    double onTop = input(find(free, "base/floor-load"), "F₃");
    assertThat(onTop).isPositive();
    assertThat(input(legs, "D"))
        .isCloseTo(
            input(find(free, "base/sway"), "D") + (above - onTop) * input(legs, "l"), within(1e-3));
  }

  /** An upper case on a kick of its own stands on legs as well. */
  @Test
  void anUpperOneOnAKickHasLegs() {
    CaseDraft raised = CaseDraft.of(upper("36"));
    raised.kick = new CaseDraft().kick;
    raised.bottomJoint = new CaseDraft().bottomJoint;
    Strength strength = stack(raised.order().standingOn(Optional.of("Base")), base("36"));
    assertThat(find(strength, "upper/sway-legs-stiffness").value().value()).isPositive();
    assertThat(stack("36", "36").cases().getFirst().racking())
        .noneMatch(f -> f.id().equals("upper/sway-legs-stiffness"));
  }

  @Test
  void anUpperCaseThatIsWiderIsAnError() {
    Finding wide = ofKind(stack("48", "36"), "stack-overhangs").getFirst();
    assertThat(wide.severity()).isEqualTo(Severity.ERROR);
    assertThat(wide.place().caseName()).isEqualTo("Upper");
  }

  /** The floor carries both under the lower one, and nothing under the upper one. */
  @Test
  void theFloorCarriesBoth() {
    Strength strength = stack("36", "36");
    Figure floor = find(strength, "base/floor-load");
    assertThat(floor.value().value())
        .isCloseTo(
            (input(floor, "F") + input(floor, "F₂"))
                / (input(floor, "W") * input(floor, "D"))
                * 1000,
            within(1e-9));
    assertThat(input(floor, "F₂")).isPositive();
    assertThat(strength.cases().getFirst().standing())
        .noneMatch(f -> f.id().equals("upper/floor-load"));
  }

  @Test
  void casesOnTheFloorAreNotStacked() {
    Job job = SampleJobs.job(base("36"));
    Strength strength = StrengthChecker.check(job, CaseworkBuilder.build(job).cases());
    assertThat(strength.cases().getFirst().stacked()).isEmpty();
  }
}
