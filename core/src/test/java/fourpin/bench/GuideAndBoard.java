package fourpin.bench;

import fourpin.bench.Step.Against;
import fourpin.bench.Step.ClampGuide.Side;
import fourpin.bench.Step.GuideHole;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A board of 600 x 200 x 18 mm and a guide of 300 x 60 x 6 mm with holes 1 to 8 of 10 mm, the first
 * 30 mm from zero, then every 32 mm, 37 mm from the index edge.
 */
final class GuideAndBoard {

  static final Step CUT = new Step.CutToSize("A", "birch", mm(600), mm(200), mm(18));
  static final Step MARKS = marks("left");
  static final Step GUIDE = new Step.MakeGuide("G", mm(300), mm(60), mm(6), mm(20), holes(37));
  static final Step OFF = new Step.TakeOffBlock("G");
  static final Step ON = new Step.FitBlock("G");
  static final Step BIT = new Step.SetBit("router", mm(5), mm(10), mm(18));

  private GuideAndBoard() {}

  static Length mm(long millimetres) {
    return Length.mm(millimetres);
  }

  static List<GuideHole> holes(long across) {
    return IntStream.rangeClosed(1, 8)
        .mapToObj(n -> new GuideHole(n, mm(32L * n - 2), mm(across), mm(10)))
        .toList();
  }

  static Step marks(String face) {
    return new Step.MarkSurfaces(
        "A", Map.of(Surface.FACE, face, Surface.INDEX_END, "bottom", Surface.INDEX_EDGE, "front"));
  }

  static Against ends(Surface guide, Surface piece, long gap) {
    boolean end = guide == Surface.INDEX_END || guide == Surface.FAR_END;
    boolean apart = end ? gap < 0 : gap > 0;
    return new Against(
        guide, piece, mm(gap), apart ? Optional.of(between(Math.abs(gap))) : Optional.empty());
  }

  static Step.Between between(long size) {
    return new Step.Between("K" + size, mm(size));
  }

  static Step spacer(long size) {
    return new Step.MakeSpacer("K" + size, "G", "an offcut", mm(size), mm(300));
  }

  static Step clamp(Surface surface, Against ends, Against edges, Side side) {
    return new Step.ClampGuide("G", "A", surface, ends, edges, side, Optional.empty());
  }

  /** Block at the index end, index edge at the index edge. */
  static Step clamp(long end, long edge) {
    return clamp(
        Surface.FACE,
        ends(Surface.INDEX_END, Surface.INDEX_END, end),
        ends(Surface.INDEX_EDGE, Surface.INDEX_EDGE, edge),
        Side.A);
  }

  static Step bore(Integer... numbers) {
    return new Step.BoreThrough("G", "A", List.of(numbers), "front row");
  }

  static BenchRun run(Step... steps) {
    List<Step> all = new ArrayList<>(List.of(CUT, MARKS, GUIDE, BIT));
    all.addAll(List.of(spacer(5), spacer(7), spacer(40)));
    all.addAll(List.of(steps));
    return VirtualBench.run(all);
  }

  static List<Removal> removals(BenchRun run) {
    return run.pieces().values().iterator().next().removals();
  }
}
