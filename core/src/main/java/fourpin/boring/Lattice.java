package fourpin.boring;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The heights at which a case may have holes: one start and one pitch for all bays, so that shelves
 * of neighbouring bays line up whatever fixed shelves there are.
 *
 * @param start height of the lowest hole above the foot of the case
 * @param pitch from hole to hole; more than zero
 */
record Lattice(Length start, Length pitch) {

  Lattice raised(Length up) {
    return new Lattice(start.plus(up), pitch);
  }

  /** The heights from {@code low} to {@code high}, both included, from the bottom up. */
  List<Length> within(Length low, Length high) {
    List<Length> heights = new ArrayList<>();
    for (Length at = firstFrom(low); !at.isMoreThan(high); at = at.plus(pitch)) {
      heights.add(at);
    }
    return heights;
  }

  private Length firstFrom(Length low) {
    Length past = low.minus(start).remainder(pitch);
    Length next = past.isZero() ? low : low.plus(pitch).minus(past);
    return Length.max(start, next);
  }

  /**
   * How far the holes of a panel turned end for end miss those of one that is not.
   *
   * @param ends sum of the heights of the panel's two ends
   */
  Length missWhenTurned(Length ends) {
    Length over = over(ends);
    return Length.min(over, pitch.minus(over));
  }

  /** The nearest start, at or above this one, whose rows are the same from both ends. */
  Lattice balancedUpwards(Length ends) {
    return new Lattice(start.plus(over(ends).over(2)), pitch);
  }

  /** The nearest start, above or below this one, whose rows are the same from both ends. */
  Lattice balancedNearest(Length ends) {
    Length up = over(ends).over(2);
    Length down = pitch.minus(over(ends)).over(2);
    return up.isMoreThan(down)
        ? new Lattice(start.minus(down), pitch)
        : new Lattice(start.plus(up), pitch);
  }

  /** What is left between the ends when the start is taken at both and whole pitches between. */
  private Length over(Length ends) {
    return ends.minus(start.times(2)).remainder(pitch);
  }
}
