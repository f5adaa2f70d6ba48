package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.Attempt.Score;
import fourpin.cutting.Generation.Relaxed;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Makes whole numbers of a solution in fractions: cuts what the linear programme wants whole times,
 * then one pattern more, and solves anew for what is left, down to nothing. On the way each rest is
 * also filled panel by panel, the parts being worth what the linear programme says. Later dives
 * draw the pattern by lot.
 *
 * <p>Diving with column generation: F. Vanderbeck and others, for example R. Sadykov, F.
 * Vanderbeck, A. Pessoa, I. Tahiri, E. Uchoa, Primal heuristics for branch and price, INFORMS
 * Journal on Computing 31 (2019) 251-267; the rests as in G. Wäscher and T. Gau, Heuristics for the
 * integer one-dimensional cutting stock problem, OR Spektrum 18 (1996) 131-144 (both from memory).
 */
final class Dive {
  private static final long SEED = 1;

  /** Rounds of new patterns before the top is rounded again, and for each rest. */
  private static final int ROUNDS_AT_TOP = 10;

  private static final int ROUNDS_BELOW = 12;

  /** The same for rests of many sheets. */
  private static final int ROUNDS_FOR_MANY = 3;

  /** The same for few sheets that many have come down to. From trials. */
  private static final int ROUNDS_AFTER_MANY = 5;

  /** Sheets are many from here on: this is how many steps a dive takes down to them. */
  private static final int STEPS_DOWN = 16;

  /**
   * With many sheets the first dive waits until the rounds at the top gain less than this part of
   * the cost. From trials.
   */
  private static final double STALL = 0.002;

  /**
   * Many sheets are filled at the top when so many times the work of it has gone by since, so that
   * a short search of them has an answer too. From trials.
   */
  private static final int BETWEEN_FILLS = 4;

  /** What a dive costs at least, so that there is an end. */
  private static final int STEPS_PER_DIVE = 1_000;

  /** Weight of the area beside the worth. */
  private static final double AREA = 0.05;

  /** A fraction this near to a whole number counts as whole. */
  private static final double WHOLE = 1e-6;

  private final Inflated problem;
  private final long[] costs;
  private final Generation generation;
  private final Pricing pricing;
  private final Strips.Tools tools;
  private final Work work;
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final Map<Panel, Integer> indices = new IdentityHashMap<>();
  private Outcome best;
  private boolean atEnd;
  private long filledAt;
  private long fillTook;

  Dive(
      Inflated problem,
      long[] costs,
      Generation generation,
      Pricing pricing,
      Strips.Tools tools,
      Work work,
      Outcome start) {
    this.problem = problem;
    this.costs = costs;
    this.generation = generation;
    this.pricing = pricing;
    this.tools = tools;
    this.work = work;
    best = start;
    problem.panels.forEach(panel -> indices.put(panel, indices.size()));
  }

  private int index(Panel panel) {
    return Objects.requireNonNull(indices.get(panel));
  }

  /**
   * Dives until the bound is reached or the work is spent.
   *
   * @param finish tried before the first dive
   */
  Outcome search(Finish finish) {
    for (Drafted drafted : best.drafts()) {
      int panel = index(drafted.panel());
      generation.add(Column.of(panel, drafted.draft(), problem.kinds.size()));
    }
    Optional<Relaxed> top = top();
    top.filter(relaxed -> hopeful(relaxed, 0))
        .flatMap(relaxed -> finish.finish(relaxed, generation, cost(best.drafts())))
        .ifPresent(this::offerAll);
    for (int dive = 0; top.isPresent() && hopeful(top.get(), 0) && !work.spent(); dive++) {
      new Descent(dive, top.get()).run();
      top = atEnd ? top : top();
    }
    return best;
  }

  /**
   * The solution for all parts, or with many sheets one near to it. It is rounded now and then on
   * the way, with many sheets more seldom, so that a stop finds an answer.
   */
  private Optional<Relaxed> top() {
    Optional<Relaxed> top = Optional.empty();
    double before = Double.POSITIVE_INFINITY;
    boolean gains = true;
    while (gains && !atEnd && !work.spent() && !proven()) {
      int known = generation.count();
      top = generation.solve(problem.fittingDemand(), supply(), ROUNDS_AT_TOP);
      atEnd = generation.count() == known;
      double value = top.map(Relaxed::value).orElse(0.0);
      gains = value < before * (1 - STALL) || top.filter(this::isMany).isEmpty();
      before = value;
      top.filter(relaxed -> hopeful(relaxed, 0) && isFillDue(relaxed)).ifPresent(this::fillAtTop);
    }
    return top;
  }

  private boolean isFillDue(Relaxed relaxed) {
    return !isMany(relaxed) || work.done() - filledAt >= BETWEEN_FILLS * fillTook;
  }

  private void fillAtTop(Relaxed relaxed) {
    long before = work.done();
    new Descent(0, relaxed).round(relaxed);
    filledAt = work.done();
    fillTook = filledAt - before;
  }

  /** Whether so many sheets are wanted in part that to fill them takes too much work. */
  private boolean isMany(Relaxed relaxed) {
    return sheets(relaxed) > pricing.mostFilled();
  }

  private static double sheets(Relaxed relaxed) {
    return Arrays.stream(relaxed.quantities()).map(quantity -> quantity % 1).sum();
  }

  private int[] supply() {
    return problem.panels.stream().mapToInt(panel -> panel.sheet().supply().most()).toArray();
  }

  private boolean proven() {
    return cost(best.drafts()) <= generation.bound();
  }

  /** Whether what is spent and the least for the rest may come below the best. */
  private boolean hopeful(Relaxed relaxed, long spent) {
    long least = generation.reachable(spent + (long) Math.ceil(relaxed.value() - WHOLE));
    return least < cost(best.drafts()) && !proven();
  }

  private long cost(List<Drafted> drafts) {
    return drafts.stream().mapToLong(d -> costs[index(d.panel())] * d.quantity()).sum();
  }

  private void offer(Outcome next) {
    if (next.score().compareTo(best.score()) < 0) {
      best = next;
      work.better(next);
    }
  }

  /** A cutting of all parts. */
  private void offerAll(List<Column> columns) {
    List<Drafted> drafts =
        columns.stream()
            .map(c -> new Drafted(problem.panels.get(c.panel()), c.draft(), 1))
            .toList();
    int[] nothing = new int[problem.kinds.size()];
    offer(new Outcome(drafts, nothing, Score.of(problem, drafts, nothing)));
  }

  /** One way down. */
  private final class Descent {
    private final int number;
    private final int[] left = problem.fittingDemand();
    private final int[] supply = supply();
    private final List<Drafted> taken = new ArrayList<>();
    private final Relaxed top;

    Descent(int number, Relaxed top) {
      this.number = number;
      this.top = top;
    }

    void run() {
      work.spend(STEPS_PER_DIVE);
      Optional<Relaxed> relaxed = Optional.of(top);
      while (relaxed.isPresent() && hopeful(relaxed.get(), cost(taken)) && !work.spent()) {
        takeAllWhole(relaxed.get());
        takeSome(relaxed.get());
        relaxed =
            anythingLeft()
                ? generation.solve(left, supply, rounds(relaxed.get()))
                : Optional.empty();
      }
      if (!anythingLeft()) {
        offer(new Outcome(taken, left, Score.of(problem, taken, left)));
      }
    }

    /** Many sheets are not filled at every step: that would take more work than the way down. */
    private void takeAllWhole(Relaxed relaxed) {
      if (isMany(relaxed)) {
        takeWhole(relaxed);
      } else {
        round(relaxed);
      }
    }

    /** Cuts what is wanted whole times, and fills the rest panel by panel. */
    void round(Relaxed relaxed) {
      takeWhole(relaxed);
      fillRest(relaxed.worths());
    }

    private boolean anythingLeft() {
      return Arrays.stream(left).anyMatch(count -> count > 0);
    }

    private void takeWhole(Relaxed relaxed) {
      for (int i = 0; i < relaxed.columns().size(); i++) {
        takeOften(relaxed.columns().get(i), (int) (relaxed.quantities()[i] + WHOLE));
      }
    }

    /**
     * So many times, in the end without the parts that are no longer wanted: a solution may hold
     * more of a part than is wanted, where that costs nothing.
     */
    private void takeOften(Column column, int times) {
      int more = times;
      while (more > 0 && wanted(column)) {
        Column next = column.without(left);
        int most = Math.min(more, Math.min(next.most(left), supply[column.panel()]));
        take(next, most);
        more -= most;
      }
    }

    private int rounds(Relaxed relaxed) {
      int few = isMany(top) ? ROUNDS_AFTER_MANY : ROUNDS_BELOW;
      return sheets(relaxed) > STEPS_DOWN ? ROUNDS_FOR_MANY : few;
    }

    /** Of many sheets some at a time, so that large problems too are soon at the bottom. */
    private void takeSome(Relaxed relaxed) {
      double[] fractions = Arrays.stream(relaxed.quantities()).map(q -> q % 1).toArray();
      for (int some = 0; some < Math.max(1, sheets(relaxed) / STEPS_DOWN); some++) {
        takeOne(relaxed, fractions);
      }
    }

    /** One pattern of those that the solution wants in part: the first time the largest part. */
    private void takeOne(Relaxed relaxed, double[] fractions) {
      int chosen = -1;
      double weight = 0;
      for (int i = 0; i < fractions.length; i++) {
        double lot = number == 0 ? fractions[i] : fractions[i] * random.nextDouble();
        boolean possible = wanted(relaxed.columns().get(i));
        if (fractions[i] > WHOLE && possible && lot > weight) {
          chosen = i;
          weight = lot;
        }
      }
      if (chosen >= 0) {
        fractions[chosen] = 0;
        take(relaxed.columns().get(chosen).without(left), 1);
      }
    }

    private boolean wanted(Column column) {
      for (int kind = 0; kind < left.length; kind++) {
        if (column.counts()[kind] > 0 && left[kind] > 0) {
          return supply[column.panel()] > 0;
        }
      }
      return false;
    }

    private void take(Column column, int times) {
      for (int kind = 0; kind < left.length; kind++) {
        left[kind] -= column.counts()[kind] * times;
      }
      supply[column.panel()] -= times;
      taken.add(new Drafted(problem.panels.get(column.panel()), column.draft(), times));
    }

    /** Fills what is left panel by panel. */
    private void fillRest(double[] worths) {
      for (Direction[] ways : pricing.ways()) {
        long before = tools.work();
        Outcome rest =
            new Attempt(problem, worths(worths), ways, tools, left.clone(), supply.clone()).run();
        work.spend((tools.work() - before) / SheetPricing.TOOL_STEPS_PER_WORK);
        List<Drafted> all = new ArrayList<>(taken);
        all.addAll(rest.drafts());
        offer(new Outcome(all, rest.missing(), Score.of(problem, all, rest.missing())));
        learn(rest.drafts());
      }
    }

    /** After many sheets not, since so many patterns would make every step slower. */
    private void learn(List<Drafted> drafts) {
      for (Drafted drafted : isMany(top) ? List.<Drafted>of() : drafts) {
        generation.add(Column.of(index(drafted.panel()), drafted.draft(), left.length));
      }
    }

    /** The worths, and a little for the area, so that nothing is worth nothing. */
    private double[] worths(double[] worths) {
      double[] both = new double[worths.length];
      double perArea =
          problem.panels.stream()
              .filter(panel -> panel.area() > 0)
              .mapToDouble(panel -> costs[index(panel)] / panel.area())
              .max()
              .orElse(0);
      Arrays.setAll(both, kind -> worths[kind] + AREA * perArea * problem.area(kind));
      return both;
    }
  }
}
