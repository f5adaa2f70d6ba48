package fourpin.cutting;

import java.util.List;

/**
 * A layout while it is searched for: like {@link Node}, but in whole picometres with one kerf added
 * to every size, and with all slices of one rectangle side by side.
 */
sealed interface Draft {

  /** A part of one kind, as large as its rectangle. */
  record Place(int kind, Lay lay) implements Draft {}

  /** Left over. */
  record Free() implements Draft {}

  /** Parallel cuts; what is beyond the last slice is left over. */
  record Split(Direction direction, List<Slice> slices) implements Draft {}

  record Slice(long size, Draft content) {}

  Draft FREE = new Free();

  /**
   * The area of the largest piece left over in a rectangle, kerf taken off again; 0 when nothing is
   * left.
   */
  static double largestOffcut(Draft draft, long length, long width, long kerf) {
    return switch (draft) {
      case Place p -> 0;
      case Free f -> length > kerf && width > kerf ? (double) (length - kerf) * (width - kerf) : 0;
      case Split split -> {
        boolean rip = split.direction() == Direction.RIP;
        long rest = rip ? width : length;
        double largest = 0;
        for (Slice slice : split.slices()) {
          double here =
              rip
                  ? largestOffcut(slice.content(), length, slice.size(), kerf)
                  : largestOffcut(slice.content(), slice.size(), width, kerf);
          largest = Math.max(largest, here);
          rest -= slice.size();
        }
        double last =
            rip ? largestOffcut(FREE, length, rest, kerf) : largestOffcut(FREE, rest, width, kerf);
        yield Math.max(largest, last);
      }
    };
  }
}
