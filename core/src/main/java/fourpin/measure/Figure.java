package fourpin.measure;

import java.util.List;
import java.util.Locale;

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

  /** The id of a figure below others: names in any writing become {@code case/part/what}. */
  public static String id(String... levels) {
    return String.join("/", levels).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9/]+", "-");
  }

  /** The same by another id. */
  public Figure called(String other) {
    return new Figure(other, title, value, formula, inputs, source);
  }

  public Figure {
    inputs = List.copyOf(inputs);
  }
}
