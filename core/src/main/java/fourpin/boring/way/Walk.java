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
   * @param offset of its first hole above where it began
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
   * Each time as far as it goes: the pin goes into the last hole that was bored.
   *
   * @param levels rising, {@code count} of the guide's holes, {@code furthest} offset that there is
   *     room for
   * @return empty if a gap between levels is too long for the guide, or there is no room
   */
  static Optional<List<Place>> along(List<Integer> levels, int count, int furthest) {
    List<Place> places = new ArrayList<>();
    Place place = new Place(0, -1, -1, within(levels, -1, 0, count));
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
