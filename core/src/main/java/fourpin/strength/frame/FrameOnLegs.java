package fourpin.strength.frame;

import java.util.Optional;

/**
 * A frame on legs, pushed sideways: both lean, each with the other's help or against it, and what
 * they carry helps to lean them. Two equations of equilibrium, one for each lean.
 */
public record FrameOnLegs(SwayFrame above, Legs legs) implements Frame {

  /**
   * Radians.
   *
   * @param above of the frame
   * @param below of its legs
   */
  public record Lean(double above, double below) {
    private double most() {
      return Math.max(Math.abs(above), Math.abs(below));
    }
  }

  @Override
  public double height() {
    return above.height() + legs.height();
  }

  @Override
  public Optional<Double> sway(double push) {
    return lean(push).map(lean -> above.height() * lean.above() + legs.height() * lean.below());
  }

  /** Nothing where it falls. */
  public Optional<Lean> lean(double push) {
    return withoutPanel(push)
        .or(() -> lean(push, above.panel(), above.panel() * above.free()))
        .filter(lean -> lean.most() <= SwayFrame.MOST_LEAN);
  }

  /** Whether the frame leans so far that its panel holds. */
  public boolean isPanelReached(double push) {
    return withoutPanel(push).isEmpty();
  }

  private Optional<Lean> withoutPanel(double push) {
    return lean(push, 0, 0).filter(lean -> lean.above() <= above.free());
  }

  private Optional<Lean> lean(double push, double panel, double gained) {
    double one = above.corners() + legs.upright() + panel - above.burden();
    double other = legs.leaning() - legs.burden();
    double coupled = legs.coupling();
    double both = one * other - coupled * coupled;
    double moment = push * above.height() + gained;
    double under = push * legs.height();
    return one > 0 && both > 0
        ? Optional.of(
            new Lean(
                (other * moment + coupled * under) / both, (one * under + coupled * moment) / both))
        : Optional.empty();
  }

  /** The lesser root of the two equations without a push. */
  @Override
  public double reserve() {
    double one = (above.corners() + legs.upright() + above.panel()) / above.burden();
    double other = legs.leaning() / legs.burden();
    double coupled = legs.coupling() * legs.coupling() / (above.burden() * legs.burden());
    return (one + other - Math.sqrt((one - other) * (one - other) + 4 * coupled)) / 2;
  }
}
