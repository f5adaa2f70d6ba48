package fourpin.shop.cut;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Defect;
import fourpin.measure.Length;
import fourpin.shop.yaml.Place;
import fourpin.shop.yaml.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DefectCellsTest {

  private final List<Problem> problems = new ArrayList<>();

  private List<Defect> read(String text) {
    Cell cell = new Cell(text, new Place(2, 5), Cell.Decimals.POINT);
    return DefectCells.read(cell, new Cells(Optional.empty(), problems));
  }

  @Test
  void readsEachDefect() {
    assertThat(read("40 in..44 in x 0 in..2 1/2 in; 60\"..61\" x 3\"..4\""))
        .containsExactly(
            new Defect(Length.inches(40), Length.ZERO, Length.inches(4), Length.inches(5, 2)),
            new Defect(Length.inches(60), Length.inches(3), Length.inches(1), Length.inches(1)));
    assertThat(problems).isEmpty();
    assertThat(read("")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "'40 in to 44 in', from where to where",
    "'44 in..40 in x 0 in..2 in', it ends before it begins",
    "'40 in..44 in x 2 in..2 in', it ends before it begins",
    "'40..44 x 0..2', a length without a unit"
  })
  void tellsWhatIsWrong(String text, String said) {
    assertThat(read(text)).isEmpty();
    assertThat(problems).isNotEmpty();
    assertThat(problems.getFirst().rule()).contains(said);
  }
}
