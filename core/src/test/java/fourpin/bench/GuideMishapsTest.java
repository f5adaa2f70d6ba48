package fourpin.bench;

import static fourpin.bench.GuideAndBoard.BIT;
import static fourpin.bench.GuideAndBoard.CUT;
import static fourpin.bench.GuideAndBoard.GUIDE;
import static fourpin.bench.GuideAndBoard.MARKS;
import static fourpin.bench.GuideAndBoard.OFF;
import static fourpin.bench.GuideAndBoard.ON;
import static fourpin.bench.GuideAndBoard.between;
import static fourpin.bench.GuideAndBoard.bore;
import static fourpin.bench.GuideAndBoard.clamp;
import static fourpin.bench.GuideAndBoard.ends;
import static fourpin.bench.GuideAndBoard.holes;
import static fourpin.bench.GuideAndBoard.mm;
import static fourpin.bench.GuideAndBoard.removals;
import static fourpin.bench.GuideAndBoard.run;
import static fourpin.bench.GuideAndBoard.spacer;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Step.Against;
import fourpin.bench.Step.ClampGuide.Side;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the virtual bench refuses to do with a guide, and in which words. */
class GuideMishapsTest {

  /** Moved inwards, the block would lie on the panel; without it nothing bears on the end. */
  @Test
  void should_ask_for_the_block_off_to_move_a_guide_and_on_to_clamp_it() {
    Step shift = new Step.ShiftGuide("G", "A", 1, 8);
    Step bare = new Step.MakeGuide("H", mm(300), mm(60), mm(6), mm(0), holes(37));
    BenchRun run =
        run(
            bare,
            new Step.TakeOffBlock("H"),
            clamp(0, 0),
            bore(8),
            shift,
            ON,
            OFF,
            OFF,
            clamp(0, 0),
            ON,
            bore(1),
            clamp(0, 0),
            bore(8),
            OFF,
            shift,
            bore(2),
            ON,
            bore(3),
            clamp(0, 0),
            bore(1));
    assertThat(run.mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly(
            "there is no block on guide H",
            "the block of guide G is in the way",
            "the block of guide G is not off",
            "there is no block on guide G",
            "the block of guide G is off: nothing bears on the end",
            "guide G is not clamped on A",
            "guide G is not clamped on A");
    assertThat(removals(run))
        .extracting(r -> ((Removal.Bore) r).length())
        .containsExactly(mm(254), mm(254), mm(286), mm(30));
  }

  @Test
  void should_report_what_cannot_be_done_with_a_guide() {
    Step thick = new Step.SetBit("bushing", mm(5), mm(11), mm(18));
    Step shallow = new Step.SetBit("bit", mm(5), mm(10), mm(6));
    Step deep = new Step.SetBit("bit", mm(5), mm(10), mm(25));
    BenchRun run =
        run(
            GUIDE,
            new Step.MakeGuide("H", mm(300), mm(60), mm(6), mm(0), holes(61)),
            bore(1),
            new Step.MaskHoles("G", List.of(2, 9)),
            clamp(5, 0),
            clamp(0, 0),
            bore(2, 9),
            OFF,
            new Step.ShiftGuide("G", "A", 1, 3),
            bore(4),
            ON,
            clamp(0, 0),
            OFF,
            new Step.ShiftGuide("G", "A", 2, 3),
            ON,
            clamp(0, 0),
            thick,
            bore(1),
            shallow,
            bore(1),
            deep,
            bore(1),
            BIT,
            clamp(-40, 0),
            bore(1),
            clamp(0, -40),
            bore(1),
            new Step.ClampGuide(
                "X",
                "A",
                Surface.FACE,
                ends(Surface.INDEX_END, Surface.INDEX_END, 0),
                ends(Surface.INDEX_EDGE, Surface.INDEX_EDGE, 0),
                Side.A,
                Optional.empty()));
    assertThat(run.mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly(
            "guide G is made already",
            "hole 1 misses guide H",
            "guide G is not clamped on A",
            "guide G has no hole 9",
            "the block of guide G is in the way: it would lie on the piece",
            "hole 2 of guide G is masked",
            "guide G has no hole 9",
            "nothing was bored through hole 3 for the pin",
            "guide G is not clamped on A",
            "hole 2 of guide G is masked",
            "bushing does not go into hole 1",
            "the stop lets the bit no deeper than guide G",
            "holes 19 mm deep go beyond A",
            "hole 1 lies beside A",
            "hole 1 lies beside A",
            "there is no guide X");
    assertThat(removals(run)).isEmpty();
  }

  @Test
  void should_ask_for_a_bit_and_for_marks() {
    BenchRun run = VirtualBench.run(List.of(CUT, GUIDE, clamp(0, 0), MARKS, clamp(0, 0), bore(1)));
    assertThat(run.mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly("nothing on A says which way its surfaces look", "no bit is set");
  }

  @Test
  void should_ask_for_spacers_of_the_size_that_the_guide_is_kept_off() {
    Against index = ends(Surface.INDEX_END, Surface.INDEX_END, 0);
    Against edge = ends(Surface.INDEX_EDGE, Surface.INDEX_EDGE, 0);
    BenchRun run =
        run(
            spacer(7),
            new Step.MakeSpacer("none", "G", "an offcut", mm(0), mm(300)),
            clamp(-8, 0),
            clamp(Surface.FACE, kept(index, -7, Optional.empty()), edge, Side.A),
            clamp(Surface.FACE, index, kept(edge, 7, Optional.empty()), Side.A),
            clamp(Surface.FACE, kept(index, -8, Optional.of(between(7))), edge, Side.A),
            clamp(
                Surface.FACE,
                index,
                kept(edge, 5, Optional.of(new Step.Between("K7", mm(5)))),
                Side.A),
            clamp(-7, 5),
            bore(1));
    assertThat(run.mishaps())
        .extracting(BenchRun.Mishap::what)
        .containsExactly(
            "spacer K7 is made already",
            "spacer none has no size",
            "there is no spacer K8",
            "nothing keeps the block of guide G off the end",
            "nothing keeps guide G off the edge",
            "spacer K7 is 7 mm",
            "spacer K7 is 7 mm");
    assertThat(removals(run)).hasSize(1);
  }

  private static Against kept(Against against, long gap, Optional<Step.Between> spacer) {
    return new Against(against.ofGuide(), against.ofPiece(), mm(gap), spacer);
  }
}
