package fourpin.boring;

import fourpin.boring.Cut.Kind;
import fourpin.boring.Cut.Owner.Obstacle;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.job.Doors;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Everything on and in one upright that rows must keep clear of. */
final class Obstacles {

  /** Roles of parts that can stand against an upright's face. */
  private static final Set<Part.Role> PANELS =
      Set.of(
          Part.Role.FIXED_SHELF, Part.Role.BOTTOM, Part.Role.TOP, Part.Role.BACK, Part.Role.KICK);

  private final BuiltCase built;
  private final Part upright;
  private final List<Cut> cuts = new ArrayList<>();

  private Obstacles(BuiltCase built, Part upright) {
    this.built = built;
    this.upright = upright;
  }

  static List<Cut> on(BuiltCase built, Part upright) {
    Obstacles obstacles = new Obstacles(built, upright);
    upright.features().forEach(obstacles::feature);
    built.parts().stream().filter(p -> PANELS.contains(p.role())).forEach(obstacles::panel);
    built.order().doors().ifPresent(obstacles::plates);
    obstacles.edges();
    return obstacles.cuts;
  }

  private void feature(Feature feature) {
    switch (feature) {
      case Feature.Channel channel -> {
        if (!isOurs(channel)) {
          Box volume = channel.volume();
          add(volume, Kind.JOINT, "the " + kind(channel) + " for " + channel.purpose());
        }
      }
      case Feature.Hole hole -> {
        if (hole.use() == Feature.Hole.Use.SCREW && hole.face().axis() == Axis.X) {
          screw(hole);
        }
      }
    }
  }

  private static String kind(Feature.Channel channel) {
    return channel.kind().name().toLowerCase(Locale.ROOT);
  }

  /** Grooves for standards come from the grids and are no obstacle to themselves. */
  private static boolean isOurs(Feature.Channel channel) {
    return channel.purpose().startsWith(Fitting.STANDARD);
  }

  private void add(Box volume, Kind kind, String name) {
    Outline outline =
        new Outline.Rectangle(
            volume.low().y(), volume.high().y(), volume.low().z(), volume.high().z());
    cuts.add(new Cut(outline, volume.low().x(), volume.high().x(), new Obstacle(kind, name)));
  }

  private void screw(Feature.Hole hole) {
    Length far = hole.centre().x().minus(hole.depth().times(hole.face().direction()));
    cuts.add(
        new Cut(
            new Outline.Disc(hole.centre().y(), hole.centre().z(), hole.diameter()),
            Length.min(far, hole.centre().x()),
            Length.max(far, hole.centre().x()),
            new Obstacle(Kind.SCREW, "the screws for " + hole.purpose())));
  }

  /** A panel that stands against a face covers it; one let into a joint is met as that joint. */
  private void panel(Part panel) {
    for (Face face : List.of(Face.LEFT, Face.RIGHT)) {
      Length surface = upright.box().at(face);
      if (panel.box().at(face.opposite()).equals(surface) && overlapsAcross(panel.box())) {
        add(onFace(panel.box(), surface), Kind.PANEL, "the " + panel.name());
      }
    }
  }

  private static Box onFace(Box box, Length x) {
    return Box.of(x, x, box.low().y(), box.high().y(), box.low().z(), box.high().z());
  }

  private boolean overlapsAcross(Box other) {
    Box box = upright.box();
    return box.low().y().isLessThan(other.high().y())
        && other.low().y().isLessThan(box.high().y())
        && box.low().z().isLessThan(other.high().z())
        && other.low().z().isLessThan(box.high().z());
  }

  /** Doors may hang on either upright of a bay, so both inner faces are kept clear. */
  private void plates(Doors doors) {
    for (BaySpace bay : built.bays()) {
      if (bay.left().equals(upright.mark())) {
        doors.plateHeights().forEach(z -> plate(doors, bay, Face.RIGHT, z));
      }
      if (bay.right().equals(upright.mark())) {
        doors.plateHeights().forEach(z -> plate(doors, bay, Face.LEFT, z));
      }
    }
  }

  private void plate(Doors doors, BaySpace bay, Face face, Length height) {
    Length surface = upright.box().at(face);
    Length front = doors.plateSetback().minus(doors.plateWidth().over(2));
    Length bottom = height.minus(doors.plateLength().over(2));
    Box plate =
        Box.of(
            surface,
            surface,
            front,
            front.plus(doors.plateWidth()),
            bottom,
            bottom.plus(doors.plateLength()));
    add(plate, Kind.PLATE, "a hinge plate of bay " + bay.number());
  }

  /** Beyond each edge there is no wood, which is met like a cut there. */
  private void edges() {
    Box box = upright.box();
    Length out = box.size(Axis.Y);
    Length front = box.low().y();
    Length back = box.high().y();
    Length bottom = box.low().z();
    Length top = box.high().z();
    edge(box.with(Face.FRONT, front.minus(out)).with(Face.BACK, front), "the front edge");
    edge(box.with(Face.BACK, back.plus(out)).with(Face.FRONT, back), "the back edge");
    edge(box.with(Face.BOTTOM, bottom.minus(out)).with(Face.TOP, bottom), "the lower end");
    edge(box.with(Face.TOP, top.plus(out)).with(Face.BOTTOM, top), "the upper end");
  }

  private void edge(Box beyond, String name) {
    add(beyond, Kind.EDGE, name);
  }
}
