package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.Attempt.Score;
import fourpin.cutting.Inflated.Panel;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The cheapest sheets for few parts, and of these the least area, tried through: which portions of
 * the parts lie on one sheet (see {@link Boxes}), and which of these portions make up all for the
 * least price (see {@link Cover}). So tight layouts are found that no filling strip by strip comes
 * to, and the order of the parts does not matter.
 *
 * <p>First with little of the stock left unused, which is quick, then with as much as a cheaper
 * answer may leave. Where the work does not suffice, what was found up to then counts.
 */
final class FewParts {

  /** Pairs of portions, more than which are too many. */
  private static final double MOST_PAIRS = 500_000;

  /** Pairs of portions and of boxes looked at; all take up to about a tenth of a second. */
  private static final long STEPS = 3_000_000;

  /** Shares of what may be left unused at most. */
  private static final double[] UNUSED = {1.0 / 8, 1.0 / 2, 1};

  /** Costs may come to so much. */
  private static final double LARGEST = Long.MAX_VALUE / 2.0;

  private final Inflated problem;
  private final long[] costs;
  private final Portions portions;
  private final Work work = Work.of(STEPS);

  /** Drafts of all parts, and what they cost. */
  private record Found(List<Drafted> drafts, long cost) {}

  private FewParts(Inflated problem) {
    this.problem = problem;
    costs = costs(problem);
    portions = new Portions(problem::area, problem.fittingDemand());
  }

  /**
   * The prices, and so little for the area that it counts only among layouts of one price; the
   * prices alone where such numbers would be too large.
   */
  static long[] costs(Inflated problem) {
    long[] prices = problem.panels.stream().mapToLong(panel -> panel.sheet().price()).toArray();
    long[] areas = problem.panels.stream().mapToLong(FewParts::squareMillimetres).toArray();
    long sheets = Arrays.stream(problem.fittingDemand()).asLongStream().sum();
    long coin = 1 + sheets * Arrays.stream(areas).max().orElse(0);
    double dearest = (double) coin * sheets * (1 + Arrays.stream(prices).max().orElse(0));
    Arrays.setAll(areas, i -> dearest < LARGEST ? prices[i] * coin + areas[i] : prices[i]);
    return areas;
  }

  private static long squareMillimetres(Panel panel) {
    return Math.round(panel.sheet().length().mm() * panel.sheet().width().mm());
  }

  /**
   * The better of an answer known and of what trying comes to, if the parts are few; proven where
   * everything was tried. What limits of the saw allow is allowed without them too, so that the
   * least price without them is a bound.
   */
  static Layout best(SheetProblem problem, Layout known) {
    Inflated inflated = new Inflated(problem);
    if (Portions.pairs(inflated.fittingDemand()) > MOST_PAIRS) {
      return known;
    }
    Layout best = new FewParts(inflated).better(problem, known);
    return isLimited(inflated) && best.unplaced().isEmpty() && !best.isProven()
        ? best.raised(best(problem.with(SawLimits.NONE), best))
        : best;
  }

  private static boolean isLimited(Inflated problem) {
    return problem.panels.stream().anyMatch(panel -> panel.rules().limit());
  }

  private Layout better(SheetProblem of, Layout known) {
    Layout best = cheaper(known).map(found -> layout(of, problem, found.drafts)).orElse(known);
    return triedAll() && best.unplaced().isEmpty() ? proven(best) : best;
  }

  /** With limits of the saw something may be missed. */
  private boolean triedAll() {
    return !work.spent() && !isLimited(problem);
  }

  private static Layout proven(Layout layout) {
    LowerBound least = new LowerBound(layout.price(), layout.bound().sheets());
    return new Layout(layout.patterns(), layout.unplaced(), layout.bound().raised(least));
  }

  private static Layout layout(SheetProblem problem, Inflated inflated, List<Drafted> drafts) {
    int[] missing = new int[inflated.kinds.size()];
    Outcome all = new Outcome(drafts, missing, Score.of(inflated, drafts, missing));
    LowerBound bound = new Bounds(inflated, inflated.fittingDemand()).bound();
    return new Answers(problem, inflated).layout(all, bound);
  }

  private Optional<Found> cheaper(Layout than) {
    boolean more =
        than.unplaced().stream().anyMatch(u -> u.reason() == Unplaced.Reason.NO_SHEETS_LEFT);
    return cheaper(more ? Long.MAX_VALUE : cost(than));
  }

  private long cost(Layout layout) {
    return layout.patterns().stream().mapToLong(p -> p.quantity() * cost(p.sheet())).sum();
  }

  private long cost(StockSheet sheet) {
    return IntStream.range(0, costs.length)
        .filter(panel -> problem.panels.get(panel).sheet().equals(sheet))
        .mapToLong(panel -> costs[panel])
        .sum();
  }

  private int supply(int panel) {
    return problem.panels.get(panel).sheet().supply().most();
  }

  private Optional<Found> cheaper(long than) {
    Optional<Found> best = Optional.empty();
    for (double share : UNUSED) {
      long most = best.map(Found::cost).orElse(than);
      Optional<Found> next = onOne(most, share);
      best = next.isPresent() ? next : best;
    }
    for (double share : UNUSED) {
      long most = best.map(Found::cost).orElse(than);
      double unused = area(most) - portions.area(portions.all());
      Optional<Found> next = unused < 0 ? Optional.empty() : covered(most, share * unused);
      best = next.isPresent() ? next : best;
    }
    return best;
  }

  /** All on the cheapest panel that takes them. */
  private Optional<Found> onOne(long than, double share) {
    return IntStream.range(0, costs.length)
        .filter(panel -> costs[panel] < than && supply(panel) > 0)
        .boxed()
        .sorted((a, b) -> Long.compare(costs[a], costs[b]))
        .flatMap(panel -> onOne(panel, share).stream())
        .findFirst();
  }

  private Optional<Found> onOne(int index, double share) {
    Panel panel = problem.panels.get(index);
    double unused = panel.area() - portions.area(portions.all());
    return unused < 0
        ? Optional.empty()
        : boxes(panel, share * unused)
            .draft(portions.all())
            .map(draft -> new Found(List.of(drafted(index, draft)), costs[index]));
  }

  private Boxes boxes(Panel panel, double unused) {
    return new Boxes(problem, panel, portions, unused, work);
  }

  /** The most area that sheets may have which cost less. */
  private double area(long than) {
    int parts = portions.parts();
    long step = Arrays.stream(costs).reduce(0, FewParts::commonDivisor);
    double area = 0;
    double perCost = 0;
    boolean priced = problem.panels.stream().anyMatch(panel -> panel.sheet().price() > 0);
    for (int i = 0; i < costs.length; i++) {
      double each = problem.panels.get(i).area();
      boolean free = priced && problem.panels.get(i).sheet().price() == 0;
      boolean counted = free || than == Long.MAX_VALUE;
      area += counted ? each * Math.min(supply(i), parts) : 0;
      perCost = counted || supply(i) == 0 ? perCost : Math.max(perCost, each / costs[i]);
    }
    return area + perCost * (than - step);
  }

  private static long commonDivisor(long one, long other) {
    return BigInteger.valueOf(one).gcd(BigInteger.valueOf(other)).longValueExact();
  }

  private Optional<Found> covered(long than, double unused) {
    Cover cover = new Cover(portions, work);
    List<Boxes> boxes = problem.panels.stream().map(panel -> boxes(panel, unused)).toList();
    for (int i = 0; i < costs.length; i++) {
      cover.add(i, costs[i], supply(i), boxes.get(i)::fit);
    }
    return cover.cheapest(portions.all(), than).map(sheets -> found(sheets, boxes));
  }

  private Found found(List<Cover.Sheet> sheets, List<Boxes> boxes) {
    List<Drafted> drafts = sheets.stream().map(s -> drafted(s.panel(), draft(s, boxes))).toList();
    return new Found(drafts, sheets.stream().mapToLong(s -> costs[s.panel()]).sum());
  }

  private static Draft draft(Cover.Sheet sheet, List<Boxes> boxes) {
    return boxes.get(sheet.panel()).draft(sheet.portion()).orElseThrow();
  }

  private Drafted drafted(int panel, Draft draft) {
    return new Drafted(problem.panels.get(panel), draft, 1);
  }
}
