package fourpin.strength.plate;

import java.util.Arrays;
import java.util.List;

/** A plate under its loads. */
public final class BentPlate implements Bent {

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

  @Override
  public Plate plate() {
    return plate;
  }

  /** How far the crossings of the mesh lie below the tops of level supports, mm. */
  double[] crossings() {
    double[] crossings = new double[field.length / Mesh.UNKNOWNS];
    for (int i = 0; i < crossings.length; i++) {
      crossings[i] = field[Mesh.UNKNOWNS * i];
    }
    return crossings;
  }

  @Override
  public double deepest() {
    return Arrays.stream(crossings()).max().orElseThrow();
  }

  @Override
  public double deflection(double x, double y) {
    return mesh.weights(x, y, 0, 0).of(field);
  }

  @Override
  public List<Double> reactions() {
    return Arrays.stream(pushes).boxed().toList();
  }

  @Override
  public Moments moments(double x, double y) {
    Rigidity d = rigidity(y);
    double alongX = curvature(x, y, 2, 0);
    double alongY = curvature(x, y, 0, 2);
    return new Moments(
        d.alongX() * alongX + d.coupling() * alongY,
        d.coupling() * alongX + d.alongY() * alongY,
        -2 * d.twist() * curvature(x, y, 1, 1));
  }

  @Override
  public List<Double> alongX() {
    return mesh.x().stations();
  }

  @Override
  public List<Double> alongY() {
    return mesh.y().stations();
  }

  @Override
  public double curvature(double x, double y) {
    return curvature(x, y, 2, 0);
  }

  @Override
  public List<Double> stripForces(double x) {
    return plate.strips().stream()
        .flatMapToDouble(strips -> Arrays.stream(strips.forces(atStrips(x, strips))))
        .boxed()
        .toList();
  }

  @Override
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
