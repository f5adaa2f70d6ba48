package fourpin.strength.wood;

/**
 * A stiff dowel in a hole, pushed sideways outside of it: it turns, and presses on one side of the
 * hole near its mouth and on the other near its bottom. Johansen's theory of yield, which stands
 * behind both NDS 12.3.1 and EN 1995-1-1, 8.2; with no lever it gives their 0.414 for one member.
 *
 * @param diameter mm
 * @param depth in the wood, mm
 * @param lever from the wood's face to the push, mm
 */
public record DowelInWood(double diameter, double depth, double lever) {

  public static final String SHARE = "√((t + 2 e)² + t²) - t - 2 e";

  /** The push at which wood of a bearing strength in MPa yields, N. */
  public double yieldsAt(double bearing) {
    double reach = depth + 2 * lever;
    return bearing * diameter * (Math.hypot(reach, depth) - reach);
  }

  /** The most that a push bends the dowel while the wood bears it evenly, N·mm. */
  public double moment(double push, double bearing) {
    return push * (lever + push / (2 * bearing * diameter));
  }

  /** The push that bends the dowel so far, N. */
  public double pushOf(double moment, double bearing) {
    double even = bearing * diameter;
    return even * (Math.sqrt(lever * lever + 2 * moment / even) - lever);
  }
}
