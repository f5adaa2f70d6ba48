package fourpin.shop.web;

import fourpin.casework.Finding.Severity;
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
        ? "Do not cut yet: " + counted(bad, "finding") + " to settle"
        : doubts > 0
            ? counted(doubts, "thing") + " to look at before cutting"
            : "Nothing found that forbids cutting";
  }

  /** For the style sheet. */
  public String look() {
    return bad > 0 ? "bad" : doubts > 0 ? "doubt" : "good";
  }

  private static String counted(long count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }
}
