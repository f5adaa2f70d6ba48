package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Position;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The gap at every position of a model, without simulation.
 *
 * @param limit gap that is felt, mm
 * @param places in the order of the model's positions; at least one
 */
record GapTable(double limit, List<PositionGap> places) {

  GapTable {
    places = List.copyOf(places);
  }

  /** Odds and usual gap of one spread: many places have the same. */
  private record Known(double odds, double usual) {}

  static GapTable of(ErrorModel model, double limit) {
    Map<Spread, Known> known = new HashMap<>();
    return new GapTable(
        limit, model.positions().stream().map(p -> place(model, p, limit, known)).toList());
  }

  private static PositionGap place(
      ErrorModel model, Position position, double limit, Map<Spread, Known> known) {
    Spread gap = NetError.of(model, position, Miss.GAP).spread();
    Known values =
        known.computeIfAbsent(
            gap, g -> new Known(g.oddsBeyond(limit), g.within(PositionGap.USUAL_SHARE)));
    return new PositionGap(
        position.bay(),
        position.level(),
        gap,
        NetError.of(model, position, Miss.SLOPE).spread(),
        values.odds(),
        values.usual());
  }

  /** The place with the widest gap; the first of several. */
  PositionGap worst() {
    return places.stream().reduce((a, b) -> b.usual() > a.usual() ? b : a).orElseThrow();
  }

  /** The steepest of the usual slopes, mm. */
  double slope() {
    return steepest().slope().within(PositionGap.USUAL_SHARE);
  }

  PositionGap steepest() {
    return places.stream()
        .max(Comparator.comparingDouble(p -> p.slope().deviation()))
        .orElseThrow();
  }

  /** Mean number of places in a case that rock so that it is felt. */
  double expected() {
    return places.stream().mapToDouble(PositionGap::odds).sum();
  }

  Change.Outcome outcome() {
    return new Change.Outcome(worst().odds(), worst().usual(), slope());
  }
}
