package fourpin.cutting;

import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * One run through a problem: panels are filled one pattern after the other, each cut as often as
 * the demand allows, and after each pattern the worth of its parts is corrected: parts that came
 * from a wasteful panel become worth more, so that the next run places them earlier and in better
 * company.
 *
 * <p>Sequential value correction: G. Belov and G. Scheithauer, Setup and open-stacks minimization
 * in one-dimensional stock cutting, INFORMS Journal on Computing 19 (2007) 27-35, after E.A.
 * Mukhacheva (from memory).
 */
final class Attempt {

  /** A panel as drafted, and how often it is cut like this. */
  record Drafted(Panel panel, Draft draft, int quantity) {}

  /** Better first: fewer parts left out (by area), lower price, less sheet area, larger offcut. */
  record Score(double missing, long price, double area, double offcut)
      implements Comparable<Score> {
    private static final Comparator<Score> ORDER =
        Comparator.comparingDouble(Score::missing)
            .thenComparingLong(Score::price)
            .thenComparingDouble(Score::area)
            .thenComparing(Comparator.comparingDouble(Score::offcut).reversed());

    @Override
    public int compareTo(Score other) {
      return ORDER.compare(this, other);
    }

    /** What drafts come to that leave so many parts of each kind out. */
    static Score of(Inflated problem, List<Drafted> drafts, int[] left) {
      double missing = 0;
      for (int kind = 0; kind < left.length; kind++) {
        missing += left[kind] * problem.area(kind);
      }
      long price = 0;
      double area = 0;
      double offcut = 0;
      for (Drafted d : drafts) {
        Panel panel = d.panel;
        price = Math.addExact(price, Math.multiplyExact(panel.sheet().price(), (long) d.quantity));
        area += panel.area() * d.quantity;
        double largest = Draft.largestOffcut(d.draft, panel.length(), panel.width(), problem.kerf);
        offcut = Math.max(offcut, largest);
      }
      return new Score(missing, price, area, offcut);
    }
  }

  /** What a run came to. */
  record Outcome(List<Drafted> drafts, int[] missing, Score score) {}

  private record Filling(int panel, Draft draft, int[] left, double gained) {}

  /** Kinds looked at before it is asked again whether to stop: some milliseconds. */
  private static final int LOOKED_BETWEEN = 5_000;

  private final Inflated problem;
  private final double[] worth;
  private final Direction[] ways;
  private final Strips.Tools tools;
  private final int[] supply;
  private final int[] left;

  /**
   * @param worth value of one part of each kind; corrected in place
   * @param ways the ways that the first cuts of a panel run, where the saw can make such cuts
   */
  Attempt(Inflated problem, double[] worth, Direction[] ways, Strips.Tools tools) {
    this(
        problem,
        worth,
        ways,
        tools,
        problem.fittingDemand(),
        problem.panels.stream().mapToInt(panel -> panel.sheet().supply().most()).toArray());
  }

  /**
   * @param left how many of each kind are wanted; taken from
   * @param supply how many there are of each panel; taken from
   */
  Attempt(
      Inflated problem,
      double[] worth,
      Direction[] ways,
      Strips.Tools tools,
      int[] left,
      int[] supply) {
    this.problem = problem;
    this.worth = worth;
    this.ways = ways;
    this.tools = tools;
    this.left = left;
    this.supply = supply;
  }

  /** To the end. */
  Outcome run() {
    return run(() -> false);
  }

  /**
   * To the end, or until told to stop: then what has no place yet is missing.
   *
   * @param stop asked now and then, more often the more kinds there are
   */
  Outcome run(BooleanSupplier stop) {
    List<Drafted> drafts = new ArrayList<>();
    long looked = 0;
    for (List<Filling> found = fillings(); !found.isEmpty(); found = fillings()) {
      looked += (long) found.size() * left.length;
      if (looked >= LOOKED_BETWEEN && stop.getAsBoolean()) {
        break;
      }
      looked %= LOOKED_BETWEEN;
      Filling chosen = choose(found);
      int[] used = used(chosen);
      int quantity = quantity(used, supply[chosen.panel]);
      correct(used, quantity, problem.panels.get(chosen.panel));
      take(used, quantity);
      supply[chosen.panel] -= quantity;
      drafts.add(new Drafted(problem.panels.get(chosen.panel), chosen.draft, quantity));
    }
    return new Outcome(drafts, left, Score.of(problem, drafts, left));
  }

  /** The best filling of one panel of each size that is left and on which anything fits. */
  private List<Filling> fillings() {
    List<Filling> found = new ArrayList<>();
    for (int panel = 0; panel < supply.length; panel++) {
      if (supply[panel] > 0 && anythingLeft()) {
        Filling filling = filling(panel);
        if (filling.gained > 0) {
          found.add(filling);
        }
      }
    }
    return found;
  }

  private boolean anythingLeft() {
    return Arrays.stream(left).anyMatch(count -> count > 0);
  }

  private Filling filling(int index) {
    Panel panel = problem.panels.get(index);
    int[] rest = left.clone();
    Filler filler = new Filler(panel, worth, rest, tools);
    Draft draft = panel.options().isEmpty() ? Draft.FREE : fill(filler, panel);
    return new Filling(index, draft, rest, filler.gained());
  }

  /** With other first cuts where the saw can make none of those asked for. */
  private Draft fill(Filler filler, Panel panel) {
    Draft draft = filler.fill(panel.length(), panel.width(), ways);
    return filler.gained() > 0
        ? draft
        : filler.fill(panel.length(), panel.width(), Direction.values());
  }

  /**
   * The cheapest panel that takes all that is left; else the one that gives most worth for its
   * price.
   */
  private Filling choose(List<Filling> found) {
    return found.stream()
        .filter(f -> Arrays.stream(f.left).allMatch(count -> count == 0))
        .min(
            Comparator.comparingLong((Filling f) -> sheet(f).price())
                .thenComparingDouble(f -> area(f)))
        .orElseGet(() -> found.stream().min(byYield()).orElseThrow());
  }

  private Comparator<Filling> byYield() {
    boolean priced = problem.panels.stream().anyMatch(panel -> panel.sheet().price() > 0);
    return priced
        ? Comparator.comparingDouble((Filling f) -> sheet(f).price() / f.gained)
            .thenComparingDouble(f -> area(f) / f.gained)
        : Comparator.comparingDouble(f -> area(f) / f.gained);
  }

  private StockSheet sheet(Filling filling) {
    return problem.panels.get(filling.panel).sheet();
  }

  private double area(Filling filling) {
    return problem.panels.get(filling.panel).area();
  }

  private int[] used(Filling filling) {
    int[] used = new int[left.length];
    Arrays.setAll(used, kind -> left[kind] - filling.left[kind]);
    return used;
  }

  private int quantity(int[] used, int available) {
    int quantity = available;
    for (int kind = 0; kind < used.length; kind++) {
      quantity = used[kind] > 0 ? Math.min(quantity, left[kind] / used[kind]) : quantity;
    }
    return quantity;
  }

  private void take(int[] used, int quantity) {
    for (int kind = 0; kind < used.length; kind++) {
      left[kind] -= used[kind] * quantity;
    }
  }

  /** Moves the worth of the parts used towards the share of the panel that they really took. */
  private void correct(int[] used, int quantity, Panel panel) {
    double area = 0;
    for (int kind = 0; kind < used.length; kind++) {
      area += used[kind] * problem.area(kind);
    }
    double share = panel.area() / area;
    for (int kind = 0; kind < used.length; kind++) {
      if (used[kind] > 0) {
        double weight = (double) used[kind] * quantity / (problem.demand[kind] + left[kind]);
        worth[kind] += weight * (share * problem.area(kind) - worth[kind]);
      }
    }
  }
}
