package fourpin.boring;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Two holes from both faces of an upright that lie over each other, with what the points of their
 * bits take beyond the full diameter.
 *
 * @param one bored from the left face, {@code other} from the right
 * @param axes how the two lie over each other
 * @param spot of the hole from the left face, without its point
 */
public record OppositeHoles(Part upright, Bored one, Bored other, Axes axes, Box spot) {

  /** A bay's holes and the point of the bit that bores them. */
  public record Bored(BayGrid grid, Length point) {}

  /** Whether the points of two bits aim at each other. */
  public enum Axes {
    SAME,
    /** Each point runs beside the other, towards the floor of the other hole. */
    BESIDE
  }

  /** The worst pair of each upright that has any. */
  public static List<OppositeHoles> of(BuiltCase built, List<Bored> bored) {
    return built.parts().stream().flatMap(p -> worst(built, p, bored).stream()).toList();
  }

  private static Optional<OppositeHoles> worst(BuiltCase built, Part part, List<Bored> bored) {
    List<OppositeHoles> pairs = new ArrayList<>();
    for (Bored one : facing(built, part, Face.LEFT, bored)) {
      for (Bored other : facing(built, part, Face.RIGHT, bored)) {
        pairs.addAll(pairs(part, one, other));
      }
    }
    return pairs.stream().min(Comparator.comparing(OppositeHoles::wood));
  }

  private static List<Bored> facing(BuiltCase built, Part part, Face face, List<Bored> bored) {
    return bored.stream()
        .filter(b -> !(b.grid().support() instanceof Support.Standards))
        .filter(b -> !(b.grid().support() instanceof Support.Cleats))
        .filter(b -> mark(built, b.grid(), face).equals(part.mark()))
        .toList();
  }

  private static String mark(BuiltCase built, BayGrid grid, Face face) {
    BaySpace bay = built.bays().get(grid.bay() - 1);
    return face == Face.RIGHT ? bay.left() : bay.right();
  }

  private static List<OppositeHoles> pairs(Part part, Bored one, Bored other) {
    List<OppositeHoles> pairs = new ArrayList<>();
    for (Outline.Disc a : holes(one.grid())) {
      for (Outline.Disc b : holes(other.grid())) {
        if (Outline.gap(a, b).isNegative()) {
          boolean same = a.y().equals(b.y()) && a.z().equals(b.z());
          Length face = part.box().at(Face.LEFT);
          Box spot = a.block(face, face.plus(one.grid().depth()));
          pairs.add(new OppositeHoles(part, one, other, same ? Axes.SAME : Axes.BESIDE, spot));
        }
      }
    }
    return pairs;
  }

  private static List<Outline.Disc> holes(BayGrid grid) {
    List<Outline.Disc> holes = new ArrayList<>();
    for (Row row : grid.rows()) {
      for (Level level : grid.levels()) {
        holes.add(new Outline.Disc(row.y(), level.height(), grid.diameter()));
      }
    }
    return holes;
  }

  /** Wood between the floors of both, points not counted; negative by what they share. */
  public Length web() {
    return upright.thickness().minus(one.grid().depth()).minus(other.grid().depth());
  }

  /** Wood between both, points counted; negative by what they share. */
  public Length wood() {
    return web().minus(points());
  }

  /** What the points take of the wood between the floors. */
  Length points() {
    return axes == Axes.SAME
        ? one.point().plus(other.point())
        : Length.max(one.point(), other.point());
  }

  /**
   * The deepest that holes over each other may be, so that both what is asked for between their
   * floors and what is asked for behind a point are left.
   *
   * @param points what the points of both bits take together
   */
  static Length deepest(Length thickness, Length points, Settings settings) {
    Length byFloors = thickness.minus(settings.length(Setting.LEAST_WEB)).over(2);
    Length byPoints = thickness.minus(settings.length(Setting.LEAST_FLOOR)).minus(points).over(2);
    return Length.min(byFloors, byPoints);
  }

  /** What is left, with its working. */
  public Figure figure(BuiltCase built) {
    return new Figure(
        Figure.id(built.order().name(), "boring", "points/" + upright.mark()),
        "wood left between opposite holes of " + upright.name() + ", points of the bits counted",
        Quantity.of(wood()),
        axes == Axes.SAME ? "t - d1 - p1 - d2 - p2" : "t - d1 - d2 - max(p1, p2)",
        List.of(
            Reporter.input("t", "thickness", upright.thickness(), Source.STATED),
            depth("d1", "left", built, one),
            Reporter.input("p1", "point of its bit", one.point(), Source.STATED),
            depth("d2", "right", built, other),
            Reporter.input("p2", "point of its bit", other.point(), Source.STATED)),
        Source.GEOMETRY);
  }

  /** Sleeves take their own length. */
  private static Figure.Input depth(String symbol, String face, BuiltCase built, Bored bored) {
    Source source =
        bored.grid().support() instanceof Support.Pins
            ? built.order().settings().source(Setting.HOLE_DEPTH)
            : Source.STATED;
    return Reporter.input(
        symbol, "depth of the hole from the " + face, bored.grid().depth(), source);
  }
}
