package fourpin.strength;

import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shelves that hold their load spread evenly, and not in a row along the front edge. */
@ExtendWith(CommaDecimals.class)
class FrontRowTest {

  private static final String LIGHT = "discs in cases";

  private static final double LEAST_LIMIT = 100;

  private static Optional<Figure> find(ShelfAnswer shelf, String end) {
    return shelf.figures().stream().filter(f -> f.id().endsWith("/" + end)).findFirst();
  }

  private static double value(ShelfAnswer shelf, String end) {
    return find(shelf, end).orElseThrow().value().value();
  }

  private static double input(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(i -> i.symbol().equals(symbol))
        .mapToDouble(i -> i.value().value())
        .findFirst()
        .orElseThrow();
  }

  /** Under things so light that codes and usual limits do not matter. */
  private static CaseDraft light() {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.Holds(LIGHT));
    draft.settings =
        draft.settings.with(Setting.SAG_LIMIT_YEARS, new SettingValue.OfNumber(LEAST_LIMIT));
    return draft;
  }

  private static Strength with(Setting setting, double number) {
    CaseDraft draft = light();
    draft.settings = draft.settings.with(setting, new SettingValue.OfNumber(number));
    return check(SampleJobs.job(draft.order()));
  }

  private static Strength plain() {
    return check(SampleJobs.job(light().order()));
  }

  private static ShelfAnswer first(Strength strength) {
    return strength.shelves().getFirst();
  }

  /**
   * By statics: each front support carries half of what the row, whose middle lies half its depth
   * behind the front edge, and the shelf's own weight bring to the front row.
   */
  @Test
  void theRowPressesOnTheFrontSupports() {
    ShelfAnswer shelf = first(plain());
    Figure push = find(shelf, "plate-front-row-push").orElseThrow();
    Figure front = find(shelf, "load-front").orElseThrow();
    double between = input(front, "D") - input(front, "a") - input(front, "b");
    double back = input(front, "D") - input(front, "b");
    double row = (back - input(push, "d") / 2) / between;
    double own = (back - input(front, "D") / 2) / between;
    double length = input(push, "l");
    assertThat(push.value().value())
        .isCloseTo(
            (input(push, "q") * row + input(push, "g") * own) * length / 2, withPercentage(2));
  }

  /** A rating between what the even load and the row put on a support is a doubt, and no more. */
  @Test
  void supportsThatBearTheEvenLoadAloneAreADoubt() {
    ShelfAnswer shelf = first(plain());
    double even = value(shelf, "support-push");
    double row = value(shelf, "plate-front-row-push");
    assertThat(row).isGreaterThan(1.1 * even);
    Strength between = with(Setting.SUPPORT_RATING, (even + row) / 2);
    assertThat(ofKind(between, "support-rating")).isEmpty();
    Finding finding = ofKind(between, "row-crushes").getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.DOUBT);
    assertThat(finding.what())
        .contains(": with its load in a row 5.31 in deep along the front edge a support carries ")
        .contains(" by the rating of its maker");
    assertThat(finding.figures())
        .extracting(Figure::value)
        .extracting(Quantity::value)
        .containsExactly(row, even);
    assertThat(first(between).beyond())
        .containsExactly(
            "presses more on a support than is allowed with its load in a row 5.31 in deep along the"
                + " front edge");
  }

  /** What is wrong under the even load is told once. */
  @Test
  void whatTheEvenLoadBreaksIsToldAsSuch() {
    Strength low = with(Setting.SUPPORT_RATING, 0.9 * value(first(plain()), "support-push"));
    assertThat(ofKind(low, "support-rating")).isNotEmpty();
    assertThat(ofKind(low, "row-crushes")).isEmpty();
    Strength limp = with(Setting.SAG_LIMIT, 1.1 * spanOver(first(plain()), "sag-now"));
    assertThat(ofKind(limp, "sag")).isNotEmpty();
    assertThat(ofKind(limp, "row-sags")).isEmpty();
  }

  private static double spanOver(ShelfAnswer shelf, String sag) {
    return shelf.span().value().value() / value(shelf, sag);
  }

  /** Between the sags of both, in spans, the row alone sags too far. */
  @Test
  void shelvesThatSagTooFarUnderTheRowAloneAreADoubt() {
    ShelfAnswer shelf = first(plain());
    double even = spanOver(shelf, "sag-now");
    double row = spanOver(shelf, "plate-front-row");
    assertThat(row).isLessThan(even);
    Strength between = with(Setting.SAG_LIMIT, (even + row) / 2);
    assertThat(ofKind(between, "sag")).isEmpty();
    List<Finding> sags = ofKind(between, "row-sags");
    assertThat(sags).isNotEmpty().allMatch(f -> f.severity() == Severity.DOUBT);
    assertThat(sags.getFirst().what()).contains(" along the front edge it sags by ");
    assertThat(first(between).beyond()).hasSize(1);
  }

  /** Things of no stated depth stand in no row, whatever they weigh. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 1, 3})
  void loadsOfNoDepthStandInNoRow(double newtonPerMm) {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.PerLength(Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD)));
    Strength strength = check(SampleJobs.job(draft.order()));
    assertThat(ofKind(strength, "row-sags")).isEmpty();
    assertThat(ofKind(strength, "row-crushes")).isEmpty();
    assertThat(first(strength).beyond()).noneMatch(beyond -> beyond.contains("in a row"));
  }

  /** Which is why nothing is said of a load on one half that the even load does not say. */
  @Test
  void oneHalfAlonePushesAndBendsLess() {
    ShelfAnswer shelf = first(plain());
    assertThat(value(shelf, "plate-half")).isLessThan(value(shelf, "sag-now"));
    assertThat(value(shelf, "plate-half-push")).isLessThan(value(shelf, "support-push"));
  }
}
