package fourpin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fourpin.bench.Step.BoreRow.Line;
import fourpin.bench.Step.Channel.Shape;
import fourpin.bench.Step.Pass;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A blank of 30 x 3 1/8 x 3/4 in: two strips of 1 1/2 and a kerf of 1/8. */
class RipAndPassesTest {

  private static final Step BLANK =
      new Step.CutToSize("F+B", "oak", in(30, 1), in(25, 8), in(3, 4));
  private static final Step RIP = new Step.Rip("F+B", "F", "B", in(3, 2), in(1, 8));

  private static Length in(long numerator, long denominator) {
    return Length.inches(numerator, denominator);
  }

  private static BenchRun run(Step... steps) {
    return VirtualBench.run(Stream.concat(Stream.of(BLANK), Stream.of(steps)).toList());
  }

  private static Step bore(Length offset, Length diameter) {
    return new Step.BoreRow(
        "F+B",
        Surface.FACE,
        Line.ALONG,
        offset,
        new Spacing.Each(List.of(in(6, 1), in(8, 1))),
        diameter,
        in(3, 4),
        "notch");
  }

  private static WorkedPiece piece(BenchRun run, String mark) {
    return Objects.requireNonNull(run.pieces().get(mark));
  }

  private static List<Removal.Bore> bores(BenchRun run, String mark) {
    return piece(run, mark).removals().stream().map(r -> (Removal.Bore) r).toList();
  }

  /** A hole of 1 1/2 in on the middle line leaves a notch in both strips, 1/16 short of half. */
  @Test
  void should_part_holes_on_the_line_of_the_cut() {
    BenchRun run = run(bore(in(25, 16), in(3, 2)), RIP);
    assertThat(run.mishaps()).isEmpty();
    assertThat(run.pieces()).containsOnlyKeys("F", "B");
    assertThat(run.pieces().values()).allMatch(p -> p.width().equals(in(3, 2)));
    assertThat(bores(run, "F"))
        .extracting(Removal.Bore::length, Removal.Bore::width)
        .containsExactly(tuple(in(6, 1), in(25, 16)), tuple(in(8, 1), in(25, 16)));
    assertThat(bores(run, "B"))
        .extracting(Removal.Bore::length, Removal.Bore::width)
        .containsExactly(tuple(in(6, 1), in(-1, 16)), tuple(in(8, 1), in(-1, 16)));
  }

  /** A row beside the cut is in one strip only, and one as narrow as the kerf in neither. */
  @ParameterizedTest
  @CsvSource({
    // offset and diameter in 16ths, holes in the first and in the second
    "12, 4, 2, 0",
    "40, 4, 0, 2",
    "25, 2, 0, 0",
    "25, 3, 2, 2"
  })
  void should_leave_holes_where_they_are(long offset, long diameter, int first, int second) {
    BenchRun run = run(bore(in(offset, 16), in(diameter, 16)), RIP);
    assertThat(bores(run, "F")).hasSize(first);
    assertThat(bores(run, "B")).hasSize(second);
  }

  @Test
  void should_part_channels_labels_and_bands() {
    BenchRun run =
        run(
            new Step.MarkSurfaces(
                "F+B", Map.of(Surface.FACE, "right", Surface.INDEX_EDGE, "front")),
            new Step.Channel(
                "F+B",
                Shape.DADO,
                Surface.FACE,
                new Span(in(4, 1), in(5, 1)),
                new Span(in(1, 1), in(2, 1)),
                in(1, 4),
                "lath"),
            new Step.Band("F+B", Surface.FAR_EDGE, "veneer", in(1, 8)),
            RIP);
    WorkedPiece first = piece(run, "F");
    WorkedPiece second = piece(run, "B");
    assertThat(second.width()).isEqualTo(in(13, 8));
    assertThat(first.labels()).containsOnlyKeys(Surface.FACE, Surface.INDEX_EDGE);
    assertThat(second.labels()).containsOnlyKeys(Surface.FACE);
    assertThat(first.bands()).isEmpty();
    assertThat(second.bands()).hasSize(1);
    assertThat(((Removal.Block) first.removals().getFirst()).width())
        .isEqualTo(new Span(in(1, 1), in(3, 2)));
    assertThat(((Removal.Block) second.removals().getFirst()).width())
        .isEqualTo(new Span(in(0, 1), in(3, 8)));
  }

  @Test
  void should_report_rips_that_cannot_be_done() {
    BenchRun run =
        run(
            new Step.Rip("X", "F", "B", in(3, 2), in(1, 8)),
            new Step.Rip("F+B", "F", "B", in(3, 1), in(1, 8)),
            new Step.Rip("F+B", "F", "F+B", in(3, 2), in(1, 8)),
            RIP,
            bore(in(1, 1), in(1, 4)));
    assertThat(run.mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly(
            "there is no piece marked X",
            "F+B is not wide enough to rip",
            "F or F+B is there already",
            "there is no piece marked F+B");
  }

  private static Step passes(Length cut, Pass... passes) {
    return new Step.Passes(
        "F+B",
        Shape.GROOVE,
        Surface.FACE,
        new Span(in(0, 1), in(30, 1)),
        cut,
        List.of(passes),
        "standard");
  }

  /** Common practice: a groove 5/8 x 3/16 in by a bit of 1/4: three passes wide, two deep. */
  private static Pass[] common() {
    List<Pass> passes = new ArrayList<>();
    for (Length fence : List.of(in(11, 8), in(9, 8), in(1, 1))) {
      passes.add(new Pass(fence, in(1, 8)));
      passes.add(new Pass(fence, in(3, 16)));
    }
    return passes.toArray(Pass[]::new);
  }

  @Test
  void should_make_one_channel_of_passes() {
    BenchRun run = run(passes(in(1, 4), common()));
    assertThat(run.mishaps()).isEmpty();
    assertThat(piece(run, "F+B").removals())
        .containsExactly(
            new Removal.Block(
                Shape.GROOVE,
                Surface.FACE,
                new Span(in(0, 1), in(30, 1)),
                new Span(in(1, 1), in(13, 8)),
                new Span(in(0, 1), in(3, 16)),
                "standard"));
  }

  /** Wood is left where passes do not meet, at a wall or in the middle, or one is not as deep. */
  @ParameterizedTest
  @CsvSource({
    // fences in 64ths, depths in 16ths
    "64, 81, 3, 3",
    "64, 72, 3, 2",
    "64, 72, 2, 3"
  })
  void should_find_ridges(long one, long other, long deep, long otherDeep) {
    BenchRun run =
        run(
            passes(
                in(1, 4),
                new Pass(in(one, 64), in(deep, 16)),
                new Pass(in(other, 64), in(otherDeep, 16))));
    assertThat(run.mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly("the passes for standard leave a ridge in F+B");
    assertThat(piece(run, "F+B").removals()).isEmpty();
  }

  @Test
  void should_report_passes_that_miss() {
    assertThat(run(passes(in(1, 4))).mishaps()).hasSize(1);
    assertThat(run(passes(in(1, 4), new Pass(in(3, 1), in(1, 8)))).mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly("the cut for standard misses F+B");
  }

  @Test
  void should_word_rips_and_passes_with_all_their_figures() {
    assertThat(
            new Wording(new LengthStyle(Unit.INCH, 32))
                .texts(List.of(passes(in(1, 4), common()), RIP)))
        .containsExactly(
            "F+B: groove for standard, on the face, 0 to 30 in from the index end, cut of 1/4 in;"
                + " index edge to near side of the cut, one after the other: (1) 1 3/8 in; (2) 1 1/8"
                + " in; (3) 1 in; at each 1/8 in, then 3/16 in deep.",
            "F+B: rip with the index edge at the fence, fence to blade 1 1/2 in: F falls between"
                + " fence and blade, B beyond; the kerf takes 1/8 in.");
  }

  @Test
  void should_tell_stretches_cut_at_the_same_settings_together() {
    Step.Passes low = (Step.Passes) passes(in(1, 4), common());
    Step.Passes high = low.with(new Span(in(32, 1), in(60, 1)));
    Pass first = new Pass(in(11, 8), in(1, 8));
    Pass deeper = new Pass(in(9, 8), in(3, 16));
    assertThat(
            new Wording(new LengthStyle(Unit.INCH, 32))
                .texts(List.of(low, high, passes(in(1, 4), first, deeper))))
        .containsExactly(
            "F+B: groove for standard, on the face, 0 to 30 in and 32 to 60 in from the index end,"
                + " cut of 1/4 in; index edge to near side of the cut, one after the other: (1) 1 3/8"
                + " in; (2) 1 1/8 in; (3) 1 in; at each 1/8 in, then 3/16 in deep.",
            "F+B: groove for standard, on the face, 0 to 30 in from the index end, cut of 1/4 in;"
                + " index edge to near side of the cut, one after the other: (1) 1 3/8 in, 1/8 in"
                + " deep; (2) 1 1/8 in, 3/16 in deep.");
  }
}
