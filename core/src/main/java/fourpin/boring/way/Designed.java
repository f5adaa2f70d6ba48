package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.measure.Length;
import java.util.List;

/** What became of the wish for a guide. */
sealed interface Designed {

  /**
   * A guide with all its clampings.
   *
   * @param uses of its most used hole in one copy of the case
   */
  record Made(Guide guide, List<Clamping> clampings, long uses) implements Designed {
    public Made {
      clampings = List.copyOf(clampings);
    }

    /** Times that a guide is clamped or stepped along. */
    long places() {
      return clampings.stream().mapToLong(c -> c.reaches().size()).sum();
    }

    /** Times that its block comes off, to move it along, and goes on again. */
    long refits() {
      return guide.block().isPositive()
          ? clampings.stream().filter(Clamping::isMovedAlong).count()
          : 0;
    }
  }

  /** There is none that serves. */
  record Failed(Reason reason) implements Designed {}

  /**
   * Where a standing case leaves no room below the first hole.
   *
   * @param room that a guide needs below its first hole
   */
  static Designed tooLow(Group group, Length room) {
    Length lowest = Stations.lowest(group);
    Telling tell =
        new Telling(group, "room-below", "room below the lowest hole that a guide lacks");
    String needs = tell.derived("n", "what a guide needs between its end and its first hole", room);
    return new Failed(
        tell.reason(
            "the lowest hole lies "
                + tell.derived("l", "panel below to the lowest hole", lowest)
                + " above the panel below, and a guide that stands there needs "
                + needs,
            "set clear-below to "
                + tell.derived("c", "the same as it can be written", group.roundedUp(room))
                + " or more, or bore before assembly",
            "n - l",
            room.minus(lowest)));
  }

  /** Where the guide is too short to be stepped along. */
  static Designed tooShort(Group group, String what) {
    Length longest = longest(group);
    Telling tell = new Telling(group, "longest-row", "from the first to the last hole of a row");
    return new Failed(
        tell.reason(
            what + " is too short to be stepped along rows " + group.text(longest) + " long",
            "take a longer piece, or set rows to full so that there is a hole for the pin",
            "the most from the lowest to the highest level of a bay",
            longest));
  }

  private static Length longest(Group group) {
    return group.grids().stream()
        .filter(g -> !g.levels().isEmpty())
        .map(g -> g.levels().getLast().height().minus(g.levels().getFirst().height()))
        .max(Length::compareTo)
        .orElse(Length.ZERO);
  }
}
