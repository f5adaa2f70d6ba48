package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.Doors;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Floors that fall away, and doors that swing out. */
@ExtendWith(CommaDecimals.class)
class TippingTest {

  private static Strength of(Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    change.accept(draft);
    return check(SampleJobs.job(draft.order()));
  }

  private static void doors(CaseDraft draft, int perBay) {
    draft.doors =
        Optional.of(
            new Doors(
                Doors.Kind.OVERLAY,
                perBay,
                in("3/4"),
                in("1/8"),
                List.of(),
                in("2"),
                in("2"),
                in("1/2")));
  }

  private static void set(CaseDraft draft, Setting setting, double value) {
    draft.settings = draft.settings.with(setting, new SettingValue.OfNumber(value));
  }

  private static Figure find(Strength strength, String last) {
    return strength.cases().getFirst().standing().stream()
        .filter(f -> f.id().equals("north/" + last))
        .findFirst()
        .orElseThrow();
  }

  private static double value(Strength strength, String last) {
    return find(strength, last).value().value();
  }

  private static double input(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(i -> i.symbol().equals(symbol))
        .mapToDouble(i -> i.value().value())
        .findFirst()
        .orElseThrow();
  }

  /** On a level floor the push is that of the case alone. */
  @Test
  void aLevelFloorTakesNothing() {
    Strength level = of(d -> set(d, Setting.FLOOR_SLOPE, 0));
    assertThat(value(level, "tips-at-slope"))
        .isCloseTo(value(level, "tips-at-empty"), within(1e-9));
    assertThat(value(of(d -> {}), "tips-at-slope")).isLessThan(value(level, "tips-at-slope"));
  }

  /** Moments about the front foot: the case behind it, doors and a child before it. */
  @Test
  void openDoorsPullForward() {
    Strength strength =
        of(
            d -> {
              doors(d, 2);
              set(d, Setting.FLOOR_SLOPE, 0);
              set(d, Setting.DOOR_PULL, 20);
            });
    Figure hung = find(strength, "tips-at-hung");
    double behind = input(hung, "F") * input(hung, "y");
    double before =
        input(hung, "N") * input(hung, "G") * (input(hung, "b") / 2 + input(hung, "f"))
            + 20 * (input(hung, "b") + input(hung, "f"));
    assertThat(input(hung, "N")).isEqualTo(4);
    assertThat(hung.value().value() * input(hung, "H"))
        .isCloseTo(Math.max(0, behind - before), within(1e-6));
  }

  @Test
  void narrowDoorsPullLess() {
    double wide = value(of(d -> doors(d, 1)), "tips-at-open");
    double narrow = value(of(d -> doors(d, 2)), "tips-at-open");
    assertThat(narrow).isGreaterThan(wide);
  }

  @Test
  void someoneOnADoorIsADoubt() {
    assertThat(ofKind(of(d -> doors(d, 1)), "case-tips").getFirst().severity())
        .isEqualTo(Severity.DOUBT);
    assertThat(ofKind(of(d -> {}), "case-tips")).isEmpty();
  }

  @Test
  void aThinTallCaseOnASteepFloorFallsByItself() {
    Strength strength =
        of(
            d -> {
              d.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("180"), in("5"));
              d.bays = List.of(SampleJobs.bay(0).with(SampleJobs.shelves(1)));
              set(d, Setting.FLOOR_SLOPE, 50);
            });
    assertThat(ofKind(strength, "case-tips").getFirst().severity()).isEqualTo(Severity.ERROR);
  }
}
