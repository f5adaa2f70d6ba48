package fourpin.sheets.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScaleTest {

  @Test
  void theLargestThatFitsIsTakenWithLettersAndLegend() {
    assertThat(fitting(160).scale().label()).isEqualTo("1:5");
    assertThat(fitting(159).scale().label()).isEqualTo("1:10");
  }

  private static Drawing fitting(double width) {
    return Scale.largestFitting(
        Scale.METRIC,
        new Box(0, 0, 0, 0),
        width,
        100,
        scale ->
            Drawing.toScale(
                "a",
                "A",
                "A line.",
                scale,
                List.of(
                    Mark.Path.line(
                        Point.ORIGIN, new Point(scale.toPaper(800) - 0.5, 0), Pen.OUTLINE))));
  }

  @Test
  void whatFitsNowhereIsRefused() {
    assertThatThrownBy(() -> fitting(5)).hasMessageContaining("fits at no scale");
  }

  @Test
  void scalesThatCannotFitAreNotDrawn() {
    List<Scale> drawn = new ArrayList<>();
    Drawing drawing =
        Scale.largestFitting(
            Scale.METRIC,
            new Box(0, 0, 900, 0),
            100,
            100,
            scale -> scale.real() > 15,
            scale -> {
              drawn.add(scale);
              Point end = new Point(scale.toPaper(1900), 0);
              return Drawing.toScale(
                  "a",
                  "A",
                  "A line.",
                  scale,
                  List.of(Mark.Path.line(Point.ORIGIN, end, Pen.OUTLINE)));
            });
    assertThat(drawing.scale()).isEqualTo(new Scale(1, 20));
    assertThat(drawn).containsExactly(new Scale(1, 20));
  }

  @Test
  void scalesGoBothWays() {
    Scale scale = new Scale(1, 15);
    assertThat(scale.toReal(scale.toPaper(123))).isCloseTo(123, within(1e-9));
  }
}
