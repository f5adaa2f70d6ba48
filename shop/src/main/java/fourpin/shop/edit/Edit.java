package fourpin.shop.edit;

import java.util.Optional;

/**
 * One change by one person: at a place, from what stood there when they looked, to what they want.
 * It holds for any later text in which the same still stands there, so that changes of several
 * people to one job meet in it unless they are about the same thing.
 *
 * @param before nothing where there was nothing
 */
public record Edit(Route route, Optional<Value> before, Change change) {

  /** A change to what stands in a text now. */
  public static Edit on(JobText text, Route route, Change change) {
    boolean insert = change instanceof Change.Insert;
    return new Edit(route, insert ? Optional.empty() : text.value(route), change);
  }
}
