package fourpin.strength;

import fourpin.strength.Verdict.Most;
import java.util.function.DoubleUnaryOperator;

/**
 * Looks for the largest load of a shelf within all limits, its joints among them, however it lies.
 * What a load uses of a limit grows evenly with it, but for supports that it lifts off and for what
 * a little before the front row does to a shelf that bends of itself, so that a straight line leads
 * to it in a few steps.
 */
final class LargestLoad {

  private static final int MOST_STEPS = 100;

  /** What is left unused at the most. */
  private static final double NEARLY = 1e-9;

  /** Loads closer than this share of them are one. */
  private static final double ALMOST = 1e-6;

  /** Tried first where the shelf has no load. */
  private static final double SOME = 1;

  private final Verdict verdict;
  private final Candidate shelf;

  LargestLoad(Verdict verdict, Candidate shelf) {
    this.verdict = verdict;
    this.shelf = shelf;
  }

  /** Only what the load of the ways before it passes has to be looked for. */
  Most find() {
    double load = shelf.beam().load() > 0 ? shelf.beam().load() : SOME;
    Most most = new Most(Double.POSITIVE_INFINITY, worst(LoadCase.EVEN, load));
    for (LoadCase of : shelf.cases().loaded()) {
      if (isOver(of, most.number())) {
        double found = most(q -> worst(of, q).share(), Math.min(load, most.number()));
        most = new Most(found, governing(of, found));
      }
    }
    return joined(most, load);
  }

  /** What joints at its ends leave of it. */
  private Most joined(Most most, double load) {
    return shelf.joint().map(joint -> joined(joint, most, load)).orElse(most);
  }

  private Most joined(EndJoint joint, Most most, double load) {
    double borne = most(q -> joint.worst(under(q)).share(), Math.min(load, most.number()));
    return borne < most.number() ? new Most(borne, joint.worst(under(borne))) : most;
  }

  private Candidate under(double load) {
    return shelf.with(shelf.beam().under(load));
  }

  /** What is all used; where nothing is, what a little more load passes at once: it tips. */
  private Use governing(LoadCase of, double load) {
    Use met = worst(of, load);
    return met.share() >= 1 - ALMOST ? met : worst(of, (1 + ALMOST) * load);
  }

  private boolean isOver(LoadCase of, double load) {
    boolean judged = verdict.plate().isPresent() || of.equals(LoadCase.EVEN);
    return judged && (Double.isInfinite(load) || !worst(of, load).holds());
  }

  private Use worst(LoadCase of, double load) {
    return Verdict.worst(verdict.uses(of, load));
  }

  /**
   * @param use how much of what is allowed a load uses
   * @param guess more than 0
   */
  private static double most(DoubleUnaryOperator use, double guess) {
    double low = 0;
    double atLow = use.applyAsDouble(0);
    double high = Double.POSITIVE_INFINITY;
    double atHigh = Double.POSITIVE_INFINITY;
    double next = guess;
    for (int i = 0; i < MOST_STEPS && atLow < 1 - NEARLY; i++) {
      double now = use.applyAsDouble(next);
      if (now > 1) {
        high = next;
        atHigh = now;
        next = between(low, atLow, high, atHigh, i);
      } else {
        double further =
            now > atLow ? next + (1 - NEARLY / 2 - now) * (next - low) / (now - atLow) : 2 * next;
        low = next;
        atLow = now;
        next = further < high ? further : between(low, atLow, high, atHigh, i);
      }
    }
    return low;
  }

  /** On the straight line; half way where there is none, and now and then, lest it creep. */
  private static double between(double low, double atLow, double high, double atHigh, int step) {
    boolean straight = Double.isFinite(atHigh) && step % 3 != 2;
    double share = straight ? (1 - NEARLY / 2 - atLow) / (atHigh - atLow) : 0.5;
    return low + share * (high - low);
  }
}
