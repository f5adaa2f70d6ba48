package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Removal.Block;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.casework.BuiltCase;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Length;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * The grooves for standards of one case, cut on the virtual bench as they should be and otherwise.
 *
 * @param grids of the case
 * @param right what comes of the steps as they should be
 */
record GrooveBench(
    Job job, BuiltCase built, List<Step> steps, List<BayGrid> grids, BenchRun right) {

  static GrooveBench of(Job job, BuiltCase built, List<Step> steps, List<BayGrid> grids) {
    return new GrooveBench(job, built, steps, grids, VirtualBench.run(steps));
  }

  List<Step.Passes> passes() {
    return steps.stream().filter(s -> s instanceof Step.Passes).map(s -> (Step.Passes) s).toList();
  }

  /** A piece with all its passes, or one groove of it, cut otherwise. */
  WorkedPiece made(String piece, Function<Step.Passes, Step> change) {
    List<Step> done =
        steps.stream()
            .map(s -> s instanceof Step.Passes p && p.piece().equals(piece) ? change.apply(p) : s)
            .toList();
    return Objects.requireNonNull(VirtualBench.run(done).pieces().get(piece));
  }

  static Function<Step.Passes, Step> only(Step.Passes one, Function<Step.Passes, Step> change) {
    return p -> p.equals(one) ? change.apply(p) : p;
  }

  static Step with(Step.Passes p, Surface surface, List<Step.Pass> passes) {
    return new Step.Passes(p.piece(), p.shape(), surface, p.along(), p.cut(), passes, p.purpose());
  }

  WorkedPiece wanted(Step.Passes passes) {
    return Objects.requireNonNull(right.pieces().get(passes.piece()));
  }

  Block wantedGroove(Step.Passes passes) {
    return groove(wanted(passes), passes.purpose(), passes.surface()).orElseThrow();
  }

  /** The groove of a row on one surface. */
  static Optional<Block> groove(WorkedPiece piece, String purpose, Surface surface) {
    return grooves(piece).stream()
        .filter(b -> b.purpose().equals(purpose) && b.surface() == surface)
        .findFirst();
  }

  static List<Block> grooves(WorkedPiece piece) {
    return piece.removals().stream().filter(r -> r instanceof Block).map(r -> (Block) r).toList();
  }

  /** The grooves of rows, without other cuts. */
  List<Block> rows(WorkedPiece piece) {
    return grooves(piece).stream()
        .filter(b -> passes().stream().anyMatch(p -> p.purpose().equals(b.purpose())))
        .toList();
  }

  /** The lowest shelf on the standards of a groove, in words. */
  String lowestShelf(Step.Passes passes, MistakeFigures figures) {
    return grids.stream()
        .filter(g -> g.rows().stream().anyMatch(r -> g.groove(r).equals(passes.purpose())))
        .filter(g -> !g.levels().isEmpty())
        .findFirst()
        .map(g -> ShelfPlace.lowest(g).words(figures))
        .orElse("on it");
  }

  /** Whether the grooves of two rows serve one bay. */
  boolean isOneBay(Step.Passes one, Step.Passes other) {
    return grids.stream()
        .map(g -> g.rows().stream().map(g::groove).toList())
        .anyMatch(rows -> rows.contains(one.purpose()) && rows.contains(other.purpose()));
  }

  RowNames names(Step.Passes passes) {
    return new RowNames(built, built.part(passes.piece()), grids);
  }

  MistakeFigures figures(GrooveMistake mistake) {
    return new MistakeFigures(built.order().name(), mistake, job.style(), built.order().settings());
  }

  Length setting(Setting setting) {
    return built.order().settings().length(setting);
  }
}
