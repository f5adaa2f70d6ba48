package fourpin.plan;

import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.casework.BuiltCase;
import fourpin.measure.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Blanks for cleat strips that go together, the one on the left of the bay first.
 *
 * @param method none where nothing is bored in them
 */
record CleatLot(List<CleatBlank> blanks, Optional<Method.Blanks> method) {

  CleatLot {
    blanks = List.copyOf(blanks);
  }

  /** What blanks that go together have in common. */
  private record Place(int bay, Length foot) {}

  /**
   * @param borings of any cases
   */
  static List<CleatLot> of(BuiltCase built, List<CleatBlank> blanks, List<CaseBoring> borings) {
    return blanks.stream()
        .collect(
            Collectors.groupingBy(
                b -> new Place(b.bay(built), b.wood().box().low().z()),
                LinkedHashMap::new,
                Collectors.toList()))
        .entrySet()
        .stream()
        .map(e -> new CleatLot(e.getValue(), method(built, e.getKey().bay(), borings)))
        .toList();
  }

  private static Optional<Method.Blanks> method(
      BuiltCase built, int bay, List<CaseBoring> borings) {
    return borings.stream()
        .filter(
            b ->
                b.grids().stream()
                    .anyMatch(g -> g.caseName().equals(built.order().name()) && g.bay() == bay))
        .map(CaseBoring::method)
        .flatMap(m -> m instanceof Method.Blanks b ? Stream.of(b) : Stream.empty())
        .findFirst();
  }

  /** Whether they are bored in one stack. */
  boolean isStacked() {
    return method.filter(m -> m.stack() > 1).isPresent();
  }

  /** What is bored in one act with a blank: the stack, or only itself. */
  List<CleatBlank> with(CleatBlank blank) {
    return isStacked() ? blanks : List.of(blank);
  }
}
