package fourpin.strength.frame;

/**
 * A thin panel that keeps a frame square. Stiffness is the moment, N·mm, that leans the frame by
 * one radian: push times height over lean.
 *
 * @param width mm
 * @param height mm
 * @param thickness mm
 * @param shear modulus in its plane, MPa
 * @param elastic the lower of its moduli of elasticity, MPa
 */
public record ShearPanel(
    double width, double height, double thickness, double shear, double elastic) {

  /** What a jammed panel carries of itself from corner to corner, as a share of its diagonal. */
  private static final double STRUT = 0.1;

  /** Glued all round: it shears alone. {@code G t b h} */
  public double glued() {
    return shear * thickness * width * height;
  }

  /**
   * Fastened all round, each fastener of an edge sliding alike: the frame leans by {@code v / (G t)
   * + 2 (v s / k) (1 / b + 1 / h)}, v the push over the width. The slips of a real panel part
   * themselves in a stiffer way, so that this is cautious; for a sheet of 4 x 8 ft it is the term
   * 0.75 h e of the building codes.
   *
   * @param spacing from fastener to fastener, mm
   * @param slip stiffness of one fastener, N/mm
   */
  public double fastened(double spacing, double slip) {
    double lean = 1 / (shear * thickness) + 2 * spacing / slip * (1 / width + 1 / height);
    return width * height / lean;
  }

  /**
   * Loose in grooves, once its corners have come to the grooves' floors: a strut from corner to
   * corner, a tenth of the diagonal wide. {@code E t w b² h² / d³}
   */
  public double jammed() {
    double diagonal = Math.hypot(width, height);
    double strut = elastic * thickness * STRUT;
    return strut * width * width * height * height / (diagonal * diagonal);
  }

  /**
   * How far a frame leans until the corners come to the grooves' floors.
   *
   * @param play groove less panel, over both edges, mm; alike both ways
   */
  public double freeLean(double play) {
    return play / width + play / height;
  }
}
