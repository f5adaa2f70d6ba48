package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Removal.Bore;
import fourpin.bench.Step;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.plan.MistakeReport.Check;
import fourpin.plan.MistakeReport.Outcome.Spoilt;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What goes wrong with the rows of one panel. */
final class PanelMistakes {

  private final Job job;
  private final CaseWays ways;
  private final RowNames names;
  private final List<Step> steps;
  private final BenchRun right;
  private final WorkedPiece wanted;
  private final Set<String> rows;
  private final OtherBit other;
  private final TapeBlunder tape;
  private final SpacerBlunder spacers;
  private final Blunder blunder;

  /**
   * @param right what the steps make
   */
  PanelMistakes(Job job, CaseWays ways, RowNames names, List<Step> steps, BenchRun right) {
    this.job = job;
    this.ways = ways;
    this.names = names;
    this.right = right;
    this.wanted = Objects.requireNonNull(right.pieces().get(names.part().mark()));
    this.rows = Mistakes.rows(names.part());
    this.other = new OtherBits(job.shop(), names.settings()).than(firstHole(), ways);
    this.steps = steps;
    this.tape = new TapeBlunder(wanted.mark(), steps);
    this.spacers = new SpacerBlunder(wanted.mark(), steps);
    this.blunder = Blunder.of(names, wanted, rows, steps);
  }

  /** Nothing where the way of boring has not even a place for the mistake. */
  Optional<MistakeReport> report(Mistake mistake) {
    return never(mistake)
        .or(
            () ->
                done(mistake)
                    .map(VirtualBench::run)
                    .flatMap(
                        run ->
                            Optional.ofNullable(run.pieces().get(wanted.mark()))
                                .map(made -> report(mistake, run, made))));
  }

  private MistakeReport report(Mistake mistake, BenchRun run, WorkedPiece made) {
    SpoiltRows spoilt = SpoiltRows.of(wanted, made, rows);
    MistakeFigures figures = figures(mistake);
    Together together = together(run);
    MistakeWords words = new MistakeWords(figures, names, ways, spoilt, together, run.mishaps());
    return spoilt.isAsWanted()
        ? harmless(mistake, figures, words)
        : report(mistake, new Made(run, made, spoilt, together), figures, words);
  }

  /** What comes of a mistake. @param made the panel */
  private record Made(BenchRun run, WorkedPiece made, SpoiltRows spoilt, Together together) {}

  private Together together(BenchRun run) {
    Set<String> paired = Together.paired(steps, wanted.mark());
    List<Part> sharing =
        names.built().parts().stream().filter(p -> paired.contains(p.mark())).toList();
    return Together.of(names, sharing, right, run);
  }

  private MistakeReport harmless(Mistake mistake, MistakeFigures figures, MistakeWords words) {
    String what = words.what(mistake, new MistakeWords.Slips(other, tape, spacers));
    return figures.harmless(
        wanted.mark(), what, words.harmless(mistake), "The panel is as wanted.");
  }

  private MistakeReport report(
      Mistake mistake, Made made, MistakeFigures figures, MistakeWords words) {
    Check check = new PanelTest(names, made.spoilt(), job.style()).of(mistake);
    Spoilt outcome = new Spoilt(wanted, made.made(), check, made.together().marks());
    String what = words.what(mistake, new MistakeWords.Slips(other, tape, spacers));
    String shows = words.shows(mistake);
    String test = words.test(mistake, outcome.check(), other, otherRows(mistake, outcome, figures));
    PanelRescue.Answer answer =
        new PanelRescue(figures, names, ways, made.spoilt(), tries(made)).from(mistake, other);
    return figures.report(wanted.mark(), outcome, what, shows, test, answer.rescue(), answer.how());
  }

  /**
   * What is measured in the other rows of the bay, since guides and lines are laid row by row; a
   * row from the wrong edge is tried anew for each.
   */
  private String otherRows(Mistake mistake, Spoilt outcome, MistakeFigures figures) {
    return switch (mistake) {
      case END_FOR_END, PANEL_TURNED, SECOND_LEFT ->
          otherRows(mistake, outcome.check(), figures, _ -> outcome.wrong());
      case WRONG_EDGE ->
          otherRows(
              mistake,
              outcome.check(),
              figures,
              row ->
                  Objects.requireNonNull(
                      VirtualBench.run(blunder.in(Set.of(row)).wrongEdge())
                          .pieces()
                          .get(wanted.mark())));
      case HOLE_SKIPPED,
          MASKED_HOLE,
          PIN_IN_WRONG_HOLE,
          SPACER_FORGOTTEN,
          WRONG_SPACER,
          STOP_SLIPPED,
          OTHER_BIT ->
          "";
    };
  }

  private String otherRows(
      Mistake mistake, Check first, MistakeFigures figures, Function<String, WorkedPiece> made) {
    StringBuilder all = new StringBuilder();
    for (String row : names.besideFirst(SpoiltRows.of(wanted, wanted, rows).wanted())) {
      SpoiltRows spoilt = SpoiltRows.of(wanted, made.apply(row), Set.of(row));
      if (!spoilt.isAsWanted()) {
        Check check = new PanelTest(names, spoilt, job.style()).of(mistake);
        all.append(figures.likewise(first, check, row.split(",", 2)[0]));
      }
    }
    return all.toString();
  }

  private PanelRescue.Tries tries(Made made) {
    return new PanelRescue.Tries(
        made.together(),
        () -> new AllSpoilt(names.built(), names.grids(), right, made.run()),
        this::all);
  }

  /** All uprights bored from the wrong end. */
  private AllSpoilt all(Mistake mistake) {
    return new AllSpoilt(
        names.built(),
        names.grids(),
        steps,
        mistake == Mistake.END_FOR_END ? Blunder::endForEnd : Blunder::panelTurned);
  }

  private MistakeFigures figures(Mistake mistake) {
    return new MistakeFigures(names.built().order().name(), mistake, job.style(), names.settings());
  }

  /** That a mistake can't be made, if it can't. */
  private Optional<MistakeReport> never(Mistake mistake) {
    return switch (mistake) {
      case END_FOR_END ->
          never(mistake, "a machine bores by coordinates, and nothing is laid on the panel")
              .filter(_ -> ways.manner(firstHole()) == CaseWays.Manner.MACHINE);
      case PANEL_TURNED, SECOND_LEFT ->
          never(mistake, "the case stands when its rows are bored")
              .filter(_ -> BenchProgram.boresAfterAssembly(names.built()));
      case OTHER_BIT -> noOther(mistake);
      case WRONG_EDGE,
          HOLE_SKIPPED,
          MASKED_HOLE,
          PIN_IN_WRONG_HOLE,
          SPACER_FORGOTTEN,
          WRONG_SPACER,
          STOP_SLIPPED ->
          Optional.empty();
    };
  }

  private Optional<MistakeReport> never(Mistake mistake, String why) {
    return Optional.of(
        figures(mistake).impossible(wanted.mark(), why, "Nothing to find.", "No panel is spoilt."));
  }

  private Optional<MistakeReport> noOther(Mistake mistake) {
    if (!(other instanceof OtherBit.None)) {
      return Optional.empty();
    }
    MistakeFigures figures = figures(mistake);
    SpoiltRows unspoilt = SpoiltRows.of(wanted, wanted, rows);
    MistakeWords words = new MistakeWords(figures, names, ways, unspoilt, Together.NONE, List.of());
    return Optional.of(
        figures.impossible(
            wanted.mark(),
            words.what(mistake, new MistakeWords.Slips(other, tape, spacers)),
            say("A %s goes into the lowest hole by hand and does not wobble.", words.plug()),
            "No panel is spoilt."));
  }

  /** The steps with the mistake; nothing where it can't be made. */
  private Optional<List<Step>> done(Mistake mistake) {
    return switch (mistake) {
      case END_FOR_END -> Optional.of(blunder.endForEnd());
      case WRONG_EDGE -> Optional.of(blunder.wrongEdge());
      case PANEL_TURNED -> Optional.of(blunder.panelTurned());
      case SECOND_LEFT -> Optional.of(blunder.otherFace());
      case HOLE_SKIPPED -> Optional.of(skipped());
      case MASKED_HOLE -> tape.first().map(TapeBlunder.Done::steps);
      case SPACER_FORGOTTEN -> spacers.forgotten().map(SpacerBlunder.Done::steps);
      case WRONG_SPACER -> spacers.swapped().map(SpacerBlunder.Done::steps);
      case PIN_IN_WRONG_HOLE -> blunder.pinInWrongHole();
      case STOP_SLIPPED -> Optional.of(blunder.deeper(names.settings().length(Setting.STOP_SLIP)));
      case OTHER_BIT -> other.diameter().map(blunder::bored);
    };
  }

  /**
   * The first row without the hole of the lowest shelf that is not missed at once, as one that a
   * locating pin goes into is.
   */
  private List<Step> skipped() {
    List<Bore> all = SpoiltRows.of(wanted, wanted, rows).wanted();
    String purpose = all.getFirst().purpose();
    List<Bore> row = all.stream().filter(b -> b.purpose().equals(purpose)).toList();
    List<List<Step>> tries =
        row.stream()
            .sorted(Comparator.comparing((Bore b) -> !names.isSeat(b)).thenComparing(Bore::length))
            .map(b -> blunder.holeSkipped(purpose, row.indexOf(b)))
            .toList();
    return tries.stream().filter(PanelMistakes::isDone).findFirst().orElse(tries.getFirst());
  }

  private static boolean isDone(List<Step> steps) {
    return VirtualBench.run(steps).mishaps().isEmpty();
  }

  private Hole firstHole() {
    return names.part().features().stream()
        .filter(f -> f instanceof Hole h && h.use() == Hole.Use.SUPPORT)
        .map(f -> (Hole) f)
        .findFirst()
        .orElseThrow();
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
