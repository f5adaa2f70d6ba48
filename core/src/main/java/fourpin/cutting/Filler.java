package fourpin.cutting;

import fourpin.cutting.CutRules.Stages;
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

  /** Stages of a strip, so many or more: columns of equal height may lie in one row of stacks. */
  private static final int ROWS = 4;

  private final Strips strips;
  private final CutRules rules;
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
    this.strips = new Strips(panel, worth, left, tools);
    this.rules = panel.rules();
    this.worth = worth;
    this.left = left;
  }

  /** The value of all parts placed so far. */
  double gained() {
    return gained;
  }

  /** Fills the panel, or what is cut off it first, with first cuts of one of the given ways. */
  Draft fill(long length, long width, Direction... ways) {
    return fill(length, width, rules.atStart(), ways);
  }

  private Draft fill(long length, long width, Stages stages, Direction[] ways) {
    return strips
        .choose(length, width, stages, ways)
        .map(first -> fill(first, length, width, stages, ways))
        .orElse(Draft.FREE);
  }

  private Draft fill(Strip first, long length, long width, Stages stages, Direction[] ways) {
    Direction way = first.direction();
    Stages after = stages.after(way);
    long extentAlong = way == Direction.RIP ? length : width;
    long rest = way == Direction.RIP ? width : length;
    List<Draft.Slice> slices = new ArrayList<>();
    Optional<Strip> next = Optional.of(first);
    while (next.isPresent() && next.get().direction() == way) {
      slices.add(new Draft.Slice(next.get().size(), place(next.get(), extentAlong)));
      rest -= next.get().size();
      next = rest > 0 ? chooseStrip(way, extentAlong, rest, after, ways) : Optional.empty();
    }
    if (next.isPresent()) {
      slices.add(new Draft.Slice(rest, fillPiece(way, extentAlong, rest, after)));
    }
    return new Draft.Split(way, slices);
  }

  private Optional<Strip> chooseStrip(
      Direction way, long sizeAlong, long sizeAcross, Stages stages, Direction[] ways) {
    return way == Direction.RIP
        ? strips.choose(sizeAlong, sizeAcross, stages, ways)
        : strips.choose(sizeAcross, sizeAlong, stages, ways);
  }

  private Draft fillPiece(Direction way, long sizeAlong, long sizeAcross, Stages stages) {
    return way == Direction.RIP
        ? fill(sizeAlong, sizeAcross, stages, EITHER)
        : fill(sizeAcross, sizeAlong, stages, EITHER);
  }

  /** Of the pieces that a strip is cut into. */
  private static Stages columns(Strip strip) {
    int inner = strip.stages() - 1;
    return strip.direction() == Direction.RIP
        ? new Stages(inner - 1, inner)
        : new Stages(inner, inner - 1);
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
      Draft behind = fillPiece(strip.direction(), rest, strip.size(), columns(strip));
      slices.add(new Draft.Slice(rest, behind));
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
    long total = columns.stream().mapToLong(Draft.Slice::size).sum();
    return strip.stages() >= ROWS && rules.reach(way, total)
        ? List.of(stacked(strip, group, columns))
        : columns.stream().map(column -> stacked(strip, group, List.of(column))).toList();
  }

  private Draft.Slice stacked(Strip strip, Group group, List<Draft.Slice> columns) {
    Direction way = strip.direction();
    long length = columns.stream().mapToLong(Draft.Slice::size).sum();
    Draft one =
        columns.size() == 1 ? columns.getFirst().content() : new Draft.Split(way.other(), columns);
    List<Draft.Slice> rows = new ArrayList<>();
    for (int i = 0; i < group.stacked; i++) {
      rows.add(new Draft.Slice(group.height, one));
    }
    long above = strip.size() - group.height * group.stacked;
    if (above > 0) {
      rows.add(new Draft.Slice(above, fillPiece(way, length, above, columns(strip).after(way))));
    }
    return new Draft.Slice(length, new Draft.Split(way, rows));
  }
}
