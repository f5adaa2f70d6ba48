package fourpin.sheets.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HatchingTest {

  private static final List<Point> ANGLE =
      List.of(
          new Point(0, 0),
          new Point(60, 0),
          new Point(60, 20),
          new Point(20, 20),
          new Point(20, 60),
          new Point(0, 60));

  /**
   * Lines a distance apart cover an area of length times distance; the angle is 60 x 20 + 20 x 40.
   */
  @Test
  void linesCoverTheArea() {
    double length =
        Hatching.segments(ANGLE, Fill.HATCH).stream()
            .mapToDouble(s -> s.from().distanceTo(s.to()))
            .sum();
    assertThat(length * 2).isCloseTo(2000, within(30.0));
  }

  @Test
  void noLineLeavesTheArea() {
    for (Hatching.Segment segment : Hatching.segments(ANGLE, Fill.CROSS_HATCH)) {
      Point middle =
          new Point(
              (segment.from().x() + segment.to().x()) / 2,
              (segment.from().y() + segment.to().y()) / 2);
      assertThat(inside(segment.from()) && inside(middle) && inside(segment.to())).isTrue();
    }
  }

  private static boolean inside(Point p) {
    double slack = 1e-9;
    boolean low = p.x() > -slack && p.x() < 60 + slack && p.y() > -slack && p.y() < 20 + slack;
    boolean tall = p.x() > -slack && p.x() < 20 + slack && p.y() > -slack && p.y() < 60 + slack;
    return low || tall;
  }

  @Test
  void otherFillsHaveNoLines() {
    assertThat(Hatching.segments(ANGLE, Fill.SHADE)).isEmpty();
  }
}
