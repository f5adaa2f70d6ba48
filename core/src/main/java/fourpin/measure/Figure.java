package fourpin.measure;

import java.util.List;

/**
 * A figure that can show its working.
 *
 * @param id what {@code explain} finds it by: small letters, digits, hyphens, with {@code /}
 *     between levels, unique in a plan
 * @param title what it is, for a maker: "sag in the middle, now"
 * @param formula in symbols that {@code inputs} name: "5 w L³ L / (384 E I)"
 */
public record Figure(
    String id, String title, Quantity value, String formula, List<Input> inputs, Source source) {

  /** One symbol of the formula, with its value and where that comes from. */
  public record Input(String symbol, String meaning, Quantity value, Source source) {}

  public Figure {
    inputs = List.copyOf(inputs);
  }
}
