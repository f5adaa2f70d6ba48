package fourpin.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How pieces and guides lie to each other, from the words that say which way surfaces will look.
 */
final class Looks {

  private static final List<String> LOW = List.of("left", "front", "bottom");
  private static final List<String> HIGH = List.of("right", "back", "top");
  private static final int AXES = 3;

  private Looks() {}

  /**
   * The side of a guide that shows, or nothing as long as the piece's face, index end and index
   * edge are not all marked with ways that are square to each other.
   */
  static Optional<Step.ClampGuide.Side> showing(WorkedPiece piece, Step.ClampGuide clamp) {
    int hand =
        hand(piece.labels())
            * sense(clamp.ends(), Surface.INDEX_END)
            * sense(clamp.edges(), Surface.INDEX_EDGE)
            * (clamp.surface() == Surface.FACE ? 1 : -1);
    return hand == 0
        ? Optional.empty()
        : Optional.of(hand > 0 ? Step.ClampGuide.Side.A : Step.ClampGuide.Side.B);
  }

  /**
   * On which hand of a panel, seen from above with its end at the stop towards you, the edge lies
   * that meets the other panel's: 1 or -1, and 0 as long as its surfaces are not marked.
   */
  static int meetingHand(WorkedPiece piece, Step.Laid laid) {
    return hand(piece.labels())
        * (laid.up() == Surface.FACE ? 1 : -1)
        * (laid.end() == Surface.INDEX_END ? 1 : -1)
        * (laid.edge() == Surface.INDEX_EDGE ? 1 : -1);
  }

  /** 1 where guide and piece run the same way. */
  private static int sense(Step.Against against, Surface index) {
    return (against.ofGuide() == index) == (against.ofPiece() == index) ? 1 : -1;
  }

  /**
   * 1 for a piece that, seen on its face with the index end to the left, has its index edge towards
   * you, -1 where it is away: the triple product of the ways that end, edge and face look, since
   * lengths and widths run away from end and edge and both turn round.
   */
  private static int hand(Map<Surface, String> labels) {
    int[] a = way(labels.getOrDefault(Surface.INDEX_END, ""));
    int[] b = way(labels.getOrDefault(Surface.INDEX_EDGE, ""));
    int[] c = way(labels.getOrDefault(Surface.FACE, ""));
    return a[0] * (b[1] * c[2] - b[2] * c[1])
        + a[1] * (b[2] * c[0] - b[0] * c[2])
        + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }

  private static int[] way(String word) {
    int[] way = new int[AXES];
    if (LOW.contains(word)) {
      way[LOW.indexOf(word)] = -1;
    } else if (HIGH.contains(word)) {
      way[HIGH.indexOf(word)] = 1;
    }
    return way;
  }
}
