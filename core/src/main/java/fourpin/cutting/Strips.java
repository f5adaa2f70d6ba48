package fourpin.cutting;

import fourpin.cutting.CutRules.Stages;
import fourpin.cutting.Inflated.Option;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Chooses the next strip to cut from a rectangle: fills a strip of each useful size by a knapsack
 * along it, and combines the strips by a knapsack across.
 *
 * <p>P.C. Gilmore and R.E. Gomory, Multistage cutting stock problems of two and more dimensions,
 * Operations Research 13 (1965) 94-120 (from memory). Here one strip is fixed at a time, since the
 * strips share a bounded demand. With many sizes and kinds, only so many of each are looked at.
 */
final class Strips {

  /**
   * A strip across a rectangle: its filling as pairs of option and copies, how often it can be cut,
   * and how many stages of cuts it may take, its own counted.
   */
  record Strip(Direction direction, long size, int[] filling, int most, double worth, int stages) {}

  /**
   * A rectangle that strips are cut from.
   *
   * @param stages if its first cut runs the way of the strips
   * @param inner if its first cut runs the other way
   */
  private record Room(Direction way, long along, long across, int stages, int inner) {}

  /** With so many stages a strip is cut into parts that are exactly as wide as it. */
  private static final int NO_STACKS = 2;

  private final List<Option> options;
  private final CutRules rules;
  private final double[] worth;
  private final int[] left;
  private final Tools tools;
  private final int[] start;
  private final double[] density;
  private final double[] densest;
  private final int[] perKind;
  private final int[] choices = new int[2];
  private final long[] sizes = new long[2];
  private final int[] copies = new int[2];

  /**
   * What the search works with.
   *
   * @param breadth how many strip sizes, and how many kinds in each strip, are looked at
   */
  record Tools(Knapsack along, Knapsack across, int breadth) {
    long work() {
      return along.work() + across.work();
    }
  }

  /**
   * @param panel whose options of one kind are side by side
   * @param worth value of one part of each kind
   * @param left how many of each kind are wanted; read at every call
   */
  Strips(Panel panel, double[] worth, int[] left, Tools tools) {
    this.options = panel.options();
    this.rules = panel.rules();
    this.worth = worth;
    this.left = left;
    this.tools = tools;
    start = starts(options);
    density = new double[start.length - 1];
    densest = new double[tools.breadth];
    perKind = new int[left.length];
  }

  /** Where the options of each kind begin, and the end. */
  private static int[] starts(List<Option> options) {
    int[] starts = new int[options.size() + 1];
    int count = 0;
    for (int i = 0; i < options.size(); i++) {
      if (i == 0 || options.get(i).kind() != options.get(i - 1).kind()) {
        starts[count++] = i;
      }
    }
    starts[count] = options.size();
    return Arrays.copyOf(starts, count + 1);
  }

  Option option(int index) {
    return options.get(index);
  }

  /**
   * The strip to cut first from a rectangle, in one of the given ways; none when nothing fits, or
   * nothing that the saw can cut.
   */
  Optional<Strip> choose(long length, long width, Stages stages, Direction[] ways) {
    Optional<Strip> best = Optional.empty();
    double bestTotal = 0;
    for (Direction way : ways) {
      boolean rip = way == Direction.RIP;
      List<Strip> strips =
          strips(
              new Room(
                  way,
                  rip ? length : width,
                  rip ? width : length,
                  rules.allow(way, rip ? length : width, stages) ? stages.of(way) : 0,
                  stages.of(way.other())));
      if (strips.isEmpty()) {
        continue;
      }
      int total = combine(strips, rip ? width : length);
      if (tools.across.value(total) > bestTotal) {
        bestTotal = tools.across.value(total);
        best = Optional.of(widest(strips, tools.across.filling(total)));
      }
    }
    return best;
  }

  private static Strip widest(List<Strip> strips, int[] filling) {
    Strip widest = strips.get(filling[0]);
    for (int i = 2; i < filling.length; i += 2) {
      Strip next = strips.get(filling[i]);
      widest = next.size > widest.size ? next : widest;
    }
    return widest;
  }

  private int combine(List<Strip> strips, long extent) {
    tools.across.open(extent);
    for (int i = 0; i < strips.size(); i++) {
      Strip strip = strips.get(i);
      choices[0] = i;
      sizes[0] = strip.size;
      copies[0] = 1;
      tools.across.offer(strip.most, strip.worth, choices, sizes, copies, 1);
    }
    return tools.across.best();
  }

  /**
   * The best strip of each size looked at, each filled as if it were the only one; widest first.
   */
  private List<Strip> strips(Room room) {
    List<Strip> strips = new ArrayList<>();
    long[] looked = sizes(room);
    for (int i = 0; i < looked.length; i++) {
      Strip strip = strip(room, looked[i]);
      boolean dominated = i + 1 < looked.length && strip.size <= looked[i + 1];
      if (!dominated) {
        strips.add(strip);
      }
    }
    return strips;
  }

  /**
   * The sizes of the parts that are wanted and fit, largest first; evenly chosen if there are too
   * many.
   */
  private long[] sizes(Room room) {
    long[] all = new long[options.size()];
    int count = 0;
    for (Option o : options) {
      long size = o.across(room.way);
      boolean wanted = left[o.kind()] > 0 && size <= room.across;
      if (wanted && fits(o, room, size, stages(room, size))) {
        all[count++] = -size;
      }
    }
    long[] distinct = Arrays.stream(all, 0, count).sorted().distinct().map(size -> -size).toArray();
    int chosen = Math.min(distinct.length, tools.breadth);
    long[] even = new long[chosen];
    for (int i = 0; i < chosen; i++) {
      even[i] = distinct[(int) ((long) i * distinct.length / chosen)];
    }
    return even;
  }

  /**
   * How many stages a strip may take: where it is as wide as the rectangle, it takes no cut; where
   * it is too wide for the saw to cut it to length, none are left.
   */
  private int stages(Room room, long size) {
    int stages = size == room.across ? room.inner + 1 : room.stages;
    return rules.reach(room.way.other(), size) ? stages : Math.min(stages, 1);
  }

  /** Whether an option can be cut from a strip of that size. */
  private boolean fits(Option option, Room room, long size, int stages) {
    long across = option.across(room.way);
    long along = option.along(room.way);
    if (across > size || along > room.along) {
      return false;
    }
    return across == size
        ? stages >= NO_STACKS || (stages == 1 && along == room.along)
        : stages > NO_STACKS && rules.reach(room.way, along);
  }

  private Strip strip(Room room, long size) {
    int stages = stages(room, size);
    tools.along.open(room.along);
    double least = leastDensity(room, size, stages);
    for (int i = 0; i < density.length; i++) {
      if (density[i] > 0 && density[i] >= least) {
        offer(i, room, size, stages);
      }
    }
    int best = tools.along.best();
    int[] filling = tools.along.filling(best);
    long own = ownSize(filling, room, size);
    return new Strip(
        room.way, own, filling, most(filling), tools.along.value(best), stages(room, own));
  }

  /**
   * No wider than its filling, unless it was to be as wide as the rectangle and the saw may not cut
   * it off.
   */
  private long ownSize(int[] filling, Room room, long size) {
    long used = used(room.way, filling);
    for (int i = 0; i < filling.length; i += 2) {
      if (!fits(options.get(filling[i]), room, used, stages(room, used))) {
        return size;
      }
    }
    return used;
  }

  /**
   * Notes what each kind is worth for the length of strip that it takes, and says from which
   * density on a kind is among the densest; 0 when there are no more kinds than are looked at.
   */
  private double leastDensity(Room room, long size, int stages) {
    Arrays.fill(densest, 0);
    for (int i = 0; i < density.length; i++) {
      density[i] = density(i, room, size, stages);
      if (density[i] > densest[0]) {
        insert(density[i]);
      }
    }
    return densest[0];
  }

  /** Puts a density among the densest, which are in rising order, in place of the least. */
  private void insert(double value) {
    int at = 0;
    while (at + 1 < densest.length && densest[at + 1] < value) {
      densest[at] = densest[at + 1];
      at++;
    }
    densest[at] = value;
  }

  private double density(int i, Room room, long size, int stages) {
    int kind = options.get(start[i]).kind();
    double best = 0;
    for (int o = start[i]; o < start[i + 1] && left[kind] > 0; o++) {
      Option option = options.get(o);
      if (fits(option, room, size, stages)) {
        long stack = Math.min(size / option.across(room.way), left[kind]);
        best = Math.max(best, stack * worth[kind] / option.along(room.way));
      }
    }
    return best;
  }

  private void offer(int i, Room room, long size, int stages) {
    int kind = options.get(start[i]).kind();
    int offered = 0;
    for (int o = start[i]; o < start[i + 1]; o++) {
      Option option = options.get(o);
      if (fits(option, room, size, stages)) {
        choices[offered] = o;
        sizes[offered] = option.along(room.way);
        copies[offered++] = (int) Math.min(size / option.across(room.way), left[kind]);
      }
    }
    tools.along.offer(left[kind], worth[kind], choices, sizes, copies, offered);
  }

  private long used(Direction way, int[] filling) {
    long used = 0;
    for (int i = 0; i < filling.length; i += 2) {
      used = Math.max(used, filling[i + 1] * options.get(filling[i]).across(way));
    }
    return used;
  }

  /** How many strips of this filling the demand allows. */
  private int most(int[] filling) {
    for (int i = 0; i < filling.length; i += 2) {
      perKind[options.get(filling[i]).kind()] += filling[i + 1];
    }
    int most = Integer.MAX_VALUE;
    for (int i = 0; i < filling.length; i += 2) {
      int kind = options.get(filling[i]).kind();
      most = perKind[kind] == 0 ? most : Math.min(most, left[kind] / perKind[kind]);
      perKind[kind] = 0;
    }
    return most;
  }
}
