package fourpin.cutting;

import fourpin.cutting.Inflated.Kind;
import fourpin.cutting.Inflated.Option;
import fourpin.cutting.Inflated.Panel;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * Where a part lies on a board clear of all its defects, so that the saw can get it out. The blade
 * may run in a defect. Lengths are in picometres, from the corner of the board.
 *
 * @param first the way of the cuts that come first
 */
record ClearPlace(long x, long y, long length, long width, Direction first) {

  /** From where to where a part may lie, one way. */
  private record Range(long from, long to) {}

  /** The first place for a kind, from the near end and then from the near edge. */
  static Optional<ClearPlace> of(Inflated problem, Panel panel, int kind) {
    return panel.options().stream()
        .filter(option -> option.kind() == kind)
        .flatMap(option -> of(problem, panel, option).stream())
        .findFirst();
  }

  private static Optional<ClearPlace> of(Inflated problem, Panel panel, Option option) {
    Kind kind = problem.kinds.get(option.kind());
    long length = kind.along(option.lay()) - problem.kerf;
    long width = kind.across(option.lay()) - problem.kerf;
    Range along = along(problem, panel);
    Range across = across(problem, panel, panel.keepsEdges(kind, option.lay()));
    List<Defect> defects = panel.sheet().defects();
    long[] xs = starts(defects.stream().mapToLong(ClearPlace::end), along, length, problem, panel);
    long[] ys = starts(defects.stream().mapToLong(ClearPlace::edge), across, width, problem, panel);
    Direction first = first(panel, option, along, across, length, width);
    return LongStream.of(xs)
        .mapToObj(
            x -> {
              List<Defect> beside =
                  defects.stream()
                      .filter(d -> d.x().picometres() < x + length && x < end(d))
                      .toList();
              return LongStream.of(ys)
                  .filter(y -> isClear(beside, y, y + width))
                  .mapToObj(y -> new ClearPlace(x, y, length, width, first))
                  .findFirst();
            })
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static boolean isClear(List<Defect> defects, long from, long to) {
    return defects.stream().noneMatch(d -> d.y().picometres() < to && from < edge(d));
  }

  private static long end(Defect defect) {
    return defect.x().plus(defect.length()).picometres();
  }

  private static long edge(Defect defect) {
    return defect.y().plus(defect.width()).picometres();
  }

  private static Range along(Inflated problem, Panel panel) {
    long from = problem.trim.nearEnd().picometres();
    return new Range(from, from + panel.length() - problem.kerf);
  }

  /** What keeps its edges lies from edge to edge. */
  private static Range across(Inflated problem, Panel panel, boolean keepsEdges) {
    long edge = problem.trim.nearEdge().picometres();
    long from = edge + (keepsEdges ? 0 : panel.sheet().roughEdge().picometres());
    return new Range(from, from + (keepsEdges ? panel.whole() : panel.width()) - problem.kerf);
  }

  /**
   * A place that could be shifted back is as good further back, up to a defect, or to where the
   * strip before it is the thinnest that is cut off.
   */
  private static long[] starts(
      LongStream ends, Range range, long size, Inflated problem, Panel panel) {
    long next = range.from + problem.kerf + ClearPieces.step(panel.sheet());
    return LongStream.concat(LongStream.of(range.from, next), ends.filter(end -> end > next))
        .filter(start -> start + size <= range.to)
        .sorted()
        .distinct()
        .toArray();
  }

  /** Crosscuts, unless the saw can only rip first. */
  private static Direction first(
      Panel panel, Option option, Range along, Range across, long length, long width) {
    boolean rips = width < across.to - across.from;
    boolean crosscuts = length < along.to - along.from;
    CutRules rules = panel.rules();
    long reach = rips ? panel.width() : panel.whole();
    boolean crosscut = !crosscuts || rules.allow(Direction.CROSSCUT, reach, rules.atStart());
    boolean rip = !rips || rules.reach(Direction.RIP, crosscuts ? option.dx() : panel.length());
    return crosscut && rip ? Direction.CROSSCUT : Direction.RIP;
  }
}
