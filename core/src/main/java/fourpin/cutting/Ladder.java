package fourpin.cutting;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Answers to the problems that allow less than one, and to those that allow less than these, each
 * asked once. Every answer starts from those below it.
 */
final class Ladder implements Starts {
  private final Search search;
  private final Map<SheetProblem, Layout> answers = new HashMap<>();

  /** Answers a problem, from layouts to start from. */
  @FunctionalInterface
  interface Search {
    Layout answer(SheetProblem problem, Starts starts);
  }

  Ladder(Search search) {
    this.search = search;
  }

  @Override
  public List<Layout> of(SheetProblem problem) {
    return Stricter.answers(problem, this::answer, apart -> search.answer(apart, Starts.NONE));
  }

  private Layout answer(SheetProblem problem) {
    if (!answers.containsKey(problem)) {
      answers.put(problem, search.answer(problem, this));
    }
    return answers.get(problem);
  }
}
