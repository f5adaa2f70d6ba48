package fourpin.strength.frame;

/**
 * A straight panel of a frame. It bends, and gives by shear as well, which of a hollow one is no
 * little: Timoshenko's beam, whose end stiffnesses {@code 6 E I / (L (1 + Φ))} and {@code 3 E I /
 * (L (1 + Φ / 4))}, {@code Φ = 12 E I / (G A L²)}, stand in Przemieniecki, Theory of Matrix
 * Structural Analysis (1968), ch. 5 (from memory).
 *
 * @param length between its ends, mm
 * @param bending E I, N·mm²
 * @param shear G A', N
 */
public record Member(double length, double bending, double shear) {

  /** Of what only bends. */
  public static final double NO_SHEAR = Double.POSITIVE_INFINITY;

  /** What does not bend at all. */
  public static final Member STIFF = new Member(1, Double.POSITIVE_INFINITY, NO_SHEAR);

  private static final double BENT_IN_S = 6;
  private static final double SHEARED_IN_S = 2;
  private static final double BENT_FROM_ONE_END = 3;

  /** How far its ends turn under 1 N·mm each, both the same way, radians. */
  public double inS() {
    return length / (BENT_IN_S * bending) + SHEARED_IN_S / (shear * length);
  }

  /** How far one end turns under 1 N·mm, the other end hinged, radians. */
  public double fromOneEnd() {
    return length / (BENT_FROM_ONE_END * bending) + 1 / (shear * length);
  }
}
