package fourpin.job;

import fourpin.measure.Length;

/**
 * The size of a case.
 *
 * <p>{@code OUTSIDE}: over the sides; from the floor to the top of the case; from the front of the
 * sides, or of the face frame where there is one, to the back of everything. Overlay doors stand in
 * front of it. {@code INSIDE}: between the outer sides; from the bottom's upper face to the top's
 * lower face; from the front of the sides to the face of the back.
 */
public record Sizes(Measured measured, Length width, Length height, Length depth) {

  /** Where the sizes are taken. */
  public enum Measured {
    OUTSIDE,
    INSIDE
  }
}
