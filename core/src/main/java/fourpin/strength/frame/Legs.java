package fourpin.strength.frame;

/**
 * What carries a {@link SwayFrame} that stands off the floor: its uprights go on below its lowest
 * panel, and stand on the floor free to turn. An upright turns in that panel's joint, and is bent
 * above and below it: above as far as the head of the frame, where nothing is taken to hold it from
 * turning.
 *
 * @param height from the floor to the lowest panel, mm
 * @param joints how stiffly that panel's joints resist turning, all together, N·mm for each radian
 * @param above stiffness of all uprights above it against being turned there, N·mm for each radian
 * @param below stiffness of all uprights below it against the same, N·mm for each radian
 * @param brace stiffness of what else holds the legs square, N·mm for each radian
 * @param burden Σ weight times height over the floor, at most {@code height}, N·mm
 */
public record Legs(
    double height, double joints, double above, double below, double brace, double burden) {

  /** What they add to the frame above while they stand upright, N·mm for each radian. */
  public double upright() {
    return above * (joints + below) / turned();
  }

  /** How they resist leaning while the frame above stands upright, N·mm for each radian. */
  public double leaning() {
    return brace + below * (joints + above) / turned();
  }

  /** Turning moment on the one for a lean of the other, N·mm for each radian. */
  public double coupling() {
    return above * below / turned();
  }

  private double turned() {
    return joints + above + below;
  }
}
