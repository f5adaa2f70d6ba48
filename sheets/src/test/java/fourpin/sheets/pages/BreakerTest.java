package fourpin.sheets.pages;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is higher than a page goes over it where a reader can follow. */
class BreakerTest {

  private static final Box BODY = new Box(0, 0, 100, 200);

  private static Strip strip(double height) {
    Mark mark = Mark.Path.line(new Point(0, 0), new Point(1, 0), Pen.EDGE);
    return Strip.of(height, List.of(Piece.decoration(List.of(mark))));
  }

  /** A drawing of 100, the head of its table, and ten rows of 20. */
  private static List<Strip> drawingAndRows() {
    Strip head = strip(5);
    List<Strip> strips = new ArrayList<>(List.of(strip(100), head));
    for (int i = 0; i < 10; i++) {
      strips.add(strip(20).under(head));
    }
    return Strip.together(strips);
  }

  private static List<Integer> broken(double above) {
    List<Strip> strips = new ArrayList<>(List.of(strip(above)));
    strips.addAll(drawingAndRows());
    return Breaker.leaves(strips, BODY).stream().map(leaf -> leaf.pieces().size()).toList();
  }

  @Test
  void aHeadIsNotPartedFromItsFirstRowNorFromTheDrawing() {
    // Where drawing, head and a row of 125 together have room, they stay; else all three go over.
    assertThat(broken(70)).containsExactly(4, 10);
    assertThat(broken(80)).containsExactly(1, 6, 7);
  }
}
