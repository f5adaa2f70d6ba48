package fourpin.cutting;

import fourpin.measure.Length;

/**
 * Identical rectangles to be cut.
 *
 * @param mark the name of the part, different for each part of a problem
 * @param length cut size along the grain of the part, above zero
 * @param width cut size across the grain, above zero
 * @param count how many, at least one
 */
public record Part(String mark, Length length, Length width, int count, Grain grain) {

  public Part {
    Require.named(mark, "mark of a part");
    Require.positive(length, "length of part " + mark);
    Require.positive(width, "width of part " + mark);
    Require.atLeastOne(count, "count of part " + mark);
  }

  /** As many as stated of the same. */
  Part times(int number) {
    return new Part(mark, length, width, number, grain);
  }

  /** The same with another grain. */
  Part with(Grain other) {
    return new Part(mark, length, width, count, other);
  }
}
