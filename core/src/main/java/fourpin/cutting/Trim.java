package fourpin.cutting;

import fourpin.measure.Length;

/**
 * What is lost at each edge of a sheet before parts are cut from it, each at least zero. It is all
 * that goes: the strip that falls off and the kerf of the trimming cut. A trim below the kerf means
 * that part of the blade runs in air.
 */
public record Trim(Length nearEdge, Length farEdge, Length nearEnd, Length farEnd) {

  public static final Trim NONE = allRound(Length.ZERO);

  public Trim {
    for (Length off : new Length[] {nearEdge, farEdge, nearEnd, farEnd}) {
      Require.notNegative(off, "trim");
    }
  }

  public static Trim allRound(Length off) {
    return new Trim(off, off, off, off);
  }

  /** Trim at both ends and none at the long edges, as for boards. */
  public static Trim ends(Length off) {
    return new Trim(Length.ZERO, Length.ZERO, off, off);
  }

  public Length at(Edge edge) {
    return switch (edge) {
      case NEAR_EDGE -> nearEdge;
      case FAR_EDGE -> farEdge;
      case NEAR_END -> nearEnd;
      case FAR_END -> farEnd;
    };
  }
}
