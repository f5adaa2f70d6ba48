package fourpin.job;

import fourpin.measure.Length;
import java.util.List;

/**
 * The adjustable shelves of one bay.
 *
 * @param edging part of the shelf's finished size
 * @param frontSetback from the front of the case's sides to the front of the shelf, edging included
 */
public record Shelves(Placing placing, String material, List<Edging> edging, Length frontSetback) {

  public Shelves {
    edging = List.copyOf(edging);
  }

  /** Where they are put first. */
  public sealed interface Placing {

    /** So many, with openings as equal as the holes allow. */
    record Evenly(int count) implements Placing {}

    /** Each at the hole nearest to a height: the upper face above the foot of the case. */
    record AtHeights(List<Length> heights) implements Placing {
      public AtHeights {
        heights = List.copyOf(heights);
      }
    }
  }
}
