package fourpin.strength.frame;

import java.util.Optional;

/**
 * A frame that leans sideways, held by its corners, and by a panel once it has leant so far that
 * the panel stands against it. What stands on it helps to lean it.
 *
 * @param height from foot to head, mm
 * @param corners stiffness of all corners together, N·mm for each radian
 * @param panel stiffness of the panel, N·mm for each radian; nothing without one
 * @param free how far it leans until the panel holds, radians
 * @param burden Σ weight times height of what leans with it, N·mm
 */
public record SwayFrame(double height, double corners, double panel, double free, double burden)
    implements Frame {

  /** A lean over this share of the height breaks joints; then the frame falls. */
  public static final double MOST_LEAN = 0.1;

  @Override
  public Optional<Double> sway(double push) {
    double lean = lean(push * height);
    return lean <= MOST_LEAN ? Optional.of(height * lean) : Optional.empty();
  }

  private double lean(double moment) {
    double alone = corners - burden;
    double both = alone + panel;
    if (alone > 0 && moment / alone <= free) {
      return moment / alone;
    }
    return both > 0 ? (moment + panel * free) / both : Double.POSITIVE_INFINITY;
  }

  @Override
  public double reserve() {
    return (corners + panel) / burden;
  }

  /** Where its panel does not hold. */
  public SwayFrame bare() {
    return new SwayFrame(height, corners, 0, 0, burden);
  }

  @Override
  public SwayFrame above() {
    return this;
  }
}
