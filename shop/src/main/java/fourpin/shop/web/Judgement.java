package fourpin.shop.web;

import fourpin.casework.Finding.Severity;
import fourpin.measure.Counted;
import fourpin.plan.Plan;

/** Whether a plan may go to the bench. */
public record Judgement(long bad, long doubts) {

  static Judgement of(Plan plan) {
    return new Judgement(
        count(plan, Severity.REFUSED) + count(plan, Severity.ERROR), count(plan, Severity.DOUBT));
  }

  private static long count(Plan plan, Severity severity) {
    return plan.findings().stream().filter(f -> f.severity() == severity).count();
  }

  public String words() {
    return bad > 0
        ? "Do not cut yet: " + Counted.of(bad, "finding") + " to settle"
        : doubts > 0
            ? Counted.of(doubts, "thing") + " to look at before cutting"
            : "Nothing found that forbids cutting";
  }

  /** Whether less is wrong, or as much and less doubtful. */
  boolean isBetterThan(Judgement other) {
    return bad == other.bad ? doubts < other.doubts : bad < other.bad;
  }

  /** For the style sheet. */
  public String look() {
    return bad > 0 ? "bad" : doubts > 0 ? "doubt" : "good";
  }
}
