package fourpin.sheets.drawings;

import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The outline of a part in a view: its rectangle less the notches at its corners that go right
 * through.
 */
final class Silhouette {

  private static final double TOUCH = 1e-6;

  private Silhouette() {}

  /** Corners from the lower left, anticlockwise, in millimetres of the case. */
  static List<Point> of(Part part, Projection view) {
    Box whole = view.box(part.box());
    List<Box> notches = through(part, view);
    List<Point> outline = new ArrayList<>();
    List<Point> corners = whole.corners();
    for (int i = 0; i < corners.size(); i++) {
      outline.addAll(corner(corners.get(i), i, notches));
    }
    return outline;
  }

  private static List<Box> through(Part part, Projection view) {
    return part.features().stream()
        .filter(f -> f instanceof Feature.Channel c && c.kind() == Feature.Channel.Kind.NOTCH)
        .map(f -> ((Feature.Channel) f).volume())
        .filter(v -> v.size(view.face().axis()).equals(part.box().size(view.face().axis())))
        .map(view::box)
        .toList();
  }

  private static List<Point> corner(Point corner, int index, List<Box> notches) {
    Optional<Box> notch = notches.stream().filter(n -> at(n, corner)).findFirst();
    if (notch.isEmpty()) {
      return List.of(corner);
    }
    double u = corner.x() == notch.get().left() ? notch.get().right() : notch.get().left();
    double v = corner.y() == notch.get().bottom() ? notch.get().top() : notch.get().bottom();
    Point along = new Point(u, corner.y());
    Point inner = new Point(u, v);
    Point upright = new Point(corner.x(), v);
    // At the lower left and upper right the outline arrives along the upright edge.
    return index % 2 == 0 ? List.of(upright, inner, along) : List.of(along, inner, upright);
  }

  private static boolean at(Box notch, Point corner) {
    boolean across =
        Math.abs(notch.left() - corner.x()) < TOUCH || Math.abs(notch.right() - corner.x()) < TOUCH;
    boolean up =
        Math.abs(notch.bottom() - corner.y()) < TOUCH || Math.abs(notch.top() - corner.y()) < TOUCH;
    return across && up;
  }
}
