package fourpin.strength.plate;

import java.util.Arrays;
import java.util.List;

/** A plate under its loads. */
public final class BentPlate {

  /** Where an element tells curvature best, as shares of its side (points of Gauss's rule). */
  private static final double TRUE = (1 - 1 / Math.sqrt(3)) / 2;

  private static final double ON_LINE = 1e-6;

  /** Likewise for edges, which are asked for from a little inside. */
  private static final double ON_EDGE = 1e-4;

  private final Plate plate;
  private final Mesh mesh;
  private final double[] field;
  private final double[] pushes;

  BentPlate(Plate plate, Mesh mesh, double[] field, double[] pushes) {
    this.plate = plate;
    this.mesh = mesh;
    this.field = field;
    this.pushes = pushes;
  }

  /**
   * Moments for each mm of width, N.
   *
   * @param x bends along x; positive where the underside is pulled
   * @param y bends along y
   * @param twist of both
   */
  public record Moments(double x, double y, double twist) {

    /** The largest of any direction, of whichever sign. */
    public double principal() {
      return Math.abs(x + y) / 2 + Math.hypot((x - y) / 2, twist);
    }
  }

  /** How far it lies below the tops of level supports, mm. */
  public double deflection(double x, double y) {
    return mesh.weights(x, y, 0, 0).of(field);
  }

  /** How hard each support pushes, in the order of the plate's supports, N. */
  public List<Double> reactions() {
    return Arrays.stream(pushes).boxed().toList();
  }

  /** How many supports it has lifted off. */
  public int lifted() {
    int lifted = 0;
    for (double push : pushes) {
      lifted += push <= 0 ? 1 : 0;
    }
    return lifted;
  }

  /**
   * Moments at a place, from the nearest points where the elements tell each curvature best. Right
   * under a point load or a support they have no bound, and what is given there says nothing.
   */
  public Moments moments(double x, double y) {
    Rigidity d = rigidity(y);
    double alongX = curvature(x, y, 2, 0);
    double alongY = curvature(x, y, 0, 2);
    return new Moments(
        d.alongX() * alongX + d.coupling() * alongY,
        d.coupling() * alongX + d.alongY() * alongY,
        -2 * d.twist() * curvature(x, y, 1, 1));
  }

  /** Where along it to look for what is most; of a mirrored plate on its left half. */
  public List<Double> alongX() {
    return mesh.x().stations();
  }

  /** Likewise over its depth, from edge to edge. */
  public List<Double> alongY() {
    return mesh.y().stations();
  }

  /** Whether a place is nearer to a support that pushes than {@code distance}. */
  public boolean isNearSupport(double x, double y, double distance) {
    for (int i = 0; i < pushes.length; i++) {
      Plate.Support support = plate.supports().get(i);
      if (pushes[i] > 0 && Math.hypot(support.x() - x, support.y() - y) < distance) {
        return true;
      }
    }
    return false;
  }

  /** How strongly it bends along x, 1/mm; positive where the underside is pulled. */
  public double curvature(double x, double y) {
    return curvature(x, y, 2, 0);
  }

  /** The force in each strip at {@code x}, N; positive pulls. */
  public List<Double> stripForces(double x) {
    return plate.strips().stream()
        .flatMapToDouble(strips -> Arrays.stream(strips.forces(atStrips(x, strips))))
        .boxed()
        .toList();
  }

  /** How far the strips' pull stretches the middle of the panel along x. */
  public double panelStrain(double x, double y) {
    return plate.strips().stream()
        .mapToDouble(strips -> strips.panelStrain(y, strips.forces(atStrips(x, strips))))
        .sum();
  }

  private double[] atStrips(double x, Strips strips) {
    return strips.strips().stream().mapToDouble(s -> curvature(x, s.y())).toArray();
  }

  private double curvature(double x, double y, int derivativeX, int derivativeY) {
    List<Double> alongX = derivativeX == 2 ? truest(x) : List.of(x);
    List<Double> alongY = derivativeY == 2 ? truest(mesh.y(), y) : List.of(y);
    double sum = 0;
    for (double atX : alongX) {
      for (double atY : alongY) {
        sum -= mesh.weights(atX, atY, derivativeX, derivativeY).of(field);
      }
    }
    return sum / (alongX.size() * alongY.size());
  }

  /** Along x; on the line where a half begins that is the image of the other, those of both. */
  private List<Double> truest(double x) {
    if (mesh.isImage(x)) {
      return truest(mesh.mirrored(x)).stream().map(mesh::mirrored).toList();
    }
    if (mesh.fold() != Fold.WHOLE && mesh.isMiddle(x)) {
      double point = last(mesh.x(), mesh.x().spaces() - 1);
      return List.of(point, mesh.mirrored(point));
    }
    return truest(mesh.x(), x);
  }

  /**
   * The best point nearest to a place; on a line of the mesh, those on both sides. On an edge, the
   * edge itself: what is best inside is not what the edge has, where bending across it may end.
   */
  private static List<Double> truest(Lines lines, double place) {
    int space = lines.space(place);
    double share = (place - lines.start(space)) / lines.side(space);
    if ((share < ON_EDGE && space == 0) || (share > 1 - ON_EDGE && space == lines.spaces() - 1)) {
      return List.of(place);
    }
    if (share < ON_LINE) {
      return List.of(last(lines, space - 1), first(lines, space));
    }
    if (share > 1 - ON_LINE) {
      return List.of(last(lines, space), first(lines, space + 1));
    }
    return List.of(share < 0.5 ? first(lines, space) : last(lines, space));
  }

  private static double first(Lines lines, int space) {
    return lines.start(space) + TRUE * lines.side(space);
  }

  private static double last(Lines lines, int space) {
    return lines.end(space) - TRUE * lines.side(space);
  }

  private Rigidity rigidity(double y) {
    double edge = 0;
    for (Plate.Band band : plate.bands()) {
      edge += band.depth();
      if (y < edge) {
        return band.rigidity();
      }
    }
    return plate.bands().getLast().rigidity();
  }
}
