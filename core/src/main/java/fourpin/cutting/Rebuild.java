package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays each sheet of a layout out anew with the same parts, for a larger reusable offcut, then for
 * fewer small pieces and set-ups: pressed into the shortest and the narrowest piece of the sheet
 * that takes them, so that the rest comes off whole, and with first cuts of either way. What is no
 * better is not taken. Boards with defects stay as they are.
 */
final class Rebuild {
  private static final StripCutter.Effort EFFORT = new StripCutter.Effort(0, 128);
  private static final int BREADTH = 12;

  /** A share of the sheet below which halving goes no further. */
  private static final double FINEST = 1.0 / 64;

  private static final Direction[][] WAYS = {{Direction.RIP}, {Direction.CROSSCUT}};

  private final SheetProblem problem;
  private final Merit.Aims aims;
  private final Strips.Tools tools =
      new Strips.Tools(new Knapsack(EFFORT.cells()), new Knapsack(EFFORT.cells()), BREADTH);
  private final long most;

  /** A sheet and how many of each mark are cut from it. */
  private record Load(StockSheet sheet, Map<String, Integer> marks) {}

  /**
   * @param most knapsack steps; once they are spent, further sheets stay as they are
   */
  Rebuild(SheetProblem problem, Merit.Aims aims, long most) {
    this.problem = problem;
    this.aims = aims;
    this.most = most;
  }

  /** Sheets with the same parts come out alike, and are one pattern. */
  List<SheetPattern> better(List<SheetPattern> patterns) {
    Map<Load, SheetPattern> folded = new LinkedHashMap<>();
    for (SheetPattern pattern : patterns) {
      folded.merge(load(pattern), pattern, this::together);
    }
    List<SheetPattern> rebuilt = new ArrayList<>();
    folded.forEach((load, pattern) -> rebuilt.add(better(load, pattern)));
    return rebuilt;
  }

  private static Load load(SheetPattern pattern) {
    Map<String, Integer> marks = new LinkedHashMap<>();
    for (Placed part : pattern.parts()) {
      marks.merge(((Node.Finished) part.node()).mark(), 1, Integer::sum);
    }
    return new Load(pattern.sheet(), marks);
  }

  private SheetPattern together(SheetPattern one, SheetPattern other) {
    SheetPattern better = order().compare(other, one) < 0 ? other : one;
    return new SheetPattern(one.sheet(), one.quantity() + other.quantity(), better.root());
  }

  private Comparator<SheetPattern> order() {
    return Comparator.comparing(pattern -> Merit.OfSheet.of(pattern, problem.saw(), aims));
  }

  private SheetPattern better(Load load, SheetPattern pattern) {
    if (tools.work() >= most || !pattern.sheet().defects().isEmpty()) {
      return pattern;
    }
    SheetPattern best = pattern;
    for (SheetPattern next : new One(load).candidates()) {
      best = order().compare(next, best) < 0 ? next : best;
    }
    return new SheetPattern(pattern.sheet(), pattern.quantity(), best.root());
  }

  /** One sheet with its parts as a problem of its own. */
  private final class One {
    private final SheetProblem alone;
    private final Inflated inflated;
    private final Panel panel;
    private final double[] areas;

    One(Load load) {
      List<Part> parts = parts(load);
      Ties ties = problem.ties().ofMatched().among(parts);
      alone = new SheetProblem(parts, List.of(load.sheet), problem.saw(), ties);
      inflated = new Inflated(alone);
      panel = inflated.panels.getFirst();
      areas = new double[inflated.kinds.size()];
      Arrays.setAll(areas, inflated::area);
    }

    private List<Part> parts(Load load) {
      return problem.parts().stream()
          .filter(part -> load.marks.containsKey(part.mark()))
          .map(part -> part.times(load.marks.getOrDefault(part.mark(), 0)))
          .toList();
    }

    List<SheetPattern> candidates() {
      List<Draft> drafts = new ArrayList<>();
      for (Direction[] way : WAYS) {
        fill(panel.length(), panel.width(), way, drafts);
        press(Direction.CROSSCUT, panel.length(), way, drafts);
        press(Direction.RIP, panel.width(), way, drafts);
      }
      return drafts.stream()
          .filter(draft -> panel.rules().allow(draft, panel.length(), panel.width()))
          .map(this::pattern)
          .toList();
    }

    /** Whether everything finds a place in a piece of the panel; if so, that is a draft more. */
    private boolean fill(long length, long width, Direction[] way, List<Draft> drafts) {
      int[] left = inflated.demand.clone();
      Draft draft = new Filler(panel, areas, left, tools).fill(length, width, way);
      boolean all = Arrays.stream(left).allMatch(count -> count == 0);
      if (all) {
        drafts.add(draft);
      }
      return all;
    }

    /**
     * Halves the way to the smallest piece that takes all; the rest of the panel is one offcut. The
     * piece ends where its parts end, so that the fence is set to a size of theirs.
     */
    private void press(Direction cut, long extent, Direction[] way, List<Draft> drafts) {
      long least = leastExtent(cut);
      long fits = extent;
      List<Draft> pressed = new ArrayList<>();
      while (fits - least > extent * FINEST) {
        long middle = least + (fits - least) / 2;
        boolean all =
            cut == Direction.CROSSCUT
                ? fill(middle, panel.width(), way, pressed)
                : fill(panel.length(), middle, way, pressed);
        least = all ? least : middle;
        fits = all ? middle : fits;
      }
      if (!pressed.isEmpty()) {
        Draft tight = Draft.tight(pressed.getLast(), cut);
        Draft.Slice slice = new Draft.Slice(Draft.extent(tight, cut, p -> size(p, cut)), tight);
        drafts.add(new Draft.Split(cut, List.of(slice)));
      }
    }

    /** As its kind lies, along the way of the cuts that divide it. */
    private long size(Draft.Place place, Direction cut) {
      Inflated.Option option =
          panel.options().stream()
              .filter(o -> o.kind() == place.kind() && o.lay() == place.lay())
              .findFirst()
              .orElseThrow();
      return cut == Direction.CROSSCUT ? option.dx() : option.dy();
    }

    /** By area alone. */
    private long leastExtent(Direction cut) {
      double area = 0;
      for (int kind = 0; kind < areas.length; kind++) {
        area += areas[kind] * inflated.demand[kind];
      }
      return (long) (area / (cut == Direction.CROSSCUT ? panel.width() : panel.length()));
    }

    private SheetPattern pattern(Draft draft) {
      return new Trees(alone, inflated).patterns(List.of(new Drafted(panel, draft, 1))).getFirst();
    }
  }
}
