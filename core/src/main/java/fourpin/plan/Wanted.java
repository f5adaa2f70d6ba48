package fourpin.plan;

import fourpin.cutting.Part;
import java.util.List;

/**
 * What is wanted of one material, and what it is cut from.
 *
 * @param material its name
 * @param parts each mark once
 * @param stock each name once
 */
public record Wanted(String material, Kind kind, List<Part> parts, List<Stock> stock) {

  /** Whether all four edges of the stock are trimmed, or its ends. */
  public enum Kind {
    SHEETS,
    BOARDS
  }

  public Wanted {
    parts = List.copyOf(parts);
    stock = List.copyOf(stock);
  }
}
