package fourpin.boring.tolerance;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.tolerance.Miss.Point;
import fourpin.boring.way.Method;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Way;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the model says of gap and slope, against cases that are bored and measured one by one. */
class CaseByHandTest {

  private static final int CASES = 1_000;
  private static final long SEED = 5;
  private static final double ERRORS_ALLOWED = 4;

  /**
   * Cases bored in one way, and the place that is measured.
   *
   * @param level number in bay 2, whose left upright is the partition that both bays share
   */
  record Example(String name, Workshop shop, Way way, Method.Guided method, int level) {
    @Override
    public String toString() {
      return name;
    }

    double workedOut(Miss miss) {
      ErrorModel model = shop.model(way, method, Alteration.NONE);
      return model.positions().stream()
          .filter(p -> p.bay() == 2 && p.level() == level)
          .map(p -> NetError.of(model, p, miss).spread().deviation())
          .findFirst()
          .orElseThrow();
    }

    private double at(Map<Hole, Double> errors, Point point) {
      return Objects.requireNonNull(errors.get(new Hole(2, level, point)));
    }

    Compared compared() {
      SplittableRandom random = new SplittableRandom(SEED);
      double gap = 0;
      double slope = 0;
      for (int i = 0; i < CASES; i++) {
        Map<Hole, Double> errors = CaseByHand.bored(shop, way, method, random);
        gap += square(errors, Miss.GAP);
        slope += square(errors, Miss.SLOPE);
      }
      return new Compared(
          this,
          new Deviation(workedOut(Miss.GAP), Math.sqrt(gap / CASES)),
          new Deviation(workedOut(Miss.SLOPE), Math.sqrt(slope / CASES)));
    }

    private double square(Map<Hole, Double> errors, Miss miss) {
      double value =
          miss.of(
              at(errors, Point.LEFT_FRONT),
              at(errors, Point.LEFT_BACK),
              at(errors, Point.RIGHT_FRONT),
              at(errors, Point.RIGHT_BACK));
      return value * value;
    }
  }

  /** One deviation, mm; the mean is zero by the way of boring. */
  record Deviation(double workedOut, double measured) {

    /** In standard errors. */
    double off() {
      double difference = measured - workedOut;
      return isNothing() ? 0 : difference / (workedOut / Math.sqrt(2.0 * CASES));
    }

    /** Heights are summed up: what cancels leaves the last digits of a double. */
    boolean isNothing() {
      return workedOut == 0 && measured < 1e-9;
    }

    String cells() {
      return String.format(Locale.ROOT, " %.4f | %.4f | %.2f |", workedOut, measured, off());
    }
  }

  /** An example, both ways. */
  record Compared(Example example, Deviation gap, Deviation slope) {
    @Override
    public String toString() {
      return example.name();
    }

    String row() {
      return "| "
          + example.name()
          + " | "
          + example.level()
          + " |"
          + gap.cells()
          + slope.cells()
          + System.lineSeparator();
    }
  }

  private static Settings unworn() {
    return Workshop.defaults()
        .with(Setting.WEAR_NOSE, new SettingValue.OfNumber(0))
        .with(Setting.WEAR_BIT, new SettingValue.OfNumber(0));
  }

  private static final List<Compared> COMPARED = examples().map(Example::compared).toList();

  static List<Compared> compared() {
    return COMPARED;
  }

  private static Stream<Example> examples() {
    return Stream.of(
            alone("guide's holes alone", Setting.GUIDE_HOLE_ERROR),
            alone("battens of the block alone", Setting.BLOCK_ERROR),
            alone("spacer alone", Setting.SPACER_ERROR),
            alone("seat alone", Setting.SEAT_ERROR),
            Stream.of(whole("centring bit in a guide", Way.CENTRING_GUIDE, "0.005")),
            Stream.of(whole("router, slip 1/64 in", Way.ROUTER_GUIDE, "1/64")),
            Stream.of(1, 30, 59).map(CaseByHandTest::moved))
        .flatMap(examples -> examples);
  }

  /** Of the guide as long as the row, and of the one that is moved along. */
  private static Stream<Example> alone(String name, Setting setting) {
    Workshop shop = Workshop.with(Workshop.only(setting, "1 mm"));
    Way way = Way.CENTRING_GUIDE;
    return Stream.of(
        new Example(name + ", 0.5 mm", shop, way, shop.guided("0"), 1),
        new Example("the same, guide moved along", shop, way, shop.stepped("0"), 1));
  }

  private static Example whole(String name, Way way, String play) {
    Workshop shop = Workshop.with(unworn());
    return new Example(name, shop, way, shop.guided(play), 1);
  }

  private static Example moved(int level) {
    Workshop shop = Workshop.with(unworn());
    Method.Guided stepped = shop.stepped("0.005");
    return new Example("short guide, moved along", shop, Way.CENTRING_GUIDE, stepped, level);
  }

  @ParameterizedTest
  @MethodSource("compared")
  void gapAndSlopeAreAsWideAsTheModelSays(Compared compared) {
    for (Deviation deviation : List.of(compared.gap(), compared.slope())) {
      assertThat(deviation.workedOut() > 0 || deviation.isNothing()).isTrue();
      assertThat(Math.abs(deviation.off())).isLessThan(ERRORS_ALLOWED);
    }
  }
}
