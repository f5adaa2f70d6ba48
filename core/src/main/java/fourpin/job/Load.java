package fourpin.job;

import fourpin.measure.Quantity;

/** What stands on the shelves. */
public sealed interface Load {

  /**
   * A kind of thing from the reference tables, which give its weight by length of shelf and its
   * size.
   *
   * @param thing its name there: "books, average"
   */
  record Holds(String thing) implements Load {}

  /** So much weight along the shelf. @param load a line load */
  record PerLength(Quantity load) implements Load {}

  /** So much weight on the surface. @param load an area load */
  record PerArea(Quantity load) implements Load {}
}
