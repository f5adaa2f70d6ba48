package fourpin.measure;

/** A number with the place that it comes from. */
public record Sourced(Quantity value, Source source) {

  public static Sourced stated(Quantity value) {
    return new Sourced(value, Source.STATED);
  }

  /** The bare number, in the metric unit that {@link Quantity} states. */
  public double number() {
    return value.value();
  }

  /** As an input of a formula. */
  public Figure.Input input(String symbol, String meaning) {
    return new Figure.Input(symbol, meaning, value, source);
  }
}
