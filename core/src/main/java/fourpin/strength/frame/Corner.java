package fourpin.strength.frame;

/**
 * Where the end of one panel meets another, and both bend: the joint and the two panels turn one
 * after the other (springs in series), each panel bent in an S with no bending half way.
 *
 * @param joint how stiffly it resists turning, N·mm for each radian
 * @param level E I of the panel that lies, N·mm²
 * @param span of it, mm
 * @param upright E I of the panel that stands, N·mm²
 * @param height of it between its ends, mm
 */
public record Corner(double joint, double level, double span, double upright, double height) {

  private static final double BENT_IN_S = 6;

  /** N·mm for each radian that the frame leans. */
  public double stiffness() {
    return 1 / (1 / joint + span / (BENT_IN_S * level) + height / (BENT_IN_S * upright));
  }
}
