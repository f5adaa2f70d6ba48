package fourpin.boring.way;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a guide that is shorter than a row goes along it, in pitches. */
final class Walk {

  private Walk() {}

  /**
   * One place of the guide.
   *
   * @param offset of its first hole above the lowest level
   * @param pin which of its holes the pin goes through, {@code into} which of its holes of the
   *     place before had bored the hole that the pin goes into; both counted from 0, and -1 at the
   *     first place
   * @param holes that are bored, counted from 0
   */
  record Place(int offset, int pin, int into, List<Integer> holes) {
    Place {
      holes = List.copyOf(holes);
    }
  }

  /**
   * The holes of a guide, a pitch apart.
   *
   * @param below how many of them lie below the lowest level while the guide lies where it begins;
   *     what is bored through them comes when it was moved along
   */
  record Holes(int below, int count) {

    /** From the one over the lowest level on. */
    int above() {
      return count - below;
    }
  }

  /**
   * Each time as far as it goes: the pin goes into the last hole that was bored.
   *
   * @param levels rising, {@code room} how far the guide can be moved up
   * @return empty if a gap between levels is too long for the guide, or there is no room
   */
  static Optional<List<Place>> along(List<Integer> levels, Holes guide, int room) {
    List<Place> places = new ArrayList<>();
    int count = guide.count();
    int furthest = room - guide.below();
    Place place = new Place(-guide.below(), -1, -1, within(levels, -1, -guide.below(), count));
    int bored = 0;
    while (!place.holes().isEmpty()) {
      places.add(place);
      bored += place.holes().size();
      if (bored == levels.size()) {
        return Optional.of(places);
      }
      place = next(place, levels, count, furthest);
    }
    return Optional.empty();
  }

  private static Place next(Place before, List<Integer> levels, int count, int furthest) {
    int last = before.offset() + before.holes().getLast();
    int offset = Math.max(before.offset(), Math.min(last, furthest));
    return new Place(
        offset, last - offset, before.holes().getLast(), within(levels, last, offset, count));
  }

  /** Levels above one that lie in reach, as holes of the guide. */
  private static List<Integer> within(List<Integer> levels, int above, int offset, int count) {
    return levels.stream()
        .filter(level -> level > above && level < offset + count)
        .map(level -> level - offset)
        .toList();
  }
}
