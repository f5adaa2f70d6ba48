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
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.List;
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
    Figure figure = new LayoutFigures("job/ply/sheets", "ply, sheets", cost).gap(layout);
    assertThat(figure.value().text(Unit.MILLIMETRE)).isEqualTo(gap);
    assertThat(figure.value().value() == 0)
        .isEqualTo(bound.reachedBy(layout.price(), layout.sheets()));
  }
}
