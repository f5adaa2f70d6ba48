package fourpin.reference;

import fourpin.measure.Source;

/**
 * A limit of sag that is published or usual.
 *
 * @param spanOver the span divided by the sag allowed
 * @param when the load or time that it holds for
 */
public record SagLimit(String name, double spanOver, String when, Source source) implements Listed {

  static SagLimit of(Row row) {
    return new SagLimit(row.name(), row.number("span_over"), row.text("when"), row.source());
  }
}
