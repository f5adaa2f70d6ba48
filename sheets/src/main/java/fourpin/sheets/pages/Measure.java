package fourpin.sheets.pages;

import java.util.List;

/** How much room blocks will take, for pages that fit drawings to what is left. */
public final class Measure {

  private Measure() {}

  /**
   * Millimetres from top to bottom if no page ends between.
   *
   * @param blocks without a table of contents and without new pages
   */
  public static double height(List<Block> blocks, double width) {
    return Strip.height(new Typesetter(width, List.of()).strips(blocks, Tag.root()));
  }
}
