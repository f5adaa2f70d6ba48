package fourpin.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.BenchRun;
import fourpin.bench.Removal;
import fourpin.bench.Step;
import fourpin.bench.Step.Against;
import fourpin.bench.Surface;
import fourpin.bench.VirtualBench;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A guide with one hole, 50 mm from its zero and 20 mm from its index edge, on a board of 600 x 200
 * x 18 mm: kept off the edge by 10 mm, off the end by 5 mm, or off a panel that ends 30 mm up by 4
 * mm. The other spacers of the same kind are 3 mm larger.
 */
class SpacerBlunderTest {

  private enum Seat {
    EDGE,
    END,
    BELOW
  }

  private static Length mm(long mm) {
    return Length.mm(mm);
  }

  private static Optional<Step.Between> between(long size) {
    return Optional.of(new Step.Between("K" + size, mm(size)));
  }

  private static Against at(Surface surface, long gap, Optional<Step.Between> spacer) {
    return new Against(surface, surface, mm(gap), spacer);
  }

  private static Step clamp(String piece, Seat seat, long size) {
    Against ends =
        switch (seat) {
          case EDGE -> at(Surface.INDEX_END, 0, Optional.empty());
          case END -> at(Surface.INDEX_END, -size, between(size));
          case BELOW -> at(Surface.INDEX_END, 30 + size, Optional.empty());
        };
    Against edges =
        seat == Seat.EDGE
            ? at(Surface.INDEX_EDGE, size, between(size))
            : at(Surface.INDEX_EDGE, 0, Optional.empty());
    Optional<Step.Rest> on =
        seat == Seat.BELOW ? Optional.of(new Step.Rest("B", between(size))) : Optional.empty();
    return new Step.ClampGuide("G", piece, Surface.FACE, ends, edges, Step.ClampGuide.Side.A, on);
  }

  private static List<Step> board(String piece) {
    Map<Surface, String> marks =
        Map.of(Surface.FACE, "left", Surface.INDEX_END, "bottom", Surface.INDEX_EDGE, "front");
    return List.of(
        new Step.CutToSize(piece, "birch", mm(600), mm(200), mm(18)),
        new Step.MarkSurfaces(piece, marks));
  }

  /** Spacers of these sizes lie on boards A and C. */
  private static List<Step> steps(Seat seat, long onA, long onC) {
    List<Step> steps = new ArrayList<>(board("A"));
    steps.addAll(board("C"));
    List<Step.GuideHole> holes = List.of(new Step.GuideHole(1, mm(50), mm(20), mm(10)));
    Length block = seat == Seat.BELOW ? mm(0) : mm(20);
    steps.add(new Step.MakeGuide("G", mm(300), mm(60), mm(6), block, holes));
    List.of(onA, onC).stream()
        .distinct()
        .forEach(s -> steps.add(new Step.MakeSpacer("K" + s, "G", "offcut", mm(s), mm(300))));
    steps.add(new Step.SetBit("bit", mm(5), mm(10), mm(18)));
    steps.add(clamp("A", seat, onA));
    steps.add(new Step.BoreThrough("G", "A", List.of(1), "front row"));
    steps.add(clamp("C", seat, onC));
    steps.add(new Step.BoreThrough("G", "C", List.of(1), "back row"));
    return steps;
  }

  private static String hole(List<Step> steps, String piece) {
    BenchRun run = VirtualBench.run(steps);
    assertThat(run.mishaps()).isEmpty();
    List<Removal> removals = Objects.requireNonNull(run.pieces().get(piece)).removals();
    Removal.Bore bore = (Removal.Bore) removals.getFirst();
    return String.format(Locale.ROOT, "%.0f/%.0f", bore.length().mm(), bore.width().mm());
  }

  /** Places are length/width of the hole: as wanted, without the spacer, with the other. */
  @ParameterizedTest
  @CsvSource({
    "EDGE, 10, 50/30, 50/20, 50/33",
    "END, 5, 45/20, 50/20, 42/20",
    "BELOW, 4, 84/20, 80/20, 87/20"
  })
  void aSpacerIsForgottenOrTakenForAnother(
      Seat seat, long own, String right, String without, String with) {
    List<Step> steps = steps(seat, own, own + 3);
    SpacerBlunder blunder = new SpacerBlunder("A", steps);
    assertThat(hole(steps, "A")).isEqualTo(right);
    SpacerBlunder.Done forgotten = blunder.forgotten().orElseThrow();
    assertThat(hole(forgotten.steps(), "A")).isEqualTo(without);
    assertThat(forgotten.instead()).isEmpty();
    SpacerBlunder.Done swapped = blunder.swapped().orElseThrow();
    assertThat(hole(swapped.steps(), "A")).isEqualTo(with);
    assertThat(hole(swapped.steps(), "C")).isEqualTo(hole(steps, "C"));
    assertThat(swapped.instead()).isEqualTo(between(own + 3));
    assertThat(swapped.right()).isEqualTo(between(own).orElseThrow());
    assertThat(swapped.purposes()).containsExactly("front row");
  }

  @Test
  void oneSpacerIsNotTakenForItselfAndNoneIsNotForgotten() {
    SpacerBlunder one = new SpacerBlunder("A", steps(Seat.EDGE, 10, 10));
    assertThat(one.forgotten()).isPresent();
    assertThat(one.swapped()).isEmpty();
    assertThat(new SpacerBlunder("B", one.steps()).forgotten()).isEmpty();
  }
}
