package fourpin.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Layout;
import fourpin.cutting.LowerBound;
import fourpin.cutting.Node;
import fourpin.cutting.Origin;
import fourpin.cutting.SheetGrain;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.StockSheet;
import fourpin.cutting.Supply;
import fourpin.cutting.Unplaced;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayoutFiguresTest {
  private static Layout layout(long each, int number, LowerBound bound) {
    StockSheet sheet =
        new StockSheet(
            "sheet",
            Length.mm(2440),
            Length.mm(1220),
            SheetGrain.ALONG_LENGTH,
            Supply.unlimited(),
            each,
            Origin.TO_BUY);
    return new Layout(
        List.of(new SheetPattern(sheet, number, new Node.Offcut())), List.of(), bound);
  }

  /** Prices in the smallest coin, or in square millimetres. */
  @ParameterizedTest
  @CsvSource({
    "9000, 1, 9000, 1, MONEY, 0 %",
    "9000, 2, 9000, 1, MONEY, 100 %",
    "9000, 1, 6000, 1, MONEY, 50 %",
    "9000, 1, 0, 1, MONEY, 90.00",
    "9000, 2, 0, 2, MONEY, 180.00",
    "2000000, 1, 0, 1, AREA, 2 m²",
    "0, 1, 0, 1, MONEY, 0 %",
    "0, 3, 0, 2, MONEY, 50 %"
  })
  void theGapIsNothingOnlyWhereTheBestIsProven(
      long each, int number, long leastPrice, long leastNumber, QuantityUnit cost, String gap) {
    LowerBound bound = new LowerBound(leastPrice, leastNumber);
    Layout layout = layout(each, number, bound);
    HowNear near = new LayoutFigures("job/ply/sheets", "ply, sheets", cost).of(layout);
    assertThat(near.gap().value().text(Unit.MILLIMETRE)).isEqualTo(gap);
    assertThat(near.gap().value().value() == 0)
        .isEqualTo(bound.reachedBy(layout.price(), layout.sheets()))
        .isEqualTo(near.proof() == HowNear.Proof.PROVEN);
  }

  /** Two sheets of 90.00 where none comes to less than 150.00; areas to the square metre. */
  @ParameterizedTest
  @CsvSource({
    "9000, 15000, MONEY, cost, 180.00, 150.00, 90.00",
    "2000000, 3000000, AREA, area, 4 m², 3 m², 2 m²"
  })
  void whatItComesToAndTheLeastShowTheirWorking(
      long each,
      long leastPrice,
      QuantityUnit unit,
      String word,
      String all,
      String least,
      String of) {
    Layout layout = layout(each, 2, new LowerBound(leastPrice, 2));
    HowNear near = new LayoutFigures("job/ply/sheets", "ply, sheets", unit).of(layout);
    assertThat(near.counted()).isEqualTo(word);
    assertThat(text(near.cost())).isEqualTo(all);
    assertThat(near.cost().inputs())
        .extracting(i -> i.symbol() + " " + i.value().text(Unit.MILLIMETRE))
        .containsExactly("n1 2", "c1 " + of);
    assertThat(text(near.least())).isEqualTo(least);
    assertThat(text(near.sheets())).isEqualTo("2");
    assertThat(text(near.fewest())).isEqualTo("2");
    assertThat(near.proof()).isEqualTo(HowNear.Proof.NOT_PROVEN);
    assertThat(near.figures()).extracting(Figure::id).doesNotHaveDuplicates();
  }

  /** What nothing cheaper exists for is no answer where a part has no place. */
  @Test
  void whatIsLeftOutIsSaid() {
    Layout whole = layout(9000, 1, new LowerBound(9000, 1));
    Unplaced out = new Unplaced("A", 1, Unplaced.Reason.NO_SHEETS_LEFT);
    Layout lacking = new Layout(whole.patterns(), List.of(out), whole.bound());
    LayoutFigures figures = new LayoutFigures("job/ply/sheets", "ply, sheets", QuantityUnit.MONEY);
    assertThat(figures.of(whole).proof()).isEqualTo(HowNear.Proof.PROVEN);
    assertThat(figures.of(whole).gapOfAll()).isPresent();
    assertThat(figures.of(lacking).proof()).isEqualTo(HowNear.Proof.PARTS_LEFT_OUT);
    assertThat(figures.of(lacking).gapOfAll()).isEmpty();
  }

  private static String text(Figure figure) {
    return figure.value().text(Unit.MILLIMETRE);
  }
}
