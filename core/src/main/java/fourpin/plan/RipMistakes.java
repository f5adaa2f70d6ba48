package fourpin.plan;

import fourpin.bench.Step;
import fourpin.bench.WorkedPiece;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Check;
import fourpin.plan.MistakeReport.Outcome.Spoilt;
import fourpin.plan.MistakeReport.Rescue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What goes wrong while a bored blank is ripped into its two cleat strips. */
final class RipMistakes {

  private final CleatBench bench;
  private final CleatBlank blank;

  RipMistakes(CleatBench bench) {
    this.bench = bench;
    this.blank = bench.blank();
  }

  List<MistakeReport> reports() {
    return List.of(swapped(), kerfForgotten());
  }

  private List<Step> ripped(UnaryOperator<Step.Rip> change) {
    return bench.steps().stream()
        .map(
            s ->
                s instanceof Step.Rip rip && rip.piece().equals(bench.blankMark())
                    ? (Step) change.apply(rip)
                    : s)
        .toList();
  }

  private MistakeReport swapped() {
    List<Step> done =
        ripped(r -> new Step.Rip(r.piece(), r.second(), r.first(), r.width(), r.kerf()));
    WorkedPiece made = CleatBench.made(done, blank.front());
    Length should = bench.bores(bench.wanted()).getFirst().width();
    Length is = bench.bores(made).getFirst().width();
    boolean turns = made.width().minus(is).equals(should);
    MistakeFigures figures = bench.figures(CleatMistake.HALVES_SWAPPED);
    Check check =
        new Check(
            say("on %s, from the edge marked “FRONT” to the middles of the notches", bench.mark()),
            should,
            Optional.of(is));
    return figures.report(
        bench.mark(),
        new Spoilt(bench.wanted(), made, check),
        say(
            "The half of blank %s that lay at the fence stands behind, the other one in front.",
            bench.blankMark()),
        say(
            "The notches of %s open to the %s instead of the %s, away from those of %s: no cleat lies"
                + " in them at any shelf, the lowest %s.",
            bench.mark(),
            side(made, is),
            side(made, should),
            blank.back().mark(),
            ShelfPlace.lowest(bench.names().grid(bench.bores(made).getFirst())).words(figures)),
        beyond(figures, made, should, is),
        turns ? Rescue.NOT_NEEDED : Rescue.LOST,
        turns
            ? "Turn both strips over sideways, other face out, same ends down: holes go right through,"
                + " so that the notches look at each other; write “FRONT” anew. Or let them change"
                + " places."
            : "Let the strips change places; they are not equally wide.");
  }

  /** Which edge has the notches is seen without a rule. */
  private String beyond(MistakeFigures figures, WorkedPiece made, Length should, Length is) {
    return say(
        "With “FRONT” forward %s has its notches in the %s edge, %s from the front to their middles,"
            + " not in the %s edge, %s beyond it. A cleat drops in between both strips.",
        bench.mark(),
        side(made, should),
        figures.measured("test-right", "middles of the notches from the front edge", should),
        side(made, is),
        figures.measured("test-wrong", "middles beyond the front edge", is.abs()));
  }

  private static String side(WorkedPiece strip, Length notch) {
    return notch.times(2).isLessThan(strip.width()) ? "front" : "back";
  }

  private MistakeReport kerfForgotten() {
    Length half = blank.kerf().over(2);
    List<Step> done =
        ripped(r -> new Step.Rip(r.piece(), r.first(), r.second(), r.width().plus(half), r.kerf()));
    WorkedPiece front = CleatBench.made(done, blank.front());
    WorkedPiece back = CleatBench.made(done, blank.back());
    Length from = bench.bores(back).getFirst().width().negated();
    MistakeFigures figures = bench.figures(CleatMistake.KERF_FORGOTTEN);
    String wide =
        figures.measured("width", "width of each strip as wanted", blank.front().width().total());
    Check check =
        new Check(
            say("across %s", bench.mark()), bench.wanted().width(), Optional.of(front.width()));
    return figures.report(
        bench.mark(),
        new Spoilt(bench.wanted(), front, check),
        say(
            "Blank %s is ripped with the blade beyond the middle line, so that the whole saw cut comes"
                + " off the back strip.",
            bench.blankMark()),
        say(
            "%s is %s wide and %s %s, instead of %s each; the middles of the notches lie %s beyond the"
                + " sawn edge of the back strip, so that cleats hold as much less there, at every"
                + " shelf, the lowest %s.",
            bench.mark(),
            figures.measured("front-width", "width of the front strip as ripped", front.width()),
            blank.back().mark(),
            figures.measured("back-width", "width of the back strip as ripped", back.width()),
            wide,
            figures.measured("beyond", "middles of the notches beyond the sawn edge", from),
            ShelfPlace.lowest(bench.names().grid(bench.bores(front).getFirst())).words(figures)),
        figures.test(check),
        Rescue.USE,
        "Heights are right. Set the other blanks right; cleats lie with the round of their"
            + " ends in both notches.");
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
