package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The cases in three dimensions, in cabinet projection: the front in its true shape, depth at half
 * its size, up and to the right. Parts are painted from the farthest to the nearest; each shows its
 * front, right side and top.
 */
public final class Picture {

  private static final double HALF = 0.5;
  private static final double SLOPE = Math.sqrt(0.5);
  private static final double BETWEEN = 150;
  private static final double LONGEST = 40;

  private Picture() {}

  /** All the cases side by side, one of each; those that stand on others, on them. */
  public static Drawing of(Drafter drafter, String name, List<BuiltCase> cases) {
    return drafter.largest(
        front(cases), scale -> draw(scale, Drafter.name(name, "picture"), cases));
  }

  /** The fronts side by side, which the picture is larger than. */
  private static fourpin.sheets.paint.Box front(List<BuiltCase> cases) {
    double width = 0;
    double height = 0;
    for (Stacks.Stack stack : Stacks.of(cases)) {
      width += stack.lower().outside().size(Axis.X).mm();
      height = Math.max(height, stack.height());
    }
    return new fourpin.sheets.paint.Box(0, 0, width, height);
  }

  private static Drawing draw(Scale scale, String name, List<BuiltCase> cases) {
    List<Mark> marks = new ArrayList<>();
    double left = 0;
    for (Stacks.Stack stack : Stacks.of(cases)) {
      List<Mark> drawn = paint(scale, stack);
      double dx = left - Mark.around(drawn).left();
      marks.addAll(Mark.allMoved(drawn, dx, 0));
      marks.add(caption(scale, stack, dx));
      left = Mark.around(marks).right() + scale.toPaper(BETWEEN);
    }
    String names = String.join(", ", cases.stream().map(c -> c.order().name()).toList());
    return Drawing.toScale(
        name,
        "Picture of " + names,
        "Seen from the front, a little from above and from the right: front in its true shape,"
            + " depth at half its size.",
        scale,
        "depth at half size",
        marks);
  }

  /** What stands on a case hides what is behind it, so that it is painted last. */
  private static List<Mark> paint(Scale scale, Stacks.Stack stack) {
    List<Mark> marks = new ArrayList<>(paint(scale, stack.lower().parts()));
    for (Stacks.Placed upper : stack.upper()) {
      double back = HALF * SLOPE * upper.back();
      marks.addAll(
          Mark.allMoved(
              paint(scale, upper.built().parts()),
              scale.toPaper(upper.right() + back),
              scale.toPaper(upper.up() + back)));
    }
    return marks;
  }

  private static Mark caption(Scale scale, Stacks.Stack stack, double dx) {
    BuiltCase built = stack.lower();
    double middle = (built.outside().low().x().mm() + built.outside().high().x().mm()) / 2;
    String count = built.order().quantity() > 1 ? built.order().quantity() + " x " : "";
    return Drafter.shortLabel(count + stack.name(), LONGEST)
        .with(Lettering.Align.MIDDLE, Lettering.Seat.TOP)
        .at(new Point(scale.toPaper(middle) + dx, -1.5));
  }

  private static List<Mark> paint(Scale scale, List<Part> parts) {
    List<Mark> marks = new ArrayList<>();
    for (Part part : Depth.farthestFirst(parts, HALF * SLOPE)) {
      marks.add(new Mark.Group(part.mark() + ", " + part.name(), solid(scale, part)));
    }
    return marks;
  }

  private static List<Mark> solid(Scale scale, Part part) {
    List<Mark> faces = new ArrayList<>();
    faces.add(face(scale, part, Face.TOP, Fill.TINT));
    faces.add(face(scale, part, Face.RIGHT, Fill.SHADE));
    faces.addAll(front(scale, part));
    HangingStrips.of(part)
        .forEach(
            strip -> {
              faces.add(right(scale, strip));
              faces.add(front(scale, strip, strip.low().y()));
            });
    return faces;
  }

  private static Mark right(Scale scale, Box box) {
    List<Point> corners =
        new Projection(Face.RIGHT)
            .box(box).corners().stream().map(p -> onPaper(scale, p, box, Face.RIGHT)).toList();
    return Mark.Path.polygon(corners, Pen.EDGE, Fill.SHADE);
  }

  /** The front; where the foot is notched for the kick, above the notch and at the back of it. */
  private static List<Mark> front(Scale scale, Part part) {
    Box box = part.box();
    List<Box> notches = footNotches(part);
    if (notches.isEmpty()) {
      return List.of(front(scale, box, box.low().y()));
    }
    Box notch = notches.getFirst();
    Box above = box.with(Face.BOTTOM, notch.high().z());
    return List.of(front(scale, notch, notch.high().y()), front(scale, above, box.low().y()));
  }

  private static List<Box> footNotches(Part part) {
    return part.features().stream()
        .flatMap(f -> f instanceof Feature.Channel c ? Stream.of(c) : Stream.empty())
        .filter(c -> c.kind() == Feature.Channel.Kind.NOTCH)
        .map(Feature.Channel::volume)
        .filter(v -> v.low().y().equals(part.box().low().y()))
        .filter(v -> v.low().z().equals(part.box().low().z()))
        .filter(v -> v.size(Axis.X).equals(part.box().size(Axis.X)))
        .toList();
  }

  private static Mark front(Scale scale, Box box, Length plane) {
    List<Point> corners =
        new Projection(Face.FRONT)
            .box(box).corners().stream()
                .map(p -> projected(scale, p.x(), plane.mm(), p.y()))
                .toList();
    return Mark.Path.polygon(corners, Pen.EDGE, Fill.WHITE);
  }

  /** One face of a part, its corner notches left out, in the plane of that face. */
  private static Mark face(Scale scale, Part part, Face face, Fill fill) {
    Projection view = new Projection(face);
    List<Point> outline =
        Silhouette.of(part, view).stream().map(p -> onPaper(scale, p, part.box(), face)).toList();
    return Mark.Path.polygon(outline, Pen.EDGE, fill);
  }

  private static Point onPaper(Scale scale, Point seen, Box box, Face face) {
    double plane = box.at(face).mm();
    return switch (face.axis()) {
      case X -> projected(scale, plane, seen.x(), seen.y());
      case Y -> projected(scale, seen.x(), plane, seen.y());
      case Z -> projected(scale, seen.x(), seen.y(), plane);
    };
  }

  private static Point projected(Scale scale, double x, double y, double z) {
    double back = HALF * SLOPE * y;
    return new Point(scale.toPaper(x + back), scale.toPaper(z + back));
  }
}
