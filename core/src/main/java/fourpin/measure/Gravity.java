package fourpin.measure;

/** What makes a weight of a mass. */
public final class Gravity {

  /** Standard gravity, m/s²: 3rd General Conference on Weights and Measures (1901). */
  public static final double STANDARD = 9.80665;

  private Gravity() {}
}
