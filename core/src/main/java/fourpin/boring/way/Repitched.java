package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.boring.Borer;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.measure.Length;
import java.util.List;

/**
 * What a case has at one pitch and at another, found by boring it at both.
 *
 * @param levels of all its bays, {@code seated} shelves that lie on one
 */
record Repitched(int levels, int seated) {

  static Repitched at(Job job, CaseOrder order, Length pitch) {
    return of(Borer.grids(job, StripPitch.with(order, pitch)));
  }

  /** What is bored alike at another pitch; none if the case can't be built. */
  static List<Group> groups(Job job, CaseOrder order, Length pitch) {
    CaseOrder changed = StripPitch.with(order, pitch);
    Job alone = job.with(List.of(changed));
    return CaseworkBuilder.build(alone).cases().stream()
        .flatMap(built -> Group.of(alone, built, Borer.grids(alone, changed)).stream())
        .toList();
  }

  private static Repitched of(List<BayGrid> grids) {
    return new Repitched(
        grids.stream().mapToInt(g -> g.levels().size()).sum(),
        grids.stream().mapToInt(g -> g.seats().size()).sum());
  }

  /**
   * "the strip gives 3/4 in, not 1 in: 53 levels instead of 40".
   *
   * @param strip in words
   */
  static String loss(Job job, CaseOrder order, String strip, Length wished, Length given) {
    Repitched before = at(job, order, wished);
    Repitched after = at(job, order, given);
    int unseated = before.seated() - after.seated();
    return strip
        + " gives "
        + job.style().text(given)
        + ", not "
        + job.style().text(wished)
        + ": "
        + (after.levels() == before.levels()
            ? "as many levels, " + after.levels()
            : after.levels() + " levels instead of " + before.levels())
        + (unseated > 0 ? ", and " + unseated + " fewer shelves find a level" : "");
  }
}
