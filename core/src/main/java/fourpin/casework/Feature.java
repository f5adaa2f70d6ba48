package fourpin.casework;

import fourpin.measure.Length;

/** What is taken out of a part. */
public sealed interface Feature {

  /** The face that it is worked from. */
  Face face();

  /** What it is for, in words for the bench: "bottom", "back", "front row, bay 2". */
  String purpose();

  /** The same, moved along an axis together with its part. */
  Feature shifted(Axis axis, Length by);

  /**
   * Wood removed as a block. @param volume inside the part's finished box, reaching its {@code
   * face}
   */
  record Channel(Kind kind, Face face, Box volume, String purpose) implements Feature {

    /** Kinds of channel. */
    public enum Kind {
      /** Across the grain. */
      DADO,
      /** Along the grain. */
      GROOVE,
      /** At an end or edge, open to it. */
      RABBET,
      /** Through the whole thickness, at a corner or edge. */
      NOTCH
    }

    @Override
    public Channel shifted(Axis axis, Length by) {
      return new Channel(kind, face, volume.shifted(axis, by), purpose);
    }
  }

  /**
   * A round hole square to its face.
   *
   * @param centre on the face; beyond its edge where part of a hole is wanted, as in a strip that
   *     is bored as a blank of two and ripped through the holes: half a kerf outside
   * @param depth to the full diameter; the part's thickness for a through hole
   */
  record Hole(Use use, Face face, Point centre, Length diameter, Length depth, String purpose)
      implements Feature {

    /** What a hole is for. */
    public enum Use {
      SUPPORT,
      SCREW
    }

    @Override
    public Hole shifted(Axis axis, Length by) {
      return new Hole(use, face, centre.shifted(axis, by), diameter, depth, purpose);
    }
  }
}
