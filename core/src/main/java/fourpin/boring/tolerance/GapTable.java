package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Position;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The gap at every position of a model: worked out on four points, simulated on six.
 *
 * @param limit gap that is felt, mm
 * @param places in the order of the model's positions; at least one
 */
record GapTable(double limit, List<PositionGap> places) {

  GapTable {
    places = List.copyOf(places);
  }

  static GapTable of(ErrorModel model, double limit) {
    Judge judge = new Judge(model, limit, new HashMap<>(), new HashMap<>());
    return new GapTable(limit, model.positions().stream().map(judge::place).toList());
  }

  /** Odds and usual gap of one distribution. */
  private record Known(double odds, double usual) {}

  /** Judges places one by one; many have the same causes, and are judged once. */
  private record Judge(
      ErrorModel model,
      double limit,
      Map<SixPoints, SimulatedGap> simulated,
      Map<Distribution, Known> known) {

    PositionGap place(Position position) {
      Distribution gap = gap(position);
      Known values =
          known.computeIfAbsent(
              gap, g -> new Known(g.oddsBeyond(limit), g.within(PositionGap.USUAL_SHARE)));
      return new PositionGap(
          position.bay(),
          position.level(),
          gap,
          spread(position, Miss.SLOPE),
          proud(position),
          values.odds(),
          values.usual());
    }

    private Distribution gap(Position position) {
      return position.isOnSix()
          ? simulated.computeIfAbsent(SixPoints.of(model, position), SixPoints::simulated)
          : spread(position, Miss.GAP);
    }

    private Optional<Spread> proud(Position position) {
      return position.isOnSix()
          ? Stream.of(Miss.LEFT_PROUD, Miss.RIGHT_PROUD)
              .map(miss -> spread(position, miss))
              .max(Comparator.comparingDouble(Spread::deviation))
          : Optional.empty();
    }

    private Spread spread(Position position, Miss miss) {
      return NetError.of(model, position, miss).spread();
    }
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

  /** The place whose middle pins miss their line most; none where there are no middle pins. */
  Optional<PositionGap> proudest() {
    return places.stream()
        .filter(p -> p.proud().isPresent())
        .max(Comparator.comparingDouble(p -> p.proud().orElseThrow().deviation()));
  }

  /** Mean number of places in a case that rock so that it is felt. */
  double expected() {
    return places.stream().mapToDouble(PositionGap::odds).sum();
  }

  Change.Outcome outcome() {
    return new Change.Outcome(worst().odds(), worst().usual(), slope());
  }
}
