package fourpin.cutting;

import java.util.List;

/** Layouts of a problem that a search may start from. */
@FunctionalInterface
interface Starts {

  /** None but what the search finds by itself. */
  Starts NONE = problem -> List.of();

  List<Layout> of(SheetProblem problem);
}
