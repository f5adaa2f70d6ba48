package fourpin.bench;

import fourpin.measure.Length;
import java.util.List;

/** Where the holes of a row lie along it. */
public sealed interface Spacing {

  /** How many holes there are. */
  default int count() {
    return switch (this) {
      case Each each -> each.distances().size();
      case FromStick stick -> stick.numbers().size();
      case OnLines lines -> lines.numbers().size();
    };
  }

  /** At distances from the index end (rows along the piece) or index edge (rows across it). */
  record Each(List<Length> distances) implements Spacing {
    public Each {
      distances = List.copyOf(distances);
    }
  }

  /**
   * At marks of a story stick, whose zero is the datum.
   *
   * @param numbers of the marks, from 1
   * @param datum how far the piece's index end lies beyond the datum: taken off every mark
   */
  record FromStick(String stick, List<Integer> numbers, Length datum) implements Spacing {
    public FromStick {
      numbers = List.copyOf(numbers);
    }
  }

  /**
   * On lines that were squared across the face of the piece.
   *
   * @param numbers of the lines, which are those of the stick's marks
   */
  record OnLines(List<Integer> numbers) implements Spacing {
    public OnLines {
      numbers = List.copyOf(numbers);
    }
  }
}
