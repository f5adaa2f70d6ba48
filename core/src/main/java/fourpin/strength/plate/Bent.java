package fourpin.strength.plate;

import java.util.List;

/** How a plate lies under its loads. */
public sealed interface Bent permits BentPlate, OneSided {

  /** What is bent. */
  Plate plate();

  /** How far a place lies below the tops of level supports, mm. */
  double deflection(double x, double y);

  /**
   * How far the crossing of its mesh that goes down most lies below the tops of the supports, mm.
   */
  double deepest();

  /** How hard each support pushes, in the order of the plate's supports, N. */
  List<Double> reactions();

  /** How many supports it has lifted off. */
  default int lifted() {
    return (int) reactions().stream().filter(push -> push <= 0).count();
  }

  /**
   * Moments at a place, from the nearest points where the elements tell each curvature best. Right
   * under a point load or a support they have no bound, and what is given there says nothing.
   */
  Moments moments(double x, double y);

  /** How strongly it bends along x, 1/mm; positive where the underside is pulled. */
  double curvature(double x, double y);

  /** The force in each strip at {@code x}, N; positive pulls. */
  List<Double> stripForces(double x);

  /** How far the strips' pull stretches the middle of the panel along x. */
  double panelStrain(double x, double y);

  /** Where along it to look for what is most; on its left half, where both are alike. */
  List<Double> alongX();

  /** Likewise over its depth, from edge to edge. */
  List<Double> alongY();

  /** Whether a place is nearer to a support that pushes than {@code distance}. */
  default boolean isNearSupport(double x, double y, double distance) {
    List<Double> pushes = reactions();
    for (int i = 0; i < pushes.size(); i++) {
      Plate.Support support = plate().supports().get(i);
      if (pushes.get(i) > 0 && Math.hypot(support.x() - x, support.y() - y) < distance) {
        return true;
      }
    }
    return false;
  }

  /**
   * Moments for each mm of width, N.
   *
   * @param x bends along x; positive where the underside is pulled
   * @param y bends along y
   * @param twist of both
   */
  record Moments(double x, double y, double twist) {

    /** The largest of any direction, of whichever sign. */
    public double principal() {
      return Math.abs(x + y) / 2 + Math.hypot((x - y) / 2, twist);
    }

    Moments plus(Moments other) {
      return new Moments(x + other.x, y + other.y, twist + other.twist);
    }
  }
}
