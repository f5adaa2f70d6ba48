package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Cause;
import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Shape;
import fourpin.boring.tolerance.ErrorModel.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is left of the causes at one position when the errors of its four holes are summed.
 *
 * @param shares by cause; what cancels is not among them
 */
record NetError(List<Share> shares) {

  /**
   * One cause with the sum of its signed factors.
   *
   * @param index of the cause in its model
   */
  record Share(int index, Cause cause, double factor) {

    /** Standard deviation of what it adds, mm. */
    double deviation() {
      return Math.abs(factor) * cause.deviation();
    }
  }

  NetError {
    shares = List.copyOf(shares);
  }

  static NetError of(ErrorModel model, Position position, Miss miss) {
    Map<Integer, Double> factors = new TreeMap<>();
    position
        .points()
        .forEach(
            (point, terms) -> {
              for (Term term : terms) {
                factors.merge(term.cause(), miss.factor(point) * term.factor(), Double::sum);
              }
            });
    List<Share> shares = new ArrayList<>();
    factors.forEach((cause, factor) -> add(shares, model.causes(), cause, factor));
    return new NetError(shares);
  }

  private static void add(List<Share> shares, List<Cause> causes, int index, double factor) {
    Share share = new Share(index, causes.get(index), factor);
    if (share.deviation() > 0) {
      shares.add(share);
    }
  }

  /** The distribution of the sum. */
  Spread spread() {
    double variance = 0;
    List<Double> reaches = new ArrayList<>();
    for (Share share : shares) {
      if (share.cause().shape() == Shape.NORMAL) {
        variance += share.deviation() * share.deviation();
      } else {
        reaches.add(Spread.reachOf(share.deviation()));
      }
    }
    return new Spread(Math.sqrt(variance), reaches);
  }
}
