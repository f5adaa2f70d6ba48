package fourpin.sheets.pages;

import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Typeface;
import java.util.List;

/** The signs of callouts as marks, 7 mm high, round the middle of their place. */
final class Signs {

  static final double HEIGHT = 7;

  private Signs() {}

  static List<Mark> marks(Block.Sign sign, Point centre) {
    return Mark.allMoved(
        switch (sign) {
          case CAUTION -> List.of(triangle(), letter("!", -0.6));
          case ERROR ->
              List.of(
                  new Mark.Circle(Point.ORIGIN, 3.2, Pen.OUTLINE, Fill.WHITE),
                  stroke(1.6, 1.6),
                  stroke(1.6, -1.6));
          case WARNING ->
              List.of(Mark.Path.polygon(square(3), Pen.OUTLINE, Fill.WHITE), letter("!", 0));
          case NOTE ->
              List.of(new Mark.Circle(Point.ORIGIN, 3, Pen.OUTLINE, Fill.WHITE), letter("i", 0));
        },
        centre.x(),
        centre.y());
  }

  private static Mark triangle() {
    return Mark.Path.polygon(
        List.of(new Point(-3.8, -3), new Point(3.8, -3), new Point(0, 3.6)),
        Pen.OUTLINE,
        Fill.WHITE);
  }

  private static List<Point> square(double half) {
    return List.of(
        new Point(-half, -half),
        new Point(half, -half),
        new Point(half, half),
        new Point(-half, half));
  }

  private static Mark stroke(double x, double y) {
    return Mark.Path.line(new Point(-x, -y), new Point(x, y), Pen.DATUM);
  }

  private static Mark letter(String letter, double y) {
    return Lettering.of(letter, Typeface.BOLD, 4.2)
        .with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE)
        .at(new Point(0, y));
  }
}
