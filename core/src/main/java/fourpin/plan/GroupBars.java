package fourpin.plan;

import fourpin.cutting.GroupFit;
import fourpin.cutting.SawLimits;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.Together;
import fourpin.measure.LengthStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which limits of the saw keep parts that must share a sheet from one. Each group is asked once.
 */
final class GroupBars {
  private final SheetProblem problem;
  private final List<SawLimit> stated;
  private final Map<Together, Optional<Bar>> known = new HashMap<>();

  /** What keeps a group from a sheet that holds it without that. */
  record Bar(List<SawLimit> limits, Alone alone, String sheet) {}

  /** Whether it is enough that any one of the limits is lifted. */
  enum Alone {
    ANY,
    ALL
  }

  GroupBars(SheetProblem problem, Wanted.Kind kind, LengthStyle style) {
    this.problem = problem;
    this.stated = SawLimit.stated(problem.saw().limits(), kind, style);
  }

  /** Those any one of which bars it; where only several together do, all. */
  Optional<Bar> of(Together group) {
    if (!known.containsKey(group)) {
      known.put(group, stated.isEmpty() ? Optional.empty() : asked(group));
    }
    return known.getOrDefault(group, Optional.empty());
  }

  private Optional<Bar> asked(Together group) {
    return found(SawLimits.NONE, group).map(sheet -> bar(group, sheet));
  }

  private Bar bar(Together group, String sheet) {
    List<SawLimit> single =
        stated.stream().filter(limit -> found(limit.others(), group).isPresent()).toList();
    return single.isEmpty()
        ? new Bar(stated, Alone.ALL, sheet)
        : new Bar(single, Alone.ANY, found(single.getFirst().others(), group).orElse(sheet));
  }

  private Optional<String> found(SawLimits limits, Together group) {
    return GroupFit.found(problem.with(limits), group).map(sheet -> sheet.name());
  }
}
