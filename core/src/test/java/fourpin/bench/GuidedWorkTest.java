package fourpin.bench;

import static fourpin.bench.GuideAndBoard.BIT;
import static fourpin.bench.GuideAndBoard.GUIDE;
import static fourpin.bench.GuideAndBoard.OFF;
import static fourpin.bench.GuideAndBoard.ON;
import static fourpin.bench.GuideAndBoard.between;
import static fourpin.bench.GuideAndBoard.bore;
import static fourpin.bench.GuideAndBoard.clamp;
import static fourpin.bench.GuideAndBoard.ends;
import static fourpin.bench.GuideAndBoard.holes;
import static fourpin.bench.GuideAndBoard.marks;
import static fourpin.bench.GuideAndBoard.mm;
import static fourpin.bench.GuideAndBoard.removals;
import static fourpin.bench.GuideAndBoard.run;
import static fourpin.bench.GuideAndBoard.spacer;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fourpin.bench.Step.Against;
import fourpin.bench.Step.ClampGuide.Side;
import fourpin.measure.LengthStyle;
import java.util.List;
import java.util.Optional;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Work through guides, worked out by hand for {@link GuideAndBoard}. */
class GuidedWorkTest {

  private static List<Tuple> holes(BenchRun run) {
    assertThat(run.mishaps()).isEmpty();
    return removals(run).stream()
        .map(r -> (Removal.Bore) r)
        .map(b -> tuple(b.length(), b.width()))
        .toList();
  }

  @Test
  void should_bore_through_the_holes_of_a_guide() {
    BenchRun run = run(clamp(0, 0), bore(1, 3));
    assertThat(run.mishaps()).isEmpty();
    // 18 mm of stop less 6 mm of guide.
    assertThat(removals(run))
        .containsExactly(
            new Removal.Bore(Surface.FACE, mm(30), mm(37), mm(5), mm(12), "front row"),
            new Removal.Bore(Surface.FACE, mm(94), mm(37), mm(5), mm(12), "front row"));
  }

  /**
   * Hole 1 from every way that a guide can lie, with a gap of -7 at the end and 5 at the edge. From
   * the far end of the guide it is 300 - 30 = 270, from its far edge 60 - 37 = 23.
   */
  @ParameterizedTest
  @CsvSource({
    "INDEX_END, INDEX_END, INDEX_EDGE, INDEX_EDGE, 23, 42, A, B",
    "INDEX_END, INDEX_END, INDEX_EDGE, FAR_EDGE, 23, 158, B, A",
    "INDEX_END, INDEX_END, FAR_EDGE, INDEX_EDGE, 23, 28, B, A",
    "INDEX_END, INDEX_END, FAR_EDGE, FAR_EDGE, 23, 172, A, B",
    "INDEX_END, FAR_END, INDEX_EDGE, INDEX_EDGE, 577, 42, B, A",
    "INDEX_END, FAR_END, INDEX_EDGE, FAR_EDGE, 577, 158, A, B",
    "FAR_END, INDEX_END, INDEX_EDGE, INDEX_EDGE, 263, 42, B, A",
    "FAR_END, FAR_END, INDEX_EDGE, INDEX_EDGE, 337, 42, A, B",
    "FAR_END, FAR_END, FAR_EDGE, FAR_EDGE, 337, 172, A, B"
  })
  void should_place_a_guide_however_it_lies(
      Surface end,
      Surface atEnd,
      Surface edge,
      Surface atEdge,
      long u,
      long v,
      Side up,
      Side under) {
    Against ends = ends(end, atEnd, -7);
    Against edges = ends(edge, atEdge, 5);
    assertThat(holes(run(clamp(Surface.FACE, ends, edges, up), bore(1))))
        .containsExactly(tuple(mm(u), mm(v)));
    assertThat(holes(run(clamp(Surface.REVERSE, ends, edges, under), bore(1))))
        .containsExactly(tuple(mm(u), mm(v)));
    assertThat(run(clamp(Surface.FACE, ends, edges, under)).mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly("guide G shows its side " + up + " so");
  }

  /**
   * A right side seen on its inside, foot to the left, has its front edge towards you, as the guide
   * seen from A has its index edge; a left side is its mirror image.
   */
  @ParameterizedTest
  @CsvSource({"left, A", "right, B"})
  void should_show_the_other_side_on_the_other_side_of_a_case(String face, Side side) {
    Against ends = ends(Surface.INDEX_END, Surface.INDEX_END, 0);
    Against edges = ends(Surface.INDEX_EDGE, Surface.INDEX_EDGE, 0);
    BenchRun run = run(marks(face), clamp(Surface.FACE, ends, edges, side));
    assertThat(run.mishaps()).isEmpty();
  }

  /** The pin through hole 1 in the hole of 8: 7 x 32 = 224 further, and so again. */
  @Test
  void should_step_by_the_pin() {
    Step shift = new Step.ShiftGuide("G", "A", 1, 8);
    Step again = new Step.ShiftGuide("G", "A", 2, 4);
    assertThat(holes(run(clamp(0, 0), bore(8), OFF, shift, bore(2, 4), again, bore(4))))
        .extracting(t -> t.toList().getFirst())
        .containsExactly(mm(254), mm(286), mm(350), mm(414));
  }

  /** Laid with its far end at the far end, the guide still moves by whole holes, the other way. */
  @Test
  void should_step_a_guide_that_lies_end_for_end() {
    Step lying =
        clamp(
            Surface.FACE,
            ends(Surface.FAR_END, Surface.INDEX_END, 0),
            ends(Surface.INDEX_EDGE, Surface.INDEX_EDGE, 0),
            Side.B);
    Step shift = new Step.ShiftGuide("G", "A", 8, 1);
    // Hole 1 at 270, hole 8 at 46; pinned there, hole 8 lies at 270 and hole 1 at 494.
    assertThat(holes(run(lying, bore(1), OFF, shift, bore(1))))
        .extracting(t -> t.toList().getFirst())
        .containsExactly(mm(270), mm(494));
  }

  /** 200 wide: 40 from the far edge is 160 from the index edge. */
  @ParameterizedTest
  @CsvSource({"INDEX_EDGE, 40", "FAR_EDGE, 160"})
  void should_bore_along_a_fence(Surface edge, long width) {
    Step row =
        new Step.BoreAtFence(
            "A",
            Surface.REVERSE,
            edge,
            mm(40),
            new Spacing.Each(List.of(mm(50))),
            mm(5),
            mm(12),
            "back row");
    assertThat(holes(run(row))).containsExactly(tuple(mm(50), mm(width)));
  }

  @Test
  void should_word_work_through_a_guide() {
    Step far =
        clamp(
            Surface.REVERSE,
            ends(Surface.INDEX_END, Surface.INDEX_END, 0),
            ends(Surface.INDEX_EDGE, Surface.FAR_EDGE, 5),
            Side.A);
    Step standing =
        new Step.ClampGuide(
            "G",
            "A",
            Surface.FACE,
            ends(Surface.INDEX_END, Surface.INDEX_END, 90),
            ends(Surface.INDEX_EDGE, Surface.INDEX_EDGE, -4),
            Side.A,
            Optional.of(new Step.Rest("B", Optional.of(between(2)))));
    Step shift = new Step.ShiftGuide("G", "A", 1, 8);
    List<Step> steps =
        List.of(
            GUIDE,
            new Step.MaskHoles("G", List.of(1, 3, 5)),
            BIT,
            spacer(7),
            clamp(-7, 0),
            bore(2, 4, 6, 8),
            OFF,
            shift,
            shift,
            ON,
            far,
            bore(4, 5, 6, 8),
            standing,
            bore(7),
            new Step.BoreAtFence(
                "A",
                Surface.FACE,
                Surface.FAR_EDGE,
                mm(40),
                new Spacing.Each(List.of(mm(50), mm(82), mm(114), mm(146), mm(178))),
                mm(5),
                mm(12),
                "back row"));
    String move =
        "A: move guide “G” along the same edge, same side showing, until the pin through its hole 1"
            + " goes into the hole just bored through its hole 8; clamp it there.";
    assertThat(new Wording(LengthStyle.MILLIMETRES).texts(steps))
        .containsExactly(
            "Guide “G”: 300 mm long from the stop face of its block (zero), 60 mm wide, 6 mm thick."
                + " Holes of 10 mm, centres 37 mm from its index edge, numbered and measured from"
                + " zero: (1) 30 mm to (8) 254 mm, every 32 mm.",
            "Guide “G”: on both sides, tape over holes 1 to 5, every second hole: nothing is bored"
                + " through them.",
            "Bit: router, bores 5 mm, 10 mm runs in the holes of the guide; stop set so that the"
                + " full diameter goes 18 mm beyond the guide's upper side.",
            "Spacer “K7”: 7 mm from side to side, which is what it keeps apart, 300 mm long, from an"
                + " offcut.",
            "A: guide “G” on the face, its side A showing: its block with spacer “K7” (7 mm)"
                + " against the index end; its index edge flush with the index edge.",
            "A: front row: through guide “G” bore holes 2 to 8, every second hole: 4 holes in all.",
            "Guide “G”: take its block off.",
            move,
            move,
            "Guide “G”: off the panel with it, and its block on again by the same holes, both battens"
                + " on zero.",
            "A: guide “G” on the reverse, its side A showing: its block against the index end; its"
                + " index edge against spacer “K5” (5 mm), which lies flush with the far edge.",
            "A: front row: through guide “G” bore holes 4 to 6, 8: 4 holes in all.",
            "A: guide “G” on the face, its side A showing: its index end stands on spacer “K2” (2 mm) on B, 90"
                + " mm from the index end of the piece; its index edge stands 4 mm over the index edge.",
            "A: front row: through guide “G” bore hole 7: 1 hole in all.",
            "A: back row, on the face, the far edge to the fence, centre of the bit 40 mm from the"
                + " fence: 5 holes, at 50 mm to 178 mm, every 32 mm, from the index end; bit 5 mm,"
                + " 12 mm deep.");
  }
}
