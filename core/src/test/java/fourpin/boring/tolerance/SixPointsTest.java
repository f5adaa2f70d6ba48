package fourpin.boring.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.tolerance.ErrorModel.Cause;
import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Shape;
import fourpin.boring.tolerance.ErrorModel.Term;
import fourpin.boring.tolerance.Miss.Point;
import fourpin.job.Setting;
import fourpin.job.Way;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A shelf on three rows, against one that is laid on every three of its pins in turn. */
class SixPointsTest {

  /** Left front, back, right front, back, left middle, right middle: across, and from the front. */
  private static final double[][] PLACES = {{0, 0}, {0, 1}, {1, 0}, {1, 1}, {0, 0.5}, {1, 0.5}};

  private static final int FOUR = 4;
  private static final double HAIR = 1e-9;

  private static double gap(double... z) {
    return SixPoints.gap(
        Miss.GAP.of(z[0], z[1], z[2], z[3]), z[4] - (z[0] + z[1]) / 2, z[5] - (z[2] + z[3]) / 2);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, 0, 0, 0, 0, all alike",
    "1, 1, 0, 0, 1, 0, 0, the left higher",
    "0, 1, 0, 1, 0.5, 0.5, 0, the back higher",
    "1, 0, 0, 0, 0, 0, 1, a corner: the middle pins are below their lines",
    "0, 0, 0, 0, -1, -1, 0, middle pins too low are not reached",
    "0, 0, 0, 0, 1, 1, 2, on the middle pins it leaves the back by twice their height",
    "0, 0, 0, 0, 1, 0, 2, and on one of them as well",
    "1, 0, 0, 0, 1, 0, 2, a corner and a middle pin 0.5 proud"
  })
  void byHand(
      double lf,
      double lb,
      double rf,
      double rb,
      double lm,
      double rm,
      double expected,
      String what) {
    assertThat(gap(lf, lb, rf, rb, lm, rm)).as(what).isCloseTo(expected, within(HAIR));
    assertThat(widestByTrying(lf, lb, rf, rb, lm, rm)).as(what).isCloseTo(expected, within(1e-6));
  }

  @Test
  void theSumIsWhatTryingEveryThreePinsFinds() {
    SplittableRandom random = new SplittableRandom(6);
    for (int shelf = 0; shelf < 2_000; shelf++) {
      double[] z = random.doubles(PLACES.length, -1, 1).toArray();
      assertThat(gap(z)).as("shelf %d", shelf).isCloseTo(widestByTrying(z), within(1e-6));
    }
  }

  /** Pushed down a hair inside its front edge, and then inside its back edge. */
  private static double widestByTrying(double... z) {
    return Math.max(widestAtCorners(z, 1e-7), widestAtCorners(z, 1 - 1e-7));
  }

  /** The shelf comes to rest as low as it can under the hand, on any three pins. */
  private static double widestAtCorners(double[] z, double hand) {
    double lowest = Double.MAX_VALUE;
    double widest = 0;
    for (int a = 0; a < z.length; a++) {
      for (int b = a + 1; b < z.length; b++) {
        for (int c = b + 1; c < z.length; c++) {
          double[] plane = plane(z, a, b, c);
          if (isAbove(plane, z) && height(plane, 0.5, hand) < lowest - HAIR) {
            lowest = height(plane, 0.5, hand);
            widest = atCorners(plane, z);
          }
        }
      }
    }
    return widest;
  }

  /** Height, rise to the right and rise to the back; not a number for three pins in a line. */
  private static double[] plane(double[] z, int a, int b, int c) {
    double x1 = PLACES[b][0] - PLACES[a][0];
    double y1 = PLACES[b][1] - PLACES[a][1];
    double x2 = PLACES[c][0] - PLACES[a][0];
    double y2 = PLACES[c][1] - PLACES[a][1];
    double all = x1 * y2 - x2 * y1;
    double right = ((z[b] - z[a]) * y2 - (z[c] - z[a]) * y1) / all;
    double back = (x1 * (z[c] - z[a]) - x2 * (z[b] - z[a])) / all;
    return new double[] {z[a] - right * PLACES[a][0] - back * PLACES[a][1], right, back};
  }

  private static double height(double[] plane, double x, double y) {
    return plane[0] + plane[1] * x + plane[2] * y;
  }

  private static boolean isAbove(double[] plane, double[] z) {
    for (int pin = 0; pin < z.length; pin++) {
      if (!(height(plane, PLACES[pin][0], PLACES[pin][1]) >= z[pin] - HAIR)) {
        return false;
      }
    }
    return true;
  }

  private static double atCorners(double[] plane, double[] z) {
    double widest = 0;
    for (int pin = 0; pin < FOUR; pin++) {
      widest = Math.max(widest, height(plane, PLACES[pin][0], PLACES[pin][1]) - z[pin]);
    }
    return widest;
  }

  private static Workshop onSix(Setting setting) {
    return OnSix.shop(Workshop.only(setting, "0.02"));
  }

  /** What one guide puts wrong alike in all rows rocks nothing, on six points neither. */
  @ParameterizedTest
  @EnumSource(names = {"NONE", "RIGHT_FROM_TOP", "SECOND_GUIDE_RIGHT"})
  void errorsOfTheGuidesHolesCancel(Alteration alteration) {
    Workshop shop = onSix(Setting.GUIDE_HOLE_ERROR);
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.guided("0"), alteration);
    assertThat(model.positions()).hasSizeGreaterThan(100).allMatch(Position::isOnSix);
    PositionGap worst = GapTable.of(model, 0.1).worst();
    assertThat(worst.usual()).isZero();
    assertThat(worst.proud().orElseThrow().deviation()).isZero();
  }

  /** Of three holes alike: 1 + 1/4 + 1/4 of their variance. */
  @Test
  void aMiddlePinMissesTheLineOfItsNeighbours() {
    Workshop shop = onSix(Setting.DRILL_WANDER);
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.guided("0"), Alteration.NONE);
    assertThat(GapTable.of(model, 0.1).worst().proud().orElseThrow().deviation())
        .isCloseTo(0.254 * Math.sqrt(1.5), within(1e-9));
  }

  /** Middle pins far below, or none: the same gaps, within four standard errors. */
  @Test
  void withoutProudMiddlePinsItIsTheGapOfFour() {
    List<Cause> causes = new ArrayList<>();
    Map<Point, List<Term>> points = new EnumMap<>(Point.class);
    for (Point point : Point.SIX) {
      if (Point.CORNERS.contains(point)) {
        causes.add(new Cause(CauseKind.WANDER, point.name(), Shape.NORMAL, 0.2));
        points.put(point, List.of(new Term(causes.size() - 1, 1)));
      } else {
        // Exactly on the line of its neighbours.
        boolean left = point == Point.LEFT_MIDDLE;
        points.put(point, List.of(new Term(left ? 0 : 2, 0.5), new Term(left ? 1 : 3, 0.5)));
      }
    }
    ErrorModel model = new ErrorModel(causes, List.of(new Position(1, 1, points)));
    Distribution drawn = GapTable.of(model, 0.5).worst().gap();
    Spread four = new Spread(0.4, List.of());
    double odds = four.oddsBeyond(0.5);
    assertThat(drawn.oddsBeyond(0.5))
        .isCloseTo(odds, within(4 * Math.sqrt(odds * (1 - odds) / OnSix.DRAWN)));
    assertThat(drawn.mean()).isCloseTo(four.mean(), within(4 * 0.25 / Math.sqrt(OnSix.DRAWN)));
    assertThat(drawn.within(0.95)).isCloseTo(four.within(0.95), within(0.02));
  }

  /** A third row can only make it worse. */
  @Test
  void aThirdRowRocksMoreOften() {
    Workshop six = OnSix.shop(Workshop.defaults());
    Workshop four = Workshop.with(Workshop.defaults());
    assertThat(rocking(six)).isGreaterThan(rocking(four));
  }

  private static double rocking(Workshop shop) {
    return GapTable.of(shop.model(Way.CENTRING_GUIDE, shop.guided("0.005"), Alteration.NONE), 0.8)
        .worst()
        .odds();
  }

  @Test
  void equalCausesGiveEqualGaps() {
    Workshop shop = OnSix.shop(Workshop.defaults());
    ErrorModel model = shop.model(Way.CENTRING_GUIDE, shop.guided("0.005"), Alteration.NONE);
    assertThat(GapTable.of(model, 0.8)).isEqualTo(GapTable.of(model, 0.8));
  }
}
