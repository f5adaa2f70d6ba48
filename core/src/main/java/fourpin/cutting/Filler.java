package fourpin.cutting;

import fourpin.cutting.Inflated.Option;
import fourpin.cutting.Inflated.Panel;
import fourpin.cutting.Strips.Strip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Fills one panel with the most valuable parts that are still wanted: strip by strip, as {@link
 * Strips} chooses them; what is left over above short parts, behind the last part and beyond the
 * last strip is filled in the same way.
 */
final class Filler {
  private static final Direction[] EITHER = {Direction.RIP, Direction.CROSSCUT};

  private final Strips strips;
  private final double[] worth;
  private final int[] left;
  private double gained;

  /** Columns of one height, each stacked so many times. */
  private record Group(long height, int stacked) {}

  /**
   * @param worth value of one part of each kind
   * @param left how many of each kind are wanted; taken from as parts are placed
   */
  Filler(Panel panel, double[] worth, int[] left, Strips.Tools tools) {
    this.strips = new Strips(panel.options(), worth, left, tools);
    this.worth = worth;
    this.left = left;
  }

  /** The value of all parts placed so far. */
  double gained() {
    return gained;
  }

  /** Fills a rectangle whose first cuts run one of the given ways. */
  Draft fill(long length, long width, Direction... ways) {
    return strips
        .choose(length, width, ways)
        .map(first -> fill(first, length, width, ways))
        .orElse(Draft.FREE);
  }

  private Draft fill(Strip first, long length, long width, Direction[] ways) {
    Direction way = first.direction();
    long extentAlong = way == Direction.RIP ? length : width;
    long rest = way == Direction.RIP ? width : length;
    List<Draft.Slice> slices = new ArrayList<>();
    Optional<Strip> next = Optional.of(first);
    while (next.isPresent() && next.get().direction() == way) {
      slices.add(new Draft.Slice(next.get().size(), place(next.get(), extentAlong)));
      rest -= next.get().size();
      next = rest > 0 ? chooseStrip(way, extentAlong, rest, ways) : Optional.empty();
    }
    if (next.isPresent()) {
      slices.add(new Draft.Slice(rest, fillPiece(way, extentAlong, rest)));
    }
    return new Draft.Split(way, slices);
  }

  private Optional<Strip> chooseStrip(
      Direction way, long sizeAlong, long sizeAcross, Direction[] ways) {
    return way == Direction.RIP
        ? strips.choose(sizeAlong, sizeAcross, ways)
        : strips.choose(sizeAcross, sizeAlong, ways);
  }

  private Draft fillPiece(Direction way, long sizeAlong, long sizeAcross) {
    return way == Direction.RIP
        ? fill(sizeAlong, sizeAcross, EITHER)
        : fill(sizeAcross, sizeAlong, EITHER);
  }

  /**
   * Cuts a strip into its columns; equal stacks stand together, so that what is left above them is
   * one piece. All parts of the strip are taken before anything left over is filled.
   */
  private Draft place(Strip strip, long extentAlong) {
    TreeMap<Group, List<Option>> groups = groups(strip);
    groups.forEach((group, row) -> row.forEach(option -> take(option, group.stacked)));
    List<Draft.Slice> slices = new ArrayList<>();
    groups.forEach((group, row) -> slices.addAll(stack(strip, group, row)));
    long rest = extentAlong - slices.stream().mapToLong(Draft.Slice::size).sum();
    if (rest > 0) {
      slices.add(new Draft.Slice(rest, fillPiece(strip.direction(), rest, strip.size())));
    }
    return new Draft.Split(strip.direction().other(), slices);
  }

  private void take(Option option, int number) {
    left[option.kind()] -= number;
    gained += number * worth[option.kind()];
  }

  /** Columns by height and number, tallest stack first; in a group, equal parts side by side. */
  private TreeMap<Group, List<Option>> groups(Strip strip) {
    TreeMap<Group, List<Option>> groups =
        new TreeMap<>(
            Comparator.comparingLong((Group g) -> g.stacked * g.height)
                .reversed()
                .thenComparingInt(Group::stacked));
    int[] filling = strip.filling();
    for (int i = 0; i < filling.length; i += 2) {
      Option option = strips.option(filling[i]);
      Group group = new Group(option.across(strip.direction()), filling[i + 1]);
      groups.computeIfAbsent(group, g -> new ArrayList<>()).add(option);
    }
    Comparator<Option> longestFirst =
        Comparator.comparingLong((Option o) -> o.along(strip.direction())).reversed();
    groups.values().forEach(row -> row.sort(longestFirst.thenComparingInt(Option::kind)));
    return groups;
  }

  private List<Draft.Slice> stack(Strip strip, Group group, List<Option> row) {
    Direction way = strip.direction();
    List<Draft.Slice> columns =
        row.stream()
            .map(o -> new Draft.Slice(o.along(way), new Draft.Place(o.kind(), o.lay())))
            .toList();
    if (group.height == strip.size()) {
      return columns;
    }
    long length = columns.stream().mapToLong(Draft.Slice::size).sum();
    Draft one =
        columns.size() == 1 ? columns.getFirst().content() : new Draft.Split(way.other(), columns);
    List<Draft.Slice> rows = new ArrayList<>();
    for (int i = 0; i < group.stacked; i++) {
      rows.add(new Draft.Slice(group.height, one));
    }
    long above = strip.size() - group.height * group.stacked;
    if (above > 0) {
      rows.add(new Draft.Slice(above, fillPiece(way, length, above)));
    }
    return List.of(new Draft.Slice(length, new Draft.Split(way, rows)));
  }
}
