package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FigureTest {

  @Test
  void keepsItsInputsAsTheyWere() {
    List<Figure.Input> inputs = new ArrayList<>();
    inputs.add(new Figure.Input("L", "span", Quantity.of(Length.mm(900)), Source.STATED));
    Figure figure =
        new Figure("bay-1/span", "span", Quantity.of(Length.mm(900)), "L", inputs, Source.GEOMETRY);
    inputs.clear();
    assertThat(figure.inputs()).hasSize(1);
  }

  @Test
  void sourcesPrintOnOneLine() {
    assertThat(Source.published("Wood Handbook FPL-GTR-190 (2010)", "Table 9-1").text())
        .isEqualTo("Wood Handbook FPL-GTR-190 (2010), Table 9-1 (published)");
    assertThat(Source.practice("hole depth of pins").text())
        .isEqualTo("hole depth of pins (common practice)");
    assertThat(new Source("EN 312", "", Source.Standing.FROM_MEMORY).text())
        .isEqualTo("EN 312 (from memory, verify)");
    assertThat(Source.STATED.text()).isEqualTo("the job (stated by the maker)");
  }

  @Test
  void refusedReadingPassesThroughAndThrowsWhenForced() {
    Reading<Integer> bad = Reading.bad("a rule", "a remedy");
    assertThat(bad.then(n -> Reading.good(n + 1))).isEqualTo(bad);
    assertThat(Reading.good(1).then(n -> Reading.good(n + 1)).orThrow()).isEqualTo(2);
    assertThatIllegalArgumentException().isThrownBy(bad::orThrow).withMessage("a rule; a remedy");
  }
}
