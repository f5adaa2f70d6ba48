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
    PieceLayout layout = PieceLayout.of(part);
    String surface = layout.surface(up).words();
    String hand = hand(part, up).word();
    String end = "the index end (" + layout.indexEnd() + ")";
    String edge = "the index edge (" + layout.indexEdge() + ")";
    return BenchProgram.boresAfterAssembly(built)
        ? "The case stands. Work on "
            + surface
            + " of "
            + part.mark()
            + ", which looks "
            + up.name().toLowerCase(Locale.ROOT)
            + ": "
            + end
            + " is below, "
            + edge
            + " on your "
            + hand
            + "."
        : "Lay "
            + part.mark()
            + " with "
            + surface
            + " up, "
            + end
            + " towards you: "
            + edge
            + " is then on your "
            + hand
            + ".";
  }

  /** Where the index edge is. */
  static Hand hand(Part part, Face up) {
    PieceLayout layout = PieceLayout.of(part);
    return Hand.of(up, layout.indexEnd(), layout.indexEdge());
  }
}
