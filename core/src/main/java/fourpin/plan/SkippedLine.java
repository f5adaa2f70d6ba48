package fourpin.plan;

import fourpin.bench.Spacing;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import java.util.List;
import java.util.Optional;

/** A line that is not squared across two panels, so that no hole is bored on it in either. */
record SkippedLine(Line line) {

  /** As it is seen on one of the panels. @param up the face that it should be on */
  record Line(String piece, Surface up, int number) {}

  /**
   * @param steps as they should be
   */
  List<Step> in(List<Step> steps) {
    List<Step.Laid> pair =
        steps.stream()
            .filter(
                s -> s instanceof Step.SquareAcross a && isOn(a.panels(), line.piece(), line.up()))
            .map(s -> ((Step.SquareAcross) s).panels())
            .findFirst()
            .orElseThrow();
    return steps.stream().map(s -> without(s, pair)).toList();
  }

  private Step without(Step step, List<Step.Laid> pair) {
    return switch (step) {
      case Step.SquareAcross a when a.panels().equals(pair) ->
          new Step.SquareAcross(
              pair,
              new Spacing.FromStick(
                  a.marks().stick(), rest(a.marks().numbers()), a.marks().datum()));
      case Step.BoreRow r when isOn(pair, r.piece(), r.surface()) ->
          lines(r.spacing()).map(s -> Blunder.row(r, r.surface(), r.offset(), s)).orElse(r);
      case Step.BoreAtFence r when isOn(pair, r.piece(), r.surface()) ->
          lines(r.spacing()).map(s -> Blunder.row(r, r.surface(), r.edge(), s)).orElse(r);
      default -> step;
    };
  }

  private static boolean isOn(List<Step.Laid> pair, String piece, Surface up) {
    return pair.stream().anyMatch(l -> l.piece().equals(piece) && l.up() == up);
  }

  private Optional<Spacing> lines(Spacing spacing) {
    return spacing instanceof Spacing.OnLines(List<Integer> numbers)
        ? Optional.of(new Spacing.OnLines(rest(numbers)))
        : Optional.empty();
  }

  private List<Integer> rest(List<Integer> numbers) {
    return numbers.stream().filter(n -> n != line.number()).toList();
  }
}
