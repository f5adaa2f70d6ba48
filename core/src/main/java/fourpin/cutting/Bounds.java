package fourpin.cutting;

import fourpin.cutting.Inflated.Option;
import fourpin.cutting.Inflated.Panel;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/**
 * Lower bounds on the price and the number of sheets for a demand, valid for any layout, guillotine
 * or not.
 *
 * <p>Two kinds, the better one counts, raised to what sheets of these prices can come to, and to
 * what as many sheets as are needed cost at least; only sheets that any of the parts fit on. By
 * area: the demand has to come from the cheapest clear area in supply, exact. By dual feasible
 * functions: each size of a part is replaced by the share of the sheet that it blocks (a part
 * longer than half blocks all of it, and so on); S.P. Fekete and J. Schepers, New classes of fast
 * lower bounds for bin packing problems, Mathematical Programming 91 (2001) 11-31 (from memory).
 * The second is computed in doubles and loosened by more than they can have rounded up, before it
 * is rounded up to a whole number.
 */
final class Bounds {
  /**
   * Finer dual feasible functions of the rounding kind were not seen to raise the bound of any
   * published instance.
   */
  private static final int FINEST = 6;

  /**
   * Roundings of one term besides those of the sum: two shares, the cost, their products, the
   * demand, the step, and the loosening itself; with some to spare.
   */
  private static final int ROUNDINGS = 16;

  /**
   * Thresholds tried for each of length and width, the smallest first; keeps the bound cheap for
   * many parts.
   */
  private static final int MOST_THRESHOLDS = 12;

  /** Shares nearer than this count as equal, on the safe side. */
  private static final double TOLERANCE = 1e-12;

  private final Inflated problem;
  private final int[] demand;

  Bounds(Inflated problem, int[] demand) {
    this.problem = problem;
    this.demand = demand;
  }

  /** That of all parts but those left out, whatever sheets they share. */
  static LowerBound ofPlaced(SheetProblem problem, List<Unplaced> unplaced) {
    Map<String, Integer> out = new HashMap<>();
    unplaced.forEach(u -> out.merge(u.mark(), u.count(), Integer::sum));
    List<Part> placed =
        problem.parts().stream()
            .filter(part -> part.count() > out.getOrDefault(part.mark(), 0))
            .map(part -> part.times(part.count() - out.getOrDefault(part.mark(), 0)))
            .toList();
    Ties ties = problem.ties().ofMatched().among(placed);
    Inflated inflated =
        new Inflated(new SheetProblem(placed, problem.stock(), problem.saw(), ties));
    return new Bounds(inflated, inflated.demand).bound();
  }

  LowerBound bound() {
    if (Arrays.stream(demand).sum() == 0) {
      return new LowerBound(0, 0);
    }
    long sheets = bound(panel -> 1);
    long price = Math.max(bound(panel -> panel.sheet().price()), priceOf(sheets));
    return new LowerBound(price, sheets);
  }

  /** What so many sheets cost at least. */
  long priceOf(long sheets) {
    long left = sheets;
    long price = 0;
    for (StockSheet sheet : cheapestFirst()) {
      long taken = Math.min(left, sheet.supply().most());
      price = Math.addExact(price, Math.multiplyExact(taken, sheet.price()));
      left -= taken;
    }
    return price;
  }

  private List<StockSheet> cheapestFirst() {
    return usable().map(Panel::sheet).sorted(Comparator.comparingLong(StockSheet::price)).toList();
  }

  private Stream<Panel> usable() {
    return problem.panels.stream()
        .filter(panel -> panel.options().stream().anyMatch(o -> demand[o.kind()] > 0));
  }

  private long bound(ToLongFunction<Panel> cost) {
    if (problem.panels.stream().allMatch(panel -> cost.applyAsLong(panel) == 0)) {
      return 0;
    }
    Sums sums = Sums.of(usable().toList(), cost);
    long shares = (long) Math.ceil(loosened(byShares(cost)) / sums.step()) * sums.step();
    return sums.atLeast(Math.max(byArea(cost).longValueExact(), shares));
  }

  /**
   * A sum of terms that are not negative is no more above the true one than each of its roundings
   * is at most, taken together; an ulp of 1 is twice a rounding.
   */
  private double loosened(double sum) {
    return sum * (1 - (demand.length + ROUNDINGS) * Math.ulp(1.0));
  }

  private static BigInteger roundedUp(BigInteger number, BigInteger divisor) {
    return number.add(divisor).subtract(BigInteger.ONE).divide(divisor);
  }

  /** The least cost of enough area, the last panel in part, rounded up. */
  private BigInteger byArea(ToLongFunction<Panel> cost) {
    BigInteger wanted = wantedArea();
    BigInteger total = BigInteger.ZERO;
    for (Panel panel : cheapestAreaFirst(cost)) {
      BigInteger area = clear(panel);
      BigInteger offered = area.multiply(BigInteger.valueOf(panel.sheet().supply().most()));
      BigInteger price = BigInteger.valueOf(cost.applyAsLong(panel));
      if (offered.compareTo(wanted) >= 0) {
        return total.add(roundedUp(wanted.multiply(price), area));
      }
      wanted = wanted.subtract(offered);
      total = total.add(price.multiply(BigInteger.valueOf(panel.sheet().supply().most())));
    }
    return total;
  }

  private BigInteger wantedArea() {
    BigInteger wanted = BigInteger.ZERO;
    for (int kind = 0; kind < demand.length; kind++) {
      wanted = wanted.add(leastArea(kind).multiply(BigInteger.valueOf(demand[kind])));
    }
    return wanted;
  }

  /** Of all the ways to lay a kind; they differ where it is as wide as stock with rough edges. */
  private BigInteger leastArea(int kind) {
    return problem.panels.stream()
        .flatMap(panel -> panel.options().stream())
        .filter(o -> o.kind() == kind)
        .map(o -> area(o.dx(), o.dy()))
        .min(Comparator.naturalOrder())
        .orElse(BigInteger.ZERO);
  }

  private List<Panel> cheapestAreaFirst(ToLongFunction<Panel> cost) {
    return usable()
        .sorted((one, other) -> costOn(one, other, cost).compareTo(costOn(other, one, cost)))
        .toList();
  }

  /** What as much area as another panel has costs on one, times the area of the one. */
  private BigInteger costOn(Panel one, Panel other, ToLongFunction<Panel> cost) {
    return BigInteger.valueOf(cost.applyAsLong(one)).multiply(clear(other));
  }

  /**
   * What parts with their kerfs can take of a panel. A kerf behind or beyond a part may lie in a
   * defect, but reaches no farther into it than it is wide.
   */
  private BigInteger clear(Panel panel) {
    return new ClearArea(problem, panel).most();
  }

  private static BigInteger area(long length, long width) {
    return BigInteger.valueOf(length).multiply(BigInteger.valueOf(width));
  }

  private double byShares(ToLongFunction<Panel> cost) {
    return total(shares(cost::applyAsLong));
  }

  /**
   * What one part of each kind costs at least, from the pair of functions (one for the length, one
   * for the width) that gives the highest total; a first guess at what a part really takes from a
   * sheet.
   */
  double[] shares(ToDoubleFunction<Panel> cost) {
    double[] best = new double[demand.length];
    for (Share along : Share.all(problem, demand, true)) {
      for (Share across : Share.all(problem, demand, false)) {
        double[] next = shares(cost, along, across);
        best = total(next) > total(best) ? next : best;
      }
    }
    return best;
  }

  private double[] shares(ToDoubleFunction<Panel> cost, Share along, Share across) {
    double[] least = new double[demand.length];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (Panel panel : problem.panels) {
      for (Option o : panel.options()) {
        double share = along.of(o.dx(), panel.length()) * across.of(o.dy(), panel.width());
        least[o.kind()] = Math.min(least[o.kind()], cost.applyAsDouble(panel) * share);
      }
    }
    return least;
  }

  private double total(double[] shares) {
    double total = 0;
    for (int kind = 0; kind < demand.length; kind++) {
      total += demand[kind] == 0 ? 0 : demand[kind] * shares[kind];
    }
    return total;
  }

  /**
   * A dual feasible function of a size as a part of a whole: values of sizes that fit side by side
   * never exceed 1.
   */
  private interface Share {

    double of(long size, long whole);

    /** The size itself, roundings, and thresholds. */
    static List<Share> all(Inflated problem, int[] demand, boolean along) {
      List<Share> all = new ArrayList<>();
      all.add((size, whole) -> (double) size / whole);
      for (int k = 1; k <= FINEST; k++) {
        all.add(rounding(k));
      }
      all.addAll(thresholds(problem, demand, along));
      return all;
    }

    private static Share rounding(int k) {
      return (size, whole) -> {
        long scaled = Math.multiplyExact(size, (long) k + 1);
        long steps = scaled / whole;
        return scaled % whole == 0 ? (double) size / whole : (double) steps / k;
      };
    }

    /**
     * Sizes above 1 - t count as the whole, below t as nothing; t taken from the sizes of parts up
     * to one half.
     */
    private static List<Share> thresholds(Inflated problem, int[] demand, boolean along) {
      return problem.panels.stream()
          .flatMap(
              panel ->
                  panel.options().stream()
                      .filter(o -> demand[o.kind()] > 0)
                      .mapToDouble(
                          o ->
                              along
                                  ? (double) o.dx() / panel.length()
                                  : (double) o.dy() / panel.width())
                      .boxed())
          .filter(t -> t <= 0.5)
          .distinct()
          .sorted()
          .limit(MOST_THRESHOLDS)
          .map(Share::threshold)
          .toList();
    }

    private static Share threshold(double t) {
      return (size, whole) -> {
        double share = (double) size / whole;
        return share > 1 - t + TOLERANCE ? 1 : share < t - TOLERANCE ? 0 : share;
      };
    }
  }
}
