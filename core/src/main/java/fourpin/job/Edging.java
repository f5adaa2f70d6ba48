package fourpin.job;

import fourpin.measure.Length;
import java.util.List;

/**
 * What covers the edges of a part.
 *
 * @param material of a strip, from the job's materials; of banding, a description
 * @param thickness how far it stands out from the edge; taken off the part's cut size
 * @param height of a strip, equal to the part's thickness or more (tops flush); of banding, the
 *     part's thickness
 */
public record Edging(
    Kind kind, String material, Length thickness, Length height, List<Edge> edges) {

  public Edging {
    edges = List.copyOf(edges);
  }

  /**
   * A strip of solid wood is cut from boards and stiffens the part; banding is bought by length and
   * does not.
   */
  public enum Kind {
    STRIP,
    BANDING
  }

  /** Edges of a part as it stands in the case; for uprights left and right mean bottom and top. */
  public enum Edge {
    FRONT,
    BACK,
    LEFT,
    RIGHT
  }
}
