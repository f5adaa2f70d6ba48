package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.strength.PlateAnswer.Bends;
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
  }

  private String where() {
    return switch (of) {
      case LoadCase.FrontRow(_) -> ", p = q / d from 0 to d," + PlateFigures.BENDING;
      case LoadCase.OneHalf() -> ", p = q / D from 0 to l / 2, nothing beyond";
      case LoadCase.Even(), LoadCase.Hand(_) -> "," + PlateFigures.BENDING;
    };
  }

  /** The last level of the ids of its figures. */
  private String id() {
    return of.equals(LoadCase.ONE_HALF) ? "plate-half" : "plate-front-row";
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
                "sag at the most, the load " + of.brief(),
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

  /** Only of glass, which breaks without warning. */
  Optional<Figure> stress() {
    return bends
        .filter(_ -> shelf.limits().stress().isPresent())
        .map(b -> plate.stress(id() + "-stress", b, "the load " + of.brief()));
  }

  /** Nothing for a shelf in joints either. */
  Optional<Figure> push() {
    return onSupports()
        .map(
            b ->
                figure(
                    id() + "-push",
                    "load on the most loaded support, the load " + of.brief(),
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
