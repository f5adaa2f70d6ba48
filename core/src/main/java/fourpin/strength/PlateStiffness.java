package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.strength.Section.Layer;
import fourpin.strength.Section.Matter;
import fourpin.strength.plate.Rigidity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How stiff a shelf is as a plate: its panel each way and in twist, its strips, and in shear. */
final class PlateStiffness {

  private static final Source RIGIDITY =
      new Source(
          "thin plates",
          "Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. (1959), art. 85",
          Standing.DERIVED);

  private static final Source SHEAR =
      new Source(
          "beam with the shear term, evenly loaded, on supports at its ends",
          "Wood Handbook FPL-GTR-190, Table 9-1",
          Standing.DERIVED);

  private static final Source STATICS =
      new Source("statics of the bent plate", "", Standing.DERIVED);

  private final ShelfOnSupports shelf;
  private final Section section;
  private final Layer panel;
  private final Flat flat;

  /**
   * @param section of the shelf as a plate
   */
  PlateStiffness(ShelfOnSupports shelf, Section section) {
    this.shelf = shelf;
    this.section = section;
    this.panel = section.layers().getFirst();
    this.flat = panel.matter().flat();
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    shear().ifPresent(all::add);
    shearAcross().ifPresent(all::add);
    all.addAll(List.of(along(), across(), twist()));
    return all;
  }

  /** All that the equation of the plate asks for. */
  List<Input> inputs() {
    List<Input> inputs = new ArrayList<>();
    inputs.addAll(List.of(input("Dx", along()), input("Dy", across()), twistInput()));
    inputs.add(flat.poisson().input("ν", "Poisson ratio of the " + panel.name()));
    inputs.addAll(strips());
    return inputs;
  }

  Input twistInput() {
    return input("Dxy", twist());
  }

  private List<Input> strips() {
    List<Input> inputs = new ArrayList<>();
    for (int i = 1; i < section.layers().size(); i++) {
      Layer strip = section.layers().get(i);
      double own = strip.modulus() * strip.area() * strip.thickness() * strip.thickness() / 12;
      double twist =
          strip.matter().flat().shear().number() * Flat.torsion(strip.width(), strip.thickness());
      inputs.add(
          new Input(
              "E A",
              "stiffness of the "
                  + strip.name()
                  + " along, by which it pulls at the "
                  + panel.name(),
              force(strip.modulus() * strip.area()),
              STATICS));
      inputs.add(stiffness("E I", strip.name() + " about its own middle", own));
      inputs.add(stiffness("G J", strip.name() + " in twist", twist));
      inputs.add(
          new Input(
              "e",
              "middle of the " + strip.name() + " below that of the " + panel.name(),
              length(strip.middle() - panel.middle()),
              Source.GEOMETRY));
    }
    return inputs;
  }

  private static Input stiffness(String symbol, String what, double value) {
    return new Input(
        symbol,
        "stiffness of the " + what,
        Quantity.of(value, QuantityUnit.BENDING_STIFFNESS),
        STATICS);
  }

  private static Input input(String symbol, Figure figure) {
    return new Input(symbol, figure.title(), figure.value(), figure.source());
  }

  /** A plate leaves shear out, which a sandwich does not. */
  private Optional<Figure> shear() {
    return panel.matter().isSandwich()
        ? Optional.of(
            figure(
                "plate-shear",
                "sag by shear for each part by bending, by which its layers count as less stiff"
                    + " along",
                Quantity.of(
                    shelf.section().panel().shearShare(shelf.span().value().value()),
                    QuantityUnit.RATIO),
                "384 E I / (40 G A L²)",
                List.of(
                    stiffness("E I", panel.name(), shelf.section().panel().bendingStiffness()),
                    new Input(
                        "G A",
                        "shear stiffness of the " + panel.name(),
                        force(shelf.section().panel().shearStiffness()),
                        Matters.LAYERS),
                    new Input("L", "span", shelf.span().value(), shelf.span().source())),
                SHEAR))
        : Optional.empty();
  }

  private Optional<Figure> shearAcross() {
    return panel.matter().isSandwich() ? Optional.of(ofShearAcross()) : Optional.empty();
  }

  private Figure ofShearAcross() {
    Matter matter = shelf.section().layers().getFirst().matter();
    double deep = shelf.loaded().between(shelf.bearing());
    return figure(
        "plate-shear-across",
        "sag by shear for each part by bending, from front to back, by which its layers count as less"
            + " stiff that way; in twist they do by the greater of both",
        Quantity.of(matter.shearShareAcross(panel.thickness(), deep), QuantityUnit.RATIO),
        "384 E₂ t² / (12 × 40 (5 / 6) G D²)",
        List.of(
            matter.flat().across().input("E₂", "modulus of elasticity across, as layers joined"),
            new Input("t", "thickness", length(panel.thickness()), Source.GEOMETRY),
            matter.shearAcross().input("G", "shear modulus through the thickness that way"),
            new Input("D", "between the rows of supports", length(deep), Source.GEOMETRY)),
        SHEAR);
  }

  private String modulusAcross() {
    return panel.matter().isSandwich()
        ? "modulus of elasticity across, divided by 1 and the part of shear that way"
        : "modulus of elasticity across";
  }

  private String modulusAlong() {
    return panel.matter().isSandwich()
        ? "modulus of elasticity along, divided by 1 and the part of shear"
        : "modulus of elasticity along";
  }

  private Figure along() {
    return rigidity("along", "along the span", "E₁ t³ / (12 (1 - ν² E₂ / E₁))", plate().alongX());
  }

  private Figure across() {
    return rigidity(
        "across", "from front to back", "E₂ t³ / (12 (1 - ν² E₂ / E₁))", plate().alongY());
  }

  private Rigidity plate() {
    return flat.plate(panel.thickness());
  }

  private Figure rigidity(String id, String way, String formula, double value) {
    return figure(
        "plate-stiffness-" + id,
        "stiffness of the " + panel.name() + " " + way + ", for each unit of width",
        Quantity.of(value, QuantityUnit.MOMENT),
        formula,
        List.of(
            flat.along().input("E₁", modulusAlong()),
            flat.across().input("E₂", modulusAcross()),
            flat.poisson().input("ν", "Poisson ratio"),
            new Input("t", "thickness", length(panel.thickness()), Source.GEOMETRY)),
        RIGIDITY);
  }

  private Figure twist() {
    return figure(
        "plate-stiffness-twist",
        "stiffness of the " + panel.name() + " in twist, for each unit of width",
        Quantity.of(plate().twist(), QuantityUnit.MOMENT),
        "G t³ / 12",
        List.of(
            flat.shear().input("G", "shear modulus in its plane"),
            new Input("t", "thickness", length(panel.thickness()), Source.GEOMETRY)),
        RIGIDITY);
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs, Source source) {
    return new Figure(shelf.prefix() + "/" + id, title, value, formula, inputs, source);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }
}
