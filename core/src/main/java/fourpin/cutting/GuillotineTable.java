package fourpin.cutting;

import fourpin.cutting.Inflated.Option;
import java.util.Arrays;
import java.util.List;

/**
 * The most valuable guillotine pattern of a panel, any number of stages, each part as often as one
 * likes: for every rectangle of normal sizes the best of one part, or of the best pair of
 * rectangles that a cut makes.
 *
 * <p>P.C. Gilmore and R.E. Gomory, The theory and computation of knapsack functions, Operations
 * Research 14 (1966) 1045-1074, as corrected by Herz (1972); J.E. Beasley, Algorithms for
 * unconstrained two-dimensional guillotine cutting, Journal of the Operational Research Society 36
 * (1985) 297-306 (from memory).
 */
final class GuillotineTable {
  private static final int NOTHING = -1;

  private final NormalSizes lengths;
  private final NormalSizes widths;
  private final List<Option> options;
  private final long[][] value;
  private final int[][] option;
  private final int[][] cut;

  /**
   * Best cuts are noted as positive indices of lengths, and negative ones of widths.
   *
   * @param options whose sizes are among the lengths and widths
   */
  GuillotineTable(NormalSizes lengths, NormalSizes widths, List<Option> options, long[] worth) {
    this.lengths = lengths;
    this.widths = widths;
    this.options = options;
    value = new long[lengths.count()][widths.count()];
    option = new int[lengths.count()][widths.count()];
    cut = new int[lengths.count()][widths.count()];
    place(worth);
    fill();
  }

  /** Every rectangle that a part fits on, with the part of most worth. */
  private void place(long[] worth) {
    for (int[] row : option) {
      Arrays.fill(row, NOTHING);
    }
    for (int o = 0; o < options.size(); o++) {
      Option next = options.get(o);
      int x = lengths.below(next.dx());
      int y = widths.below(next.dy());
      if (worth[next.kind()] > value[x][y]) {
        value[x][y] = worth[next.kind()];
        option[x][y] = o;
      }
    }
  }

  private void fill() {
    int[][] restsAlong = lengths.rests();
    int[][] restsAcross = widths.rests();
    for (int x = 1; x < lengths.count(); x++) {
      inherit(x, value[x - 1]);
      for (int part = 1; part <= restsAlong[x][part]; part++) {
        cutAlong(x, part, value[part], value[restsAlong[x][part]]);
      }
      for (int y = 1; y < widths.count(); y++) {
        inherit(x, y);
        cutAcross(x, y, restsAcross[y]);
      }
    }
  }

  /** A longer rectangle holds what a shorter one holds. */
  private void inherit(int x, long[] shorter) {
    for (int y = 1; y < shorter.length; y++) {
      if (shorter[y] > value[x][y]) {
        note(x, y, shorter[y], option[x - 1][y], cut[x - 1][y]);
      }
    }
  }

  /** And a wider one what a narrower one holds. */
  private void inherit(int x, int y) {
    if (value[x][y - 1] > value[x][y]) {
      note(x, y, value[x][y - 1], option[x][y - 1], cut[x][y - 1]);
    }
  }

  private void cutAlong(int x, int part, long[] near, long[] far) {
    long[] whole = value[x];
    for (int y = 1; y < whole.length; y++) {
      if (near[y] + far[y] > whole[y]) {
        note(x, y, near[y] + far[y], NOTHING, part);
      }
    }
  }

  private void cutAcross(int x, int y, int[] rests) {
    long[] row = value[x];
    for (int part = 1; part <= rests[part]; part++) {
      long both = row[part] + row[rests[part]];
      if (both > row[y]) {
        note(x, y, both, NOTHING, -part);
      }
    }
  }

  private void note(int x, int y, long newValue, int newOption, int newCut) {
    value[x][y] = newValue;
    option[x][y] = newOption;
    cut[x][y] = newCut;
  }

  long best() {
    return value[lengths.count() - 1][widths.count() - 1];
  }

  /** The pattern of a rectangle of the given sizes. */
  Draft draft(long length, long width) {
    int x = lengths.below(length);
    int y = widths.below(width);
    if (value[x][y] == 0) {
      return Draft.FREE;
    }
    if (option[x][y] != NOTHING) {
      return placed(options.get(option[x][y]), length, width);
    }
    return cut[x][y] > 0
        ? along(lengths.at(cut[x][y]), length, width)
        : across(widths.at(-cut[x][y]), length, width);
  }

  private Draft along(long near, long length, long width) {
    return new Draft.Split(
        Direction.CROSSCUT,
        List.of(
            new Draft.Slice(near, draft(near, width)),
            new Draft.Slice(length - near, draft(length - near, width))));
  }

  private Draft across(long near, long length, long width) {
    return new Draft.Split(
        Direction.RIP,
        List.of(
            new Draft.Slice(near, draft(length, near)),
            new Draft.Slice(width - near, draft(length, width - near))));
  }

  /** A part in a corner of a rectangle. */
  private static Draft placed(Option part, long length, long width) {
    Draft place = new Draft.Place(part.kind(), part.lay());
    if (part.dy() < width) {
      place = new Draft.Split(Direction.RIP, List.of(new Draft.Slice(part.dy(), place)));
    }
    return part.dx() < length
        ? new Draft.Split(Direction.CROSSCUT, List.of(new Draft.Slice(part.dx(), place)))
        : place;
  }
}
