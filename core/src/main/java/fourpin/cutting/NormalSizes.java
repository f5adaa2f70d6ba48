package fourpin.cutting;

import java.util.Arrays;
import java.util.Optional;

/**
 * The sizes that sums of parts laid side by side can reach: cuts anywhere else can be moved onto
 * one of them.
 *
 * <p>J.C. Herz, Recursive computational procedure for two-dimensional stock cutting, IBM Journal of
 * Research and Development 16 (1972) 462-469 (from memory).
 */
final class NormalSizes {
  private final long[] sizes;

  private NormalSizes(long[] sizes) {
    this.sizes = sizes;
  }

  /**
   * All sums up to a limit of so many copies of each size; with 0 first, and never more of them
   * than wanted: empty when there are more.
   */
  static Optional<NormalSizes> of(long limit, long[] each, int[] copies, int most) {
    long[] sums = {0};
    for (int i = 0; i < each.length; i++) {
      int times = (int) Math.min(copies[i], limit / each[i]);
      for (int copy = 0, before = 0; copy < times && before < sums.length; copy++) {
        before = sums.length;
        sums = withOneMore(sums, each[i], limit);
        if (sums.length > most) {
          return Optional.empty();
        }
      }
    }
    return Optional.of(new NormalSizes(sums));
  }

  private static long[] withOneMore(long[] sums, long size, long limit) {
    long[] both = Arrays.copyOf(sums, 2 * sums.length);
    int count = sums.length;
    for (long sum : sums) {
      if (sum + size <= limit) {
        both[count++] = sum + size;
      }
    }
    return Arrays.stream(both, 0, count).sorted().distinct().toArray();
  }

  int count() {
    return sizes.length;
  }

  long at(int index) {
    return sizes[index];
  }

  /** The index of the largest size up to a given one. */
  int below(long size) {
    int found = Arrays.binarySearch(sizes, size);
    return found >= 0 ? found : -found - 2;
  }

  /** For each pair of sizes, the index of what is left of the first beside the second. */
  int[][] rests() {
    int[][] rests = new int[sizes.length][];
    for (int whole = 0; whole < sizes.length; whole++) {
      rests[whole] = new int[whole + 1];
      for (int part = 0; part <= whole; part++) {
        rests[whole][part] = below(sizes[whole] - sizes[part]);
      }
    }
    return rests;
  }
}
