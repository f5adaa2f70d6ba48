package fourpin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fourpin.bench.Step.BoreRow.Line;
import fourpin.bench.Step.Channel.Shape;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A board of 600 x 200 x 18 mm, worked by hand beside the bench. */
class VirtualBenchTest {

  private static final Step CUT = new Step.CutToSize("A", "birch", mm(600), mm(200), mm(18));

  private static Length mm(long millimetres) {
    return Length.mm(millimetres);
  }

  private static Span span(long from, long to) {
    return new Span(mm(from), mm(to));
  }

  private static BenchRun run(Step... steps) {
    List<Step> all = new ArrayList<>(List.of(CUT));
    all.addAll(List.of(steps));
    return VirtualBench.run(all);
  }

  private static WorkedPiece worked(Step... steps) {
    BenchRun run = run(steps);
    assertThat(run.mishaps()).isEmpty();
    return run.pieces().values().iterator().next();
  }

  private static Step channel(Surface surface, Span along, Span across, long depth) {
    return new Step.Channel("A", Shape.DADO, surface, along, across, mm(depth), "shelf");
  }

  private static Step row(Surface surface, Line line, long offset, Spacing spacing) {
    return new Step.BoreRow("A", surface, line, mm(offset), spacing, mm(5), mm(12), "front row");
  }

  private static Spacing each(long... distances) {
    List<Length> all = new ArrayList<>();
    for (long distance : distances) {
      all.add(mm(distance));
    }
    return new Spacing.Each(all);
  }

  /** Along 100 to 118, across 0 to 9, 6 deep, from each of the six surfaces. */
  @ParameterizedTest
  @CsvSource({
    "FACE, 100, 118, 0, 9, 0, 6",
    "REVERSE, 100, 118, 0, 9, 12, 18",
    "INDEX_EDGE, 100, 118, 0, 6, 0, 9",
    "FAR_EDGE, 100, 118, 194, 200, 0, 9",
    "INDEX_END, 0, 6, 100, 118, 0, 9",
    "FAR_END, 594, 600, 100, 118, 0, 9"
  })
  void should_take_a_block_out_of_any_surface(
      Surface surface, long u0, long u1, long v0, long v1, long w0, long w1) {
    WorkedPiece piece = worked(channel(surface, span(100, 118), span(0, 9), 6));
    assertThat(piece.removals())
        .containsExactly(
            new Removal.Block(
                Shape.DADO, surface, span(u0, u1), span(v0, v1), span(w0, w1), "shelf"));
  }

  @Test
  void should_bore_rows_along_and_across() {
    WorkedPiece piece =
        worked(
            row(Surface.FACE, Line.ALONG, 37, each(50, 82)),
            row(Surface.REVERSE, Line.ACROSS, 300, each(0, 200)));
    assertThat(piece.removals())
        .extracting(r -> ((Removal.Bore) r).length(), r -> ((Removal.Bore) r).width())
        .containsExactly(
            tuple(mm(50), mm(37)),
            tuple(mm(82), mm(37)),
            tuple(mm(300), mm(0)),
            tuple(mm(300), mm(200)));
  }

  @Test
  void should_bore_from_the_marks_of_a_stick() {
    Step stick =
        new Step.MarkStick("S", List.of(mm(100), mm(132), mm(164)), List.of(mm(60), mm(-20)));
    List<Integer> numbers = List.of(1, 3);
    WorkedPiece piece =
        worked(
            stick,
            row(Surface.FACE, Line.ALONG, 37, new Spacing.FromStick("S", numbers, mm(0))),
            row(Surface.FACE, Line.ALONG, 50, new Spacing.FromStick("S", numbers, mm(60))),
            row(Surface.FACE, Line.ALONG, 60, new Spacing.FromStick("S", numbers, mm(-20))));
    assertThat(piece.removals())
        .extracting(r -> ((Removal.Bore) r).length())
        .containsExactly(mm(100), mm(164), mm(40), mm(104), mm(120), mm(184));
  }

  @Test
  void should_grow_by_what_is_glued_on_and_measure_from_the_new_edge() {
    WorkedPiece piece =
        worked(
            row(Surface.FACE, Line.ALONG, 37, each(50)),
            new Step.Band("A", Surface.INDEX_EDGE, "oak", mm(6)),
            new Step.Band("A", Surface.FAR_EDGE, "oak", mm(2)),
            new Step.Band("A", Surface.INDEX_END, "oak", mm(1)),
            row(Surface.FACE, Line.ALONG, 37, each(50)));
    assertThat(piece.length()).isEqualTo(mm(601));
    assertThat(piece.width()).isEqualTo(mm(208));
    assertThat(piece.removals())
        .extracting(r -> ((Removal.Bore) r).length(), r -> ((Removal.Bore) r).width())
        .containsExactly(tuple(mm(51), mm(43)), tuple(mm(50), mm(37)));
  }

  @Test
  void should_report_what_cannot_be_done() {
    BenchRun run =
        run(
            CUT,
            new Step.CutToSize("B", "birch", mm(0), mm(10), mm(18)),
            new Step.Band("C", Surface.FAR_EDGE, "oak", mm(2)),
            channel(Surface.FACE, span(590, 610), span(0, 200), 6),
            channel(Surface.FACE, span(0, 20), span(0, 200), 19),
            row(Surface.FACE, Line.ALONG, 201, each(50)),
            row(Surface.INDEX_EDGE, Line.ALONG, 5, each(50)),
            row(Surface.FACE, Line.ALONG, 5, new Spacing.FromStick("S", List.of(1), mm(0))));
    assertThat(run.mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly(
            "A is cut already",
            "B has no size",
            "there is no piece marked C",
            "the cut for shelf misses A",
            "the cut for shelf misses A",
            "a hole of the front row misses A",
            "rows are bored into the face or the reverse, not the index edge",
            "stick S has no mark for the end of A");
    assertThat(run.pieces().values()).singleElement().matches(p -> p.removals().isEmpty());
  }

  /** A groove of 0.641 in from 1.18 in: 1 3/16 to 1 13/16 as printed would be 0.625 wide. */
  @ParameterizedTest
  @CsvSource({
    "1180, 1821, '0.641 in wide, starting ≈ 1 3/16 in from the index edge'",
    "1359, 2000, '0.641 in wide, ending 2 in from the index edge'",
    "1000, 1641, '0.641 in wide, starting 1 in from the index edge'",
    "1250, 1500, '1 1/4 to 1 1/2 in from the index edge'",
    "1190, 3790, '≈ 1 3/16 to ≈ 3 25/32 in from the index edge'"
  })
  void should_keep_the_play_of_a_groove_whose_edges_are_not_exact(
      long from, long to, String words) {
    Span across = new Span(Length.inches(from, 1000), Length.inches(to, 1000));
    Length deep = Length.inches(1, 4);
    Step groove =
        new Step.Channel("A", Shape.GROOVE, Surface.FACE, span(0, 254), across, deep, "standard");
    assertThat(new Wording(new LengthStyle(Unit.INCH, 32)).texts(List.of(groove)))
        .containsExactly(
            "A: groove for standard, worked from the face: 0 to 10 in from the index end, "
                + words
                + ", 1/4 in deep.");
  }

  @Test
  void should_word_every_step_with_all_its_figures() {
    Wording wording = new Wording(LengthStyle.MILLIMETRES);
    assertThat(
            wording.texts(
                List.of(
                    CUT,
                    new Step.CutToSize("B", "birch", mm(600), mm(200), mm(18)),
                    new Step.MarkSurfaces(
                        "A", Map.of(Surface.INDEX_END, "bottom", Surface.FACE, "right")),
                    new Step.Band("A", Surface.INDEX_EDGE, "oak strip", mm(6)),
                    channel(Surface.FACE, span(100, 118), span(0, 200), 6),
                    channel(Surface.INDEX_END, span(20, 60), span(0, 18), 20),
                    new Step.MarkStick(
                        "S", List.of(mm(100), mm(132), mm(164), mm(300)), List.of(mm(60))),
                    row(Surface.FACE, Line.ALONG, 37, each(50, 82)),
                    row(
                        Surface.REVERSE,
                        Line.ALONG,
                        37,
                        new Spacing.FromStick("S", List.of(1, 2, 4), mm(60))),
                    row(
                        Surface.FACE,
                        Line.ALONG,
                        37,
                        new Spacing.FromStick("S", List.of(2), mm(-20))))))
        .containsExactly(
            "A, B: 600 mm long, 200 mm wide, from birch.",
            "A: write “RIGHT” on the face, “BOTTOM” on the index end.",
            "A: oak strip on the index edge, 6 mm thick.",
            "A: dado for shelf, worked from the face: 100 to 118 mm from the index end, 0 to 200 mm"
                + " from the index edge, 6 mm deep.",
            "A: dado for shelf, worked from the index end: 20 to 60 mm from the index edge, 0 to 18"
                + " mm from the face, 20 mm deep.",
            "Stick “S”: every mark measured from zero and numbered: (1) 100 mm to (3) 164 mm, every"
                + " 32 mm, (4) 300 mm. Marks for the ends of panels: at 60 mm.",
            "A: front row, on the face, 37 mm from the index edge: 2 holes, at 50 mm and at 82"
                + " mm from the index end; bit 5 mm, 12 mm deep.",
            "A: front row, on the reverse, 37 mm from the index edge: marks 1 to 2, 4 of stick “S”,"
                + " 3 holes, its end mark 60 mm at the index end; bit 5 mm, 12 mm deep.",
            "A: front row, on the face, 37 mm from the index edge: mark 2 of stick “S”, 1 hole,"
                + " its zero 20 mm from the index end; bit 5 mm, 12 mm deep.");
  }
}
