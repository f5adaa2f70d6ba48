package fourpin.boring.way;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.BaySpace.Opening;
import fourpin.job.Setting;
import fourpin.job.Tool.Router;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * What a router's base strikes while the bit is over a hole of a standing case: the back and the
 * panels below and above.
 *
 * @param guide thickness of the guide that the base stands on
 */
record RouterBase(Group group, Router router, Length guide) {

  /** The base beyond what it stands on. */
  record Over(Telling tell, String printed, Length by) {
    Reason reason(String start, String end, String remedy) {
      return tell.reason(start + printed + end, remedy, "b / 2 - a", by);
    }
  }

  /**
   * How far the base stands over an end or an edge.
   *
   * @param what it is, {@code there} from the bit to it
   * @return empty where it does not reach it
   */
  Optional<Over> over(String what, String meaning, Length there) {
    Length by = half().minus(there);
    Telling tell = new Telling(group, "base-over-" + what, "router's base over the " + what);
    tell.stated("b", "width of the router's base", router.base());
    tell.derived("a", meaning, there);
    return Optional.of(new Over(tell, group.text(by), by)).filter(o -> by.isPositive());
  }

  private Length half() {
    return router.base().over(2);
  }

  /** Why a standing case can't be bored; empty before assembly. */
  List<Reason> against() {
    if (!group.isBoredAfterAssembly()) {
      return List.of();
    }
    List<Reason> reasons = new ArrayList<>();
    add(reasons, behind(), "behind a row the back", Setting.BACK_ROW);
    add(reasons, front(), "before a row a stile of the face frame", Setting.FRONT_ROW);
    add(reasons, below(), "below a hole a panel", Setting.CLEAR_BELOW);
    add(reasons, above(), "above a hole a panel", Setting.CLEAR_ABOVE);
    return reasons;
  }

  private void add(List<Reason> reasons, Optional<Length> room, String what, Setting setting) {
    room.filter(this::strikes).ifPresent(l -> reasons.add(reason(l, what, setting)));
  }

  private boolean strikes(Length room) {
    return room.isLessThan(half());
  }

  /** The setting moves the rows or their ends away from what is struck. */
  private Reason reason(Length room, String what, Setting setting) {
    Length wanted = group.roundedUp(group.settings().length(setting).plus(half().minus(room)));
    Telling tell =
        new Telling(group, "base-" + setting.key(), "least " + setting.key() + " with it");
    tell.stated("b", "width of the router's base", router.base());
    tell.set("n", setting);
    return tell.reason(
        "the base of "
            + router.name()
            + " reaches "
            + tell.derived("h", "half of it, beyond the bit", half())
            + " beyond the bit, and "
            + what
            + " stands "
            + tell.derived("a", "what stands in its way, from the bit", room)
            + " away",
        "bore before assembly, take a router whose base is no wider than "
            + tell.derived("w", "widest base that goes there, 2 a", room.times(2))
            + ", or set "
            + setting.key()
            + " to "
            + group.text(wanted)
            + " or more"
            + (setting == Setting.BACK_ROW ? ", or screw the back on after boring" : ""),
        "n + h - a, rounded up to what can be written",
        wanted);
  }

  /** A stile that is no higher than the guide passes under the base. */
  private Optional<Length> front() {
    return new Stiles(group).inFrontOf(guide);
  }

  /** A back that is fastened later is in nobody's way. */
  private Optional<Length> behind() {
    return group.columns().stream()
        .filter(_ -> group.hasBackOn())
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
}
