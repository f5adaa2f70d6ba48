package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.BenchRun.Mishap;
import fourpin.bench.Step;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.job.Job;
import fourpin.job.Setting;
import java.util.ArrayList;
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
  private final CaseWays ways;

  private Mistakes(
      Job job, Boring boring, BuiltCase built, List<Step> steps, List<CaseBoring> borings) {
    this.job = job;
    this.boring = boring;
    this.built = built;
    this.steps = steps;
    this.ways = new CaseWays(built, borings);
  }

  /**
   * One report for each mistake that the way of boring allows, for the first side with rows of each
   * case (for a second left side, the right one); none for cases without holes for pins. That no
   * other bit fits is a report as well.
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
    all.addAll(new GrooveMistakes(built, job.style(), steps).reports());
    all.addAll(StandardMistakes.of(built, job.style(), grids));
    all.addAll(CleatMistakes.of(built, job.style(), steps, grids));
    return all;
  }

  private Optional<Part> panel(Mistake mistake) {
    return built.parts().stream()
        .filter(p -> p.role() == Role.SIDE || p.role() == Role.PARTITION)
        .filter(p -> !rows(p).isEmpty())
        .filter(p -> mistake != Mistake.SECOND_LEFT || isRightSide(p))
        .findFirst();
  }

  private boolean isRightSide(Part part) {
    return part.mark().equals(built.bays().getLast().right());
  }

  /** Purposes of a panel's rows of holes. */
  private static Set<String> rows(Part part) {
    Set<String> rows = new LinkedHashSet<>();
    part.features().stream()
        .filter(f -> f instanceof Hole h && h.use() == Hole.Use.SUPPORT)
        .forEach(f -> rows.add(f.purpose()));
    return rows;
  }

  private Optional<MistakeReport> report(Mistake mistake, Part part, BenchRun right) {
    Set<String> rows = rows(part);
    Blunder blunder =
        new Blunder(part.mark(), part.length().total(), part.width().total(), rows, steps);
    return done(mistake, blunder, part).flatMap(wrong -> report(mistake, part, right, wrong));
  }

  private Optional<MistakeReport> report(
      Mistake mistake, Part part, BenchRun right, List<Step> done) {
    BenchRun wrong = VirtualBench.run(done);
    Optional<WorkedPiece> wanted = Optional.ofNullable(right.pieces().get(part.mark()));
    Optional<WorkedPiece> made = Optional.ofNullable(wrong.pieces().get(part.mark()));
    return wanted.flatMap(w -> made.map(m -> report(mistake, part, w, m, wrong.mishaps())));
  }

  private MistakeReport report(
      Mistake mistake, Part part, WorkedPiece wanted, WorkedPiece made, List<Mishap> mishaps) {
    SpoiltRows rows = SpoiltRows.of(wanted, made, rows(part));
    RowNames names = new RowNames(built, part, boring.grids());
    MistakeFigures figures =
        new MistakeFigures(built.order().name(), mistake, job.style(), built.order().settings());
    MistakeWords words = new MistakeWords(figures, names, ways, rows, mishaps);
    PanelRescue rescue = new PanelRescue(figures, names, ways, rows);
    Optional<OtherBit> other = otherBit(part);
    PanelRescue.Answer answer = rescue.from(mistake, other);
    String what = words.what(mistake, other);
    String shows = words.shows(mistake);
    String test = words.test(mistake);
    return figures.report(part.mark(), what, shows, test, answer.rescue(), answer.how());
  }

  /** The steps with the mistake; nothing where it can't be made. */
  private Optional<List<Step>> done(Mistake mistake, Blunder blunder, Part part) {
    boolean flat = !BenchProgram.boresAfterAssembly(built);
    return switch (mistake) {
      case END_FOR_END -> Optional.of(blunder.endForEnd()).filter(_ -> isLaidOn(part));
      case WRONG_EDGE -> Optional.of(blunder.wrongEdge());
      case PANEL_TURNED -> Optional.of(blunder.panelTurned()).filter(_ -> flat);
      case SECOND_LEFT -> Optional.of(blunder.otherFace()).filter(_ -> flat);
      case HOLE_SKIPPED -> blunder.holeSkipped();
      case STOP_SLIPPED ->
          Optional.of(blunder.deeper(built.order().settings().length(Setting.STOP_SLIP)));
      case OTHER_BIT ->
          Optional.of(otherBit(part).map(bit -> blunder.bored(bit.diameter())).orElse(steps));
    };
  }

  /** Whether a guide or a stick lies on the panel; a machine has neither. */
  private boolean isLaidOn(Part part) {
    return ways.manner(firstHole(part)) != CaseWays.Manner.MACHINE;
  }

  private Optional<OtherBit> otherBit(Part part) {
    return OtherBit.than(firstHole(part), ways, job.shop());
  }

  private static Hole firstHole(Part part) {
    return part.features().stream()
        .filter(f -> f instanceof Hole h && h.use() == Hole.Use.SUPPORT)
        .map(f -> (Hole) f)
        .findFirst()
        .orElseThrow();
  }
}
