package fourpin.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What is still to be cut, from which patterns, and how much it may cost and lose.
 *
 * @param open numbers of the patterns that can still be taken
 * @param losses of these, by their numbers
 */
record CoverRest(int[] open, long[] losses, int[] left, int[] supply, long cost, long loss) {

  boolean isNothing() {
    return Arrays.stream(left).allMatch(count -> count == 0);
  }

  CoverRest after(int number, CoverPattern taken, long price) {
    int[] less = left.clone();
    for (int k = 0; k < taken.kinds().length; k++) {
      less[taken.kinds()[k]] -= taken.counts()[k];
    }
    int[] stock = supply.clone();
    stock[taken.panel()]--;
    return new CoverRest(open, losses, less, stock, cost - price, loss - losses[number]);
  }

  /** With losses against other worths, without the patterns that would lose too much by them. */
  CoverRest narrowed(long[] others, long most) {
    return new CoverRest(open, others, left, supply, cost, most).with(n -> others[n] <= most);
  }

  CoverRest without(int tried) {
    return with(number -> number != tried);
  }

  CoverRest possible(List<CoverPattern> patterns, long[] costs) {
    return with(number -> isPossible(number, patterns.get(number), costs));
  }

  private CoverRest with(IntPredicate some) {
    int[] fewer = IntStream.of(open).filter(some).toArray();
    return new CoverRest(fewer, losses, left, supply, cost, loss);
  }

  private boolean isPossible(int number, CoverPattern one, long[] costs) {
    return losses[number] <= loss
        && costs[one.panel()] <= cost
        && supply[one.panel()] > 0
        && one.isWithin(left);
  }

  /** How many patterns hold each kind. */
  int[] choices(List<CoverPattern> patterns) {
    int[] choices = new int[left.length];
    for (int number : open) {
      for (int kind : patterns.get(number).kinds()) {
        choices[kind]++;
      }
    }
    return choices;
  }
}
