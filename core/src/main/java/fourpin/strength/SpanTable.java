package fourpin.strength;

import fourpin.measure.Figure;
import java.util.List;
import java.util.stream.Stream;

/**
 * How far shelves of one material span in one case: the longest within the limits of sag, at once
 * and after years.
 *
 * @param caseName whose shelves it is for: their depth, their supports, their limits
 * @param material as the job calls it
 * @param thickness of one layer, as a figure that explains itself
 * @param depth of the shelf
 * @param loads at the heads of the columns, with their working; one for each figure of a row
 */
public record SpanTable(
    String caseName,
    String material,
    Figure thickness,
    Figure depth,
    List<Figure> loads,
    List<Row> rows) {

  /**
   * One way to make the shelf.
   *
   * @param made in words: "plain", "two layers"
   * @param spans one for each load
   */
  public record Row(String made, List<Figure> spans) {

    public Row {
      spans = List.copyOf(spans);
    }
  }

  public SpanTable {
    loads = List.copyOf(loads);
    rows = List.copyOf(rows);
  }

  /** All that can be explained. */
  public List<Figure> figures() {
    return Stream.of(
            List.of(thickness, depth),
            loads,
            rows.stream().flatMap(r -> r.spans().stream()).toList())
        .flatMap(List::stream)
        .toList();
  }
}
