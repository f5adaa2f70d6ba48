package fourpin.cutting;

import fourpin.cutting.Inflated.Kind;
import fourpin.cutting.Inflated.Panel;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Sums of parts that must share a sheet, and of one sheet: in picometres, without the kerf round
 * parts.
 */
final class GroupSums {
  /** Sums of areas are rounded by far less. */
  private static final double ROUNDING = 1e-9;

  private final Inflated its;
  private final Panel panel;
  private final long kerf;

  /** From where to where along a board. */
  private record Stretch(long from, long to) {}

  GroupSums(SheetProblem problem, Together group, StockSheet sheet) {
    List<Part> parts =
        problem.parts().stream().filter(part -> group.marks().contains(part.mark())).toList();
    its =
        new Inflated(
            new SheetProblem(
                parts, List.of(sheet), problem.saw(), problem.ties().ofMatched().among(parts)));
    panel = its.panels.getFirst();
    kerf = its.kerf;
  }

  Optional<GroupLack> lack() {
    return tooLong().or(this::tooLarge);
  }

  /** What is wider than half of the board, in all ways to lay it, lies over its middle. */
  private Optional<GroupLack> tooLong() {
    List<Integer> wide =
        IntStream.range(0, its.kinds.size())
            .filter(kind -> 2 * across(kind) > panel.whole() - kerf)
            .boxed()
            .toList();
    if (wide.isEmpty()) {
      return Optional.empty();
    }
    long shortest = wide.stream().mapToLong(this::along).min().orElseThrow();
    List<Stretch> clear =
        clear(wide.stream().mapToLong(this::across).min().orElseThrow()).stream()
            .filter(stretch -> stretch.to - stretch.from >= shortest)
            .toList();
    long parts = wide.stream().mapToLong(kind -> its.demand[kind]).sum();
    long taken =
        wide.stream().mapToLong(kind -> its.demand[kind] * along(kind)).sum()
            + kerf * Math.max(0, parts - Math.max(1, clear.size()));
    long there = clear.stream().mapToLong(stretch -> stretch.to - stretch.from).sum();
    return taken > there
        ? Optional.of(
            new GroupLack.TooLong(panel.sheet(), marks(wide), length(taken), length(there)))
        : Optional.empty();
  }

  private Length length(long picometres) {
    Unit unit = panel.sheet().length().unit();
    return new Length(picometres, unit);
  }

  private List<String> marks(List<Integer> kinds) {
    return kinds.stream()
        .flatMap(kind -> its.partsOfKind.get(kind).stream())
        .map(Part::mark)
        .toList();
  }

  private long along(int kind) {
    return lays(kind).stream().mapToLong(lay -> its.kinds.get(kind).along(lay)).min().orElseThrow()
        - kerf;
  }

  private long across(int kind) {
    return lays(kind).stream().mapToLong(lay -> its.kinds.get(kind).across(lay)).min().orElseThrow()
        - kerf;
  }

  private List<Lay> lays(int kind) {
    return Inflated.lays(its.kinds.get(kind), panel.sheet().grain());
  }

  /** Where no single defect is in the way of a part of a width, on either side of it. */
  private List<Stretch> clear(long width) {
    long end = its.trim.nearEnd().picometres();
    long last = end + Math.max(0, panel.length() - kerf);
    long edge = its.trim.nearEdge().picometres();
    long far = edge + Math.max(0, panel.whole() - kerf);
    List<Defect> barring =
        panel.sheet().defects().stream()
            .filter(d -> d.y().picometres() - edge < width)
            .filter(d -> far - d.y().plus(d.width()).picometres() < width)
            .sorted(Comparator.comparing(Defect::x))
            .toList();
    List<Stretch> clear = new ArrayList<>();
    for (Defect defect : barring) {
      clear.add(new Stretch(end, Math.min(last, defect.x().picometres())));
      end = Math.max(end, defect.x().plus(defect.length()).picometres());
    }
    clear.add(new Stretch(end, last));
    return clear;
  }

  private Optional<GroupLack> tooLarge() {
    double parts =
        IntStream.range(0, its.kinds.size())
            .mapToDouble(kind -> its.demand[kind] * area(its.kinds.get(kind)))
            .sum();
    double sheet = area(panel.length() - kerf, panel.whole() - kerf) - knotty();
    return parts > sheet * (1 + ROUNDING)
        ? Optional.of(new GroupLack.TooLarge(panel.sheet(), Math.max(0, sheet / parts)))
        : Optional.empty();
  }

  private double area(Kind kind) {
    return area(kind.length() - kerf, kind.width() - kerf);
  }

  private static double area(long length, long width) {
    return Math.max(0, length) * (double) Math.max(0, width);
  }

  /** Of defects that do not lie over each other, without what is trimmed off. */
  private double knotty() {
    List<Defect> apart = new ArrayList<>();
    for (Defect next : panel.sheet().defects()) {
      if (apart.stream().noneMatch(other -> meet(next, other))) {
        apart.add(next);
      }
    }
    return apart.stream().mapToDouble(this::area).sum();
  }

  private static boolean meet(Defect one, Defect other) {
    return one.x().picometres() < other.x().plus(other.length()).picometres()
        && other.x().picometres() < one.x().plus(one.length()).picometres()
        && one.y().picometres() < other.y().plus(other.width()).picometres()
        && other.y().picometres() < one.y().plus(one.width()).picometres();
  }

  private double area(Defect defect) {
    long end = its.trim.nearEnd().picometres();
    long edge = its.trim.nearEdge().picometres();
    long last = end + panel.length() - kerf;
    long far = edge + panel.whole() - kerf;
    return area(
        Math.min(last, defect.x().plus(defect.length()).picometres())
            - Math.max(end, defect.x().picometres()),
        Math.min(far, defect.y().plus(defect.width()).picometres())
            - Math.max(edge, defect.y().picometres()));
  }
}
