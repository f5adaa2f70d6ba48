package fourpin.plan;

import fourpin.bench.Step;
import fourpin.bench.Step.Against;
import fourpin.bench.Step.Between;
import fourpin.bench.Step.ClampGuide;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A panel is bored without a spacer that its guide belongs on, or the first time with another that
 * lies in the same way elsewhere.
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
   * @param purposes of the rows that are bored so
   */
  record Done(List<Step> steps, Between right, Optional<Between> instead, List<String> purposes) {}

  private record Place(int at, ClampGuide clamp, Seat seat, Between right) {}

  /** Of the kinds of spacers of the panel the one without which most holes come out wrong. */
  Optional<Done> forgotten() {
    return kinds().stream().max(Comparator.comparing(this::spoilt));
  }

  /** How many holes of the panel come out wrong at most without a spacer. */
  long mostSpoilt() {
    return forgotten().map(this::spoilt).orElse(0L);
  }

  /** Counted from below, as pins are put in: rows that are off by their pitch are wrong as well. */
  private long spoilt(Done done) {
    SpoiltRows rows = SpoiltRows.of(made(steps), made(done.steps()), bored());
    return rows.wanted().stream().filter(w -> !rows.counted(w).equals(Optional.of(w))).count();
  }

  private WorkedPiece made(List<Step> all) {
    return Objects.requireNonNull(VirtualBench.run(all).pieces().get(piece));
  }

  private Set<String> bored() {
    return steps.stream()
        .filter(s -> s instanceof Step.BoreThrough b && b.piece().equals(piece))
        .map(s -> ((Step.BoreThrough) s).purpose())
        .collect(Collectors.toSet());
  }

  /** Each kind, left out wherever the first of its kind belongs. */
  private List<Done> kinds() {
    return Stream.of(Seat.values())
        .map(seat -> places().filter(p -> p.seat() == seat).toList())
        .filter(places -> !places.isEmpty())
        .map(SpacerBlunder::ofOne)
        .map(places -> done(places, Optional.empty()))
        .toList();
  }

  private static List<Place> ofOne(List<Place> places) {
    Between first = places.getFirst().right();
    return places.stream().filter(p -> p.right().equals(first)).toList();
  }

  /** Of several others the one that is nearest in size. */
  Optional<Done> swapped() {
    return places()
        .findFirst()
        .flatMap(
            p ->
                clamps()
                    .filter(c -> c.guide().equals(p.clamp().guide()))
                    .flatMap(c -> between(c, p.seat()).stream())
                    .filter(b -> !b.size().equals(p.right().size()))
                    .min(Comparator.comparing(b -> b.size().minus(p.right().size()).abs()))
                    .map(other -> done(List.of(p), Optional.of(other))));
  }

  private Stream<ClampGuide> clamps() {
    return steps.stream().filter(s -> s instanceof ClampGuide).map(s -> (ClampGuide) s);
  }

  private Stream<Place> places() {
    return IntStream.range(0, steps.size()).boxed().flatMap(this::places);
  }

  private Stream<Place> places(int at) {
    return steps.get(at) instanceof ClampGuide clamp && clamp.piece().equals(piece)
        ? Stream.of(Seat.values())
            .flatMap(s -> between(clamp, s).map(b -> new Place(at, clamp, s, b)).stream())
        : Stream.empty();
  }

  private static Optional<Between> between(ClampGuide clamp, Seat seat) {
    return switch (seat) {
      case EDGE -> clamp.edges().spacer();
      case END -> clamp.ends().spacer();
      case BELOW -> clamp.on().flatMap(Step.Rest::spacer);
    };
  }

  private Done done(List<Place> places, Optional<Between> instead) {
    List<Step> all = new ArrayList<>(steps);
    Between right = places.getFirst().right();
    Length further = instead.map(Between::size).orElse(Length.ZERO).minus(right.size());
    places.forEach(p -> all.set(p.at(), clamp(p, instead, further)));
    List<String> purposes = places.stream().map(this::purpose).distinct().toList();
    return new Done(all, right, instead, purposes);
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
