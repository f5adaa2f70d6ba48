package fourpin.boring.way;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.BaySpace.Opening;
import fourpin.job.Tool.Router;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * What a router's base strikes while the bit is over a hole: in a standing case the back and the
 * panels below and above, on the bench the guide's block.
 */
record RouterBase(Group group, Router router) {

  private static final String REMEDY = "bore before assembly, or take a router with a smaller base";

  private Length half() {
    return router.base().over(2);
  }

  /** Why a standing case can't be bored; empty before assembly. */
  List<Reason> against() {
    if (!group.isBoredAfterAssembly()) {
      return List.of();
    }
    List<Reason> reasons = new ArrayList<>();
    behind().filter(this::strikes).ifPresent(l -> reasons.add(reason(l, "behind a row the back")));
    below().filter(this::strikes).ifPresent(l -> reasons.add(reason(l, "below a hole a panel")));
    above().filter(this::strikes).ifPresent(l -> reasons.add(reason(l, "above a hole a panel")));
    return reasons;
  }

  private boolean strikes(Length room) {
    return room.isLessThan(half());
  }

  private Reason reason(Length room, String what) {
    return new Reason(
        "the base of "
            + router.name()
            + " reaches "
            + group.text(half())
            + " beyond the bit, and "
            + what
            + " stands "
            + group.text(room)
            + " away",
        REMEDY);
  }

  private Optional<Length> behind() {
    return group.columns().stream()
        .map(c -> c.bay().clear().high().y().minus(c.row().y()))
        .min(Length::compareTo);
  }

  private Optional<Length> below() {
    return least((opening, height) -> height.minus(opening.clear().low().z()));
  }

  private Optional<Length> above() {
    return least((opening, height) -> opening.clear().high().z().minus(height));
  }

  /** The least of what lies between any hole and a panel of the opening that it is in. */
  private Optional<Length> least(BiFunction<Opening, Length, Length> room) {
    return group.columns().stream()
        .flatMap(c -> c.bay().openings().stream().flatMap(o -> rooms(c, o, room)))
        .min(Length::compareTo);
  }

  private static Stream<Length> rooms(
      Column column, Opening opening, BiFunction<Opening, Length, Length> room) {
    return column.grid().levels().stream()
        .map(Level::height)
        .filter(h -> h.isAtLeast(opening.clear().low().z()))
        .filter(h -> opening.clear().high().z().isAtLeast(h))
        .map(h -> room.apply(opening, h));
  }

  /**
   * @param guide as it is designed for the bench
   * @return empty where the first hole lies far enough from the block, or there is no guide
   */
  List<Reason> atTheBlock(Designed guide) {
    return guide instanceof Designed.Made made && !made.guide().block().isZero()
        ? atTheBlock(made.guide().holes().getFirst().along())
        : List.of();
  }

  private List<Reason> atTheBlock(Length first) {
    return strikes(first)
        ? List.of(
            new Reason(
                "at the first hole the router's base reaches "
                    + group.text(half().minus(first))
                    + " over the guide's block",
                "let the block stand proud only on the side of the panel"))
        : List.of();
  }
}
