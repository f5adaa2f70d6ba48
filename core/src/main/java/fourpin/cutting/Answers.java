package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;

/** Makes layouts of what a search comes to. */
record Answers(SheetProblem problem, Inflated inflated) {

  Layout layout(Outcome outcome, LowerBound bound) {
    Trees trees = new Trees(problem, inflated);
    return new Layout(
        trees.patterns(outcome.drafts()), trees.leftOver(new Misfits(inflated)), bound);
  }

  static long sheets(Outcome outcome) {
    return outcome.drafts().stream().mapToLong(Drafted::quantity).sum();
  }
}
