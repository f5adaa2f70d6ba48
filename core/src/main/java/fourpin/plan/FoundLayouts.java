package fourpin.plan;

import fourpin.cutting.Layout;
import fourpin.cutting.SheetProblem;
import java.util.Optional;

/**
 * Layouts that were found by a longer search before. One that answers the very problem of a plan,
 * and passes the virtual saw, stands in the plan in place of a search.
 */
@FunctionalInterface
public interface FoundLayouts {

  /** None. */
  FoundLayouts NONE = problem -> Optional.empty();

  /**
   * A layout that was found.
   *
   * @param origin where it comes from, as a clause: "found by a longer search for change 12"
   */
  record Found(Layout layout, String origin) {}

  /** The one for a problem, if there is one. */
  Optional<Found> of(SheetProblem problem);
}
