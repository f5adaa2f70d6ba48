package fourpin.strength;

import fourpin.job.CaseOrder;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What of some cases can be opened, in words that name only what there is. */
record Opening(List<CaseOrder> orders) {

  Opening {
    orders = List.copyOf(orders);
  }

  boolean hasDoors() {
    return orders.stream().anyMatch(order -> order.doors().isPresent());
  }

  boolean hasDrawers() {
    return orders.stream().anyMatch(order -> order.drawers().isPresent());
  }

  /** As what has been done; empty where nothing opens. */
  String done() {
    return both("doors open", "full drawers out");
  }

  /** As what makes it fall. */
  String when() {
    return both("all doors are open", "all drawers are out, full");
  }

  private String both(String doors, String drawers) {
    return Stream.of(
            Optional.of(doors).filter(_ -> hasDoors()),
            Optional.of(drawers).filter(_ -> hasDrawers()))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(" and "));
  }
}
