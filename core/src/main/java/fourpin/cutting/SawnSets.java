package fourpin.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether the parts of matched sets lie as they must on one sheet of the {@link VirtualSaw}: judged
 * by their places alone.
 */
final class SawnSets {

  /** A part and its place, in picometres. */
  record Cut(String mark, Lay lay, long x0, long y0, long x1, long y1) {

    /** Whether another follows it with only the kerf between. */
    boolean isBefore(Cut next, Direction cuts, long kerf) {
      return lay == next.lay
          && (cuts == Direction.CROSSCUT
              ? next.x0 == x1 + kerf && next.y0 == y0 && next.y1 == y1
              : next.y0 == y1 + kerf && next.x0 == x0 && next.x1 == x1);
    }
  }

  private SawnSets() {}

  static List<Fault> check(SheetProblem problem, int pattern, List<Cut> cut) {
    List<Fault> faults = new ArrayList<>();
    for (Matched set : problem.ties().matched()) {
      List<Cut> its = new ArrayList<>(cut);
      its.removeIf(part -> !set.marks().contains(part.mark));
      its.sort(Comparator.comparingLong(Cut::x0).thenComparingLong(Cut::y0));
      boolean whole = true;
      while (whole && !its.isEmpty()) {
        whole = takeSet(set, its, problem.saw().kerf().picometres());
      }
      if (!whole) {
        faults.add(new Fault.NotMatched(pattern, set.name()));
      }
    }
    return faults;
  }

  /** The part nearest to the corner is the first of its set; takes that set away. */
  private static boolean takeSet(Matched set, List<Cut> its, long kerf) {
    Cut last = its.removeFirst();
    boolean fits = last.mark.equals(set.marks().getFirst());
    for (int i = 1; fits && i < set.marks().size(); i++) {
      String mark = set.marks().get(i);
      Cut before = last;
      Direction cuts = set.cuts(before.lay);
      Optional<Cut> next =
          its.stream()
              .filter(part -> part.mark.equals(mark) && before.isBefore(part, cuts, kerf))
              .findFirst();
      fits = next.isPresent();
      next.ifPresent(its::remove);
      last = next.orElse(before);
    }
    return fits;
  }
}
