package fourpin.boring.way;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;

/**
 * How many holes a guide gets that is shorter than the rows: as many as save a move, and no more.
 * Holes below the lowest level take no length from the stock, since the guide has to reach down to
 * the end of the panel anyway; they count when it was moved along.
 *
 * @param below the lowest level's hole, how many there is room for at most
 * @param above from that hole on, how many there is length for at most
 * @param places at how many it lies on all panels; empty if it doesn't reach every level
 */
record FewestMoves(int below, int above, Function<Walk.Holes, OptionalLong> places) {

  private static final long NEVER = Long.MAX_VALUE;

  /** Of guides that are moved equally often that with the fewest holes, then the shortest. */
  Optional<Walk.Holes> holes() {
    long fewest = NEVER;
    Optional<Walk.Holes> best = Optional.empty();
    for (int reach = 1; reach <= above; reach++) {
      long places = places(new Walk.Holes(below, below + reach));
      if (places < fewest) {
        fewest = places;
        best = Optional.of(fewer(reach, places));
      } else if (places == fewest && places != NEVER) {
        Walk.Holes other = fewer(reach, places);
        best = best.filter(b -> b.count() <= other.count()).or(() -> Optional.of(other));
      }
    }
    return best;
  }

  /** The fewest holes below that need no more moves. */
  private Walk.Holes fewer(int reach, long places) {
    int fewest = below;
    while (fewest > 0 && places(new Walk.Holes(fewest - 1, fewest - 1 + reach)) == places) {
      fewest--;
    }
    return new Walk.Holes(fewest, fewest + reach);
  }

  private long places(Walk.Holes holes) {
    return places.apply(holes).orElse(NEVER);
  }
}
