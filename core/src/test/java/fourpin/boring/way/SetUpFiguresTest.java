package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.centring;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.sheet;
import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.job.Way;
import fourpin.measure.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What guide page and drilling sheet print can be asked for, and its inputs make its value. */
class SetUpFiguresTest {

  private static final WayAnswer ANSWER =
      answer(
          Way.CENTRING_GUIDE,
          draft().order(),
          List.of(drill(), centring("3/8", "9/32", "1"), sheet()));

  private static final Method.Guided METHOD = (Method.Guided) ANSWER.method().orElseThrow();

  private static Figure figure(String what) {
    return ANSWER.figures().stream()
        .filter(f -> f.id().endsWith("/centring-guide/" + what))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Sides of 23/32 in, holes 3/8 in deep through a guide of 1/4 in, a point of 1/16 in; a nose of
   * 3/8 in and the next bit wider.
   */
  @ParameterizedTest
  @CsvSource({
    "bit/reserve, 9/32",
    "bit/stop, 5/8",
    "guide/block, 3/4",
    "guide/holes/diameter, 25/64"
  })
  void byHand(String what, String inches) {
    assertThat(figure(what).value().value()).isCloseTo(in(inches).mm(), within(1e-9));
  }

  @Test
  void theGuideIsTheOneThatIsPrinted() {
    Guide guide = METHOD.guide();
    assertThat(figure("guide/cut-to").value().value())
        .isCloseTo(guide.length().plus(guide.block()).mm(), within(1e-9));
    assertThat(figure("guide/width").value().value()).isCloseTo(guide.width().mm(), within(1e-9));
    assertThat(figure("guide/holes/" + guide.holes().size() + "/along").value().value())
        .isCloseTo(guide.holes().getLast().along().mm(), within(1e-9));
  }

  @Test
  void sumsAndDifferencesOfInputsAreTheirValues() {
    for (Figure figure : ANSWER.figures()) {
      String formula = figure.formula();
      if (formula.matches("[a-z]( [+-] [a-z])+")) {
        double sum = figure.inputs().getFirst().value().value();
        double sign = formula.contains("+") ? 1 : -1;
        for (Figure.Input input : figure.inputs().subList(1, figure.inputs().size())) {
          sum += sign * input.value().value();
        }
        assertThat(figure.value().value()).as(figure.id()).isCloseTo(sum, within(1e-9));
      }
    }
  }

  @Test
  void everyClampingAndEveryHoleIsThere() {
    assertThat(ANSWER.figures())
        .filteredOn(f -> f.id().contains("/clampings/") && f.id().endsWith("/along"))
        .hasSameSizeAs(METHOD.clampings());
    assertThat(ANSWER.figures())
        .filteredOn(f -> f.id().contains("/holes/") && f.id().endsWith("/along"))
        .hasSameSizeAs(METHOD.guide().holes());
    assertThat(ANSWER.figures()).extracting(Figure::id).doesNotHaveDuplicates();
  }
}
