package fourpin.plan;

import fourpin.bench.Removal;
import fourpin.bench.Span;
import fourpin.bench.Surface;
import fourpin.bench.WorkedPiece;
import fourpin.measure.Length;
import java.util.List;

/**
 * Puts a worked piece into the case by what is written on it, and says where its cuts then are.
 *
 * <p>Works on plain numbers (picometres from the case's origin, axes 0 to 2) and shares nothing
 * with the code that lays parts on the bench, so that a mistake in either shows.
 */
final class PiecePlacer {

  private static final List<String> LOW = List.of("left", "front", "bottom");
  private static final List<String> HIGH = List.of("right", "back", "top");
  private static final int AXES = 3;

  /** Where the index corner lies, and for length, width and thickness the axis and its sense. */
  private final long[] corner = new long[AXES];

  private final int[] axis = new int[AXES];
  private final int[] sense = new int[AXES];
  private final WorkedPiece piece;

  /** A block in the case. @param low and {@code high} corner, by axis */
  record Block(List<Long> low, List<Long> high) {}

  /**
   * @param low and {@code high} corners of the place that the piece goes to
   * @throws IllegalArgumentException if the piece is not marked with three of its surfaces
   */
  PiecePlacer(WorkedPiece piece, long[] low, long[] high) {
    this.piece = piece;
    orient(0, Surface.INDEX_END, low, high);
    orient(1, Surface.INDEX_EDGE, low, high);
    orient(2, Surface.FACE, low, high);
  }

  private void orient(int direction, Surface surface, long[] low, long[] high) {
    String label = piece.labels().getOrDefault(surface, "");
    boolean lowSide = LOW.contains(label);
    int along = lowSide ? LOW.indexOf(label) : HIGH.indexOf(label);
    if (along < 0) {
      throw new IllegalArgumentException(
          "nothing on " + surface.words() + " of " + piece.mark() + " says where it looks");
    }
    axis[direction] = along;
    sense[direction] = lowSide ? 1 : -1;
    corner[along] = lowSide ? low[along] : high[along];
  }

  /** The whole piece. */
  Block whole() {
    return block(zeroTo(piece.length()), zeroTo(piece.width()), zeroTo(piece.thickness()));
  }

  Block block(Removal.Block cut) {
    return block(cut.length(), cut.width(), cut.thickness());
  }

  /** A hole's centre on its surface, as a block of no size. */
  Block centre(Removal.Bore bore) {
    Length deep = bore.surface() == Surface.FACE ? Length.ZERO : piece.thickness();
    return block(at(bore.length()), at(bore.width()), at(deep));
  }

  /** Which way a surface of the piece looks in the case: "left". */
  String looks(Surface surface) {
    return switch (surface) {
      case INDEX_END -> towards(0, true);
      case FAR_END -> towards(0, false);
      case INDEX_EDGE -> towards(1, true);
      case FAR_EDGE -> towards(1, false);
      case FACE -> towards(2, true);
      case REVERSE -> towards(2, false);
    };
  }

  private String towards(int direction, boolean near) {
    boolean low = (sense[direction] > 0) == near;
    return (low ? LOW : HIGH).get(axis[direction]);
  }

  private static Span zeroTo(Length length) {
    return new Span(Length.ZERO, length);
  }

  private static Span at(Length length) {
    return new Span(length, length);
  }

  private Block block(Span... spans) {
    Long[] low = new Long[AXES];
    Long[] high = new Long[AXES];
    for (int direction = 0; direction < AXES; direction++) {
      long a = place(direction, spans[direction].from());
      long b = place(direction, spans[direction].to());
      low[axis[direction]] = Math.min(a, b);
      high[axis[direction]] = Math.max(a, b);
    }
    return new Block(List.of(low), List.of(high));
  }

  private long place(int direction, Length distance) {
    return corner[axis[direction]] + sense[direction] * distance.picometres();
  }
}
