package fourpin.strength;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * A straight beam of one section on any supports, by the method of singularity functions, with the
 * shear term of Timoshenko's beam. Forces in N, lengths in mm; downward is positive.
 *
 * <p>For a simply supported beam under an even load this is the Wood Handbook's {@code kb W L³/(E
 * I) + ks W L/(G A')} (FPL-GTR-190, Table 9-1).
 *
 * @param length of the whole beam, ends that stand over included
 * @param bendingStiffness E I in N·mm²
 * @param shearStiffness G A' in N; {@link #NO_SHEAR} to leave shear out
 * @param supports from left to right; enough to hold the beam
 */
public record Beam(
    double length, double bendingStiffness, double shearStiffness, List<Support> supports) {

  /** The shear stiffness of a beam that only bends. */
  public static final double NO_SHEAR = Double.POSITIVE_INFINITY;

  /**
   * One support.
   *
   * @param at from the left end
   */
  public record Support(double at, Hold hold) {}

  /** What a support holds. */
  public enum Hold {
    /** The beam may turn on it, as on a pin. */
    RESTS,
    /** The beam may not turn. */
    CLAMPED
  }

  /** What lies on the beam. */
  public sealed interface Load {

    /** The load's part in shear (order 0), moment (1), slope (2) and deflection (3) at a place. */
    double bracket(int order, double x);

    /** A force at one place. */
    record Point(double force, double at) implements Load {
      @Override
      public double bracket(int order, double x) {
        return force * macaulay(order, x - at);
      }
    }

    /** An even load from one place to another, in N/mm. */
    record Even(double perMm, double from, double to) implements Load {
      @Override
      public double bracket(int order, double x) {
        return perMm * (macaulay(order + 1, x - from) - macaulay(order + 1, x - to));
      }
    }
  }

  /**
   * @throws IllegalArgumentException if the supports do not hold it
   */
  public Beam {
    supports = List.copyOf(supports);
    long places = supports.stream().mapToDouble(Support::at).distinct().count();
    boolean clamped = supports.stream().anyMatch(support -> support.hold() == Hold.CLAMPED);
    if (places < supports.size() || (places < 2 && !clamped)) {
      throw new IllegalArgumentException("these supports do not hold a beam: " + supports);
    }
  }

  /** A beam that rests on two supports at its ends. */
  public static Beam simple(double span, double bendingStiffness, double shearStiffness) {
    return overhanging(span, 0, bendingStiffness, shearStiffness);
  }

  /** A beam that rests on two supports and stands over both alike. */
  public static Beam overhanging(
      double span, double overhang, double bendingStiffness, double shearStiffness) {
    return new Beam(
        span + 2 * overhang,
        bendingStiffness,
        shearStiffness,
        List.of(new Support(overhang, Hold.RESTS), new Support(overhang + span, Hold.RESTS)));
  }

  /** How the beam bends. */
  public Bent under(List<Load> loads) {
    return new Bent(this, loads, solve(loads));
  }

  /**
   * The unknowns, all as forces so that the equations are well scaled: the force of each support,
   * the moment of each clamp over the length, then slope and deflection of the left end times E I
   * over the length squared and cubed.
   */
  private double[] solve(List<Load> loads) {
    int size = supports.size() + clamps().length + 2;
    DMatrixRMaj left = new DMatrixRMaj(size, size);
    DMatrixRMaj right = new DMatrixRMaj(size, 1);
    int row = 0;
    for (Support support : supports) {
      equation(left, right, row++, Term.DEFLECTION, support.at(), loads);
    }
    for (double clamp : clamps()) {
      equation(left, right, row++, Term.SLOPE, clamp, loads);
    }
    equation(left, right, row++, Term.MOMENT, length, loads);
    equation(left, right, row, Term.SHEAR, length, loads);
    DMatrixRMaj unknowns = new DMatrixRMaj(size, 1);
    if (!CommonOps_DDRM.solve(left, right, unknowns)) {
      throw new IllegalStateException("no solution for " + this);
    }
    return unknowns.data;
  }

  /** One equation: the term is nothing at {@code x}. */
  private void equation(
      DMatrixRMaj left, DMatrixRMaj right, int row, Term term, double x, List<Load> loads) {
    double[] factors = factors(term, x);
    for (int column = 0; column < factors.length; column++) {
      left.set(row, column, factors[column]);
    }
    right.set(row, 0, -fromLoads(term, x, loads));
  }

  /** By how much each unknown enters a term at {@code x}. */
  private double[] factors(Term term, double x) {
    double[] clamps = clamps();
    double[] factors = new double[supports.size() + clamps.length + 2];
    for (int i = 0; i < supports.size(); i++) {
      double reach = (x - supports.get(i).at()) / length;
      factors[i] = term.sign * (macaulay(term.order, reach) - shearPart(term) * ramp(reach));
    }
    for (int i = 0; i < clamps.length && term.order > 0; i++) {
      factors[supports.size() + i] = term.sign * macaulay(term.order - 1, (x - clamps[i]) / length);
    }
    factors[factors.length - 2] = term.startSlope * (term == Term.DEFLECTION ? x / length : 1);
    factors[factors.length - 1] = term == Term.DEFLECTION ? 1 : 0;
    return factors;
  }

  private double fromLoads(Term term, double x, List<Load> loads) {
    double sum = 0;
    for (Load load : loads) {
      sum += load.bracket(term.order, x) / Math.pow(length, term.order);
      sum -= shearPart(term) * load.bracket(1, x) / length;
    }
    return -term.sign * sum;
  }

  /** Shear adds to the deflection, against the sign of bending, E I/(G A' L²) of the moment. */
  private double shearPart(Term term) {
    return term == Term.DEFLECTION ? bendingStiffness / (shearStiffness * length * length) : 0;
  }

  private double[] clamps() {
    return supports.stream()
        .filter(support -> support.hold() == Hold.CLAMPED)
        .mapToDouble(Support::at)
        .toArray();
  }

  private static double ramp(double reach) {
    return macaulay(1, reach);
  }

  /** {@code <x>^n / n!}: nothing left of zero. */
  private static double macaulay(int order, double x) {
    if (x < 0) {
      return 0;
    }
    double value = 1;
    for (int i = 1; i <= order; i++) {
      value *= x / i;
    }
    return value;
  }

  /** What is asked of the beam at a place; each integrates the one before it. */
  private enum Term {
    SHEAR(0, 1, 0),
    MOMENT(1, 1, 0),
    SLOPE(2, -1, 1),
    DEFLECTION(3, -1, 1);

    private final int order;
    private final int sign;
    private final int startSlope;

    Term(int order, int sign, int startSlope) {
      this.order = order;
      this.sign = sign;
      this.startSlope = startSlope;
    }
  }

  /** A beam under its loads. */
  public static final class Bent {

    private final Beam beam;
    private final List<Load> loads;
    private final double[] unknowns;

    private Bent(Beam beam, List<Load> loads, double[] unknowns) {
      this.beam = beam;
      this.loads = List.copyOf(loads);
      this.unknowns = unknowns;
    }

    /** How far it goes down at {@code x} from the left end, in mm. */
    public double deflection(double x) {
      double scale = Math.pow(beam.length, 3) / beam.bendingStiffness;
      return at(Term.DEFLECTION, x) * scale;
    }

    /** Slope from bending, in radians; positive where it goes down to the right. */
    public double slope(double x) {
      return at(Term.SLOPE, x) * beam.length * beam.length / beam.bendingStiffness;
    }

    /** Bending moment in N·mm; positive where the underside is pulled. */
    public double moment(double x) {
      return at(Term.MOMENT, x) * beam.length;
    }

    /** The force of each support, from left to right, in N; positive pushes up. */
    public double[] reactions() {
      return Arrays.copyOf(unknowns, beam.supports.size());
    }

    private double at(Term term, double x) {
      double sum = beam.fromLoads(term, x, loads);
      double[] factors = beam.factors(term, x);
      for (int i = 0; i < factors.length; i++) {
        sum += factors[i] * unknowns[i];
      }
      return sum;
    }
  }
}
