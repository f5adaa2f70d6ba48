package fourpin.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A problem made ready for the search: sheets without their trim, equal parts gathered into kinds,
 * all in whole picometres with one kerf added to each size of sheet and part. A guillotine layout
 * with kerf k exists exactly when the one without kerf exists for these larger sizes, since a last
 * cut may run off the edge; so the search need not know of kerfs.
 */
final class Inflated {

  /**
   * Parts of equal size and grain that may take each other's place, in the order of the problem; or
   * matched sets of parts, which are cut as one and then parted.
   *
   * @param set the matched set that it is
   * @param company the group that has to share a sheet with it
   */
  record Kind(
      long length, long width, Grain grain, Optional<Matched> set, Optional<Together> company) {

    Kind(long length, long width, Grain grain) {
      this(length, width, grain, Optional.empty(), Optional.empty());
    }

    /** Its size along the length of a sheet that it lies on. */
    long along(Lay lay) {
      return lay == Lay.STRAIGHT ? length : width;
    }

    long across(Lay lay) {
      return lay == Lay.STRAIGHT ? width : length;
    }
  }

  /** One way to lay a kind on a panel. */
  record Option(int kind, long dx, long dy, Lay lay) {
    long along(Direction strip) {
      return strip == Direction.RIP ? dx : dy;
    }

    long across(Direction strip) {
      return strip == Direction.RIP ? dy : dx;
    }
  }

  /**
   * A trimmed sheet, and every way to lay a kind on it alone that the saw can cut.
   *
   * <p>Where the edges are rough, it is as wide as after straightening, and what is as wide as the
   * stock counts as just as wide: nothing lies beside it, whether its edge is straightened or not.
   * So a layout of boards that are cut to length here and ripped there is one of sheets.
   *
   * @param whole its width before an edge is straightened
   */
  record Panel(
      StockSheet sheet, long length, long width, long whole, List<Option> options, CutRules rules) {

    /** Whether a kind that lies so is as wide as the stock, and keeps its edges as they are. */
    boolean keepsEdges(Kind kind, Lay lay) {
      boolean parted = kind.set().map(set -> set.cuts(lay) == Direction.RIP).orElse(false);
      return !sheet.roughEdge().isZero() && kind.across(lay) == whole && !parted;
    }

    /** Whether anything is left once an edge is straightened. */
    boolean canBeRipped() {
      return sheet.roughEdge().isZero() || width < whole;
    }

    double area() {
      return (double) length * width;
    }

    /** Whether a kind can be cut from it, were it clear. */
    boolean takes(int kind) {
      return options.stream().anyMatch(option -> option.kind == kind);
    }
  }

  final long kerf;
  final Trim trim;
  final List<Kind> kinds;
  final List<List<Part>> partsOfKind;
  final List<Panel> panels;
  final int[] demand;
  private final Map<String, Part> parts;

  Inflated(SheetProblem problem) {
    kerf = problem.saw().kerf().picometres();
    trim = problem.saw().trim();
    parts = problem.parts().stream().collect(Collectors.toMap(Part::mark, part -> part));
    Map<Kind, List<Part>> gathered = new LinkedHashMap<>();
    for (Part part : problem.parts()) {
      Optional<Matched> set = problem.ties().matched(part.mark());
      Kind kind =
          set.map(matched -> whole(matched, problem)).orElseGet(() -> kind(part, problem.ties()));
      gathered.computeIfAbsent(kind, k -> new ArrayList<>()).add(part);
    }
    kinds = List.copyOf(gathered.keySet());
    partsOfKind = List.copyOf(gathered.values());
    panels = problem.stock().stream().map(sheet -> panel(sheet, problem.saw())).toList();
    demand = new int[kinds.size()];
    Arrays.setAll(demand, this::count);
  }

  private Kind kind(Part part, Ties ties) {
    return new Kind(
        Math.addExact(part.length().picometres(), kerf),
        Math.addExact(part.width().picometres(), kerf),
        part.grain(),
        Optional.empty(),
        ties.together(part.mark()));
  }

  /** A matched set as one part: in one way it is as long as its parts and the kerfs between. */
  private Kind whole(Matched set, SheetProblem problem) {
    List<Kind> its = set.marks().stream().map(mark -> kind(part(mark), problem.ties())).toList();
    Kind first = its.getFirst();
    boolean endToEnd = set.run() == Matched.Run.END_TO_END;
    return new Kind(
        endToEnd ? its.stream().mapToLong(Kind::length).reduce(0, Math::addExact) : first.length,
        endToEnd ? first.width : its.stream().mapToLong(Kind::width).reduce(0, Math::addExact),
        first.grain,
        Optional.of(set),
        first.company);
  }

  /** The part of a mark. */
  Part part(String mark) {
    return Objects.requireNonNull(parts.get(mark));
  }

  /** The kind that a part is of. */
  int kind(String mark) {
    return IntStream.range(0, kinds.size())
        .filter(kind -> partsOfKind.get(kind).stream().anyMatch(p -> p.mark().equals(mark)))
        .findFirst()
        .orElseThrow();
  }

  /** How many of a kind are wanted: parts, or whole sets. */
  private int count(int kind) {
    List<Part> its = partsOfKind.get(kind);
    return kinds
        .get(kind)
        .set()
        .map(set -> its.getFirst().count() / occurrences(set, its.getFirst().mark()))
        .orElseGet(() -> its.stream().mapToInt(Part::count).reduce(0, Math::addExact));
  }

  private static int occurrences(Matched set, String mark) {
    return Collections.frequency(set.marks(), mark);
  }

  private Panel panel(StockSheet sheet, Saw saw) {
    Trim trim = saw.trim();
    long length = usable(sheet.length().minus(trim.nearEnd()).minus(trim.farEnd()).picometres());
    long whole = usable(sheet.width().minus(trim.nearEdge()).minus(trim.farEdge()).picometres());
    long straight = whole - sheet.roughEdge().picometres();
    long width = straight > kerf ? straight : whole;
    Panel bare = new Panel(sheet, length, width, whole, List.of(), CutRules.of(saw));
    List<Option> options = new ArrayList<>();
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (Lay lay : lays(kinds.get(kind), sheet.grain())) {
        option(kind, lay, bare).ifPresent(options::add);
      }
    }
    return new Panel(sheet, length, width, whole, List.copyOf(options), bare.rules);
  }

  private Optional<Option> option(int kind, Lay lay, Panel panel) {
    return panel.keepsEdges(kinds.get(kind), lay)
        ? toLength(option(kind, lay), panel)
        : Optional.of(option(kind, lay)).filter(option -> isFree(option, panel));
  }

  /** Of a kind as wide as the stock; nothing lies beside it. */
  private Optional<Option> toLength(Option option, Panel panel) {
    boolean cut = option.dx < panel.length || kinds.get(option.kind).set().isPresent();
    boolean free = !cut || panel.rules.reach(Direction.CROSSCUT, panel.whole);
    return Optional.of(new Option(option.kind, option.dx, panel.width, option.lay))
        .filter(o -> o.dx <= panel.length && free)
        .filter(o -> panel.rules.free(o, panel.length, panel.width));
  }

  private boolean isFree(Option option, Panel panel) {
    return panel.canBeRipped()
        && option.dx <= panel.length
        && option.dy <= panel.width
        && panel.rules.free(option, panel.length, panel.width)
        && panel.rules.part(kinds.get(option.kind), option, panel.length, panel.width);
  }

  /** With the kerf added; nothing is usable where the trim takes it all. */
  private long usable(long trimmed) {
    return trimmed > 0 ? Math.addExact(trimmed, kerf) : 0;
  }

  private Option option(int kind, Lay lay) {
    Kind k = kinds.get(kind);
    return new Option(kind, k.along(lay), k.across(lay), lay);
  }

  /** The ways in which the grain lets a kind lie on a sheet. */
  static List<Lay> lays(Kind kind, SheetGrain grain) {
    boolean turnable = kind.grain == Grain.FREE || grain == SheetGrain.NONE;
    if (turnable) {
      return kind.length == kind.width ? List.of(Lay.STRAIGHT) : List.of(Lay.STRAIGHT, Lay.TURNED);
    }
    return List.of(grain == SheetGrain.ALONG_LENGTH ? Lay.STRAIGHT : Lay.TURNED);
  }

  double area(int kind) {
    return (double) kinds.get(kind).length * kinds.get(kind).width;
  }

  /** The demand of the kinds that fit on at least one panel; zero for the others. */
  int[] fittingDemand() {
    boolean[] fits = new boolean[kinds.size()];
    panels.forEach(panel -> panel.options.forEach(option -> fits[option.kind] = true));
    int[] fitting = Arrays.copyOf(demand, demand.length);
    for (int kind = 0; kind < fits.length; kind++) {
      fitting[kind] = fits[kind] ? demand[kind] : 0;
    }
    return fitting;
  }
}
