package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Turn;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.reference.Reference;
import fourpin.strength.Section.Matter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is to be known of panels that the maker glues up of layers. */
final class LayeredPanels {

  private final Job job;

  LayeredPanels(Job job) {
    this.job = job;
  }

  /** One for each such material: whether the plan cuts its layers, and how it bends. */
  List<Finding> findings() {
    List<Material> layered = job.materials().stream().filter(m -> !m.layers().isEmpty()).toList();
    return Stream.concat(
            layered.stream().map(this::gluedUp),
            layered.stream().filter(LayeredPanels::isUnknown).map(this::unknown))
        .toList();
  }

  /** Whether it is not known how far its ribs stand apart. */
  private static boolean isUnknown(Material material) {
    return material.layers().stream().anyMatch(l -> l.isRibs() && l.pitch().isEmpty());
  }

  private Finding unknown(Material material) {
    return new Finding(
        Severity.ERROR,
        "ribs-unknown",
        "'%s' has ribs of which nothing says how thick they are, and so how far apart: across them its layers are taken to bend each for itself, and what its faces do between them is not worked out"
            .formatted(material.name()),
        figures(material),
        Place.JOB,
        List.of(
            new Remedy(
                "state what each of its layers is cut from (cut-from): its ribs are as thick as that",
                "nothing")));
  }

  private Finding gluedUp(Material material) {
    return material.isCutInLayers() ? cutHere(material) : cutElsewhere(material);
  }

  private Finding cutHere(Material material) {
    return new Finding(
        Severity.NOTE,
        "glued-up",
        "'%s' is glued up of %s; it is taken to bend as one piece, which holds only if the glue covers every face that touches another and is pressed all over"
            .formatted(material.name(), words(material)),
        figures(material),
        Place.JOB,
        List.of(
            new Remedy(
                "glue up a test piece from offcuts and load it before the shelves are made",
                "glue and a day")));
  }

  private Finding cutElsewhere(Material material) {
    return new Finding(
        Severity.NOTE,
        "glued-up",
        "'%s' is glued up of %s; parts of it are listed and cut as one panel, its layers are not"
            .formatted(material.name(), words(material)),
        figures(material),
        Place.JOB,
        List.of(
            new Remedy(
                "state what each of its layers is cut from (cut-from), so that the plan cuts and glues them",
                "nothing"),
            new Remedy(
                "glue panels of it up larger than their parts, and state them as its stock",
                "the layers' stock, glue and time")));
  }

  private String words(Material material) {
    return material.layers().stream().map(this::words).collect(Collectors.joining(", "));
  }

  private String words(Material.Layer layer) {
    String part =
        layer.isRibs()
            ? layer.turn() == Turn.ALONG
                ? " in ribs along it" + apart(layer)
                : " in ribs across it" + apart(layer)
            : "";
    return job.style().text(layer.thickness()) + " of " + layer.of() + part;
  }

  private String apart(Material.Layer layer) {
    return layer
        .pitch()
        .map(mm -> Quantity.of(mm, QuantityUnit.LENGTH).text(job.unit()))
        .map(far -> ", at most " + far + " from middle to middle")
        .orElse(", " + Math.round(100 * layer.share()) + " % of the width");
  }

  private static List<Figure> figures(Material material) {
    Matter matter = Matters.of(material);
    return List.of(
        figure(
            material,
            "layers-along",
            "modulus of a solid panel that bends as much along, ",
            matter.flat().along().number(),
            Matters.laminate(material).isJoined()
                ? "12 Σ E s (t³ / 12 + t (z - z₀)²) / T³, z₀ = Σ E s t z / Σ E s t"
                : "Σ E s t³ / T³"),
        figure(
            material,
            "layers-stretch",
            "modulus of a solid panel that stretches as much along, ",
            matter.flat().along().number() * matter.stretch(),
            "Σ E s t / T"));
  }

  private static Figure figure(
      Material material, String id, String title, double value, String formula) {
    return new Figure(
        Figure.id("materials", material.name(), id),
        title + material.name(),
        Quantity.of(value, QuantityUnit.STRESS),
        formula,
        inputs(material),
        Matters.LAYERS);
  }

  private static List<Input> inputs(Material material) {
    Laminate laminate = Matters.laminate(material);
    List<Input> inputs = new ArrayList<>();
    double top = 0;
    for (int i = 0; i < laminate.plies().size(); i++) {
      Laminate.Ply ply = laminate.plies().get(i);
      String of = material.layers().get(i).of();
      Source table = Reference.substances().get(of).source();
      inputs.add(
          new Input(
              "E",
              "modulus of elasticity along the panel, none of ribs across it, " + of,
              Quantity.of(Laminate.stiff(ply), QuantityUnit.STRESS),
              table));
      inputs.add(
          new Input(
              "t",
              "its thickness",
              Quantity.of(ply.thickness(), QuantityUnit.LENGTH),
              Source.STATED));
      inputs.add(
          new Input(
              "s",
              "its share of the width",
              Quantity.of(ply.share(), QuantityUnit.RATIO),
              Source.STATED));
      inputs.add(
          new Input(
              "z",
              "its middle below the top of the panel",
              Quantity.of(top + ply.thickness() / 2, QuantityUnit.LENGTH),
              Source.STATED));
      top += ply.thickness();
    }
    inputs.add(
        new Input(
            "T", "thickness of the panel", Quantity.of(top, QuantityUnit.LENGTH), Source.STATED));
    return inputs;
  }
}
