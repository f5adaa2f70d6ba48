package fourpin.cutting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Parts that come from one piece of wood, one after the other, so that the grain runs on from each
 * to the next: fronts of drawers, doors of a row.
 *
 * @param name different for each set of a problem
 * @param run how the parts lie to each other
 * @param marks in their order from the near end of the sheet (or its near edge); a mark stands as
 *     often as its part occurs in one set; at least two in all
 */
public record Matched(String name, Run run, List<String> marks) {

  /** How parts of a set lie to each other. */
  public enum Run {
    /** One behind the other along their length; all are of one width. */
    END_TO_END,
    /** One beside the other across their length; all are of one length. */
    SIDE_BY_SIDE
  }

  public Matched {
    Require.named(name, "name of a matched set");
    marks = List.copyOf(marks);
    if (marks.size() < 2) {
      throw new IllegalArgumentException("a matched set has two parts at least, but " + name);
    }
  }

  /** Whether some parts of the set are in a group, and others not. */
  public boolean isPartlyIn(Together group) {
    long in = marks.stream().filter(group.marks()::contains).count();
    return in > 0 && in < marks.size();
  }

  /** How often each mark is in one set. */
  Map<String, Long> counts() {
    return marks.stream()
        .collect(
            Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
  }

  /** The way of the cuts that part a set that lies so. */
  Direction cuts(Lay lay) {
    boolean along = run == Run.END_TO_END;
    return along == (lay == Lay.STRAIGHT) ? Direction.CROSSCUT : Direction.RIP;
  }
}
