package fourpin.bench;

import fourpin.measure.Length;
import java.util.List;
import java.util.Map;

/** One thing done at the bench. Pieces are called by the mark that is written on them. */
public sealed interface Step {

  /** Gets a piece out of its stock. */
  record CutToSize(String piece, String stock, Length length, Length width, Length thickness)
      implements Step {}

  /** Writes on surfaces of a piece which way they will look. */
  record MarkSurfaces(String piece, Map<Surface, String> labels) implements Step {
    public MarkSurfaces {
      labels = Map.copyOf(labels);
    }
  }

  /**
   * Glues something onto an edge or end, from one end of it to the other.
   *
   * @param thickness by which the piece grows
   */
  record Band(String piece, Surface surface, String what, Length thickness) implements Step {}

  /**
   * Takes out a block.
   *
   * @param surface that it is worked from
   * @param along on faces and edges measured from the index end, on ends from the index edge
   * @param across on faces measured from the index edge, on edges and ends from the face
   */
  record Channel(
      String piece,
      Shape shape,
      Surface surface,
      Span along,
      Span across,
      Length depth,
      String purpose)
      implements Step {

    /** Names of channels. */
    public enum Shape {
      DADO,
      GROOVE,
      RABBET,
      NOTCH
    }
  }

  /**
   * Bores a row of holes square into the face or the reverse.
   *
   * @param line how the row runs
   * @param offset of the row from the index edge (rows along) or index end (rows across)
   * @param depth to the full diameter
   */
  record BoreRow(
      String piece,
      Surface surface,
      Line line,
      Length offset,
      Spacing spacing,
      Length diameter,
      Length depth,
      String purpose)
      implements Step {

    /** How a row runs on its piece. */
    public enum Line {
      ALONG,
      ACROSS
    }
  }

  /**
   * Marks a stick with distances from its zero.
   *
   * @param marks of holes, rising
   * @param ends where the index ends of pieces come, other than at zero; negative where a piece
   *     begins before the stick's zero
   */
  record MarkStick(String stick, List<Length> marks, List<Length> ends) implements Step {
    public MarkStick {
      marks = List.copyOf(marks);
      ends = List.copyOf(ends);
    }
  }
}
