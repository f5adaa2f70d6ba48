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
import fourpin.job.Drawers;
import fourpin.job.QuantityReader;
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

/** What drawers that are out do to a case, and someone who leans on one. */
@ExtendWith(CommaDecimals.class)
class DrawerTippingTest {

  private static Figure find(Strength strength, String last) {
    return Shelving.find(strength, "north/" + last).orElseThrow();
  }

  private static double value(Strength strength, String last) {
    return find(strength, last).value().value();
  }

  private static Strength drawers(int count, String out, String mass, Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("36"), in("20"));
    draft.bays = List.of(SampleJobs.bay(1));
    draft.set(Setting.FLOOR_SLOPE, 0);
    change.accept(draft);
    Drawers drawers =
        new Drawers(count, in("30"), in("18"), in(out), QuantityReader.MASS.read(mass).orThrow());
    return check(SampleJobs.job(draft.order().holding(Optional.of(drawers))));
  }

  /** Moments about the front foot, worked by hand: a drawer of 18 in that is 14 in out. */
  @Test
  void drawersThatAreOutPullForward() {
    Strength strength = drawers(3, "14", "10 kg", d -> {});
    Figure all = find(strength, "tips-at-drawers");
    double behind = input(all, "F") * input(all, "y");
    double before = (14 - 9) * 25.4 + input(all, "f");
    assertThat(all.value().value() * input(all, "H"))
        .isCloseTo(behind - 3 * 98.0665 * before, within(1e-6));
    Figure one = find(strength, "tips-at-drawer");
    assertThat(one.value().value() * input(one, "H"))
        .isCloseTo(behind - 98.0665 * before, within(1e-6));
    Figure leant = find(strength, "tips-at-leant");
    double lean = input(leant, "Q") * (14 * 25.4 + input(leant, "f"));
    assertThat(leant.value().value())
        .isCloseTo(Math.max(0, one.value().value() - lean / input(one, "H")), within(1e-6));
  }

  /** A drawer whose middle stays behind the foot holds the case down. */
  @Test
  void aDrawerThatHardlyComesOutHolds() {
    double out = value(drawers(1, "14", "10 kg", d -> {}), "tips-at-drawer");
    double little = value(drawers(1, "2", "10 kg", d -> {}), "tips-at-drawer");
    assertThat(little).isGreaterThan(value(drawers(1, "2", "1 kg", d -> {}), "tips-at-drawer"));
    assertThat(out).isLessThan(little);
  }

  @Test
  void drawersCountWithAllDoorsOpen() {
    double shut = value(drawers(1, "14", "10 kg", d -> {}), "tips-at-drawer");
    double open = value(drawers(1, "14", "10 kg", d -> d.overlayDoors(1)), "tips-at-drawer");
    assertThat(open).isLessThan(shut);
  }

  /** One drawer is pulled out every day; all of them at once, or leant on, seldom. */
  @ParameterizedTest
  @CsvSource({
    "3, 18, 40 kg, 0, ERROR, 'one full drawer is pulled out, the more when all are, which cures'",
    "4, 14, 20 kg, 0, DOUBT, all its drawers are pulled out full",
    "4, 14, 20 kg, 400, DOUBT, 'pulled out full, the more when someone leans on a drawer that is'",
    "1, 14, 4 kg, 400, DOUBT, someone leans on a drawer that is out"
  })
  void aDrawerThatTipsItIsAnError(
      int count, String out, String mass, double leans, Severity severity, String when) {
    Finding finding =
        ofKind(drawers(count, out, mass, d -> d.set(Setting.DOOR_PULL, leans)), "case-tips")
            .getFirst();
    assertThat(finding.severity()).isEqualTo(severity);
    assertThat(finding.what()).contains(when);
  }

  @Test
  void heavyDrawersPullOnTheAnchors() {
    Strength heavy = drawers(3, "18", "40 kg", d -> {});
    assertThat(value(heavy, "anchor-pull"))
        .isGreaterThan(value(drawers(3, "18", "1 kg", d -> {}), "anchor-pull"));
    assertThat(ofKind(drawers(3, "2", "1 kg", d -> d.set(Setting.DOOR_PULL, 0)), "case-tips"))
        .isEmpty();
  }

  /** Someone who leans on a drawer that is out, by hand from the figure that says what is left. */
  @Test
  void anchorsHoldWhoLeansOnADrawer() {
    Strength strength = drawers(1, "18", "10 kg", d -> d.set(Setting.DOOR_PULL, 2000));
    Figure leant = find(strength, "tips-at-leant");
    Figure pull = find(strength, "anchor-pull");
    double holds =
        input(leant, "F") * (input(leant, "y") - input(leant, "n") * input(leant, "z") / 1000);
    double falls = input(leant, "f") + input(leant, "n") * input(leant, "h") / 1000;
    double lacks =
        2000 * (input(leant, "e") + falls)
            - holds
            - input(leant, "W") * (input(leant, "l") / 2 - input(leant, "e") - falls);
    assertThat(pull.value().value()).isCloseTo(lacks / input(pull, "h"), within(1e-6));
  }

  /** Shut, they weigh with what the case holds. */
  @Test
  void shutDrawersStandOnTheFloorToo() {
    assertThat(value(drawers(3, "14", "40 kg", d -> {}), "floor-load"))
        .isGreaterThan(value(drawers(3, "14", "1 kg", d -> {}), "floor-load"));
  }
}
