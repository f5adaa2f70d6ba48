package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.List;

/** One thing drawn, in millimetres on paper, y up. Later marks lie on earlier ones. */
public sealed interface Mark {

  /** The same mark elsewhere. */
  Mark moved(double dx, double dy);

  /** What the mark covers, half its line's width included. */
  Box extent();

  /** Straight lines from point to point, at least two; closed ones bound an area. */
  record Path(List<Point> points, Shape shape, Pen pen, Fill fill) implements Mark {

    /** Whether the last point is joined to the first. */
    public enum Shape {
      OPEN,
      CLOSED
    }

    public Path {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("A path needs two points, not " + points.size());
      }
      if (shape == Shape.OPEN && fill != Fill.NONE) {
        throw new IllegalArgumentException("An open path bounds no area to fill with " + fill);
      }
    }

    public static Path line(Point from, Point to, Pen pen) {
      return new Path(List.of(from, to), Shape.OPEN, pen, Fill.NONE);
    }

    public static Path polygon(List<Point> corners, Pen pen, Fill fill) {
      return new Path(corners, Shape.CLOSED, pen, fill);
    }

    public static Path rectangle(Box box, Pen pen, Fill fill) {
      return polygon(box.corners(), pen, fill);
    }

    @Override
    public Path moved(double dx, double dy) {
      return new Path(points.stream().map(p -> p.moved(dx, dy)).toList(), shape, pen, fill);
    }

    @Override
    public Box extent() {
      return Box.round(points).grown(pen.width() / 2);
    }
  }

  /** An area without an outline. */
  record Area(List<Point> corners, Fill fill) implements Mark {

    public Area {
      corners = List.copyOf(corners);
    }

    @Override
    public Area moved(double dx, double dy) {
      return new Area(corners.stream().map(p -> p.moved(dx, dy)).toList(), fill);
    }

    @Override
    public Box extent() {
      return Box.round(corners);
    }
  }

  /** A circle; its fill may be a ground, not a hatch. */
  record Circle(Point centre, double radius, Pen pen, Fill fill) implements Mark {

    public Circle {
      if (!(radius > 0)) {
        throw new IllegalArgumentException("A circle needs a radius above 0, not " + radius);
      }
      if (!fill.hatches().isEmpty()) {
        throw new IllegalArgumentException("A circle cannot be filled with " + fill);
      }
    }

    @Override
    public Circle moved(double dx, double dy) {
      return new Circle(centre.moved(dx, dy), radius, pen, fill);
    }

    @Override
    public Box extent() {
      return Box.round(centre).grown(radius + pen.width() / 2);
    }
  }

  /** One line of lettering. */
  record Text(Lettering lettering, Point at) implements Mark {

    @Override
    public Text moved(double dx, double dy) {
      return new Text(lettering, at.moved(dx, dy));
    }

    @Override
    public Box extent() {
      return lettering.extent(at);
    }
  }

  /** Marks that belong together under a name that a reader or a screen reader is told. */
  record Group(String title, List<Mark> marks) implements Mark {

    public Group {
      marks = List.copyOf(marks);
    }

    @Override
    public Group moved(double dx, double dy) {
      return new Group(title, allMoved(marks, dx, dy));
    }

    @Override
    public Box extent() {
      return around(marks);
    }
  }

  static List<Mark> allMoved(List<? extends Mark> marks, double dx, double dy) {
    List<Mark> moved = new ArrayList<>(marks.size());
    marks.forEach(mark -> moved.add(mark.moved(dx, dy)));
    return List.copyOf(moved);
  }

  /** The box round some marks; a single point at the origin for none. */
  static Box around(List<? extends Mark> marks) {
    return marks.stream().map(Mark::extent).reduce(Box::with).orElse(new Box(0, 0, 0, 0));
  }

  /** All marks without their groups, in the order of drawing. */
  static List<Mark> flattened(List<? extends Mark> marks) {
    List<Mark> flat = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Group group) {
        flat.addAll(flattened(group.marks()));
      } else {
        flat.add(mark);
      }
    }
    return flat;
  }
}
