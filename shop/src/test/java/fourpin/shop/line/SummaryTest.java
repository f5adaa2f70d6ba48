package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.plan.Plan;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SummaryTest {

  /**
   * Things in a row sag a shelf more than the same load all over it; at the back where a strip
   * stiffens the front.
   */
  @ParameterizedTest
  @CsvSource({
    "reading-room, against the back",
    "music-library, along the front edge",
    "pottery-cabinet, along the front edge"
  })
  void tellsTheSagOfTheLoadThatSagsMost(String example, String place) {
    Plan plan = PlannedExamples.plan(Path.of("..", "examples", example + ".yaml"));
    String worst =
        Summary.of(plan, Ink.Terminal.NONE).stream()
            .filter(line -> line.startsWith("  worst sag"))
            .findFirst()
            .orElseThrow();
    assertThat(worst).endsWith(", the load in a row " + place);
    assertThat(plan.shelves())
        .filteredOn(shelf -> worst.contains(shelf.caseName() + ", " + shelf.mark()))
        .first()
        .satisfies(
            shelf ->
                assertThat(worst)
                    .contains(shelf.most().now().value().text(plan.job().unit()) + " now")
                    .contains(shelf.most().years().value().text(plan.job().unit()) + " after"));
  }
}
