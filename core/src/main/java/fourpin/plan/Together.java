package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Step;
import fourpin.boring.BayGrid;
import fourpin.casework.Part;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Other panels that go wrong by the same act: lines are squared across both, or blanks bored in one
 * stack.
 */
record Together(List<Panel> panels) {

  static final Together NONE = new Together(List.of());

  /** One of them. */
  record Panel(RowNames names, SpoiltRows rows) {}

  Together {
    panels = List.copyOf(panels);
  }

  /**
   * Of the parts that share an act those that it spoils.
   *
   * @param right as it should be, {@code run} as it went
   */
  static Together of(RowNames names, List<Part> sharing, BenchRun right, BenchRun run) {
    return new Together(
        sharing.stream()
            .map(p -> new Panel(names.of(p), spoilt(p, right, run)))
            .filter(p -> !p.rows().isAsWanted())
            .toList());
  }

  private static SpoiltRows spoilt(Part part, BenchRun right, BenchRun run) {
    return SpoiltRows.of(
        Objects.requireNonNull(right.pieces().get(part.mark())),
        Objects.requireNonNull(run.pieces().get(part.mark())),
        Mistakes.rows(part));
  }

  /** Marks of the panels that lines are squared across together with one. */
  static Set<String> paired(List<Step> steps, String piece) {
    return steps.stream()
        .filter(s -> s instanceof Step.SquareAcross)
        .map(s -> ((Step.SquareAcross) s).panels().stream().map(Step.Laid::piece).toList())
        .filter(pair -> pair.contains(piece))
        .flatMap(List::stream)
        .filter(p -> !p.equals(piece))
        .collect(Collectors.toSet());
  }

  boolean isAlone() {
    return panels.isEmpty();
  }

  List<String> marks() {
    return panels.stream().map(p -> p.names().part().mark()).toList();
  }

  String words() {
    return String.join(" and ", marks());
  }

  /** The panel on the other hand of a bay. */
  Optional<Panel> facing(BayGrid grid) {
    return panels.stream()
        .filter(p -> p.rows().wanted().stream().anyMatch(b -> p.names().grid(b).equals(grid)))
        .findFirst();
  }
}
