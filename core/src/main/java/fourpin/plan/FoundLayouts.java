package fourpin.plan;

import fourpin.cutting.Layout;
import fourpin.cutting.SheetProblem;
import fourpin.job.Job;
import fourpin.plan.MaterialPlan.StockLayout;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Layouts that were found before, by a longer search or for a former plan. One that answers the
 * very problem of a plan, and passes the virtual saw, stands in the plan in place of a search.
 */
@FunctionalInterface
public interface FoundLayouts {

  /** None. */
  FoundLayouts NONE = problem -> Optional.empty();

  /**
   * A layout that was found.
   *
   * @param origin where it comes from, as a clause: "found by a longer search for change 12";
   *     nothing where the planner itself found it and so would again
   */
  record Found(Layout layout, Optional<String> origin) {}

  /** The one for a problem, if there is one. */
  Optional<Found> of(SheetProblem problem);

  /**
   * These, and what the planner found for a former plan: the same problems need no search, as long
   * as the same counts as good.
   *
   * @param job that is to be planned
   */
  default FoundLayouts andOf(Plan former, Job job) {
    boolean same =
        StockCutter.aims(former.job().settings()).equals(StockCutter.aims(job.settings()));
    return same ? and(ofOwnSearch(former)) : this;
  }

  private FoundLayouts and(Map<SheetProblem, Layout> others) {
    return problem ->
        of(problem)
            .or(
                () ->
                    Optional.ofNullable(others.get(problem))
                        .map(layout -> new Found(layout, Optional.empty())));
  }

  /**
   * Taken out of the plan at once: plans keep what they were made from for what is worked out
   * later, so one that led to the plan before it would hold the plans of all changes ever made.
   */
  private static Map<SheetProblem, Layout> ofOwnSearch(Plan plan) {
    return plan.materials().stream()
        .flatMap(material -> material.layouts().stream())
        .filter(l -> l.origin().isEmpty())
        .collect(Collectors.toMap(StockLayout::problem, StockLayout::layout, (a, b) -> a));
  }
}
