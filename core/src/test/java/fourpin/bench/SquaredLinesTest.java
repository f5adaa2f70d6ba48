package fourpin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.BenchRun.Mishap;
import fourpin.bench.Step.BoreRow.Line;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A left side of 600 x 200 x 18 mm, and a partition that stands 60 mm higher and is 480 long. */
class SquaredLinesTest {

  private static final Step.MarkStick STICK =
      new Step.MarkStick("S", List.of(mm(100), mm(132), mm(550)), List.of(mm(60)));

  private static Length mm(long millimetres) {
    return Length.mm(millimetres);
  }

  private static Step cut(String piece, long length) {
    return new Step.CutToSize(piece, "birch", mm(length), mm(200), mm(18));
  }

  private static Step marks(String piece, String face) {
    return new Step.MarkSurfaces(
        piece,
        Map.of(Surface.FACE, face, Surface.INDEX_EDGE, "front", Surface.INDEX_END, "bottom"));
  }

  private static List<Step> panels() {
    return List.of(cut("L", 600), marks("L", "right"), cut("P", 480), marks("P", "left"), STICK);
  }

  private static Step.Laid left() {
    return new Step.Laid("L", Surface.FACE, Surface.INDEX_END, mm(0), Surface.INDEX_EDGE);
  }

  private static Step.Laid partition(Surface up, Surface end, long gap, Surface edge) {
    return new Step.Laid("P", up, end, mm(gap), edge);
  }

  private static Step across(Step.Laid second, int... numbers) {
    List<Integer> all = new ArrayList<>();
    for (int number : numbers) {
      all.add(number);
    }
    return new Step.SquareAcross(List.of(left(), second), new Spacing.FromStick("S", all, mm(0)));
  }

  private static Step row(String piece, Surface face, Integer... numbers) {
    return new Step.BoreRow(
        piece,
        face,
        Line.ALONG,
        mm(37),
        new Spacing.OnLines(List.of(numbers)),
        mm(5),
        mm(12),
        "front row");
  }

  private static BenchRun run(Step... steps) {
    List<Step> all = new ArrayList<>(panels());
    all.addAll(List.of(steps));
    return VirtualBench.run(all);
  }

  private static List<Length> heights(BenchRun run, String piece) {
    return Objects.requireNonNull(run.pieces().get(piece)).removals().stream()
        .map(r -> ((Removal.Bore) r).length())
        .toList();
  }

  /** A line at one height of the case is 60 mm nearer to the end of what stands 60 mm higher. */
  @Test
  void should_give_both_panels_one_line() {
    BenchRun run =
        run(
            across(partition(Surface.FACE, Surface.INDEX_END, 60, Surface.INDEX_EDGE), 1, 2),
            row("L", Surface.FACE, 1, 2),
            row("P", Surface.FACE, 1, 2));
    assertThat(run.mishaps()).isEmpty();
    assertThat(heights(run, "L")).containsExactly(mm(100), mm(132));
    assertThat(heights(run, "P")).containsExactly(mm(40), mm(72));
  }

  /** End for end its front edge comes to the other hand, and so the back edge meets. */
  @Test
  void should_measure_from_the_end_that_is_at_the_stop() {
    BenchRun run =
        run(
            across(partition(Surface.FACE, Surface.FAR_END, 60, Surface.FAR_EDGE), 1, 2),
            row("P", Surface.FACE, 1, 2));
    assertThat(run.mishaps()).isEmpty();
    assertThat(heights(run, "P")).containsExactly(mm(440), mm(408));
  }

  /** Two left sides can't lie front edge to front edge with their insides up. */
  @ParameterizedTest
  @CsvSource({
    "FACE, INDEX_END, INDEX_EDGE, true",
    "REVERSE, INDEX_END, INDEX_EDGE, false",
    "FACE, FAR_END, INDEX_EDGE, false",
    "FACE, INDEX_END, FAR_EDGE, false",
    "REVERSE, INDEX_END, FAR_EDGE, true",
    "REVERSE, FAR_END, INDEX_EDGE, true",
    "REVERSE, FAR_END, FAR_EDGE, false"
  })
  void should_tell_whether_edges_can_meet(Surface up, Surface end, Surface edge, boolean meet) {
    BenchRun run = run(across(partition(up, end, 60, edge), 1));
    assertThat(run.mishaps().isEmpty()).isEqualTo(meet);
    assertThat(run.mishaps())
        .extracting(Mishap::what)
        .allMatch("the edges of L and P that should meet lie on the same hand of both"::equals);
  }

  @Test
  void should_report_what_cannot_be_done() {
    Step.Laid good = partition(Surface.FACE, Surface.INDEX_END, 60, Surface.INDEX_EDGE);
    BenchRun run =
        run(
            across(good, 4),
            across(good, 3),
            across(partition(Surface.FACE, Surface.INDEX_END, -1, Surface.INDEX_EDGE), 1),
            across(partition(Surface.INDEX_EDGE, Surface.INDEX_END, 0, Surface.INDEX_EDGE), 1),
            across(left(), 1),
            across(new Step.Laid("Q", Surface.FACE, Surface.INDEX_END, mm(0), Surface.FAR_EDGE), 1),
            row("L", Surface.REVERSE, 3),
            row("P", Surface.FACE, 1));
    assertThat(run.mishaps())
        .extracting(Mishap::what)
        .containsExactly(
            "stick S has no mark 4",
            "line 3 misses P",
            "the stop is in the way of P",
            "panels lie on a face with an end at the stop, edge to edge",
            "lines are squared across two panels",
            "there is no piece marked Q",
            "there is no line 3 on the reverse of L",
            "there is no line 1 on the face of P");
    assertThat(heights(run, "L")).isEmpty();
  }

  @Test
  void should_want_the_surfaces_marked() {
    List<Step> steps = List.of(cut("L", 600), cut("P", 480), STICK);
    List<Step> all = new ArrayList<>(steps);
    all.add(across(partition(Surface.FACE, Surface.INDEX_END, 0, Surface.INDEX_EDGE), 1));
    assertThat(VirtualBench.run(all).mishaps())
        .extracting(Mishap::what)
        .containsExactly("nothing on L or P says which way its surfaces look");
  }
}
