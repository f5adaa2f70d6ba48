package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.job.Setting;
import fourpin.measure.LengthStyle;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.List;

/** The cutting and gluing up of panels of layers, before they are cut to size. */
record LayerSteps(Job job, BuiltCase built) {

  /** None where the material is of one piece, or its layers are not cut by the plan. */
  List<PlannedStep> all(Stage stage, Material material, List<Part> parts) {
    if (!material.isCutInLayers()) {
      return List.of();
    }
    List<String> marks = parts.stream().map(Part::mark).toList();
    return List.of(cut(stage, material, marks), glue(stage, material, marks));
  }

  private PlannedStep cut(Stage stage, Material material, List<String> marks) {
    LengthStyle style = job.style();
    List<Caution> cautions = new ArrayList<>(List.of(Cautions.SAW, Cautions.DUST));
    if (material.layers().stream().anyMatch(layer -> layer.share() < 1)) {
      cautions.add(Cautions.NARROW_RIP);
    }
    return step(
        stage,
        marks,
        "Cut the layers of "
            + material.name()
            + " by the layouts"
            + EdgeStrips.copies(built)
            + ", "
            + style.text(built.order().settings().length(Setting.LAYER_TRIM))
            + " over size each way as the cut list says. Ribs of one layer are ripped at one setting"
            + " of the fence: they keep the faces apart.",
        "Laid together dry, no layer rocks on the next, and no gap shows along a rib.",
        cautions);
  }

  private PlannedStep glue(Stage stage, Material material, List<String> marks) {
    List<Caution> cautions = new ArrayList<>(List.of(Cautions.GLUE));
    cautions.addAll(
        new Lifting(job, built)
            .parts(built.parts().stream().filter(p -> marks.contains(p.mark())).toList()));
    return new PlannedStep(
        stage,
        built.order().name(),
        marks,
        "Glue up "
            + material.name()
            + ", one panel for each mark"
            + EdgeStrips.copies(built)
            + ", on a flat bench: glue over the whole of every face that touches another, the"
            + " outer ribs just inside the line that the panel will be cut to, the others spread"
            + " evenly between. Press by cauls and clamps all over, or in a"
            + " press, as hard and as long as the glue's maker says; ribs are pressed right above"
            + " them. What the plan says of its bending holds only for glue lines without gaps.",
        material.layers().stream().map(this::words).toList(),
        "Thickness is "
            + job.style().text(material.thickness())
            + " at all corners, the panel is flat under a straightedge, and tapping sounds alike all"
            + " over: a hollow sound away from the hollows of a box is a gap in the glue.",
        cautions);
  }

  private String words(Layer layer) {
    String grain = layer.turn() == Material.Turn.ALONG ? "along" : "across";
    return (layer.share() < 1 ? "ribs of " : "")
        + layer.cutFrom().orElse(layer.of())
        + ", "
        + job.style().text(layer.thickness())
        + (layer.share() < 1 ? " high" : "")
        + ", grain "
        + grain
        + " the panel";
  }

  private PlannedStep step(
      Stage stage, List<String> marks, String words, String check, List<Caution> cautions) {
    return new PlannedStep(stage, built.order().name(), marks, words, List.of(), check, cautions);
  }
}
