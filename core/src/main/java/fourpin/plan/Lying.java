package fourpin.plan;

import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Hand;
import fourpin.casework.Part;
import java.util.Locale;

/** How an upright lies while its rows are bored, or stands where they are bored in the case. */
final class Lying {

  private Lying() {}

  /**
   * One sentence.
   *
   * @param up the face that is bored
   */
  static String words(BuiltCase built, Part part, Face up) {
    return BenchProgram.boresAfterAssembly(built) ? standing(part, up) : onBench(part, up);
  }

  private static String standing(Part part, Face up) {
    PieceLayout layout = PieceLayout.of(part);
    return "The case stands. Work on "
        + layout.surface(up).words()
        + " of "
        + part.mark()
        + ", which looks "
        + up.name().toLowerCase(Locale.ROOT)
        + ": the index end ("
        + layout.indexEnd()
        + ") is below, the index edge ("
        + layout.indexEdge()
        + ") on your "
        + hand(part, up).word()
        + ".";
  }

  /** One sentence, of a part that lies on the bench however its case is bored. */
  static String onBench(Part part, Face up) {
    PieceLayout layout = PieceLayout.of(part);
    return "Lay "
        + part.mark()
        + " with "
        + layout.surface(up).words()
        + " up, the index end ("
        + layout.indexEnd()
        + ") towards you: the index edge ("
        + layout.indexEdge()
        + ") is then on your "
        + hand(part, up).word()
        + ".";
  }

  /** Where the index edge is. */
  static Hand hand(Part part, Face up) {
    PieceLayout layout = PieceLayout.of(part);
    return Hand.of(up, layout.indexEnd(), layout.indexEdge());
  }
}
