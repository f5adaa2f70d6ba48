package fourpin.cutting;

import fourpin.cutting.NearPatterns.Near;
import java.util.stream.IntStream;

/**
 * A pattern listed, and what it holds, since most patterns hold few of many kinds.
 *
 * @param kinds that it holds
 * @param counts of each of them
 */
record CoverPattern(Near near, int[] kinds, int[] counts) {

  static CoverPattern of(Near near) {
    int[] all = near.column().counts();
    int[] kinds = IntStream.range(0, all.length).filter(kind -> all[kind] > 0).toArray();
    return new CoverPattern(near, kinds, IntStream.of(kinds).map(kind -> all[kind]).toArray());
  }

  int panel() {
    return near.column().panel();
  }

  boolean isWithin(int[] left) {
    for (int k = 0; k < kinds.length; k++) {
      if (counts[k] > left[kinds[k]]) {
        return false;
      }
    }
    return true;
  }

  boolean holds(int kind) {
    return near.column().counts()[kind] > 0;
  }

  long worth(long[] each) {
    long sum = 0;
    for (int k = 0; k < kinds.length; k++) {
      sum += counts[k] * each[kinds[k]];
    }
    return sum;
  }
}
