package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * Lays parts that must share a sheet out first, group by group: each on one sheet, which other
 * parts then help to fill, the sheet that comes cheapest for what it holds; or where that is not
 * found at once, as a problem of its own on one sheet. The rest is a problem without groups, which
 * another cutter answers.
 */
final class Sharing {

  /** So many times their area parts of the group are worth, so that they come first. */
  private static final double FIRST = 1_000;

  /** Strip sizes, and kinds in each strip, looked at in a hurry: a ninth of the work. */
  private static final int HURRIED_BREADTH = 8;

  private final SheetProblem problem;
  private final Searches searches;
  private final How how;
  private final Map<String, Integer> wanted = new HashMap<>();
  private final Map<String, Integer> used = new HashMap<>();
  private final List<SheetPattern> shared = new ArrayList<>();
  private final List<Unplaced> leftOut = new ArrayList<>();
  private final Strips.Tools thorough = PatternSearch.tools();
  private final Strips.Tools hurried = PatternSearch.tools(HURRIED_BREADTH);

  /**
   * How the sheets of groups are chosen.
   *
   * @param way 0 for the sheets that come cheapest, 1 for those that come next, and so on
   * @param sheets which stock a group shall lie on, by the names of both; others choose freely
   * @param hurry whether there is no time left to put other parts beside a group on every sheet
   */
  record How(int way, Map<String, String> sheets, BooleanSupplier hurry) {
    static final How CHEAPEST = new How(0, Map.of(), () -> false);

    How {
      sheets = Map.copyOf(sheets);
    }

    boolean allows(Together group, StockSheet sheet) {
      return sheets.getOrDefault(group.name(), sheet.name()).equals(sheet.name());
    }
  }

  /** One sheet with a whole group on it. */
  private record Choice(SheetPattern pattern, double area) {
    /** The price of what it holds, then the sheet for it. */
    static final Comparator<Choice> ORDER =
        Comparator.comparingDouble((Choice c) -> c.pattern.sheet().price() / c.area)
            .thenComparingDouble(c -> sheetArea(c.pattern.sheet()) / c.area);
  }

  private Sharing(SheetProblem problem, Searches searches, How how) {
    this.problem = problem;
    this.searches = searches;
    this.how = how;
    problem.parts().forEach(part -> wanted.put(part.mark(), part.count()));
  }

  /**
   * A layout in which every group shares a sheet.
   *
   * @param searches by watch for what is in no group, by work for a group alone
   */
  static Layout cut(SheetProblem problem, Searches searches, How how) {
    return problem.ties().together().isEmpty()
        ? searches.byWatch().cut(problem)
        : new Sharing(problem, searches, how).layout();
  }

  /** Whether all groups of a problem share a sheet in a layout. */
  static boolean keeps(SheetProblem problem, Layout layout) {
    return problem.ties().together().stream()
        .allMatch(
            group -> {
              List<SheetPattern> holding =
                  layout.patterns().stream().filter(p -> holds(p, group)).toList();
              return holding.size() == 1
                  && holding.getFirst().quantity() == 1
                  && layout.unplaced().stream().noneMatch(u -> group.marks().contains(u.mark()));
            });
  }

  private static boolean holds(SheetPattern pattern, Together group) {
    return pattern.parts().stream()
        .anyMatch(p -> group.marks().contains(((Node.Finished) p.node()).mark()));
  }

  private static double sheetArea(StockSheet sheet) {
    return sheet.length().mm() * sheet.width().mm();
  }

  private Layout layout() {
    problem.ties().together().forEach(this::place);
    List<Part> parts = left(this::isFree);
    Layout others =
        searches
            .byWatch()
            .cut(
                new SheetProblem(
                    parts, stock(), problem.saw(), problem.ties().ofMatched().among(parts)));
    List<SheetPattern> patterns = new ArrayList<>(shared);
    others.patterns().forEach(pattern -> patterns.add(asStated(pattern)));
    leftOut.addAll(others.unplaced());
    return new Layout(patterns, leftOut, Bounds.ofPlaced(problem, leftOut));
  }

  private void place(Together group) {
    List<StockSheet> stock = stock().stream().filter(s -> how.allows(group, s)).toList();
    List<Choice> choices = choices(group, stock);
    if (choices.isEmpty()) {
      leaveOut(group);
    } else {
      take(choices.get(Math.min(how.way, choices.size() - 1)).pattern);
    }
  }

  /** Sheets of a stock with a whole group on them, the best first. */
  private List<Choice> choices(Together group, List<StockSheet> stock) {
    List<Choice> choices =
        how.hurry.getAsBoolean()
            ? hurried(group, stock)
            : filled(group, this::isFree, stock, thorough);
    choices = choices.isEmpty() ? filled(group, part -> false, stock, thorough) : choices;
    return choices.isEmpty() ? alone(group, stock) : choices;
  }

  /** Other parts beside it only on the sheet that is best for the group alone. */
  private List<Choice> hurried(Together group, List<StockSheet> stock) {
    Set<String> best =
        filled(group, part -> false, stock, hurried).stream()
            .limit(1)
            .map(choice -> choice.pattern.sheet().name())
            .collect(Collectors.toSet());
    List<StockSheet> one = stock.stream().filter(s -> best.contains(s.name())).toList();
    return one.isEmpty() ? List.of() : filled(group, this::isFree, one, hurried);
  }

  /** Parts that fit nowhere say so; all others are left out for the sake of the group. */
  private void leaveOut(Together group) {
    List<StockSheet> usedUp =
        stock().stream()
            .filter(s -> s.supply().most() == 0)
            .map(s -> s.with(Supply.of(1)))
            .toList();
    boolean everFits = !usedUp.isEmpty() && !choices(group, usedUp).isEmpty();
    Unplaced.Reason asGroup =
        everFits ? Unplaced.Reason.NOT_ON_ONE_SHEET : Unplaced.Reason.TOO_MUCH_FOR_ONE_SHEET;
    Inflated inflated = new Inflated(problem);
    int[] fitting = inflated.fittingDemand();
    for (Part part : left(part -> group.marks().contains(part.mark()))) {
      int kind = inflated.kind(part.mark());
      Unplaced.Reason own = new Misfits(inflated).reason(kind);
      boolean fits = fitting[kind] > 0 && own == Unplaced.Reason.NO_SHEETS_LEFT;
      Unplaced.Reason reason = fits ? asGroup : own;
      leftOut.add(new Unplaced(part.mark(), part.count(), reason));
    }
  }

  private boolean isFree(Part part) {
    return problem.ties().together(part.mark()).isEmpty();
  }

  private void take(SheetPattern pattern) {
    shared.add(pattern);
    used.merge(pattern.sheet().name(), 1, Integer::sum);
    for (Placed part : pattern.parts()) {
      wanted.merge(((Node.Finished) part.node()).mark(), -1, Integer::sum);
    }
  }

  private interface Test {
    boolean holds(Part part);
  }

  private List<Part> left(Test test) {
    return problem.parts().stream()
        .filter(part -> test.holds(part) && wanted.getOrDefault(part.mark(), 0) > 0)
        .map(part -> part.times(wanted.getOrDefault(part.mark(), 0)))
        .toList();
  }

  private List<StockSheet> stock() {
    return problem.stock().stream()
        .map(
            sheet ->
                sheet.supply() instanceof Supply.Limited(int count)
                    ? sheet.with(Supply.of(count - used.getOrDefault(sheet.name(), 0)))
                    : sheet)
        .toList();
  }

  /** A group as a problem of its own, on one sheet of each stock. */
  private List<Choice> alone(Together group, List<StockSheet> stock) {
    List<Part> parts = left(part -> group.marks().contains(part.mark()));
    Ties ties = problem.ties().ofMatched().among(parts);
    double area =
        parts.stream().mapToDouble(p -> p.count() * p.length().mm() * p.width().mm()).sum();
    return stock.stream()
        .filter(sheet -> sheet.supply().most() > 0 && sheetArea(sheet) >= area)
        .map(sheet -> List.of(sheet.with(Supply.of(1))))
        .map(sheet -> new SheetProblem(parts, sheet, problem.saw(), ties))
        .map(searches.byWork()::cut)
        .filter(layout -> layout.unplaced().isEmpty())
        .map(layout -> new Choice(asStated(layout.patterns().getFirst()), area))
        .sorted(Choice.ORDER)
        .toList();
  }

  /**
   * Filled strip by strip, the parts of the group first.
   *
   * @param others parts that may lie beside it
   */
  private List<Choice> filled(
      Together group, Test others, List<StockSheet> stock, Strips.Tools tools) {
    List<Part> parts = left(part -> group.marks().contains(part.mark()) || others.holds(part));
    List<StockSheet> clear = stock.stream().filter(sheet -> sheet.defects().isEmpty()).toList();
    SheetProblem one = new SheetProblem(parts, clear, problem.saw(), problem.ties().among(parts));
    Inflated inflated = new Inflated(one);
    double[] worth = new double[inflated.kinds.size()];
    Arrays.setAll(
        worth,
        kind -> inflated.area(kind) * (inflated.kinds.get(kind).company().isPresent() ? FIRST : 1));
    List<Choice> found = new ArrayList<>();
    for (Panel panel : inflated.panels) {
      if (panel.sheet().supply().most() > 0 && !panel.options().isEmpty()) {
        for (Direction[] ways : StripCutter.WAYS) {
          choice(inflated, one, panel, ways, worth, tools).ifPresent(found::add);
        }
      }
    }
    found.sort(Choice.ORDER);
    return found;
  }

  private Optional<Choice> choice(
      Inflated inflated,
      SheetProblem one,
      Panel panel,
      Direction[] ways,
      double[] worth,
      Strips.Tools tools) {
    int[] left = inflated.demand.clone();
    Draft draft = new Filler(panel, worth, left, tools).fill(panel.length(), panel.width(), ways);
    double area = 0;
    for (int kind = 0; kind < left.length; kind++) {
      if (left[kind] > 0 && inflated.kinds.get(kind).company().isPresent()) {
        return Optional.empty();
      }
      area += (inflated.demand[kind] - left[kind]) * inflated.area(kind);
    }
    List<Drafted> drafts = List.of(new Drafted(panel, draft, 1));
    SheetPattern pattern = new Trees(one, inflated).patterns(drafts).getFirst();
    return Optional.of(new Choice(asStated(pattern), area));
  }

  /** With the sheet in the supply that the problem states. */
  private SheetPattern asStated(SheetPattern pattern) {
    StockSheet sheet =
        problem.stock().stream()
            .filter(s -> s.name().equals(pattern.sheet().name()))
            .findFirst()
            .orElseThrow();
    return new SheetPattern(sheet, pattern.quantity(), pattern.root());
  }
}
