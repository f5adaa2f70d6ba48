package fourpin.boring;

import fourpin.casework.Box;
import fourpin.measure.Length;

/** The outline of a cut, seen square to the face of an upright: y to the right, z up. */
sealed interface Outline {

  /** What surrounds it: front, back, bottom, top. */
  Length front();

  Length back();

  Length bottom();

  Length top();

  /** A round hole. */
  record Disc(Length y, Length z, Length diameter) implements Outline {
    @Override
    public Length front() {
      return y.minus(diameter.over(2));
    }

    @Override
    public Length back() {
      return front().plus(diameter);
    }

    @Override
    public Length bottom() {
      return z.minus(diameter.over(2));
    }

    @Override
    public Length top() {
      return bottom().plus(diameter);
    }
  }

  /** Anything with straight edges. */
  record Rectangle(Length front, Length back, Length bottom, Length top) implements Outline {}

  /**
   * The wood between two outlines: negative where they overlap, by the way that one must move to
   * clear the other. Slanting distances are computed in doubles and rounded to the picometre; those
   * along an axis are exact.
   */
  static Length gap(Outline a, Outline b) {
    if (a instanceof Disc one && b instanceof Disc other) {
      Length between = slanting(one.y().minus(other.y()), one.z().minus(other.z()));
      return between.minus(one.diameter().plus(other.diameter()).over(2));
    }
    if (a instanceof Disc disc) {
      return toCentre(disc, b).minus(disc.diameter().over(2));
    }
    return b instanceof Disc ? gap(b, a) : apart(along(a, b), up(a, b));
  }

  private static Length toCentre(Disc disc, Outline other) {
    Length along = Length.max(other.front().minus(disc.y()), disc.y().minus(other.back()));
    Length up = Length.max(other.bottom().minus(disc.z()), disc.z().minus(other.top()));
    return apart(along, up);
  }

  private static Length along(Outline a, Outline b) {
    return Length.max(a.front().minus(b.back()), b.front().minus(a.back()));
  }

  private static Length up(Outline a, Outline b) {
    return Length.max(a.bottom().minus(b.top()), b.bottom().minus(a.top()));
  }

  private static Length apart(Length along, Length up) {
    return along.isPositive() && up.isPositive() ? slanting(along, up) : Length.max(along, up);
  }

  private static Length slanting(Length along, Length up) {
    double picometres = Math.hypot((double) along.picometres(), (double) up.picometres());
    return new Length(Math.round(picometres), along.unit());
  }

  /** As a block of an upright. */
  default Box block(Length left, Length right) {
    return Box.of(left, right, front(), back(), bottom(), top());
  }
}
