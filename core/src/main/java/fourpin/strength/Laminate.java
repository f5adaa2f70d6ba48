package fourpin.strength;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A panel of layers that are glued on each other and bend as one, top to bottom (classical theory
 * of laminates). Layers that fill part of the width only, such as the ribs of a torsion box, count
 * by their share; that ribs shear between the faces where the panel bends across them is left out.
 *
 * @param plies at least one
 */
public record Laminate(List<Ply> plies) {

  private static final double[] GAUSS_PLACES = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
  private static final double[] GAUSS_WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};

  /**
   * One layer; moduli in MPa.
   *
   * @param along modulus of elasticity along the panel, {@code across} the other way
   * @param shear modulus in its plane
   * @param density kg/m³
   * @param thickness mm
   * @param share of the width that it fills, more than 0 to 1
   */
  public record Ply(
      double along, double across, double shear, double density, double thickness, double share) {}

  public Laminate {
    plies = List.copyOf(plies);
  }

  public double thickness() {
    return plies.stream().mapToDouble(Ply::thickness).sum();
  }

  /** The modulus along of a solid panel as thick that bends as much, MPa. */
  public double bendingAlong() {
    return bending(Ply::along);
  }

  public double bendingAcross() {
    return bending(Ply::across);
  }

  /** The shear modulus of a solid panel as thick that twists as much, MPa. */
  public double twisting() {
    return bending(Ply::shear);
  }

  /** The modulus along of a solid panel as thick that stretches as much, MPa. */
  public double stretching() {
    return stretch(Ply::along) / thickness();
  }

  /** That of the outermost layers along, the stiffer of both, MPa. */
  public double outer() {
    return Math.max(plies.getFirst().along(), plies.getLast().along());
  }

  /**
   * The shear modulus through the thickness of a solid panel as thick that gives way as much, MPa.
   * Faces and ribs give way one after the other: the work of Jourawski's shear stresses, {@code 1 /
   * (G A') = Σ ∫ Q² / (G s) dz / (E I)²}, Q what E s has as its first moment beyond z.
   */
  public double shearing() {
    double axis = axis(Ply::along);
    double top = 0;
    double beyond = 0;
    double gives = 0;
    for (Ply ply : plies) {
      gives += gives(ply, beyond, axis - top);
      beyond += moment(ply, ply.thickness(), axis - top);
      top += ply.thickness();
    }
    double all = thickness();
    double bends = bendingAlong() * all * all * all / 12;
    return bends * bends / gives / (Section.SHEAR_AREA * all);
  }

  /** Its part of the integral: three places by Gauss are exact for the square of a parabola. */
  private static double gives(Ply ply, double beyond, double arm) {
    double sum = 0;
    for (int i = 0; i < GAUSS_PLACES.length; i++) {
      double moment = beyond + moment(ply, (1 + GAUSS_PLACES[i]) / 2 * ply.thickness(), arm);
      sum += GAUSS_WEIGHTS[i] / 2 * moment * moment;
    }
    return sum * ply.thickness() / (ply.shear() * ply.share());
  }

  /** First moment of E s of the uppermost part of a layer whose top lies an arm above the axis. */
  private static double moment(Ply ply, double deep, double arm) {
    return ply.along() * ply.share() * deep * (arm - deep / 2);
  }

  public double density() {
    return stretch(Ply::density) / thickness();
  }

  private double stretch(ToDoubleFunction<Ply> of) {
    return plies.stream().mapToDouble(p -> of.applyAsDouble(p) * p.share() * p.thickness()).sum();
  }

  /** About its own neutral layer. */
  private double bending(ToDoubleFunction<Ply> of) {
    double axis = axis(of);
    double top = 0;
    double sum = 0;
    for (Ply ply : plies) {
      double t = ply.thickness();
      double away = top + t / 2 - axis;
      sum += of.applyAsDouble(ply) * ply.share() * (t * t * t / 12 + t * away * away);
      top += t;
    }
    double all = thickness();
    return 12 * sum / (all * all * all);
  }

  private double axis(ToDoubleFunction<Ply> of) {
    double top = 0;
    double moment = 0;
    for (Ply ply : plies) {
      moment += of.applyAsDouble(ply) * ply.share() * ply.thickness() * (top + ply.thickness() / 2);
      top += ply.thickness();
    }
    return moment / stretch(of);
  }
}
