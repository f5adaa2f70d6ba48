package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.Section.Layer;
import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of one shelf whose load lies elsewhere than all over it; none where it tips. */
final class UnevenLoad {

  private final ShelfOnSupports shelf;
  private final LoadCase of;
  private final Optional<Bends> bends;
  private final PlateFigures plate;
  private final List<Input> inputs;

  /**
   * @param bending what its bending follows from
   */
  UnevenLoad(
      ShelfOnSupports shelf,
      LoadCase of,
      Optional<Bends> bends,
      PlateFigures plate,
      List<Input> bending) {
    this.shelf = shelf;
    this.of = of;
    this.bends = bends;
    this.plate = plate;
    this.inputs = new ArrayList<>(bending);
    if (of instanceof LoadCase.FrontRow(var deep)) {
      inputs.add(deep.input("d", "depth of the things, standing at the front edge"));
    }
    if (of instanceof LoadCase.BackRow(var deep)) {
      inputs.add(deep.input("d", "depth of the things, standing against the back"));
    }
    if (of instanceof LoadCase.OverEdge(var deep, _)) {
      inputs.add(deep.input("d", "depth of the things, standing against the back"));
    }
  }

  private String where() {
    return switch (of) {
      case LoadCase.FrontRow(_) -> ", p = q / d from 0 to d," + PlateFigures.BENDING;
      case LoadCase.BackRow(_) -> ", p = q / d from D - d to D," + PlateFigures.BENDING;
      case LoadCase.OverEdge(_, _) ->
          ", p = q / b from 0 to b = 2 D - d, on both sides of their middle,"
              + PlateFigures.BENDING;
      case LoadCase.OneHalf() -> ", p = q / D from 0 to l / 2, nothing beyond";
      case LoadCase.Even(), LoadCase.Hand(_) -> "," + PlateFigures.BENDING;
    };
  }

  /** The last level of the ids of its figures. */
  private String id() {
    return switch (of) {
      case LoadCase.OneHalf() -> "plate-half";
      case LoadCase.Hand(_) -> "hand";
      case LoadCase.BackRow(_) -> "plate-back-row";
      case LoadCase.FrontRow(_), LoadCase.OverEdge(_, _), LoadCase.Even() -> "plate-front-row";
    };
  }

  List<Figure> inRow() {
    List<Figure> all = new ArrayList<>();
    sag().ifPresent(all::add);
    years().ifPresent(all::add);
    push().ifPresent(all::add);
    stress().ifPresent(all::add);
    return all;
  }

  List<Figure> onOneHalf() {
    List<Figure> all = new ArrayList<>();
    sag().ifPresent(all::add);
    years().ifPresent(all::add);
    stress().ifPresent(all::add);
    onSupports()
        .ifPresent(
            half -> {
              all.add(twist(half));
              push().ifPresent(all::add);
              all.add(lifted(half));
            });
    return all;
  }

  /** How far it goes down at the most. */
  Optional<Figure> sag() {
    return bends.map(
        b ->
            figure(
                id(),
                "sag at the most, the load " + of.place(),
                Quantity.of(b.sag(), QuantityUnit.LENGTH),
                "max w(x, y)"));
  }

  /** The same after years. */
  Optional<Figure> years() {
    return sag().map(this::years);
  }

  private Figure years(Figure sag) {
    Sourced creep = shelf.limits().creep();
    return new Figure(
        shelf.prefix() + "/" + id() + "-years",
        sag.title() + ", after years",
        Quantity.of(sag.value().value() * creep.number(), QuantityUnit.LENGTH),
        "k s",
        List.of(
            creep.input("k", "sag after years over sag at first"),
            new Input("s", sag.title(), sag.value(), sag.source())),
        creep.source());
  }

  /** Only where a strength is known. */
  Optional<Figure> stress() {
    return bends
        .filter(_ -> isJudged())
        .map(b -> plate.stress(id() + "-stress", b, of, "the load " + of.place()))
        .or(this::heldDown);
  }

  /** A shelf that tips under a hand, as a beam that is kept from tipping. */
  private Optional<Figure> heldDown() {
    return of instanceof LoadCase.Hand(Sourced push) && isJudged()
        ? Optional.of(heldDown(push))
        : Optional.empty();
  }

  private boolean isJudged() {
    return shelf.limits().judgesStress(shelf.section());
  }

  private Figure heldDown(Sourced push) {
    Section section = shelf.section();
    double moment = shelf.loaded().momentUnder(push.number());
    Layer layer = shelf.limits().worst(shelf.loaded().stresses(moment), of).layer();
    return new Figure(
        shelf.prefix() + "/" + id() + "-stress",
        "largest bending stress, as a beam, the load " + of.place() + ", kept from tipping",
        Quantity.of(section.stress(layer, moment), QuantityUnit.STRESS),
        "E t (F L / 4 + g L² / 8) / (2 E I)",
        List.of(
            push.input("F", "push of a hand"),
            new Input("L", "span", shelf.span().value(), shelf.span().source()),
            new Input(
                "g",
                "the shelf's own weight",
                Quantity.of(section.weight(), QuantityUnit.LINE_LOAD),
                ShelfFigures.SECTION),
            layer.matter().modulus().input("E", "modulus of elasticity"),
            new Input(
                "t",
                "thickness",
                Quantity.of(layer.thickness(), QuantityUnit.LENGTH),
                Source.GEOMETRY),
            new Input(
                "E I",
                "stiffness of the section",
                Quantity.of(section.bendingStiffness(), QuantityUnit.BENDING_STIFFNESS),
                ShelfFigures.SECTION)),
        ShelfFigures.STATICS);
  }

  /** Nothing for a shelf in joints either. */
  Optional<Figure> push() {
    return onSupports()
        .map(
            b ->
                figure(
                    id() + "-push",
                    "load on the most loaded support, the load " + of.place(),
                    Quantity.of(b.push(), QuantityUnit.FORCE),
                    "max r"));
  }

  private Optional<Bends> onSupports() {
    return bends.filter(_ -> shelf.bearing() instanceof Bearing.Rows);
  }

  private Figure twist(Bends half) {
    return figure(
        id() + "-twist",
        "how far a corner then lies out of the plane of the other three",
        Quantity.of(half.twist(), QuantityUnit.LENGTH),
        "|w(0, 0) - w(l, 0) - w(0, D) + w(l, D)|");
  }

  private Figure lifted(Bends half) {
    return figure(
        id() + "-lifted",
        "supports that the shelf then lifts off",
        Quantity.count(half.lifted()),
        "number of supports with r = 0");
  }

  private Figure figure(String id, String title, Quantity value, String formula) {
    return new Figure(
        shelf.prefix() + "/" + id, title, value, formula + where(), inputs, PlateFigures.PLATE);
  }
}
