package fourpin.plan;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.job.Job;
import fourpin.job.SheetStock;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.Masses;
import fourpin.strength.ShelfLoad;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Weights of parts, cases and what they hold. */
final class Weights {

  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  /** Standard gravity, CGPM 1901. */
  private final Job job;

  private final Masses masses;

  Weights(Job job) {
    this.job = job;
    this.masses = new Masses(job);
  }

  /** Mass of a part in kg. */
  double of(Part part) {
    return masses.of(part);
  }

  /** Mass of a whole sheet in kg. */
  double of(SheetStock sheet) {
    double thickness = job.material(sheet.material()).thickness().mm();
    double volume = sheet.length().mm() * sheet.width().mm() * thickness;
    return volume * masses.density(sheet.material()).number() / CUBIC_MM_PER_CUBIC_M;
  }

  /** Weight empty, of the usual contents, and both, of one copy of a case. */
  List<Figure> figures(BuiltCase built, String id) {
    Figure empty = empty(built, id);
    Figure contents = contents(built, id);
    Quantity both = mass(empty.value().value() + contents.value().value());
    return List.of(
        empty,
        contents,
        new Figure(
            id + "/weight-loaded",
            "weight of " + built.order().name() + ", loaded as stated",
            both,
            "m + c",
            List.of(
                new Input("m", "weight, empty", empty.value(), empty.source()),
                new Input("c", "weight of the contents", contents.value(), contents.source())),
            Source.GEOMETRY));
  }

  private Figure empty(BuiltCase built, String id) {
    Map<String, Double> volumes = new LinkedHashMap<>();
    double kg = 0;
    for (Part part : built.parts()) {
      masses
          .volumes(part)
          .forEach((material, volume) -> volumes.merge(material, volume, Double::sum));
      kg += of(part);
    }
    List<Input> inputs = new ArrayList<>();
    volumes.forEach(
        (material, volume) -> inputs.addAll(inputs(inputs.size() / 2 + 1, material, volume)));
    return new Figure(
        id + "/weight",
        "weight of " + built.order().name() + ", empty",
        mass(kg),
        "V1 d1 + V2 d2 + ...",
        inputs,
        Source.GEOMETRY);
  }

  private List<Input> inputs(int number, String material, double volume) {
    Sourced density = masses.density(material);
    Quantity cubic = Quantity.of(volume / CUBIC_MM_PER_CUBIC_M, QuantityUnit.VOLUME);
    return List.of(
        new Input("V" + number, "volume of " + material, cubic, Source.GEOMETRY),
        density.input("d" + number, "density of " + material));
  }

  private Figure contents(BuiltCase built, String id) {
    double newtons = 0;
    for (BaySpace bay : built.bays()) {
      for (Part floor : floors(built, bay)) {
        ShelfLoad load = ShelfLoad.of(built.order(), bay.number());
        newtons += load.perMm(floor.box().size(Axis.Y)) * bay.clear().size(Axis.X).mm();
      }
    }
    double drawers = built.order().drawers().map(d -> d.count() * d.mass().value()).orElse(0.0);
    Quantity force = Quantity.of(newtons, QuantityUnit.FORCE);
    return new Figure(
        id + "/weight-contents",
        "weight of the contents of " + built.order().name(),
        mass(newtons / Gravity.STANDARD + drawers),
        "F / g + m",
        List.of(
            new Input("m", "drawers with what is in them", mass(drawers), Source.STATED),
            new Input("F", "load along every shelf and the bottom", force, Source.STATED),
            new Input(
                "g",
                "standard gravity, m/s²",
                Quantity.of(Gravity.STANDARD, QuantityUnit.RATIO),
                Source.published("CGPM 1901, third resolution", ""))),
        Source.GEOMETRY);
  }

  private static List<Part> floors(BuiltCase built, BaySpace bay) {
    String prefix = bay.number() + "-";
    return built.parts().stream()
        .filter(
            p ->
                p.role() == Role.BOTTOM
                    || ((p.role() == Role.SHELF || p.role() == Role.FIXED_SHELF)
                        && p.mark().startsWith(prefix)))
        .toList();
  }

  private static Quantity mass(double kg) {
    return Quantity.of(kg, QuantityUnit.MASS);
  }
}
