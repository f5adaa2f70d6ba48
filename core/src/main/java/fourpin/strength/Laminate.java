package fourpin.strength;

import fourpin.job.Material.Turn;
import fourpin.reference.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A panel of layers that are glued on each other and bend as one, top to bottom (classical theory
 * of laminates). Layers of ribs, such as those of a torsion box, count by their share, and along
 * themselves only. Across ribs the layers above and below act as the chords of a Vierendeel girder
 * with the ribs as its posts; where it is not known how far those stand apart, nothing holds the
 * layers together that way, and each bends for itself.
 *
 * @param plies at least one; the outermost fill the whole width
 */
public record Laminate(List<Ply> plies) {

  private static final double[] GAUSS_PLACES = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
  private static final double[] GAUSS_WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};

  /** For shear in a rectangle: the n of the handbook's battens. */
  private static final double SHEARED = 1 / Reference.constant("shear area of a rectangle").value();

  /**
   * One layer; moduli in MPa.
   *
   * @param along modulus of elasticity along the panel, {@code across} the other way
   * @param shear modulus in its plane
   * @param density kg/m³
   * @param thickness mm
   * @param share of the width that it fills, more than 0 to 1
   * @param ribs if it is of ribs
   */
  public record Ply(
      double along,
      double across,
      double shear,
      double density,
      double thickness,
      double share,
      Optional<Ribs> ribs) {

    /** A layer that is whole, or of ribs along the panel of which no more is known. */
    public Ply(
        double along, double across, double shear, double density, double thickness, double share) {
      this(
          along,
          across,
          shear,
          density,
          thickness,
          share,
          Optional.of(new Ribs(Turn.ALONG, Optional.empty(), across, shear))
              .filter(_ -> share < 1));
    }

    private boolean isPosts() {
      return ribs.filter(r -> r.way() == Turn.ACROSS).isPresent();
    }

    private boolean isWhole() {
      return ribs.isEmpty();
    }

    private Ply turned() {
      return new Ply(across, along, shear, density, thickness, share, ribs.map(Ribs::turned));
    }
  }

  /**
   * Ribs of a layer.
   *
   * @param way which they run
   * @param thick one of them, mm; nothing where nobody says
   * @param upright modulus of elasticity up and down, as they bend between the faces, MPa
   * @param rolling shear modulus in a rib's cross section, MPa
   */
  public record Ribs(Turn way, Optional<Double> thick, double upright, double rolling) {

    private Ribs turned() {
      return new Ribs(way == Turn.ALONG ? Turn.ACROSS : Turn.ALONG, thick, upright, rolling);
    }
  }

  public Laminate {
    plies = List.copyOf(plies);
  }

  public double thickness() {
    return plies.stream().mapToDouble(Ply::thickness).sum();
  }

  /** The same seen the other way. */
  public Laminate turned() {
    return new Laminate(plies.stream().map(Ply::turned).toList());
  }

  /** Whether anything is known to hold its layers together as it bends along. */
  public boolean isJoined() {
    return plies.stream()
        .filter(Ply::isPosts)
        .allMatch(p -> p.ribs().flatMap(Ribs::thick).isPresent());
  }

  /** The modulus along of a solid panel as thick that bends as much, MPa. */
  public double bendingAlong() {
    return isJoined() ? bending(Laminate::stiff) : apart(Laminate::stiff);
  }

  public double bendingAcross() {
    return turned().bendingAlong();
  }

  /** The shear modulus of a solid panel as thick that twists as much by its whole layers, MPa. */
  public double twisting() {
    return isJoined() && turned().isJoined()
        ? bending(p -> p.isWhole() ? p.shear() : 0)
        : apart(p -> p.isWhole() ? p.shear() : 0);
  }

  /** Each layer for itself. */
  private double apart(ToDoubleFunction<Ply> of) {
    return plies.stream()
            .mapToDouble(p -> of.applyAsDouble(p) * p.share() * Math.pow(p.thickness(), 3))
            .sum()
        / cubed();
  }

  /** The modulus along of a solid panel as thick that stretches as much, MPa. */
  public double stretching() {
    return stretch(Laminate::stiff) / thickness();
  }

  /** Ribs stand apart: they pass nothing on across themselves. */
  static double stiff(Ply ply) {
    return ply.isPosts() ? 0 : ply.along();
  }

  private double cubed() {
    return Math.pow(thickness(), 3);
  }

  /** That of the outermost layers along, the stiffer of both, MPa. */
  public double outer() {
    return Math.max(plies.getFirst().along(), plies.getLast().along());
  }

  /**
   * The shear modulus through the thickness of a solid panel as thick that gives way as much, MPa:
   * its layers by their shear, and those between which ribs run across as a Vierendeel girder too.
   */
  public double shearing() {
    double gives = layersGive() + (isJoined() ? postsGive() : 0);
    return 1 / gives / (Section.SHEAR_AREA * thickness());
  }

  /**
   * Layers and ribs along give way one after the other: the work of Jourawski's shear stresses,
   * {@code 1 / (G A') = Σ ∫ Q² / (G s) dz / (E I)²}, Q what E s has as its first moment beyond z.
   */
  private double layersGive() {
    double axis = axis(Laminate::stiff);
    double top = 0;
    double beyond = 0;
    double gives = 0;
    for (Ply ply : plies) {
      gives += ply.isPosts() ? 0 : gives(ply, beyond, axis - top);
      beyond += moment(ply, ply.thickness(), axis - top);
      top += ply.thickness();
    }
    double bends = bending(Laminate::stiff) * cubed() / 12;
    return gives / (bends * bends);
  }

  /**
   * How much a unit of width slants under 1 N of shear across ribs, 1 / (N/mm): chords bend between
   * posts, {@code s² / (12 Σ E I)}, posts bend, {@code s h / (12 E I)}, and shear, {@code 1.2 s /
   * (h G t)}, s apart and h high (Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., 1961,
   * art. 2.18, columns with batten plates, without the push of those; from memory).
   */
  private double postsGive() {
    double apart = plies.stream().filter(Ply::isPosts).mapToDouble(Laminate::pitch).max().orElse(0);
    double posts = IntStream.range(0, plies.size()).mapToDouble(this::postGives).sum();
    return apart * apart / (12 * chords()) + posts;
  }

  private double postGives(int at) {
    Ply ply = plies.get(at);
    if (!ply.isPosts()) {
      return 0;
    }
    Ribs ribs = ply.ribs().orElseThrow();
    double thick = ribs.thick().orElseThrow();
    double high =
        ply.thickness() + (plies.get(at - 1).thickness() + plies.get(at + 1).thickness()) / 2;
    double bends = ribs.upright() * Math.pow(thick, 3) / 12;
    return pitch(ply) * (high / (12 * bends) + SHEARED / (high * ribs.rolling() * thick));
  }

  /** From the middle of one rib to that of the next, mm. */
  private static double pitch(Ply ribs) {
    return ribs.ribs().flatMap(Ribs::thick).orElseThrow() / ribs.share();
  }

  /** E I of a unit of width of what lies between ribs across, each for itself, N·mm. */
  private double chords() {
    double sum = 0;
    List<Ply> chord = new ArrayList<>();
    for (Ply ply : plies) {
      if (ply.isPosts()) {
        sum += own(chord);
        chord.clear();
      } else {
        chord.add(ply);
      }
    }
    return sum + own(chord);
  }

  private static double own(List<Ply> chord) {
    Laminate alone = new Laminate(chord);
    return chord.isEmpty() ? 0 : alone.bending(Laminate::stiff) * alone.cubed() / 12;
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
    return stiff(ply) * ply.share() * deep * (arm - deep / 2);
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
