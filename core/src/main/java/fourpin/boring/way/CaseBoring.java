package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.job.Way;
import java.util.List;

/**
 * How the bays of one case that are bored alike get their holes.
 *
 * @param caseName of the job
 * @param grids bays with one kind of support, one diameter and one depth
 * @param answers one for each way, in the order of {@link Way}
 * @param chosen the way that the plan takes; its answer has a method
 * @param because why it is recommended, or that the maker chose it
 */
public record CaseBoring(
    String caseName, List<BayGrid> grids, List<WayAnswer> answers, Way chosen, String because) {

  public CaseBoring {
    grids = List.copyOf(grids);
    answers = List.copyOf(answers);
  }

  public WayAnswer answer(Way way) {
    return answers.get(way.ordinal());
  }

  /** How the chosen way is done. */
  public Method method() {
    return answer(chosen).method().orElseThrow();
  }
}
