package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A hand on the front edge of a shelf that nothing else stands on. */
@ExtendWith(CommaDecimals.class)
class PushedByHandTest {

  private static final Pattern UNDER_HAND = Pattern.compile("under the hand it carries [^:]*:");

  private static CaseDraft pushed(double newton) {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.PerLength(Quantity.of(0.05, QuantityUnit.LINE_LOAD)));
    draft.settings = draft.settings.with(Setting.HAND_PUSH, new SettingValue.OfNumber(newton));
    return draft;
  }

  /** So that glass holds what is stated. */
  private static CaseDraft narrow(CaseDraft draft) {
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("20"), in("60"), in("12"));
    return draft;
  }

  private static Strength strength(CaseDraft draft) {
    return check(SampleJobs.job(draft.order()));
  }

  private static Strength ofGlass(CaseDraft draft) {
    draft.bays = List.of(Shelving.bay(Shelving.shelves("glass", List.of()), SampleJobs.pins()));
    return check(
        JobDraft.changed(
            SampleJobs.job(draft.order()),
            d -> {
              d.materials = new ArrayList<>(d.materials);
              d.materials.add(Shelving.glass("1/4"));
            }));
  }

  private static Figure find(Strength strength, String last) {
    return strength.shelves().getFirst().figures().stream()
        .filter(f -> f.id().endsWith("/" + last))
        .findFirst()
        .orElseThrow();
  }

  /** By moments about the back row: the hand above one front support, half the weight on each. */
  @Test
  void itPressesOnTheSupportBelowIt() {
    Figure push = find(strength(pushed(100)), "hand-push");
    double back = input(push, "D") - input(push, "b");
    double between = back - input(push, "a");
    assertThat(push.value().value())
        .isCloseTo(
            100 * (back - input(push, "x")) / between
                + input(push, "G") / 2 * (back - input(push, "y")) / between,
            within(1e-6));
  }

  /** 1.6 over 0.9 of what the NDS allows for years, 0.9 over 0.7 by Eurocode 5: more than both. */
  @Test
  void aHardPushCrushesHoles() {
    assertThat(ofKind(strength(pushed(20)), "hand-presses")).isEmpty();
    Strength strength = strength(pushed(500));
    Finding finding = ofKind(strength, "hand-presses").getFirst();
    assertThat(finding.what()).contains("are allowed for minutes");
    double ec5 = find(strength, "support-allowed-ec5").value().value();
    Quantity brief = Quantity.of(0.9 / 0.7 * ec5, QuantityUnit.FORCE);
    assertThat(finding.what()).contains(brief.text(Unit.INCH) + " by Eurocode 5");
    assertThat(strength.shelves().getFirst().beyond())
        .anyMatch(what -> what.contains("presses more on a support") && what.contains("a hand"));
  }

  /** As told by each way to keep the shelf from tipping. */
  @Test
  void curesOfTippingAgreeOnWhatTheHandBrings() {
    List<String> told =
        ofKind(ofGlass(pushed(500)), "shelf-tips").getFirst().remedies().stream()
            .map(Remedy::what)
            .filter(what -> what.startsWith("bring the front") || what.startsWith("hold the"))
            .flatMap(what -> UNDER_HAND.matcher(what).results())
            .map(MatchResult::group)
            .toList();
    assertThat(told).hasSize(2);
    assertThat(told.getFirst()).isEqualTo(told.getLast());
  }

  /** F L / 4 and g L² / 8 over a section modulus of b t² / 6; 2.7 times 4 MPa are allowed. */
  @Test
  void glassThatTipsUnderItIsLookedIntoAsABeam() {
    Strength strength = ofGlass(narrow(pushed(500)));
    Figure stress = find(strength, "hand-stress");
    double span = input(stress, "L");
    double moment = 500 * span / 4 + input(stress, "g") * span * span / 8;
    double modulus = 2 * input(stress, "E I") / input(stress, "E") / input(stress, "t");
    assertThat(stress.value().value()).isCloseTo(moment / modulus, withPercentage(0.01));
    Finding finding = ofKind(strength, "hand-breaks").getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.what()).contains("allowed for a minute");
    assertThat(finding.remedies())
        .extracting(Remedy::what)
        .noneMatch(what -> what.startsWith("keep the load"));
    assertThat(ofKind(ofGlass(narrow(pushed(20))), "hand-breaks")).isEmpty();
  }

  /** A front row that stands at the edge keeps the shelf from tipping, and the plate is asked. */
  @Test
  void glassThatLiesStillIsBentAsAPlate() {
    CaseDraft draft = pushed(30);
    draft.settings = draft.settings.with(Setting.FRONT_ROW, new SettingValue.OfLength(in("1/2")));
    Figure stress = find(ofGlass(draft), "hand-stress");
    assertThat(stress.title()).contains("the load of a hand").doesNotContain("as a beam");
  }
}
