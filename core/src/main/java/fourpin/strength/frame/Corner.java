package fourpin.strength.frame;

/**
 * Where the end of one panel meets another, and both bend: the joint and the two panels turn one
 * after the other (springs in series), each panel bent in an S with no bending half way.
 *
 * @param joint how stiffly it resists turning, N·mm for each radian
 * @param level the panel that lies
 * @param upright the panel that stands
 */
public record Corner(double joint, Member level, Member upright) {

  /** N·mm for each radian that the frame leans. */
  public double stiffness() {
    return 1 / (1 / joint + level.inS() + upright.inS());
  }
}
