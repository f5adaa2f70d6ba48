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
import fourpin.measure.Unit;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.Section.Layer;
import fourpin.strength.StackedTop.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * How hard a top is bent by the case that stands on it, beside what its strength allows for years:
 * that part of it, panel or strip, which is nearest to breaking. Of what bends the top, it takes
 * the share that is its own stiffness'.
 */
record StackedTopStress(StackedTop top) {

  /**
   * One of its parts between two uprights.
   *
   * @param with what bends alike with it, the bottom above beside
   */
  private record Bent(Span span, Section with, Stress stress) {

    Layer layer() {
      return stress.layer();
    }

    double mpa() {
      return stress.all();
    }
  }

  /** Whether it is within what its strength allows, or none is known. */
  boolean holds(double thickness) {
    return use(worst(thickness)) <= 1;
  }

  /** Largest stress, and what is allowed where a strength is known. */
  List<Figure> figures() {
    List<Figure> all = new ArrayList<>(List.of(most()));
    worst().layer().matter().breaking().map(this::allowed).ifPresent(all::add);
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
        "what stands on %s stresses %s%s to %s between its uprights; %s are allowed for years, by its strength %s: it may break"
            .formatted(
                below,
                name("its top"),
                top.shallow(),
                stress.textBeside(limit, unit),
                limit.textBeside(stress, unit),
                worst().layer().matter().breaking().orElseThrow().by()),
        figures(),
        Place.of(below, part.mark(), part.box()),
        LazyList.of(cures));
  }

  /** Which part of a top is nearest to breaking. */
  private String name(String of) {
    Layer layer = worst().layer();
    boolean panel = layer.name().equals(top.whole(top.thickness()).layers().getFirst().name());
    return panel ? of : "the " + layer.name() + " of " + of;
  }

  /** At its most between two uprights. */
  Figure most() {
    Bent worst = worst();
    return top.figure(
        "stack-top-stress",
        "largest bending stress in " + name("the top below") + " under what stands on it",
        Quantity.of(worst.mpa(), QuantityUnit.STRESS),
        "M E z / (E I)",
        List.of(
            new Input(
                "M",
                "largest moment of what stack-top-sag lists, between two uprights",
                Quantity.of(top.moment(worst.span(), top.thickness()), QuantityUnit.MOMENT),
                StackedTop.STATICS),
            new Input(
                "E",
                "modulus of its outermost layer",
                Quantity.of(worst.layer().outer(), QuantityUnit.STRESS),
                worst.layer().matter().modulus().source()),
            new Input(
                "z",
                "from the middle about which the top bends to its far face",
                Quantity.of(worst.with().farFace(worst.layer()), QuantityUnit.LENGTH),
                StackedTop.STATICS),
            new Input(
                "E I",
                "stiffness of all that bends" + counted(worst),
                Quantity.of(
                    top.stiffness(worst.span(), worst.with()), QuantityUnit.BENDING_STIFFNESS),
                StackedTop.STATICS)));
  }

  private String counted(Bent of) {
    return of.with().equals(top.counted(top.thickness()))
        ? " by stack-top-sag"
        : ", all the depth of the top counted: a strip before what stands on it bends less";
  }

  private Bent worst() {
    return worst(top.thickness());
  }

  /** Where no strength is known, what is stressed most. */
  private Bent worst(double thickness) {
    return top.spans()
        .flatMap(span -> parts(span, thickness))
        .max(Comparator.comparingDouble(this::use).thenComparingDouble(Bent::mpa))
        .orElseThrow();
  }

  private double use(Bent of) {
    ServiceClass air = ServiceClass.of(top.settings());
    return of.layer()
        .matter()
        .breaking()
        .map(breaking -> of.mpa() / breaking.allowed(air, LoadCase.EVEN).number())
        .orElse(0.0);
  }

  /**
   * What stands before the case on it is not counted on, and yet bends: by less than if all bent
   * alike, since it is loaded behind.
   */
  private Stream<Bent> parts(Span span, double thickness) {
    Section counted = top.counted(thickness);
    Section whole = top.whole(thickness);
    Stream<Layer> before =
        whole.layers().stream()
            .filter(l -> counted.layers().stream().noneMatch(c -> c.name().equals(l.name())));
    return Stream.concat(
        counted.layers().stream().map(layer -> bent(span, counted, layer, thickness)),
        before.map(layer -> bent(span, whole, layer, thickness)));
  }

  private Bent bent(Span span, Section with, Layer layer, double thickness) {
    double share = with.bendingStiffness() / top.stiffness(span, with);
    double mpa = with.stress(layer, share * top.moment(span, thickness));
    return new Bent(span, with, new Stress(layer, mpa, 0));
  }

  private Figure allowed(Breaking breaking) {
    ServiceClass air = ServiceClass.of(top.settings());
    return new Figure(
        top.id("stack-top-stress-allowed"),
        "bending stress allowed for years in " + name("the top below"),
        breaking.allowed(air, LoadCase.EVEN).value(),
        Breaking.FORMULA,
        breaking.inputs(air),
        breaking.strength().source());
  }
}
