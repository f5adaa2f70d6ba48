package fourpin.boring;

import fourpin.measure.Length;
import java.util.Optional;

/** How far the point of the bit that bores a bay's holes reaches beyond their full diameter. */
@FunctionalInterface
public interface Points {

  /** Before a way is taken. */
  Points UNKNOWN = _ -> Optional.empty();

  /** None where no way is taken that bores into the panels. */
  Optional<Length> of(BayGrid grid);
}
