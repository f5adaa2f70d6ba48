package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.Attempt.Score;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Makes a layout of sheets better: takes a few sheets apart, fills sheets anew with their parts,
 * the parts being worth a little more or less than their area by lot, and keeps what is no worse:
 * less price, then less area, then fuller sheets beside an emptier one, until that one is empty.
 *
 * <p>Ruin and recreate: G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt, G. Dueck, Record breaking
 * optimization results using the ruin and recreate principle, Journal of Computational Physics 159
 * (2000) 139-171 (from memory).
 */
final class SheetRepair {
  private static final long SEED = 1;

  /** Sheets taken apart at a time. From trials. */
  private static final int FEWEST = 2;

  private static final int MOST = 5;

  /** The first sheet taken is the emptiest of so many. */
  private static final int LOOKED_AT = 3;

  /** The worth of a part is its area to the power of one and up to so much more, by lot. */
  private static final double POWER = 0.1;

  /** The worth is by lot up to so much more. */
  private static final double NOISE = 0.3;

  /** A sheet that takes everything is worth as much as if it took so much more. */
  private static final double LAST = 2;

  private static final int CELLS = 64;
  private static final int BREADTH = 8;

  /** What one repair costs besides the filling. */
  private static final int STEPS_PER_REPAIR = 20;

  private final Inflated problem;
  private final Outcome start;
  private final Strips.Tools tools =
      new Strips.Tools(new Knapsack(CELLS), new Knapsack(CELLS), BREADTH);
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final int[] supply;
  private final double areaPrice;
  private final List<Sheet> sheets = new ArrayList<>();
  private long price;

  /** One sheet: its panel, and how many of each kind are cut from it. */
  private record Sheet(int panel, Draft draft, int[] counts, double used) {}

  SheetRepair(Inflated problem, Outcome start) {
    this.problem = problem;
    this.start = start;
    supply = problem.panels.stream().mapToInt(p -> p.sheet().supply().most()).toArray();
    areaPrice = areaPrice();
    for (Drafted drafted : start.drafts()) {
      int panel = problem.panels.indexOf(drafted.panel());
      for (int i = 0; i < drafted.quantity(); i++) {
        add(sheet(panel, drafted.draft()));
      }
    }
  }

  /** So little that all the area of any sheets is worth less than one coin. */
  private double areaPrice() {
    double area = problem.panels.stream().mapToDouble(Panel::area).max().orElse(1);
    return 1 / (area * 2 * Math.max(1, MOST));
  }

  private Sheet sheet(int panel, Draft draft) {
    int[] counts = Column.of(panel, draft, problem.kinds.size()).counts();
    double used = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      used += counts[kind] * problem.area(kind);
    }
    return new Sheet(panel, draft, counts, used);
  }

  private void add(Sheet sheet) {
    sheets.add(sheet);
    supply[sheet.panel]--;
    price += price(sheet.panel);
  }

  private Sheet remove(int index) {
    Sheet sheet = sheets.get(index);
    sheets.set(index, sheets.getLast());
    sheets.removeLast();
    supply[sheet.panel]++;
    price -= price(sheet.panel);
    return sheet;
  }

  private long price(int panel) {
    return problem.panels.get(panel).sheet().price();
  }

  /**
   * Repairs until the bound is reached or the work is spent; the start itself where it gets no
   * cheaper, since its sheets are more alike.
   *
   * @param least work that is left over
   */
  Outcome repair(LowerBound bound, Work work, long least) {
    Outcome best = start;
    while (sheets.size() > 1
        && work.left() > least
        && !work.spent()
        && !bound.reachedBy(price, sheets.size())) {
      long before = tools.work();
      repairOnce();
      work.spend((tools.work() - before) / SheetPricing.TOOL_STEPS_PER_WORK + STEPS_PER_REPAIR);
      if (price < best.score().price() || sheets.size() < Answers.sheets(best)) {
        best = better(best, work);
      }
    }
    return best;
  }

  private Outcome better(Outcome best, Work work) {
    List<Drafted> drafts =
        sheets.stream().map(s -> new Drafted(problem.panels.get(s.panel), s.draft, 1)).toList();
    Outcome next = new Outcome(drafts, start.missing(), Score.of(problem, drafts, start.missing()));
    if (next.score().compareTo(best.score()) < 0) {
      work.better(next);
      return next;
    }
    return best;
  }

  private void repairOnce() {
    List<Sheet> taken = takeApart();
    int[] pool = new int[problem.kinds.size()];
    for (Sheet sheet : taken) {
      Arrays.setAll(pool, kind -> pool[kind] + sheet.counts[kind]);
    }
    List<Sheet> rebuilt = rebuild(pool, cost(taken));
    boolean whole = Arrays.stream(pool).allMatch(count -> count == 0);
    boolean better = whole && compare(rebuilt, taken) <= 0;
    rebuilt.forEach(sheet -> supply[sheet.panel]++);
    (better ? rebuilt : taken).forEach(this::add);
  }

  private List<Sheet> takeApart() {
    int number = Math.min(sheets.size(), FEWEST + random.nextInt(MOST - FEWEST + 1));
    List<Sheet> taken = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      taken.add(remove(i == 0 ? emptiestOfSome() : random.nextInt(sheets.size())));
    }
    return taken;
  }

  private int emptiestOfSome() {
    int emptiest = random.nextInt(sheets.size());
    for (int i = 1; i < LOOKED_AT; i++) {
      int other = random.nextInt(sheets.size());
      emptiest = filled(sheets.get(other)) < filled(sheets.get(emptiest)) ? other : emptiest;
    }
    return emptiest;
  }

  private double filled(Sheet sheet) {
    return sheet.used / problem.panels.get(sheet.panel).area();
  }

  /** Fills sheets from a pool until it is empty, or no cheaper than before. */
  private List<Sheet> rebuild(int[] pool, double most) {
    double[] worth = worth();
    Direction[] ways = StripCutter.WAYS[random.nextInt(StripCutter.WAYS.length)];
    List<Panel> panels = problem.panels.stream().map(panel -> only(panel, pool)).toList();
    List<Sheet> rebuilt = new ArrayList<>();
    Optional<Sheet> next = fill(panels, worth, pool, ways);
    while (next.isPresent() && cost(rebuilt) + cost(List.of(next.get())) <= most) {
      take(next.get(), pool, rebuilt);
      next = fill(panels, worth, pool, ways);
    }
    return rebuilt;
  }

  private void take(Sheet sheet, int[] pool, List<Sheet> rebuilt) {
    Arrays.setAll(pool, kind -> pool[kind] - sheet.counts[kind]);
    supply[sheet.panel]--;
    rebuilt.add(sheet);
  }

  /** The panel with the options of what is wanted. */
  private static Panel only(Panel panel, int[] wanted) {
    return new Panel(
        panel.sheet(),
        panel.length(),
        panel.width(),
        panel.whole(),
        panel.options().stream().filter(option -> wanted[option.kind()] > 0).toList(),
        panel.rules());
  }

  private double[] worth() {
    double power = 1 + POWER * random.nextDouble();
    double[] worth = new double[problem.kinds.size()];
    Arrays.setAll(
        worth, kind -> Math.pow(problem.area(kind), power) * (1 + NOISE * random.nextDouble()));
    return worth;
  }

  /** The cheapest sheet that takes everything, or the one that is cheapest for what it takes. */
  private Optional<Sheet> fill(List<Panel> panels, double[] worth, int[] pool, Direction[] ways) {
    double all = 0;
    for (int kind = 0; kind < pool.length; kind++) {
      all += pool[kind] * problem.area(kind);
    }
    List<Sheet> filled = new ArrayList<>();
    for (int panel = 0; panel < panels.size() && all > 0; panel++) {
      if (supply[panel] > 0 && !panels.get(panel).options().isEmpty()) {
        filled.add(filled(panel, panels.get(panel), worth, pool, ways));
      }
    }
    double whole = all;
    return filled.stream()
        .filter(sheet -> sheet.used > 0)
        .min(
            Comparator.comparingDouble(
                    (Sheet s) -> cost(List.of(s)) / (s.used < whole ? s.used : whole * LAST))
                .thenComparingInt(Sheet::panel));
  }

  private Sheet filled(int index, Panel panel, double[] worth, int[] pool, Direction[] ways) {
    Filler filler = new Filler(panel, worth, pool.clone(), tools);
    return sheet(index, filler.fill(panel.length(), panel.width(), ways));
  }

  /** Price, with the area for where nothing has one. */
  private double cost(List<Sheet> some) {
    double cost = 0;
    for (Sheet sheet : some) {
      cost += price(sheet.panel) + problem.panels.get(sheet.panel).area() * areaPrice;
    }
    return cost;
  }

  private int compare(List<Sheet> some, List<Sheet> others) {
    int byCost = Double.compare(cost(some), cost(others));
    return byCost != 0 ? byCost : Double.compare(unevenness(others), unevenness(some));
  }

  private double unevenness(List<Sheet> some) {
    return some.stream().mapToDouble(sheet -> filled(sheet) * filled(sheet)).sum();
  }
}
