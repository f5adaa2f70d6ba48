package fourpin.plan;

import fourpin.bench.Step;
import fourpin.bench.Step.Against;
import fourpin.bench.Step.Between;
import fourpin.bench.Step.ClampGuide;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The first time that a guide belongs on a panel with a spacer, it is laid there with none, or with
 * another that lies in the same way elsewhere.
 *
 * @param piece mark of the panel
 * @param steps as they should be
 */
record SpacerBlunder(String piece, List<Step> steps) {

  /** What a spacer keeps a guide off. */
  private enum Seat {
    EDGE,
    END,
    /** The panel below that the guide stands on. */
    BELOW
  }

  /**
   * What is done.
   *
   * @param right that belongs there, {@code instead} of which another lies there or none
   * @param purpose of the row that is bored so
   */
  record Done(List<Step> steps, Between right, Optional<Between> instead, String purpose) {}

  private record Place(int at, ClampGuide clamp, Seat seat, Between right) {}

  Optional<Done> forgotten() {
    return place().map(p -> done(p, Optional.empty()));
  }

  /** Of several others the one that is nearest in size. */
  Optional<Done> swapped() {
    return place()
        .flatMap(
            p ->
                clamps()
                    .filter(c -> c.guide().equals(p.clamp().guide()))
                    .flatMap(c -> between(c, p.seat()).stream())
                    .filter(b -> !b.size().equals(p.right().size()))
                    .min(Comparator.comparing(b -> b.size().minus(p.right().size()).abs()))
                    .map(other -> done(p, Optional.of(other))));
  }

  private Stream<ClampGuide> clamps() {
    return steps.stream().filter(s -> s instanceof ClampGuide).map(s -> (ClampGuide) s);
  }

  private Optional<Place> place() {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i) instanceof ClampGuide clamp && clamp.piece().equals(piece)) {
        for (Seat seat : Seat.values()) {
          Optional<Between> right = between(clamp, seat);
          if (right.isPresent()) {
            return Optional.of(new Place(i, clamp, seat, right.get()));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Between> between(ClampGuide clamp, Seat seat) {
    return switch (seat) {
      case EDGE -> clamp.edges().spacer();
      case END -> clamp.ends().spacer();
      case BELOW -> clamp.on().flatMap(Step.Rest::spacer);
    };
  }

  private Done done(Place place, Optional<Between> instead) {
    List<Step> all = new ArrayList<>(steps);
    Length size = instead.map(Between::size).orElse(Length.ZERO);
    all.set(place.at(), clamp(place, instead, size.minus(place.right().size())));
    return new Done(all, place.right(), instead, purpose(place));
  }

  private String purpose(Place place) {
    return steps.stream()
        .skip(place.at())
        .filter(s -> s instanceof Step.BoreThrough)
        .map(s -> ((Step.BoreThrough) s).purpose())
        .findFirst()
        .orElseThrow();
  }

  /**
   * @param further off than it should be
   */
  private static ClampGuide clamp(Place place, Optional<Between> instead, Length further) {
    ClampGuide c = place.clamp();
    return switch (place.seat()) {
      case EDGE -> with(c, c.ends(), moved(c.edges(), further, instead), c.on());
      case END -> with(c, moved(c.ends(), further.negated(), instead), c.edges(), c.on());
      case BELOW ->
          with(
              c,
              moved(c.ends(), further, c.ends().spacer()),
              c.edges(),
              c.on().map(on -> new Step.Rest(on.piece(), instead)));
    };
  }

  private static Against moved(Against against, Length by, Optional<Between> spacer) {
    return new Against(against.ofGuide(), against.ofPiece(), against.gap().plus(by), spacer);
  }

  private static ClampGuide with(
      ClampGuide c, Against ends, Against edges, Optional<Step.Rest> on) {
    return new ClampGuide(c.guide(), c.piece(), c.surface(), ends, edges, c.showing(), on);
  }
}
