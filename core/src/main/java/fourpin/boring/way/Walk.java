package fourpin.boring.way;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

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
   * One place by the levels that are bored there, counted along the row.
   *
   * @param offset of its first hole above the lowest level, {@code to} the count after the last
   */
  private record Stand(int offset, int from, int to) {}

  /**
   * Each time as far as it goes: the pin goes into the last hole that was bored.
   *
   * @param levels rising, {@code room} how far the guide can be moved up
   * @return empty if a gap between levels is too long for the guide, or there is no room
   */
  static Optional<List<Place>> along(List<Integer> levels, Holes guide, int room) {
    return stands(levels, guide, room).map(stands -> places(levels, stands));
  }

  /** At how many places it lies; empty where {@link #along} is. */
  static OptionalInt count(List<Integer> levels, Holes guide, int room) {
    return stands(levels, guide, room).stream().mapToInt(List::size).findAny();
  }

  private static Optional<List<Stand>> stands(List<Integer> levels, Holes guide, int room) {
    List<Stand> stands = new ArrayList<>();
    int furthest = room - guide.below();
    int offset = -guide.below();
    int bored = 0;
    while (bored < levels.size()) {
      int to = reached(levels, bored, offset + guide.count());
      if (to == bored) {
        return Optional.empty();
      }
      stands.add(new Stand(offset, bored, to));
      offset = Math.max(offset, Math.min(levels.get(to - 1), furthest));
      bored = to;
    }
    return Optional.of(stands);
  }

  /** The count of the first level that the guide's end does not reach. */
  private static int reached(List<Integer> levels, int from, int end) {
    int to = from;
    while (to < levels.size() && levels.get(to) < end) {
      to++;
    }
    return to;
  }

  private static List<Place> places(List<Integer> levels, List<Stand> stands) {
    List<Place> places = new ArrayList<>();
    for (Stand stand : stands) {
      int offset = stand.offset();
      List<Integer> holes =
          levels.subList(stand.from(), stand.to()).stream().map(level -> level - offset).toList();
      places.add(
          places.isEmpty()
              ? new Place(offset, -1, -1, holes)
              : moved(places.getLast(), offset, holes));
    }
    return places;
  }

  private static Place moved(Place before, int offset, List<Integer> holes) {
    int into = before.holes().getLast();
    return new Place(offset, before.offset() + into - offset, into, holes);
  }
}
