package fourpin.measure;

import java.util.List;

/** What a figure was worked out from. */
public final class Inputs {

  private Inputs() {}

  /** The value of one, in the unit that figures are computed in. */
  public static double input(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(input -> input.symbol().equals(symbol))
        .mapToDouble(input -> input.value().value())
        .findFirst()
        .orElseThrow();
  }

  /** The values of all inputs of a symbol. */
  public static List<Double> inputs(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(i -> i.symbol().equals(symbol))
        .map(i -> i.value().value())
        .toList();
  }
}
