package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Layout;
import fourpin.cutting.LowerBound;
import fourpin.cutting.Node;
import fourpin.cutting.Origin;
import fourpin.cutting.SheetGrain;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.StockSheet;
import fourpin.cutting.Supply;
import fourpin.cutting.Watch;
import fourpin.measure.Length;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import fourpin.plan.LayoutFigures;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CutProgressTest {

  private static final long SECOND = 1_000_000_000L;

  private long now;
  private final StringWriter told = new StringWriter();

  private CutProgress progress(Optional<Integer> seconds) {
    return new CutProgress(Optional.of(new PrintWriter(told)), () -> now, seconds, Unit.MILLIMETRE);
  }

  private static LayoutFigures lot(String name) {
    return new LayoutFigures("job/lot", name, QuantityUnit.MONEY);
  }

  private static Layout layout(int sheets, LowerBound bound) {
    StockSheet sheet =
        new StockSheet(
            "sheet",
            Length.mm(2440),
            Length.mm(1220),
            SheetGrain.ALONG_LENGTH,
            Supply.unlimited(),
            10_000,
            Origin.TO_BUY);
    return new Layout(
        List.of(new SheetPattern(sheet, sheets, new Node.Offcut())), List.of(), bound);
  }

  @Test
  void allLotsEndWithTheTimeThatIsLeftForSearching() {
    CutProgress progress = progress(Optional.of(10));
    Watch first = progress.begin(lot("birch ply, sheets"));
    now = 8 * SECOND;
    Watch last = progress.begin(lot("ash, boards"));
    assertThat(first.enough()).isFalse();
    assertThat(last.enough()).isFalse();
    assertThat(progress.nanos()).isEqualTo(8 * SECOND);
    now = 9 * SECOND;
    assertThat(first.enough()).isTrue();
    assertThat(last.enough()).isTrue();
  }

  @Test
  void withoutSecondsOnlyTheMakerEndsTheSearch() {
    CutProgress progress = progress(Optional.empty());
    Watch watch = progress.begin(lot("birch ply, sheets"));
    now = 100_000 * SECOND;
    assertThat(watch.enough()).isFalse();
    progress.enough();
    assertThat(watch.enough()).isTrue();
    assertThat(progress.begin(lot("ash, boards")).enough()).isTrue();
  }

  @Test
  void whenTheSearchIsOverItSaysThatItWrites() {
    progress(Optional.empty()).writing();
    assertThat(told.toString().strip()).isEqualTo("Writing the layouts.");
  }

  @Test
  void aShorterLineLeavesNothingOfALongerOne() {
    CutProgress progress = progress(Optional.empty());
    Watch watch = progress.begin(lot("ply"));
    watch.better(layout(12, new LowerBound(96_123, 10)));
    now = 2 * SECOND;
    watch.better(layout(9, new LowerBound(90_000, 9)));
    progress.clear();
    String first =
        "\rply: 12, least 10; 1200.00, least 961.23; 24.8 % above (0 s; Ctrl-C takes it)";
    String second = "\rply: 9, least 9; 900.00, least 900.00; 0 % above (2 s; Ctrl-C takes it)";
    String over = " ".repeat(first.length() - second.length());
    String nothing = " ".repeat(second.length() - 1);
    assertThat(told).hasToString(first + second + over + "\r" + nothing + "\r");
    assertThat(over).isNotEmpty();
  }
}
