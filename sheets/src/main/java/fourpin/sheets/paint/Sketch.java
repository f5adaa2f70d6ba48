package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Draws in millimetres of the case and brings them to paper at one scale; lettering and line widths
 * stay as stated.
 *
 * <p>Collects marks in the order of drawing; not for several threads.
 */
public final class Sketch {

  private final Scale scale;
  private final List<Mark> marks = new ArrayList<>();

  public Sketch(Scale scale) {
    this.scale = scale;
  }

  public Scale scale() {
    return scale;
  }

  /** A place of the case on paper. */
  public Point point(double x, double y) {
    return new Point(scale.toPaper(x), scale.toPaper(y));
  }

  public Sketch line(double x1, double y1, double x2, double y2, Pen pen) {
    return add(Mark.Path.line(point(x1, y1), point(x2, y2), pen));
  }

  public Sketch rectangle(Box real, Pen pen, Fill fill) {
    return add(Mark.Path.rectangle(onPaper(real), pen, fill));
  }

  public Sketch circle(double x, double y, double diameter, Pen pen, Fill fill) {
    return add(new Mark.Circle(point(x, y), scale.toPaper(diameter) / 2, pen, fill));
  }

  public Sketch text(double x, double y, Lettering lettering) {
    return add(lettering.at(point(x, y)));
  }

  /** What {@code inside} draws, under a title. */
  public Sketch group(String title, Consumer<Sketch> inside) {
    Sketch part = new Sketch(scale);
    inside.accept(part);
    return part.marks.isEmpty() ? this : add(new Mark.Group(title, part.marks));
  }

  public Sketch add(Mark onPaper) {
    marks.add(onPaper);
    return this;
  }

  public Sketch addAll(List<? extends Mark> onPaper) {
    marks.addAll(onPaper);
    return this;
  }

  public Box onPaper(Box real) {
    return new Box(
        scale.toPaper(real.left()),
        scale.toPaper(real.bottom()),
        scale.toPaper(real.right()),
        scale.toPaper(real.top()));
  }

  public Box extent() {
    return Mark.around(marks);
  }

  public List<Mark> marks() {
    return List.copyOf(marks);
  }
}
