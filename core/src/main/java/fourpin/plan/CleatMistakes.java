package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Removal.Bore;
import fourpin.bench.Step;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What goes wrong while blanks for cleat strips are marked, bored and ripped, tried on the virtual
 * bench with the first blank of a case.
 */
final class CleatMistakes {

  private final BuiltCase built;
  private final LengthStyle style;
  private final List<Step> steps;
  private final CleatBlank blank;
  private final List<BayGrid> grids;
  private final Set<String> rows;
  private final BenchRun right;

  private CleatMistakes(
      BuiltCase built, LengthStyle style, List<Step> steps, List<BayGrid> grids, CleatBlank blank) {
    this.built = built;
    this.style = style;
    this.steps = steps;
    this.blank = blank;
    this.grids = grids;
    this.rows =
        blank.wood().features().stream()
            .filter(f -> f instanceof Hole)
            .map(f -> f.purpose())
            .collect(Collectors.toSet());
    this.right = VirtualBench.run(steps);
  }

  static List<MistakeReport> of(
      BuiltCase built, LengthStyle style, List<Step> steps, List<BayGrid> grids) {
    return CleatBlank.of(built, built.parts()).stream()
        .filter(b -> !b.wood().features().isEmpty())
        .findFirst()
        .map(b -> new CleatMistakes(built, style, steps, grids, b).reports())
        .orElse(List.of());
  }

  private List<MistakeReport> reports() {
    Blunder blunder =
        new Blunder(
            blank.wood().mark(),
            blank.wood().length().total(),
            blank.wood().width().total(),
            rows,
            steps);
    List<MistakeReport> reports = new ArrayList<>();
    reports.add(endForEnd(blunder.endForEnd()));
    blunder.holeSkipped().map(this::skipped).ifPresent(reports::add);
    reports.add(swapped());
    reports.add(kerfForgotten());
    return reports;
  }

  private WorkedPiece made(List<Step> done, Part strip) {
    return Objects.requireNonNull(VirtualBench.run(done).pieces().get(strip.mark()));
  }

  private WorkedPiece wanted(Part strip) {
    return Objects.requireNonNull(right.pieces().get(strip.mark()));
  }

  private List<Step> ripped(UnaryOperator<Step.Rip> change) {
    return steps.stream()
        .map(
            s ->
                s instanceof Step.Rip rip && rip.piece().equals(blank.wood().mark())
                    ? (Step) change.apply(rip)
                    : s)
        .toList();
  }

  private MistakeFigures figures(CleatMistake mistake) {
    return new MistakeFigures(built.order().name(), mistake, style, built.order().settings());
  }

  /** What comes of marks at other heights. */
  private String shows(MistakeFigures figures, List<Step> done) {
    SpoiltRows spoilt = SpoiltRows.of(wanted(blank.front()), made(done, blank.front()), rows);
    if (spoilt.missing().isEmpty()) {
      return "Nothing: the rows are the same from both ends.";
    }
    Bore wanted = spoilt.lowestMissing();
    String off =
        spoilt
            .instead(wanted)
            .map(
                m ->
                    say(
                        "lies %s instead",
                        figures.measured("made-at", "middle of the notch as made", m.length())))
            .orElse("is not there");
    return say(
        "Of %d notches of %s %d %s not as wanted: the lowest of them, whose middle belongs %s above the"
            + " lower end, %s.%s",
        figures.count("notches", "notches of the strip", spoilt.wanted().size(), "counted"),
        blank.front().mark(),
        figures.count(
            "notches-off", "notches that are not as wanted", spoilt.missing().size(), "counted"),
        spoilt.missing().size() == 1 ? "is" : "are",
        figures.measured("wanted-at", "middle of the notch as wanted", wanted.length()),
        off,
        level(figures, wanted));
  }

  private String level(MistakeFigures figures, Bore wanted) {
    Length height = blank.front().box().at(Face.BOTTOM).plus(wanted.length());
    return grids.stream()
        .flatMap(
            g ->
                g.levels().stream()
                    .filter(l -> l.height().equals(height) && isIn(g))
                    .map(
                        l ->
                            say(
                                " It shows first at level %d of bay %d, for a shelf whose underside"
                                    + " lies %s above the foot.",
                                l.number(),
                                g.bay(),
                                figures.measured(
                                    "shows-at",
                                    "underside of the shelf that it shows at first, above the foot",
                                    l.underside()))))
        .findFirst()
        .orElse("");
  }

  private boolean isIn(BayGrid grid) {
    return rows.stream().anyMatch(r -> r.endsWith("bay " + grid.bay()));
  }

  /** Where the lowest notch lies, and where it would lie. */
  private String test(MistakeFigures figures, List<Step> done) {
    Length should = lengths(wanted(blank.front())).min(Length::compareTo).orElseThrow();
    Length is = lengths(made(done, blank.front())).min(Length::compareTo).orElse(should);
    return say(
        "A square laid across two blanks of a bay, lower ends level, meets the same centres. The lowest"
            + " lies %s from the lower end%s.",
        figures.measured("test-right", "lowest centre from the lower end, as wanted", should),
        is.equals(should)
            ? ""
            : say(
                "; %s would be this mistake",
                figures.measured("test-wrong", "the same with the mistake", is)));
  }

  /** Turned over end for end its edges stay, and holes right through look the same. */
  private MistakeReport endForEnd(List<Step> done) {
    WorkedPiece made = made(done, blank.front());
    List<Length> wanted = lengths(wanted(blank.front())).sorted().toList();
    boolean turns = lengths(made).map(made.length()::minus).sorted().toList().equals(wanted);
    boolean same = lengths(made).sorted().toList().equals(wanted);
    MistakeFigures figures = figures(CleatMistake.END_FOR_END);
    return figures.report(
        blank.front().mark(),
        say("The stick lies on blank %s with its zero at the far end.", blank.wood().mark()),
        shows(figures, done),
        test(figures, done),
        same || turns ? Rescue.NOT_NEEDED : Rescue.LOST,
        same
            ? "The strips are as wanted."
            : turns
                ? "Turn both strips over end for end, other face out: holes go right through, so that"
                    + " all notches come to their heights and still look at each other."
                : "Make the blank anew.");
  }

  private Stream<Length> lengths(WorkedPiece piece) {
    return bores(piece).stream().map(Bore::length);
  }

  private List<Bore> bores(WorkedPiece piece) {
    return piece.removals().stream()
        .filter(r -> r instanceof Bore b && rows.contains(b.purpose()))
        .map(r -> (Bore) r)
        .toList();
  }

  private MistakeReport skipped(List<Step> done) {
    MistakeFigures figures = figures(CleatMistake.HOLE_SKIPPED);
    return figures.report(
        blank.front().mark(),
        say("On blank %s every hole is taken one number too high.", blank.wood().mark()),
        shows(figures, done),
        test(figures, done),
        Rescue.OTHERS_ALIKE,
        "Bore the other blanks of the bay the same way: all levels then lie one number higher than"
            + " planned. Otherwise make the blank anew; notches can't be plugged so that they carry.");
  }

  private MistakeReport swapped() {
    List<Step> done =
        ripped(r -> new Step.Rip(r.piece(), r.second(), r.first(), r.width(), r.kerf()));
    WorkedPiece made = made(done, blank.front());
    Length should = bores(wanted(blank.front())).getFirst().width();
    Length is = bores(made).getFirst().width();
    boolean turns = made.width().minus(is).equals(should);
    return figures(CleatMistake.HALVES_SWAPPED)
        .report(
            blank.front().mark(),
            say(
                "The half of blank %s that lay at the fence stands behind, the other one in front.",
                blank.wood().mark()),
            say(
                "The notches of %s open to the %s instead of the %s, away from those of %s: no cleat lies"
                    + " in them at any level.",
                blank.front().mark(), side(made, is), side(made, should), blank.back().mark()),
            "Stand both strips of a bay's side up with “FRONT” forward: a cleat drops in between them.",
            turns ? Rescue.NOT_NEEDED : Rescue.LOST,
            turns
                ? "Turn both strips over sideways, other face out, same ends down: holes go right through,"
                    + " so that the notches look at each other; write “FRONT” anew. Or let them change"
                    + " places."
                : "Let the strips change places; they are not equally wide.");
  }

  private static String side(WorkedPiece strip, Length notch) {
    return notch.times(2).isLessThan(strip.width()) ? "front" : "back";
  }

  private MistakeReport kerfForgotten() {
    Length half = blank.kerf().over(2);
    List<Step> done =
        ripped(r -> new Step.Rip(r.piece(), r.first(), r.second(), r.width().plus(half), r.kerf()));
    WorkedPiece front = made(done, blank.front());
    WorkedPiece back = made(done, blank.back());
    Length from = bores(back).getFirst().width().negated();
    MistakeFigures figures = figures(CleatMistake.KERF_FORGOTTEN);
    String wide =
        figures.measured("width", "width of each strip as wanted", blank.front().width().total());
    return figures.report(
        blank.front().mark(),
        say(
            "Blank %s is ripped with the blade beyond the middle line, so that the whole saw cut comes"
                + " off the back strip.",
            blank.wood().mark()),
        say(
            "%s is %s wide and %s %s, instead of %s each; the middles of the notches lie %s beyond the"
                + " sawn edge of the back strip, so that cleats hold as much less there, at every"
                + " level.",
            blank.front().mark(),
            figures.measured("front-width", "width of the front strip as ripped", front.width()),
            blank.back().mark(),
            figures.measured("back-width", "width of the back strip as ripped", back.width()),
            wide,
            figures.measured("beyond", "middles of the notches beyond the sawn edge", from)),
        say(
            "Both strips of a blank are equally wide, %s, and half the saw cut of %s is missing from"
                + " each half of a hole.",
            wide, figures.measured("kerf", "what the saw takes", blank.kerf())),
        Rescue.USE,
        "Heights are right. Set the other blanks right; cleats lie with the round of their"
            + " ends in both notches.");
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
