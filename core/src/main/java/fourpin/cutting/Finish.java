package fourpin.cutting;

import java.util.List;
import java.util.Optional;

/** Tries to end a search by patterns at the solution in fractions, without dives. */
@FunctionalInterface
interface Finish {

  /** For patterns that are too many to be listed. */
  Finish NONE = (top, generation, best) -> Optional.empty();

  /**
   * A cutting of all parts that costs less than the best one known. May also raise the bound of the
   * generation.
   *
   * @param top solution in fractions for all parts
   */
  Optional<List<Column>> finish(Generation.Relaxed top, Generation generation, long best);
}
