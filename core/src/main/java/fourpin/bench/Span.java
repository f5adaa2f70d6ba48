package fourpin.bench;

import fourpin.measure.Length;

/**
 * A stretch measured from the index end, the index edge or the face.
 *
 * @param to not less than {@code from}
 */
public record Span(Length from, Length to) {

  public Span {
    if (to.isLessThan(from)) {
      throw new IllegalArgumentException("a span runs forwards, not from " + from + " to " + to);
    }
  }

  public Length size() {
    return to.minus(from);
  }

  /** Whether they share more than an end. */
  public boolean meets(Span other) {
    return from.isLessThan(other.to) && other.from.isLessThan(to);
  }

  Span shifted(Length by) {
    return new Span(from.plus(by), to.plus(by));
  }

  boolean within(Length whole) {
    return !from.isNegative() && !to.isMoreThan(whole);
  }
}
