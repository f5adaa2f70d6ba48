package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.LazyList;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import fourpin.strength.Section.Layer;
import fourpin.strength.StackedTop.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * How hard a top is bent by the case that stands on it, beside what its strength allows for years.
 * Of what bends it, it takes the share that is its own stiffness'.
 */
record StackedTopStress(StackedTop top) {

  /** Whether it is within what its strength allows, or none is known. */
  boolean holds(double thickness) {
    double most = mpa(worst(thickness), thickness);
    return allowed().filter(limit -> most > limit.value().value()).isEmpty();
  }

  /** Largest stress, and what is allowed where a strength is known. */
  List<Figure> figures() {
    List<Figure> all = new ArrayList<>(List.of(most()));
    allowed().ifPresent(all::add);
    return all;
  }

  /** That it may break; nothing where it does not. */
  Optional<Finding> finding(Unit unit, Supplier<List<Remedy>> cures) {
    return holds(top.thickness()) ? Optional.empty() : Optional.of(breaks(unit, cures));
  }

  private Finding breaks(Unit unit, Supplier<List<Remedy>> cures) {
    Part part = top.top();
    String below = top.below().order().name();
    Quantity stress = figures().getFirst().value();
    Quantity limit = figures().getLast().value();
    return new Finding(
        Severity.ERROR,
        "stack-top-breaks",
        "what stands on %s stresses its top to %s between its uprights; %s are allowed for years, by its strength %s: it may break"
            .formatted(
                below,
                stress.textBeside(limit, unit),
                limit.textBeside(stress, unit),
                panel(top.thickness()).matter().breaking().orElseThrow().by()),
        figures(),
        Place.of(below, part.mark(), part.box()),
        LazyList.of(cures));
  }

  /** At its most between two uprights. */
  Figure most() {
    double thickness = top.thickness();
    Span span = worst(thickness);
    return top.figure(
        "stack-top-stress",
        "largest bending stress in the top below under what stands on it",
        Quantity.of(mpa(span, thickness), QuantityUnit.STRESS),
        "M E z / (E I)",
        List.of(
            new Input(
                "M",
                "largest moment of what stack-top-sag lists, between two uprights",
                Quantity.of(top.moment(span, thickness), QuantityUnit.MOMENT),
                StackedTop.STATICS),
            new Input(
                "E",
                "modulus of the top's outermost layer",
                Quantity.of(panel(thickness).outer(), QuantityUnit.STRESS),
                panel(thickness).matter().modulus().source()),
            new Input(
                "z",
                "half the thickness of the top",
                Quantity.of(thickness / 2, QuantityUnit.LENGTH),
                Source.GEOMETRY),
            new Input(
                "E I",
                "stiffness of all that bends",
                Quantity.of(top.stiffness(span, thickness), QuantityUnit.BENDING_STIFFNESS),
                StackedTop.STATICS)));
  }

  private Span worst(double thickness) {
    return top.spans().max(Comparator.comparingDouble(span -> mpa(span, thickness))).orElseThrow();
  }

  private double mpa(Span span, double thickness) {
    Section own = top.section(thickness);
    double share = own.bendingStiffness() / top.stiffness(span, thickness);
    return own.stress(panel(thickness), share * top.moment(span, thickness));
  }

  private Layer panel(double thickness) {
    return top.section(thickness).layers().getFirst();
  }

  private Optional<Figure> allowed() {
    return panel(top.thickness()).matter().breaking().map(this::allowed);
  }

  private Figure allowed(Breaking breaking) {
    ServiceClass air = ServiceClass.of(top.settings());
    return new Figure(
        top.id("stack-top-stress-allowed"),
        "bending stress allowed for years in the top below",
        breaking.allowed(air, LoadCase.EVEN).value(),
        Breaking.FORMULA,
        breaking.inputs(air),
        breaking.strength().source());
  }
}
