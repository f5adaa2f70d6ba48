package fourpin.boring.way;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Station.Run;
import fourpin.casework.BaySpace.Opening;
import fourpin.job.Setting;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * All the places of one guide, so that one column of holes serves every row of a group.
 *
 * <p>Before assembly the guide's zero is the lowest of the panels' ends; a panel that ends higher,
 * and a bay whose holes stand lower than another's, gets a spacer between end and block. When the
 * case stands, the guide's end stands on the panel below, and the spacer lies under it.
 *
 * @param first from the guide's zero to its first hole
 */
record Stations(Length first, List<Station> list) {

  Stations {
    list = List.copyOf(list);
  }

  /** A stretch of a row that is bored from one bearing. */
  private record Stretch(Column column, Opening opening, List<Length> heights) {
    Length above() {
      return heights.getFirst().minus(opening.clear().low().z());
    }
  }

  /**
   * For a group with at least one level.
   *
   * @param room that the first hole needs between its centre and the guide's zero
   * @param passing what more it needs where there is a block
   * @return empty if a standing case leaves less than that
   */
  static Optional<Stations> of(Group group, Length room, Passing passing) {
    return group.isBoredAfterAssembly()
        ? standing(group, room)
        : Optional.of(onTheBench(group, Length.max(room, passing.block())));
  }

  private static Stations onTheBench(Group group, Length room) {
    List<Column> columns = group.columns();
    Length lowestEnd = least(columns.stream().map(c -> c.end().minus(up(group, c))).toList());
    Length lowest =
        least(columns.stream().map(c -> heights(c).getFirst().minus(up(group, c))).toList());
    Length first = first(group, lowest.minus(lowestEnd), room);
    Length zero = lowest.minus(first);
    List<Station> list = new ArrayList<>();
    for (Column column : columns) {
      Length here = zero.plus(up(group, column));
      list.add(
          new Station(
              column,
              new Bearing.End(),
              here.minus(column.end()),
              new Run(pitches(group, heights(column), here.plus(first)), Optional.empty())));
    }
    return new Stations(first, list);
  }

  /** A spacer that must be is as thick as the block at least, so that it can be made and held. */
  private static Length first(Group group, Length own, Length room) {
    Length spaced = own.plus(group.settings().length(Setting.GUIDE_BLOCK));
    return own.isLessThan(room) ? Length.max(room, spaced) : own;
  }

  private static Length up(Group group, Column column) {
    return group.stated(column.grid()).levelsUp();
  }

  private static Length least(List<Length> lengths) {
    return lengths.stream().min(Length::compareTo).orElseThrow();
  }

  private static List<Length> heights(Column column) {
    return column.grid().levels().stream().map(Level::height).toList();
  }

  private static List<Integer> pitches(Group group, List<Length> heights, Length from) {
    return heights.stream().map(h -> (int) h.minus(from).wholeTimes(group.pitch())).toList();
  }

  private static Optional<Stations> standing(Group group, Length room) {
    List<Stretch> stretches = new ArrayList<>();
    group.columns().forEach(c -> stretches.addAll(stretches(c)));
    Length first = lowest(group);
    return first.isLessThan(room)
        ? Optional.empty()
        : Optional.of(
            new Stations(first, stretches.stream().map(s -> station(group, s, first)).toList()));
  }

  /** The least from a panel of a standing case to the hole above it. */
  static Length lowest(Group group) {
    return least(
        group.columns().stream().flatMap(c -> stretches(c).stream()).map(Stretch::above).toList());
  }

  private static List<Stretch> stretches(Column column) {
    List<Stretch> stretches = new ArrayList<>();
    for (Opening opening : column.bay().openings()) {
      List<Length> heights =
          heights(column).stream()
              .filter(h -> h.isAtLeast(opening.clear().low().z()))
              .filter(h -> opening.clear().high().z().isAtLeast(h))
              .toList();
      if (!heights.isEmpty()) {
        stretches.add(new Stretch(column, opening, heights));
      }
    }
    return stretches;
  }

  private static Station station(Group group, Stretch stretch, Length first) {
    Length lowest = stretch.heights().getFirst();
    Length zero = lowest.minus(first);
    Opening opening = stretch.opening();
    Length spacer = zero.minus(opening.clear().low().z());
    return new Station(
        stretch.column(),
        new Bearing.PanelBelow(opening.below(), spacer),
        zero.minus(stretch.column().end()),
        new Run(
            pitches(group, stretch.heights(), lowest),
            Optional.of(opening.clear().high().z().minus(zero))));
  }

  /** How many places have the same run, in the order of the places. */
  Map<Run, Long> runs() {
    return list.stream()
        .collect(Collectors.groupingBy(Station::run, LinkedHashMap::new, Collectors.counting()));
  }

  /** The most pitches from the first hole to a level. */
  int top() {
    return list.stream().mapToInt(s -> s.run().top()).max().orElse(0);
  }

  /** The length that fits under every panel above, where the case stands. */
  Optional<Length> lowestCeiling() {
    return list.stream().flatMap(s -> s.run().ceiling().stream()).min(Length::compareTo);
  }
}
