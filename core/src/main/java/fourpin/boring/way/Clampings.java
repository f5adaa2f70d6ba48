package fourpin.boring.way;

import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Clamping.Step;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;

/**
 * Every place of one guide, with the holes that are used there.
 *
 * @param used how often each of the guide's holes is used, by its number, pins included
 */
record Clampings(List<Clamping> list, Map<Integer, Long> used) {

  /**
   * @param holes of the guide that are a pitch apart
   * @param length of the guide, which must fit under the panel above
   * @param number of a hole on the guide, by its count from 0 in pitches
   * @return empty if the guide does not reach every level
   */
  static Optional<Clampings> of(
      Group group,
      Stations stations,
      Across across,
      Walk.Holes holes,
      Length length,
      IntUnaryOperator number) {
    List<Clamping> list = new ArrayList<>();
    Map<Integer, Long> used = new TreeMap<>();
    for (Station station : stations.list()) {
      int room = station.run().room(length, group.pitch());
      Optional<List<Walk.Place>> walk = Walk.along(station.run().levels(), holes, room);
      if (walk.isEmpty()) {
        return Optional.empty();
      }
      List<Reach> reaches = walk.get().stream().map(p -> reach(p, number)).toList();
      reaches.forEach(r -> count(used, r));
      list.add(clamping(station, across, reaches));
    }
    return Optional.of(new Clampings(list, used));
  }

  private static Reach reach(Walk.Place place, IntUnaryOperator number) {
    Optional<Step> step =
        place.pin() < 0
            ? Optional.empty()
            : Optional.of(
                new Step(number.applyAsInt(place.pin()), number.applyAsInt(place.into())));
    return new Reach(step, place.holes().stream().map(number::applyAsInt).toList());
  }

  private static void count(Map<Integer, Long> used, Reach reach) {
    reach.holes().forEach(h -> used.merge(h, 1L, Long::sum));
    reach.step().ifPresent(s -> used.merge(s.pin(), 0L, Long::sum));
  }

  private static Clamping clamping(Station station, Across across, List<Reach> reaches) {
    Column at = station.column();
    return new Clamping(
        at.grid().bay(),
        at.part().mark(),
        at.face(),
        at.row().name(),
        across.edge(at),
        across.spacer(at),
        station.along(),
        station.bearing(),
        reaches);
  }

  /** How often the most used hole is bored through. */
  long mostUses() {
    return used.values().stream().mapToLong(Long::longValue).max().orElse(0);
  }
}
