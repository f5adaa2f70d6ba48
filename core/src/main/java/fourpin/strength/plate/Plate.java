package fourpin.strength.plate;

import java.util.List;
import java.util.Optional;

/**
 * A rectangular thin plate, what holds it, and the strips that stiffen it. Shear across its
 * thickness is left out.
 *
 * @param length along x
 * @param bands from the front edge to the back, each of one rigidity over the whole length
 * @param strips that hang below the middle of the panel; none if all lies in one plane
 * @param edges how each edge is held; either none or enough to hold the plate by themselves
 * @param supports that push and never pull
 */
public record Plate(
    double length, List<Band> bands, Optional<Strips> strips, Edges edges, List<Support> supports) {

  /** A part of the depth. */
  public record Band(double depth, Rigidity rigidity) {}

  /** A point that the plate rests on and may lift off. */
  public record Support(double x, double y) {}

  /** How an edge is held over its whole length. */
  public enum Hold {
    FREE,
    HINGED,
    CLAMPED
  }

  /** How the edges are held. */
  public record Edges(Hold left, Hold right, Hold front, Hold back) {

    public static final Edges FREE = all(Hold.FREE);

    public static Edges all(Hold hold) {
      return new Edges(hold, hold, hold, hold);
    }

    /** The two ends held alike, front and back free. */
    public static Edges ends(Hold hold) {
      return new Edges(hold, hold, Hold.FREE, Hold.FREE);
    }
  }

  /**
   * @throws IllegalArgumentException if nothing is there to bend, or a support stands beside it
   */
  public Plate {
    bands = List.copyOf(bands);
    supports = List.copyOf(supports);
    if (!(length > 0) || bands.isEmpty() || bands.stream().anyMatch(b -> !(b.depth() > 0))) {
      throw new IllegalArgumentException("a plate has a size: " + length + ", " + bands);
    }
    double depth = bands.stream().mapToDouble(Band::depth).sum();
    for (Support support : supports) {
      if (!(support.x() >= 0
          && support.x() <= length
          && support.y() >= 0
          && support.y() <= depth)) {
        throw new IllegalArgumentException("a plate rests on nothing beside it: " + support);
      }
    }
  }

  /** Of one rigidity throughout. */
  public static Plate even(
      double length, double depth, Rigidity rigidity, Edges edges, List<Support> supports) {
    return new Plate(length, List.of(new Band(depth, rigidity)), Optional.empty(), edges, supports);
  }

  /** From the front edge to the back. */
  public double depth() {
    return bands.stream().mapToDouble(Band::depth).sum();
  }

  /** An even load over the whole of it, in MPa. */
  public PlateLoad evenly(double pressure) {
    return new PlateLoad.Patch(pressure, 0, length, 0, depth());
  }
}
