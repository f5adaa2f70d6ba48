package fourpin.reference;

import fourpin.measure.Source;

/** One of the curves over temperature, in °C, that wood's equilibrium moisture is made of. */
public record TemperatureCurve(
    String name, double constant, double linear, double square, Source source) implements Listed {

  static TemperatureCurve of(Row row) {
    return new TemperatureCurve(
        row.name(),
        row.number("constant"),
        row.number("linear"),
        row.number("square"),
        row.source());
  }

  public double at(double celsius) {
    return constant + celsius * (linear + celsius * square);
  }
}
