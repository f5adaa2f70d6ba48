package fourpin.casework;

import java.util.List;

/**
 * The space of one bay.
 *
 * @param number from the left, from 1
 * @param clear between the uprights, from the bottom's upper face to the top's lower face, from the
 *     front of the sides to the face of the back
 * @param left mark of the upright on the left, {@code right} of the one on the right
 * @param openings the bay divided by its fixed shelves, from the bottom up; at least one
 */
public record BaySpace(int number, Box clear, String left, String right, List<Opening> openings) {

  public BaySpace {
    openings = List.copyOf(openings);
  }

  /**
   * A part of a bay between two fixed panels.
   *
   * @param below mark of the panel under it, {@code above} of the one over it
   */
  public record Opening(Box clear, String below, String above) {}
}
