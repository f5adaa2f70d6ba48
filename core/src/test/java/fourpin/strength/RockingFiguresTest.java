package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.PlateShelving.check;
import static fourpin.strength.PlateShelving.find;
import static fourpin.strength.PlateShelving.input;
import static fourpin.strength.PlateShelving.load;
import static fourpin.strength.PlateShelving.set;
import static fourpin.strength.PlateShelving.shelves;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.PlateSolver;
import fourpin.strength.plate.Rigidity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Shelves that rock on a low support. */
@ExtendWith(CommaDecimals.class)
class RockingFiguresTest {

  private static final double GRAVITY = 9.80665;

  /** The formulas that are printed, worked out from the inputs that are printed. */
  @Test
  void theWorkingOfALowSupportGivesItsFigures() {
    CaseDraft draft = shelves("oak");
    set(draft, Setting.LOW_SUPPORT, new SettingValue.OfLength(in("1/8")));
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    Figure load = find(shelf, "low-support-load").orElseThrow();
    double newton = (input(load, "R") - input(load, "r₀")) / input(load, "s");
    assertThat(newton).isPositive();
    assertThat(load.value().value()).isCloseTo(newton / GRAVITY, within(1e-9));
    Figure closed = find(shelf, "low-support-closed").orElseThrow();
    double pushes = input(closed, "r₀") + input(closed, "s") * input(closed, "Q");
    assertThat(closed.value().value())
        .isCloseTo(input(closed, "d") * pushes / input(closed, "R"), within(1e-9));
  }

  /** A stiff shelf under a light load rocks on a low support; a limp one, or level pins, do not. */
  @Test
  void stiffShelvesRock() {
    CaseDraft draft = shelves("oak");
    load(draft, 0.005);
    set(draft, Setting.ROW_DEPTH, new SettingValue.OfLength(in("40")));
    set(draft, Setting.LOW_SUPPORT, new SettingValue.OfLength(in("3/16")));
    List<Finding> rocks = ofKind(check(draft), "shelf-rocks");
    assertThat(rocks).hasSize(1);
    assertThat(rocks.getFirst().severity()).isEqualTo(Severity.DOUBT);
    assertThat(rocks.getFirst().what())
        .startsWith("shelves 1-S1, 2-S1: with one support 0.188 in low, it rocks until ");
    assertThat(rocks.getFirst().figures()).hasSize(2);
    load(draft, 1);
    assertThat(ofKind(check(draft), "shelf-rocks")).isEmpty();
    load(draft, 0.005);
    set(draft, Setting.ROW_DEPTH, new SettingValue.OfLength(in("40")));
    set(draft, Setting.LOW_SUPPORT, new SettingValue.OfLength(in("0")));
    Strength level = check(draft);
    assertThat(ofKind(level, "shelf-rocks")).isEmpty();
    assertThat(find(level.shelves().getFirst(), "low-support-load")).isEmpty();
  }

  /**
   * On six supports a low one in the middle of the depth lets nothing rock: four corners carry the
   * shelf. Of low corners the worst closes at the load that is named, by the supports that touch of
   * themselves: a little less and a corner is free, a little more and all push.
   */
  @Test
  void onSixSupportsOnlyCornersRock() {
    CaseDraft draft = shelves("oak");
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("84"), in("20"));
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    Figure load = find(shelf, "low-support-load").orElseThrow();
    Figure bent = find(shelf, "plate-middle").orElseThrow();
    Plate plate = onSix(bent);
    double own = input(bent, "g") / input(bent, "D");
    double closing = load.value().value() * GRAVITY / (input(bent, "l") * input(bent, "D"));
    double low = input(load, "d");
    assertThat(corners(plate, own, 2, low)).allMatch(push -> push > 0);
    assertThat(List.of(0, 1, 4, 5))
        .allMatch(
            i -> corners(plate, own + 1.01 * closing, i, low).stream().allMatch(push -> push > 0))
        .anyMatch(
            i -> corners(plate, own + 0.99 * closing, i, low).stream().anyMatch(push -> push <= 0));
  }

  private static Plate onSix(Figure bent) {
    double depth = input(bent, "D");
    double front = input(bent, "a");
    double back = depth - input(bent, "b");
    List<Plate.Support> six = new ArrayList<>();
    for (double y : List.of(front, (front + back) / 2, back)) {
      six.add(new Plate.Support(input(bent, "c"), y));
      six.add(new Plate.Support(input(bent, "l") - input(bent, "c"), y));
    }
    Rigidity rigidity =
        new Rigidity(
            input(bent, "Dx"),
            input(bent, "Dy"),
            input(bent, "ν") * input(bent, "Dy"),
            input(bent, "Dxy"));
    return Plate.even(input(bent, "l"), depth, rigidity, Plate.Edges.FREE, six);
  }

  /** How hard the corners push under an even pressure with one support low. */
  private static List<Double> corners(Plate plate, double pressure, int support, double low) {
    List<Double> lows = new ArrayList<>(Collections.nCopies(6, 0.0));
    lows.set(support, low);
    List<Double> pushes =
        new PlateSolver(plate)
            .under(List.of(plate.evenly(pressure)), lows)
            .orElseThrow()
            .reactions();
    return List.of(pushes.get(0), pushes.get(1), pushes.get(4), pushes.get(5));
  }

  /** No load is named that the shelf could not bear. */
  @Test
  void aShelfThatRocksWhateverItMayBearIsSaidToDoSo() {
    CaseDraft draft = shelves("oak");
    load(draft, 0.005);
    set(draft, Setting.ROW_DEPTH, new SettingValue.OfLength(in("40")));
    set(draft, Setting.LOW_SUPPORT, new SettingValue.OfLength(in("3/16")));
    assertThat(find(check(draft).shelves().getFirst(), "low-support-most")).isEmpty();
    set(draft, Setting.SAG_LIMIT, new SettingValue.OfNumber(2000));
    Strength strength = check(draft);
    Figure most = find(strength.shelves().getFirst(), "low-support-most").orElseThrow();
    assertThat(most.value().value())
        .isCloseTo(input(most, "q₀") * input(most, "l") / GRAVITY, within(1e-9))
        .isLessThan(input(most, "Q₀"));
    assertThat(ofKind(strength, "shelf-rocks").getFirst().what())
        .contains("it rocks under any load within its limits, up to ");
  }
}
