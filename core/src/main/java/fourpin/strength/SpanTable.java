package fourpin.strength;

import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far shelves of one material span in one case: the longest within all limits, however the load
 * lies.
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
  public record Row(String made, List<Span> spans) {

    public Row {
      spans = List.copyOf(spans);
    }
  }

  /**
   * How far it spans under one load, however that lies.
   *
   * @param longest within all limits, those of the case's supports too
   * @param onOthers how far it would span on supports that bear it, where the case's bear less
   * @param governs how the load lies that allows no more
   */
  public record Span(Figure longest, Optional<Figure> onOthers, Lying governs) {}

  /** How a load lies. */
  public enum Lying {
    EVENLY("spread evenly"),
    IN_A_ROW("in a row along the front edge"),
    AGAINST_THE_BACK("in a row against the back"),
    OVER_THE_EDGE("against the back, standing out over the front edge"),
    ON_ONE_HALF("on one half of its length alone");

    private final String place;

    Lying(String place) {
      this.place = place;
    }

    /** In words, after "load". */
    public String place() {
      return place;
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
            rows.stream()
                .flatMap(r -> r.spans().stream())
                .flatMap(s -> Stream.concat(Stream.of(s.longest()), s.onOthers().stream()))
                .toList())
        .flatMap(List::stream)
        .toList();
  }
}
