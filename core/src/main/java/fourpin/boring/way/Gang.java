package fourpin.boring.way;

import fourpin.casework.Face;
import fourpin.measure.Length;
import java.util.List;

/**
 * The two uprights of a bay as they lie side by side to be marked: front edges together, the faces
 * up that look into the bay, lower ends at one stop. A line squared across serves both.
 *
 * @param bay number
 * @param stop height of the stop above the foot of the case
 * @param panels left, then right
 */
public record Gang(int bay, Length stop, List<Laid> panels) {

  public Gang {
    panels = List.copyOf(panels);
  }

  /**
   * One of them.
   *
   * @param part mark
   * @param face that lies up
   * @param gap from the stop to the panel's lower end: thickness of a spacer; zero for none
   */
  public record Laid(String part, Face face, Length gap) {}
}
