package fourpin.strength.plate;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The order in which the unknowns of a plate are solved, without those that are held. The work
 * grows with the square of how far apart the numbers lie of what goes together, so that a half is
 * numbered along its shorter side, and two strips that pull at each other side by side. Along a
 * row, what lies close to a support comes last: being stiffest, it would spread its rounding.
 */
final class Numbering {

  static final int HELD = -1;

  private final int[] numbers;
  private final int count;

  /** The least number that each goes together with. */
  private final int[] first;

  /**
   * @param crossings in their order
   * @param together unknowns that go together, set by set
   */
  private Numbering(IntStream crossings, boolean[] held, List<int[]> together) {
    this.numbers = new int[held.length];
    Arrays.fill(numbers, HELD);
    this.count = number(crossings.toArray(), held);
    this.first = IntStream.range(0, count).toArray();
    together.forEach(this::join);
  }

  /** By columns, by rows, or by rows in pairs from the edges inwards: whatever takes least work. */
  static Numbering least(Mesh mesh, boolean[] held, List<int[]> together) {
    int columns = mesh.x().count();
    int rows = mesh.y().count();
    IntStream byColumns =
        IntStream.range(0, columns * rows).map(i -> mesh.crossing(i / rows, i % rows));
    IntStream byRows =
        IntStream.range(0, columns * rows)
            .map(i -> mesh.crossing(columns - 1 - i % columns, rows - 1 - i / columns));
    return Stream.of(byColumns, byRows, byPairs(mesh))
        .map(crossings -> new Numbering(crossings, held, together))
        .min(Comparator.comparingLong(Numbering::work))
        .orElseThrow();
  }

  private static IntStream byPairs(Mesh mesh) {
    int rows = mesh.y().count();
    return IntStream.range(0, (rows + 1) / 2)
        .flatMap(
            front ->
                IntStream.range(0, mesh.x().count())
                    .flatMap(
                        column ->
                            IntStream.of(front, rows - 1 - front)
                                .distinct()
                                .map(row -> mesh.crossing(column, row))));
  }

  private int number(int[] crossings, boolean[] held) {
    int next = 0;
    for (int crossing : crossings) {
      for (int unknown = crossing; unknown < crossing + Mesh.UNKNOWNS; unknown++) {
        if (!held[unknown]) {
          numbers[unknown] = next++;
        }
      }
    }
    return next;
  }

  private void join(int[] unknowns) {
    int least = count;
    for (int unknown : unknowns) {
      least = numbers[unknown] == HELD ? least : Math.min(least, numbers[unknown]);
    }
    for (int unknown : unknowns) {
      if (numbers[unknown] != HELD) {
        first[numbers[unknown]] = Math.min(first[numbers[unknown]], least);
      }
    }
  }

  private long work() {
    long work = 0;
    for (int number = 0; number < count; number++) {
      long far = (long) number - first[number] + 1;
      work += far * far;
    }
    return work;
  }

  int count() {
    return count;
  }

  /** The number of an unknown, or {@link #HELD}. */
  int of(int unknown) {
    return numbers[unknown];
  }

  int first(int number) {
    return first[number];
  }

  /** Of values of all unknowns, those that are numbered. */
  double[] numbered(double[] values) {
    double[] numbered = new double[count];
    for (int unknown = 0; unknown < numbers.length; unknown++) {
      if (numbers[unknown] != HELD) {
        numbered[numbers[unknown]] = values[unknown];
      }
    }
    return numbered;
  }

  /** Values of all unknowns, nothing for those that are held. */
  double[] spread(double[] numbered) {
    double[] values = new double[numbers.length];
    for (int unknown = 0; unknown < numbers.length; unknown++) {
      values[unknown] = numbers[unknown] == HELD ? 0 : numbered[numbers[unknown]];
    }
    return values;
  }
}
