package fourpin.strength;

import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.strength.Section.Layer;
import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a shelf is held against, as the working of a figure. */
final class Limits {

  private final Candidate shelf;

  Limits(Candidate shelf) {
    this.shelf = shelf;
  }

  /** Words of a formula: what may not be passed, however the load lies. */
  String formula() {
    return "w ≤ L / n₁, k w ≤ L / n₂"
        + (shelf.limits().judgesStress(section()) ? ", σ ≤ σ₀" : "")
        + (shelf.supports().isEmpty() ? "" : ", r ≤ R")
        + (shelf.joint().isEmpty() ? "" : ", J ≤ J₀")
        + (mayTip() ? ", neither its load nor P tips it" : "");
  }

  List<Input> inputs() {
    ShelfLimits limits = shelf.limits();
    List<Input> all = new ArrayList<>();
    all.add(limits.creep().input("k", "sag after years over sag at first"));
    all.add(limits.firstOver().input("n₁", "span over the sag allowed at first"));
    all.add(limits.yearsOver().input("n₂", "span over the sag allowed after years"));
    section().layers().stream()
        .flatMap(layer -> stress(layer).stream())
        .distinct()
        .forEach(all::add);
    for (SupportLimit limit : shelf.supports()) {
      all.add(
          new Input("R", "load allowed on a support, " + limit.by(), limit.most(), limit.source()));
    }
    shelf.joint().map(EndJoint::input).ifPresent(all::add);
    if (mayTip()) {
      all.add(shelf.hand().input("P", "a hand on the front edge of the empty shelf"));
    }
    return all;
  }

  /** A short light shelf may tip off its rows, so that none short enough for its supports holds. */
  private boolean mayTip() {
    return shelf.bearing() instanceof Bearing.Rows;
  }

  private Section section() {
    return shelf.beam().section();
  }

  private Optional<Input> stress(Layer layer) {
    return shelf
        .limits()
        .stressAllowed(layer, LoadCase.EVEN)
        .map(s -> s.input("σ₀", "stress allowed for years in the " + layer.name()));
  }

  /** What just meets its limit; nothing where the shelf tips. */
  Optional<Input> met(Use by) {
    return switch (by.by()) {
      case SAG -> met("w", "sag", by, shelf.limits().sagAllowed(shelf.span()), QuantityUnit.LENGTH);
      case STRESS -> met("σ / σ₀", "stress over what is allowed", by, 1, QuantityUnit.RATIO);
      case SUPPORTS ->
          shelf.supports().stream()
              .map(limit -> limit.most().value())
              .min(Double::compare)
              .flatMap(
                  least ->
                      met("r", "load on the most loaded support", by, least, QuantityUnit.FORCE));
      case JOINTS ->
          met("J / J₀", "load of a joint over what is allowed", by, 1, QuantityUnit.RATIO);
      case TIPPING -> Optional.empty();
    };
  }

  private static Optional<Input> met(
      String symbol, String what, Use by, double allowed, QuantityUnit unit) {
    Source source = PlateFigures.PLATE;
    return Optional.of(
        new Input(
            symbol,
            what + " then, load " + by.of().place(),
            Quantity.of(by.share() * allowed, unit),
            source));
  }
}
