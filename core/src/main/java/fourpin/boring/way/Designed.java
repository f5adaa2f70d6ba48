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
  }

  /** There is none that serves. */
  record Failed(Reason reason) implements Designed {}

  static Designed failed(String what, String remedy) {
    return new Failed(new Reason(what, remedy));
  }

  /** Where a standing case leaves no room below the first hole. */
  static Designed tooLow(Group group) {
    return failed(
        "the lowest hole lies too near to the panel below for a guide that stands on it",
        "set clear-below to more, or bore before assembly");
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
