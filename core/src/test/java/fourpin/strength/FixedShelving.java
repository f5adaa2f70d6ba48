package fourpin.strength;

import static fourpin.job.SampleJobs.in;

import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Cases of two bays with a fixed shelf in each, and what their joints come to. */
final class FixedShelving {

  private FixedShelving() {}

  static Strength of(Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(in("40")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    draft.bays = List.of(bay, bay);
    change.accept(draft);
    return Shelving.check(SampleJobs.job(draft.order()));
  }

  static void loaded(CaseDraft draft, double newtonEachMm) {
    draft.load = Optional.of(new Load.PerLength(Quantity.of(newtonEachMm, QuantityUnit.LINE_LOAD)));
  }

  static Figure find(Strength strength, String last) {
    return strength.shelves().getFirst().inSides().stream()
        .filter(f -> f.id().endsWith("/" + last))
        .findFirst()
        .orElseThrow();
  }

  static double value(Strength strength, String last) {
    return find(strength, last).value().value();
  }
}
