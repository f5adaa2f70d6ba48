package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Removal.Bore;
import fourpin.bench.Step;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.job.Job;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The first blank for cleat strips of a case, bored and ripped on the virtual bench as it should be
 * and otherwise.
 *
 * @param stack the blanks that are bored in one act with it, itself among them
 * @param names of what the front strip's notches are for
 * @param rows purposes of the notches
 * @param right what comes of the steps as they should be
 */
record CleatBench(
    Job job,
    List<Step> steps,
    CleatBlank blank,
    List<CleatBlank> stack,
    RowNames names,
    Set<String> rows,
    BenchRun right) {

  /** Nothing for a case without bored blanks. */
  static Optional<CleatBench> of(
      Job job, BuiltCase built, List<Step> steps, List<BayGrid> grids, List<CaseBoring> borings) {
    List<CleatBlank> blanks = CleatBlank.of(built);
    return blanks.stream()
        .filter(b -> !b.wood().features().isEmpty())
        .findFirst()
        .map(
            b ->
                new CleatBench(
                    job,
                    steps,
                    b,
                    stack(b, CleatLot.of(built, blanks, borings)),
                    new RowNames(built, b.front(), grids),
                    rows(b),
                    VirtualBench.run(steps)));
  }

  private static List<CleatBlank> stack(CleatBlank blank, List<CleatLot> lots) {
    return lots.stream()
        .filter(l -> l.blanks().contains(blank))
        .findFirst()
        .map(l -> l.with(blank))
        .orElseThrow();
  }

  /** Front strips of other blanks of the stack that are spoilt as well. */
  Together together(List<Step> done) {
    List<Part> others =
        stack.stream().filter(b -> !b.equals(blank)).map(CleatBlank::front).toList();
    return Together.of(names, others, right, VirtualBench.run(done));
  }

  static Set<String> rows(CleatBlank blank) {
    return blank.wood().features().stream()
        .filter(f -> f instanceof Hole)
        .map(f -> f.purpose())
        .collect(Collectors.toSet());
  }

  static WorkedPiece made(List<Step> done, Part strip) {
    return Objects.requireNonNull(VirtualBench.run(done).pieces().get(strip.mark()));
  }

  /** The front strip otherwise. */
  WorkedPiece made(List<Step> done) {
    return made(done, blank.front());
  }

  /** The front strip as it should be. */
  WorkedPiece wanted() {
    return Objects.requireNonNull(right.pieces().get(mark()));
  }

  /** Of the front strip. */
  String mark() {
    return blank.front().mark();
  }

  String blankMark() {
    return blank.wood().mark();
  }

  List<Bore> bores(WorkedPiece piece) {
    return piece.removals().stream()
        .filter(r -> r instanceof Bore b && rows.contains(b.purpose()))
        .map(r -> (Bore) r)
        .toList();
  }

  MistakeFigures figures(CleatMistake mistake) {
    return new MistakeFigures(names.built().order().name(), mistake, job.style(), names.settings());
  }
}
