package fourpin.cutting;

import java.util.List;
import java.util.function.ToLongFunction;

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

  /** Without what is left over at the end of a way, so that the rectangle may be shorter there. */
  static Draft tight(Draft draft, Direction way) {
    return draft instanceof Split split
        ? new Split(
            split.direction,
            split.direction == way
                ? split.slices.subList(0, used(split.slices))
                : split.slices.stream()
                    .map(slice -> new Slice(slice.size, tight(slice.content, way)))
                    .toList())
        : draft;
  }

  /** How many slices there are up to the last that is not left over as a whole. */
  private static int used(List<Slice> slices) {
    int used = slices.size();
    while (used > 0 && slices.get(used - 1).content instanceof Free) {
      used--;
    }
    return used;
  }

  /**
   * How long a way a rectangle has to be for a draft.
   *
   * @param part the size of a part along the way
   */
  static long extent(Draft draft, Direction way, ToLongFunction<Place> part) {
    return switch (draft) {
      case Place place -> part.applyAsLong(place);
      case Free free -> 0;
      case Split split when split.direction == way ->
          split.slices.stream().mapToLong(Slice::size).sum();
      case Split split ->
          split.slices.stream()
              .mapToLong(slice -> extent(slice.content, way, part))
              .max()
              .orElse(0);
    };
  }
}
