package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Step;
import fourpin.bench.VirtualBench;
import fourpin.boring.BayGrid;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.job.Job;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What goes wrong while rows are bored, tried on the virtual bench: one panel of each case is bored
 * with each mistake and held against the panel that was wanted.
 */
public final class Mistakes {

  private final Job job;
  private final Boring boring;
  private final BuiltCase built;
  private final List<Step> steps;
  private final List<CaseBoring> borings;
  private final CaseWays ways;

  private Mistakes(
      Job job, Boring boring, BuiltCase built, List<Step> steps, List<CaseBoring> borings) {
    this.job = job;
    this.boring = boring;
    this.built = built;
    this.steps = steps;
    this.borings = borings;
    this.ways = new CaseWays(built, borings);
  }

  /**
   * One report for each mistake that the way of boring allows, for the first side with rows of each
   * case (for a second left side, the right one; for a spacer, the panel that needs it most); none
   * for cases without holes for pins. That no other bit fits is a report as well.
   *
   * @param borings how bays are bored, as the program was written for
   */
  public static List<MistakeReport> of(
      Job job, Boring boring, BenchProgram program, List<CaseBoring> borings) {
    List<MistakeReport> reports = new ArrayList<>();
    for (BuiltCase built : boring.cases()) {
      program.cases().stream()
          .filter(c -> c.caseName().equals(built.order().name()))
          .forEach(
              c -> {
                Mistakes mistakes = new Mistakes(job, boring, built, c.steps(), borings);
                reports.addAll(mistakes.reports());
                reports.addAll(mistakes.unbored());
              });
    }
    return reports;
  }

  private List<MistakeReport> reports() {
    BenchRun right = VirtualBench.run(steps);
    List<MistakeReport> reports = new ArrayList<>();
    for (Mistake mistake : Mistake.values()) {
      panel(mistake).flatMap(p -> report(mistake, p, right)).ifPresent(reports::add);
    }
    return reports;
  }

  /** What goes wrong with supports that stand in no holes of panels. */
  private List<MistakeReport> unbored() {
    List<BayGrid> grids =
        boring.grids().stream().filter(g -> g.caseName().equals(built.order().name())).toList();
    List<MistakeReport> all = new ArrayList<>();
    all.addAll(new GrooveMistakes(GrooveBench.of(job, built, steps, grids)).reports());
    all.addAll(StandardMistakes.of(built, job.style(), grids));
    all.addAll(CleatMistakes.of(job, built, steps, grids, borings));
    return all;
  }

  /** The first that can show it; of those without a spacer the one that most is wrong with. */
  private Optional<Part> panel(Mistake mistake) {
    return mistake == Mistake.SPACER_FORGOTTEN
        ? uprights(built).stream()
            .max(Comparator.comparing(p -> new SpacerBlunder(p.mark(), steps).mostSpoilt()))
        : firstPanel(mistake);
  }

  private Optional<Part> firstPanel(Mistake mistake) {
    return uprights(built).stream()
        .filter(p -> mistake != Mistake.SECOND_LEFT || isRightSide(p))
        .findFirst();
  }

  /** The uprights of a case that have rows of holes. */
  static List<Part> uprights(BuiltCase built) {
    return built.parts().stream()
        .filter(p -> p.role() == Role.SIDE || p.role() == Role.PARTITION)
        .filter(p -> !rows(p).isEmpty())
        .toList();
  }

  private boolean isRightSide(Part part) {
    return part.mark().equals(built.bays().getLast().right());
  }

  /** Purposes of a panel's rows of holes. */
  static Set<String> rows(Part part) {
    Set<String> rows = new LinkedHashSet<>();
    part.features().stream()
        .filter(f -> f instanceof Hole h && h.use() == Hole.Use.SUPPORT)
        .forEach(f -> rows.add(f.purpose()));
    return rows;
  }

  private Optional<MistakeReport> report(Mistake mistake, Part part, BenchRun right) {
    RowNames names = new RowNames(built, part, boring.grids());
    return Optional.of(part.mark())
        .filter(right.pieces()::containsKey)
        .flatMap(_ -> new PanelMistakes(job, ways, names, steps, right).report(mistake));
  }
}
