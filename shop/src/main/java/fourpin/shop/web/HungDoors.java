package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.job.Doors;
import fourpin.job.Doors.Hang;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.fields.Target;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * How the doors of a case hang, where that is stated for each bay: it has to be stated for each of
 * its bays when there are others.
 *
 * @param hangs none where it is stated once for all, or there are no doors
 */
record HungDoors(CaseOrder order, List<Hang> hangs) {

  HungDoors {
    hangs = List.copyOf(hangs);
  }

  static HungDoors of(CaseOrder order) {
    List<Hang> hangs = order.doors().map(Doors::hangs).orElse(List.of());
    return new HungDoors(order, hangs.size() > 1 ? hangs : List.of());
  }

  /**
   * The outer doors of a divided bay hang on its own uprights, as those of a pair; those between
   * hang as its door did.
   *
   * @param bays the change of the bays themselves
   */
  List<Target> divided(int bay, int into, Target bays) {
    return hangs.isEmpty() ? List.of(bays) : with(bays, replaced(bay, 1, shares(bay, into)));
  }

  private List<Hang> shares(int bay, int into) {
    List<Hang> shares = new ArrayList<>(Collections.nCopies(into, hangs.get(bay - 1)));
    shares.set(0, Hang.LEFT);
    shares.set(into - 1, Hang.RIGHT);
    return shares;
  }

  /** The door of two bays made one hangs as the left one did. */
  List<Target> joined(int bay, Target bays) {
    return hangs.isEmpty()
        ? List.of(bays)
        : with(bays, replaced(bay, 2, List.of(hangs.get(bay - 1))));
  }

  private List<Hang> replaced(int bay, int so, List<Hang> by) {
    return Stream.of(hangs.subList(0, bay - 1), by, hangs.subList(bay - 1 + so, hangs.size()))
        .flatMap(List::stream)
        .toList();
  }

  private List<Target> with(Target bays, List<Hang> now) {
    List<Value> values =
        now.stream().map(h -> Value.of(h.name().toLowerCase(Locale.ROOT))).toList();
    return List.of(
        bays, Target.put(Route.of("cases", order.name(), "doors", "hangs"), Value.list(values)));
  }
}
