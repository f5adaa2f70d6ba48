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
   * Takes out one channel along the piece in passes, side by side and one below the other, as a
   * router or a saw with a narrower cut does it.
   *
   * @param surface the face or the reverse
   * @param along measured from the index end
   * @param cut width of each pass
   * @param passes in the order of work
   */
  record Passes(
      String piece,
      Channel.Shape shape,
      Surface surface,
      Span along,
      Length cut,
      List<Pass> passes,
      String purpose)
      implements Step {
    public Passes {
      passes = List.copyOf(passes);
    }
  }

  /**
   * One pass.
   *
   * @param fence from the index edge to the near side of the cut
   * @param depth from the surface
   */
  record Pass(Length fence, Length depth) {}

  /**
   * Rips a piece in two along its length, through holes on the line of the cut too.
   *
   * @param first mark of what lies at the index edge, {@code second} of the rest
   * @param width of the first; the second is as wide as the kerf leaves it
   */
  record Rip(String piece, String first, String second, Length width, Length kerf)
      implements Step {}

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
