package fourpin.bench;

import fourpin.measure.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What passes take out together. */
final class PassedChannel {

  private PassedChannel() {}

  /**
   * The channel that all passes make, as wide as they reach and as deep as the deepest; empty where
   * the deepest don't lie side by side from one of its walls to the other, which leaves wood in it.
   */
  static Optional<Step.Channel> of(Step.Passes passes) {
    List<Span> all = passes.passes().stream().map(p -> across(passes, p)).toList();
    Optional<Length> depth = passes.passes().stream().map(Step.Pass::depth).reduce(Length::max);
    Optional<Length> near = all.stream().map(Span::from).reduce(Length::min);
    Optional<Length> far = all.stream().map(Span::to).reduce(Length::max);
    if (depth.isEmpty() || !covers(floor(passes, depth.get()), near.get(), far.get())) {
      return Optional.empty();
    }
    return Optional.of(channel(passes, new Span(near.get(), far.get()), depth.get()));
  }

  private static Span across(Step.Passes passes, Step.Pass pass) {
    return new Span(pass.fence(), pass.fence().plus(passes.cut()));
  }

  private static List<Span> floor(Step.Passes passes, Length depth) {
    return passes.passes().stream()
        .filter(p -> p.depth().equals(depth))
        .map(p -> across(passes, p))
        .sorted(Comparator.comparing(Span::from))
        .toList();
  }

  private static boolean covers(List<Span> floor, Length near, Length far) {
    Length reached = near;
    for (Span span : floor) {
      if (span.from().isMoreThan(reached)) {
        return false;
      }
      reached = Length.max(reached, span.to());
    }
    return reached.equals(far);
  }

  private static Step.Channel channel(Step.Passes passes, Span across, Length depth) {
    return new Step.Channel(
        passes.piece(),
        passes.shape(),
        passes.surface(),
        passes.along(),
        across,
        depth,
        passes.purpose());
  }
}
