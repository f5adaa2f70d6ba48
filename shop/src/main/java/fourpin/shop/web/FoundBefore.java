package fourpin.shop.web;

import fourpin.cutting.SheetProblem;
import fourpin.cutting.WrittenLayout;
import fourpin.plan.FoundLayouts;
import fourpin.plan.Plan;
import fourpin.shop.store.KeptLayout;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What longer searches have found for a job, whatever its parts were then. */
record FoundBefore(List<KeptLayout> kept) implements FoundLayouts {

  FoundBefore {
    kept = List.copyOf(kept);
  }

  /** Differs wherever plans may differ. */
  String key() {
    return kept.stream()
        .map(k -> k.problem() + "-" + k.change())
        .collect(Collectors.joining(",", "[", "]"));
  }

  @Override
  public Optional<Found> of(SheetProblem problem) {
    if (kept.isEmpty()) {
      return Optional.empty();
    }
    String digest = WrittenLayout.digest(problem);
    return kept.stream()
        .filter(k -> k.problem().equals(digest))
        .findFirst()
        .flatMap(
            k ->
                WrittenLayout.read(problem, k.body())
                    .map(
                        l ->
                            new Found(
                                l,
                                Optional.of("found by a longer search for change " + k.change()))));
  }

  /** Materials of a plan for which better layouts were found, but for other parts or stock. */
  List<String> outgrown(Plan plan) {
    return plan.materials().stream()
        .filter(m -> m.layouts().stream().allMatch(l -> l.origin().isEmpty()))
        .map(m -> m.material().name())
        .filter(name -> kept.stream().anyMatch(k -> k.material().equals(name)))
        .toList();
  }
}
