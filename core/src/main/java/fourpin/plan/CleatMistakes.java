package fourpin.plan;

import fourpin.bench.Removal.Bore;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Outcome.Spoilt;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What goes wrong while blanks for cleat strips are marked, bored and ripped, tried on the virtual
 * bench with the first blank of a case.
 */
final class CleatMistakes {

  private final CleatBench bench;
  private final Blunder blunder;

  private CleatMistakes(CleatBench bench) {
    this.bench = bench;
    this.blunder = blunder(bench.blank(), bench.steps());
  }

  private static Blunder blunder(CleatBlank blank, List<Step> steps) {
    Part wood = blank.wood();
    return new Blunder(
        wood.mark(),
        wood.length().total(),
        wood.width().total(),
        (_, up) -> wood.length().total().minus(up),
        CleatBench.rows(blank),
        steps);
  }

  /** What is done to one is done to all of a stack. */
  private List<Step> stacked(Function<Blunder, List<Step>> mistake) {
    List<Step> done = bench.steps();
    for (CleatBlank blank : bench.stack()) {
      done = mistake.apply(blunder(blank, done));
    }
    return done;
  }

  /** "blank 1-LF+1-LB", "the stack of 1-LF+1-LB and 1-RF+1-RB". */
  private String whatIsBored() {
    return bench.stack().size() == 1
        ? "blank " + bench.blankMark()
        : bench.stack().stream()
            .map(b -> b.wood().mark())
            .collect(Collectors.joining(" and ", "the stack of ", ""));
  }

  static List<MistakeReport> of(
      Job job, BuiltCase built, List<Step> steps, List<BayGrid> grids, List<CaseBoring> borings) {
    return CleatBench.of(job, built, steps, grids, borings)
        .map(bench -> new CleatMistakes(bench).reports())
        .orElse(List.of());
  }

  private List<MistakeReport> reports() {
    List<MistakeReport> reports = new ArrayList<>();
    reports.add(
        otherEnd(
            CleatMistake.END_FOR_END,
            say("The stick lies on %s with its zero at the far end.", whatIsBored()),
            stacked(Blunder::endForEnd)));
    reports.add(wrongEdge());
    reports.add(
        otherEnd(
            CleatMistake.PANEL_TURNED,
            say(
                "Blank %s lies turned end for end: all is measured from its far end.",
                bench.blankMark()),
            blunder.panelTurned()));
    reports.add(otherFace());
    reports.add(skipped());
    stopSlipped().ifPresent(reports::add);
    reports.add(otherBit());
    reports.addAll(new RipMistakes(bench).reports());
    return reports;
  }

  private SpoiltRows spoilt(List<Step> done) {
    return SpoiltRows.of(bench.wanted(), bench.made(done), bench.rows());
  }

  private String shows(MistakeFigures figures, SpoiltRows spoilt, Together together) {
    return say(
        "%d of %d notches of %s %s%s. %s",
        figures.count(
            "notches-off", "notches that are not as wanted", spoilt.missing().size(), "counted"),
        figures.count("notches", "notches of the strip", spoilt.wanted().size(), "counted"),
        bench.mark(),
        spoilt.extra().isEmpty()
            ? "is missing"
            : spoilt.missing().size() == 1 ? "is wrong" : "are wrong",
        together.isAlone() ? "" : ", in " + together.words() + " alike",
        new WorstShelf(figures, bench.names(), spoilt, together).words());
  }

  private Spoilt outcome(SpoiltRows spoilt, List<Step> done, Mistake like) {
    return new Spoilt(
        bench.wanted(),
        bench.made(done),
        new PanelTest(bench.names(), spoilt, bench.job().style()).of(like),
        bench.together(done).marks());
  }

  /** Turned over end for end its edges stay, and holes right through look the same. */
  private MistakeReport otherEnd(CleatMistake mistake, String what, List<Step> done) {
    MistakeFigures figures = bench.figures(mistake);
    SpoiltRows spoilt = spoilt(done);
    if (spoilt.isAsWanted()) {
      return figures.harmless(
          bench.mark(),
          what,
          "the notches are the same from both ends",
          "The strips are as wanted.");
    }
    WorkedPiece made = bench.made(done);
    Together together = bench.together(done);
    Spoilt outcome = outcome(spoilt, done, mistake.like());
    boolean turns = heights(made, made.length()::minus).equals(heights(bench.wanted(), l -> l));
    return figures.report(
        bench.mark(),
        outcome,
        what,
        shows(figures, spoilt, together),
        figures.test(outcome.check()) + beside(together),
        turns ? Rescue.NOT_NEEDED : Rescue.LOST,
        turns
            ? say(
                "Turn both strips%s over end for end, other face out: holes go right through, so that"
                    + " all notches come to their heights and still look at each other.",
                together.isAlone() ? "" : " of each blank")
            : "Make what is bored so anew.");
  }

  private static String beside(Together together) {
    return together.isAlone()
        ? " Later a square across two blanks, lower ends level, meets the same centres."
        : " A square across the blanks of the stack finds nothing: they are alike.";
  }

  private List<Length> heights(WorkedPiece piece, UnaryOperator<Length> from) {
    return bench.bores(piece).stream().map(Bore::length).map(from).sorted().toList();
  }

  /** The middle line is as far from both edges. */
  private MistakeReport wrongEdge() {
    MistakeFigures figures = bench.figures(CleatMistake.WRONG_EDGE);
    List<Step> done = stacked(Blunder::wrongEdge);
    SpoiltRows spoilt = spoilt(done);
    String what = say("The line of %s is drawn from its far edge.", whatIsBored());
    if (spoilt.isAsWanted()) {
      return figures.harmless(
          bench.mark(),
          what,
          "the middle line lies as far from either edge",
          "The strips are as wanted.");
    }
    Spoilt outcome = outcome(spoilt, done, Mistake.WRONG_EDGE);
    return figures.report(
        bench.mark(),
        outcome,
        what,
        shows(figures, spoilt, bench.together(done)),
        figures.test(outcome.check()),
        Rescue.LOST,
        "Make the blank anew.");
  }

  /** Holes right through are the same from both faces. */
  private MistakeReport otherFace() {
    MistakeFigures figures = bench.figures(CleatMistake.SECOND_LEFT);
    WorkedPiece made = bench.made(blunder.otherFace());
    String what = say("Blank %s is bored from its other face.", bench.blankMark());
    Set<Bore> through = new HashSet<>(through(made));
    return through.equals(new HashSet<>(through(bench.wanted())))
        ? figures.harmless(
            bench.mark(),
            what,
            "holes go right through, and strips of both sides are bored alike",
            "Only let the clean rims look into the bay.")
        : figures.report(
            bench.mark(),
            outcome(spoilt(blunder.otherFace()), blunder.otherFace(), Mistake.SECOND_LEFT),
            what,
            "The notches do not go through.",
            "Look through every hole.",
            Rescue.BORE_AGAIN,
            "Bore right through from the other face.");
  }

  /** What does not tell the faces apart. */
  private List<Bore> through(WorkedPiece piece) {
    return bench.bores(piece).stream()
        .map(
            b ->
                b.depth().equals(piece.thickness())
                    ? new Bore(
                        Surface.FACE, b.length(), b.width(), b.diameter(), b.depth(), b.purpose())
                    : b)
        .toList();
  }

  private MistakeReport skipped() {
    List<Bore> row = bench.bores(bench.wanted());
    Bore lowest =
        row.stream()
            .min(
                Comparator.comparing((Bore b) -> !bench.names().isSeat(b))
                    .thenComparing(Bore::length))
            .orElseThrow();
    int at = row.indexOf(lowest);
    List<Step> done = stacked(b -> b.holeSkipped(lowest.purpose(), at));
    SpoiltRows spoilt = spoilt(done);
    MistakeFigures figures = bench.figures(CleatMistake.HOLE_SKIPPED);
    Spoilt outcome = outcome(spoilt, done, Mistake.HOLE_SKIPPED);
    return figures.report(
        bench.mark(),
        outcome,
        say(
            "Hole %d of %s is left out.",
            figures.count(
                "skipped", "hole that is left out", spoilt.number(lowest), "counted from below"),
            whatIsBored()),
        shows(figures, spoilt, bench.together(done)),
        say(
                "Count the holes: %d. ",
                figures.count("in-row", "holes of the blank", spoilt.wanted().size(), "counted"))
            + figures.test(outcome.check()),
        Rescue.BORE_AGAIN,
        say(
            "Bore it before the blank is ripped; afterwards clamp both strips together, %s of wood"
                + " between them, and bore it then.",
            figures.measured("kerf", "what the saw takes", bench.blank().kerf())));
  }

  /** Nothing where holes go right through. */
  private Optional<MistakeReport> stopSlipped() {
    boolean through =
        bench.bores(bench.wanted()).stream().allMatch(b -> b.depth().equals(thickness()));
    return Optional.of(bench.figures(CleatMistake.STOP_SLIPPED))
        .filter(_ -> through)
        .map(
            f ->
                f.impossible(
                    bench.mark(),
                    "holes go right through into waste, so that no stop is set",
                    "Look through every hole.",
                    "No blank is spoilt."));
  }

  private Length thickness() {
    return bench.wanted().thickness();
  }

  private MistakeReport otherBit() {
    Length right = bench.bores(bench.wanted()).getFirst().diameter();
    OtherBit other = new OtherBits(bench.job().shop(), bench.names().settings()).thanPlain(right);
    MistakeFigures figures = bench.figures(CleatMistake.OTHER_BIT);
    String what = new OtherBitWords(figures, right).what(other);
    return other
        .diameter()
        .map(bit -> otherBit(figures, what, bit, OtherBitWords.before(other)))
        .orElseGet(
            () ->
                figures.impossible(
                    bench.mark(),
                    what,
                    "A cleat's round end lies in the lowest hole.",
                    "No blank is spoilt."));
  }

  private MistakeReport otherBit(MistakeFigures figures, String what, Length bit, String before) {
    List<Step> done = stacked(b -> b.bored(bit));
    SpoiltRows spoilt = spoilt(done);
    Spoilt outcome = outcome(spoilt, done, Mistake.OTHER_BIT);
    Length right = spoilt.wanted().getFirst().diameter();
    boolean narrow = bit.isLessThan(right);
    return figures.report(
        bench.mark(),
        outcome,
        what,
        shows(figures, spoilt, bench.together(done)),
        figures.test(outcome.check()) + before,
        narrow ? Rescue.BORE_AGAIN : Rescue.OTHERS_ALIKE,
        narrow
            ? say(
                "Before it is ripped, bore every hole once more with the right bit, %s.",
                figures.across("right-bit", "diameter of the right bit", right))
            : say(
                "Bore all blanks with this bit and make the cleats %s high.",
                figures.measured("cleats", "height of cleats for these notches", bit)));
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
