package fourpin.boring;

import fourpin.boring.BayGrid.Row;
import fourpin.casework.Box;
import fourpin.measure.Length;

/**
 * Something in or on an upright that must keep its distance from other things there.
 *
 * @param from and {@code to}: the stretch of the upright's thickness that it takes; the same for
 *     what lies on a face
 * @param owner what it belongs to
 */
record Cut(Outline outline, Length from, Length to, Owner owner) {

  /** What a cut belongs to, and how it is called in findings. */
  sealed interface Owner {

    String name();

    /** A row of a bay's pattern. */
    record OfRow(BayGrid grid, Row row) implements Owner {
      @Override
      public String name() {
        return "the " + grid.purpose(row);
      }
    }

    /** Whatever a row must keep clear of. */
    record Obstacle(Kind kind, String name) implements Owner {}
  }

  /** Kinds of obstacle, each with the kind of the finding that it makes. */
  enum Kind {
    JOINT("hole-joint"),
    SCREW("hole-screw"),
    PANEL("hole-panel"),
    PLATE("hole-plate"),
    EDGE("hole-edge");

    private final String finding;

    Kind(String finding) {
      this.finding = finding;
    }

    String finding() {
      return finding;
    }
  }

  Box block() {
    return outline.block(from, to);
  }

  /** The wood between two cuts through the thickness: negative by what they share. */
  Length web(Cut other) {
    return Length.max(from, other.from).minus(Length.min(to, other.to));
  }

  /** Whether it takes no wood: it stands on the upright. */
  boolean isOnFace() {
    return depth().isZero();
  }

  /** Through the thickness. */
  Length depth() {
    return to.minus(from);
  }
}
