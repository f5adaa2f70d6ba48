package fourpin.shop.web;

import java.util.List;

/**
 * A table on a page.
 *
 * @param id for links
 * @param note under the heading; may be empty
 */
public record Sheet(
    String id, String title, String note, List<String> heads, List<List<Cell>> rows) {
  public Sheet {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }
}
