package fourpin.plan;

import fourpin.bench.Removal;
import fourpin.bench.Removal.Bore;
import fourpin.bench.Surface;
import fourpin.bench.WorkedPiece;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The rows of a panel as they should be beside what a mistake makes of them.
 *
 * @param piece as it should be
 * @param wanted the holes of its rows, from the lowest up, row by row
 * @param made instead; what was bored twice is one hole
 */
record SpoiltRows(WorkedPiece piece, List<Bore> wanted, List<Bore> made) {

  static SpoiltRows of(WorkedPiece right, WorkedPiece wrong, Set<String> rows) {
    return new SpoiltRows(right, bores(right, rows), bores(wrong, rows));
  }

  private static List<Bore> bores(WorkedPiece piece, Set<String> rows) {
    return bores(piece).filter(b -> rows.contains(b.purpose())).distinct().toList();
  }

  private static Stream<Bore> bores(WorkedPiece piece) {
    return piece.removals().stream().filter(r -> r instanceof Bore).map(r -> (Bore) r);
  }

  /** Wanted and not there. Whatever row a hole was bored for, it does where it lies right. */
  List<Bore> missing() {
    return without(wanted, made);
  }

  /** There and not wanted. */
  List<Bore> extra() {
    return without(made, wanted);
  }

  boolean isAsWanted() {
    return missing().isEmpty() && extra().isEmpty();
  }

  private static List<Bore> without(List<Bore> some, List<Bore> others) {
    return some.stream().filter(s -> others.stream().noneMatch(o -> isSame(s, o))).toList();
  }

  private static boolean isSame(Bore a, Bore b) {
    return isThere(a, b) && a.diameter().equals(b.diameter()) && a.depth().equals(b.depth());
  }

  /** Whether two holes share their centre. */
  private static boolean isThere(Bore a, Bore b) {
    return a.surface() == b.surface()
        && a.length().equals(b.length())
        && a.width().equals(b.width());
  }

  /** The wanted hole that is missing at the lowest place. */
  Bore lowestMissing() {
    return missing().stream().min(Comparator.comparing(Bore::length)).orElseThrow();
  }

  /** The lowest hole that is missing; where none is, the lowest that is there and not wanted. */
  Bore lowestOff() {
    return (missing().isEmpty() ? extra() : missing())
        .stream().min(Comparator.comparing(Bore::length)).orElseThrow();
  }

  /** Whether holes are off across the panel alone, each at its height. */
  boolean areOffAcross() {
    return missing().stream()
        .allMatch(
            m ->
                made.stream()
                    .anyMatch(
                        b ->
                            b.surface() == m.surface()
                                && b.purpose().equals(m.purpose())
                                && b.length().equals(m.length())));
  }

  /**
   * The hole that was bored instead of a wanted one: of its row the one with its number, counted
   * from the lowest; where the row has no holes, the nearest.
   */
  Optional<Bore> instead(Bore hole) {
    List<Bore> row = row(made, hole);
    return row.isEmpty()
        ? made.stream()
            .filter(m -> m.surface() == hole.surface())
            .min(Comparator.comparing(m -> between(m, hole)))
        : Optional.of(row.get(Math.min(row(wanted, hole).indexOf(hole), row.size() - 1)));
  }

  /** The number of a wanted hole in its row, counted from the lowest, from 1. */
  int number(Bore hole) {
    return row(wanted, hole).indexOf(hole) + 1;
  }

  /** The hole with the number of a wanted one; none where the row ends before. */
  Optional<Bore> counted(Bore hole) {
    return row(made, hole).stream().skip(row(wanted, hole).indexOf(hole)).findFirst();
  }

  /** The holes of the row that a hole belongs to, on its face, from the lowest up. */
  static List<Bore> row(List<Bore> holes, Bore hole) {
    return holes.stream()
        .filter(h -> h.surface() == hole.surface() && h.purpose().equals(hole.purpose()))
        .sorted(Comparator.comparing(Bore::length))
        .toList();
  }

  /** From centre to centre, mm. */
  private static double between(Bore a, Bore b) {
    return Math.hypot(a.length().minus(b.length()).mm(), a.width().minus(b.width()).mm());
  }

  /** From rim to rim, mm, as if both were on one surface; negative where they meet. */
  static double betweenRims(Bore a, Bore b) {
    return between(a, b) - (a.diameter().mm() + b.diameter().mm()) / 2;
  }

  /**
   * The least wood, mm, negative where holes meet: between the rims of a wrong hole and of any that
   * the panel is to have in that face, there already or not, and between a missing one and any that
   * is there.
   */
  double leastBetweenRims() {
    return least(SpoiltRows::betweenRims);
  }

  /** The same from centre to centre, mm. */
  double leastBetweenCentres() {
    return least(SpoiltRows::between);
  }

  /** Whether holes that were bored run into each other. */
  boolean doMadeMeet() {
    return made.stream()
        .anyMatch(
            a ->
                made.stream()
                    .anyMatch(
                        b -> !a.equals(b) && a.surface() == b.surface() && betweenRims(a, b) < 0));
  }

  private double least(ToDoubleBiFunction<Bore, Bore> distance) {
    List<Bore> all = bores(piece).toList();
    return Math.min(least(extra(), all, distance), least(missing(), made, distance));
  }

  private static double least(
      List<Bore> some, List<Bore> others, ToDoubleBiFunction<Bore, Bore> distance) {
    double least = Double.POSITIVE_INFINITY;
    for (Bore one : some) {
      for (Bore other : others) {
        if (one.surface() == other.surface()) {
          least = Math.min(least, distance.applyAsDouble(one, other));
        }
      }
    }
    return least;
  }

  /** The least wood between a hole that was bored and any of its face in another row, mm. */
  double leastToOtherHoles() {
    List<Bore> others = new ArrayList<>(made);
    bores(piece).filter(b -> !rows().contains(b.purpose())).forEach(others::add);
    double least = Double.POSITIVE_INFINITY;
    for (Bore hole : made) {
      for (Bore other : others) {
        if (hole.surface() == other.surface() && !hole.purpose().equals(other.purpose())) {
          least = Math.min(least, betweenRims(hole, other));
        }
      }
    }
    return least;
  }

  private Set<String> rows() {
    return wanted.stream().map(Bore::purpose).collect(Collectors.toSet());
  }

  /** Whether holes from both faces keep this wood between them, or as much as they should. */
  boolean doWebsStay(Length least) {
    return leastWeb(made) >= Math.min(least.mm(), leastWeb(wanted));
  }

  /** The least wood between holes from both faces that lie over each other, mm. */
  private double leastWeb(List<Bore> holes) {
    double least = Double.POSITIVE_INFINITY;
    for (Bore hole : holes) {
      for (Bore other : holes) {
        if (hole.surface() != other.surface() && betweenRims(hole, other) < 0) {
          least = Math.min(least, piece.thickness().minus(hole.depth()).minus(other.depth()).mm());
        }
      }
    }
    return least;
  }

  /** The least wood round a wrong hole, to the panel's ends and edges and to its cuts, mm. */
  double leastRound() {
    double least = Double.POSITIVE_INFINITY;
    for (Bore hole : extra()) {
      double radius = hole.diameter().mm() / 2;
      for (Length side : sides(hole)) {
        least = Math.min(least, side.mm() - radius);
      }
      for (Removal removal : piece.removals()) {
        if (removal instanceof Removal.Block block && meets(hole, block)) {
          least = Math.min(least, to(hole, block) - radius);
        }
      }
    }
    return least;
  }

  private List<Length> sides(Bore hole) {
    return List.of(
        hole.length(),
        piece.length().minus(hole.length()),
        hole.width(),
        piece.width().minus(hole.width()));
  }

  /** Whether a hole and a cut share a stretch of the thickness. */
  private boolean meets(Bore hole, Removal.Block block) {
    boolean face = hole.surface() == Surface.FACE;
    Length from = face ? Length.ZERO : piece.thickness().minus(hole.depth());
    Length to = face ? hole.depth() : piece.thickness();
    return from.isLessThan(block.thickness().to()) && block.thickness().from().isLessThan(to);
  }

  private static double to(Bore hole, Removal.Block block) {
    double along = outside(hole.length(), block.length().from(), block.length().to());
    double across = outside(hole.width(), block.width().from(), block.width().to());
    return Math.hypot(along, across);
  }

  private static double outside(Length at, Length from, Length to) {
    return Math.max(0, Math.max(from.minus(at).mm(), at.minus(to).mm()));
  }
}
