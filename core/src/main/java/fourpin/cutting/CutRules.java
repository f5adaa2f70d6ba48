package fourpin.cutting;

import fourpin.cutting.Inflated.Option;

/**
 * The limits of a saw in the terms of a search: sizes in picometres with the kerf added.
 *
 * @param longestRip of a rectangle that is ripped
 * @param widestCrosscut of one that is crosscut
 * @param atStart what may be cut of a whole panel
 */
record CutRules(long longestRip, long widestCrosscut, Stages atStart) {

  /**
   * How many stages of cuts a rectangle may still go through if its first cut is a rip, and if it
   * is a crosscut.
   */
  record Stages(int rip, int crosscut) {

    int of(Direction way) {
      return way == Direction.RIP ? rip : crosscut;
    }

    /** What is left for the pieces that cuts of one way make. */
    Stages after(Direction way) {
      int most = of(way);
      return way == Direction.RIP ? new Stages(most, most - 1) : new Stages(most - 1, most);
    }
  }

  /** More than any layout has; leaves room for counting. */
  private static final int MOST_STAGES = 1_000_000;

  static CutRules of(Saw saw) {
    SawLimits limits = saw.limits();
    int stages = Math.min(limits.stages(), MOST_STAGES);
    return new CutRules(
        longest(saw, Direction.RIP),
        longest(saw, Direction.CROSSCUT),
        new Stages(
            atStart(limits, Direction.RIP, stages), atStart(limits, Direction.CROSSCUT, stages)));
  }

  /** What may only be cut that way alone goes through one stage. */
  private static int atStart(SawLimits limits, Direction way, int stages) {
    return limits.barsAlone(way) ? 0 : limits.barsFirst(way) ? Math.min(1, stages) : stages;
  }

  private static long longest(Saw saw, Direction way) {
    return saw.limits()
        .longest(way)
        .map(length -> Math.addExact(length.picometres(), saw.kerf().picometres()))
        .orElse(Long.MAX_VALUE);
  }

  /** Whether there is anything at all that the saw can't do. */
  boolean limit() {
    return longestRip < Long.MAX_VALUE
        || widestCrosscut < Long.MAX_VALUE
        || Math.min(atStart.rip, atStart.crosscut) < MOST_STAGES;
  }

  /** Whether the saw can make cuts of such length in a rectangle with such stages left. */
  boolean allow(Direction way, long along, Stages stages) {
    return stages.of(way) > 0 && reach(way, along);
  }

  /** Whether the saw can make cuts of such length. */
  boolean reach(Direction way, long along) {
    return along <= (way == Direction.RIP ? longestRip : widestCrosscut);
  }

  /** Whether one part can be cut from a panel: it takes at most one cut of either way. */
  boolean free(Option option, long length, long width) {
    boolean rip = option.dy() < width;
    boolean crosscut = option.dx() < length;
    boolean ripFirst =
        (!rip || allow(Direction.RIP, length, atStart))
            && (!crosscut || thenCrosscut(rip, rip ? option.dy() : width));
    boolean crosscutFirst =
        (!crosscut || allow(Direction.CROSSCUT, width, atStart))
            && (!rip || thenRip(crosscut, crosscut ? option.dx() : length));
    return ripFirst || crosscutFirst;
  }

  /** Whether the saw can part a matched set that lies so; it may be as large as the panel. */
  boolean part(Inflated.Kind kind, Option option, long length, long width) {
    boolean whole = option.dx() == length && option.dy() == width;
    return kind.set()
        .map(set -> set.cuts(option.lay()))
        .map(way -> reach(way, option.along(way)) && (!whole || atStart.of(way) > 0))
        .orElse(true);
  }

  private boolean thenCrosscut(boolean ripped, long width) {
    return allow(Direction.CROSSCUT, width, ripped ? atStart.after(Direction.RIP) : atStart);
  }

  private boolean thenRip(boolean crosscut, long length) {
    return allow(Direction.RIP, length, crosscut ? atStart.after(Direction.CROSSCUT) : atStart);
  }

  /** Whether every cut of a panel is within the limits. */
  boolean allow(Draft draft, long length, long width) {
    return allow(draft, length, width, atStart);
  }

  private boolean allow(Draft draft, long length, long width, Stages stages) {
    return !(draft instanceof Draft.Split split) || allowSplit(split, length, width, stages);
  }

  private boolean allowSplit(Draft.Split split, long length, long width, Stages stages) {
    boolean rip = split.direction() == Direction.RIP;
    boolean whole = split.slices().getFirst().size() == (rip ? width : length);
    Stages left = whole ? stages : stages.after(split.direction());
    return (whole || allow(split.direction(), rip ? length : width, stages))
        && split.slices().stream()
            .allMatch(
                s -> allow(s.content(), rip ? length : s.size(), rip ? s.size() : width, left));
  }
}
