package fourpin.plan;

import fourpin.casework.CutSizes;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import fourpin.plan.CutItem.Direction;
import fourpin.reference.Reference;
import java.util.ArrayList;
import java.util.List;

/**
 * The layers and ribs that panels of one line of the cut list are glued up of: over size each way,
 * since pressed layers slide, and are trimmed together.
 */
record LayerItems(Job job, Settings settings, CutItem panel) {

  /** Nothing where the panel is of one piece, or its layers are not cut by the plan. */
  List<CutItem> all() {
    Material material = job.material(panel.material());
    List<CutItem> items = new ArrayList<>();
    if (material.isCutInLayers()) {
      for (Layer layer : material.layers()) {
        items.add(layer.isRibs() ? ribs(layer, items.size()) : sheet(layer, items.size()));
      }
    }
    return items;
  }

  private CutItem sheet(Layer layer, int before) {
    return item(
        layer,
        "layer " + (before + 1) + " of " + panel.name(),
        panel.quantity(),
        sizes().layer(along(layer)),
        sizes().layer(across(layer)),
        layer.thickness(),
        before);
  }

  /** Ripped to the height of the layer, as thick as what they are ripped from. */
  private CutItem ribs(Layer layer, int before) {
    Length thickness = cutFrom(layer).thickness();
    long count = layer.ribCount(across(layer).total());
    return item(
        layer,
        "rib in layer " + (before + 1) + " of " + panel.name(),
        Math.toIntExact(count * panel.quantity()),
        sizes().layer(along(layer)),
        Sum.of("rib", layer.thickness()),
        thickness,
        before);
  }

  private CutSizes sizes() {
    return new CutSizes(job, settings);
  }

  private Material cutFrom(Layer layer) {
    return job.material(layer.cutFrom().orElseThrow());
  }

  private Sum along(Layer layer) {
    return layer.turn() == Material.Turn.ALONG ? panel.cutLength() : panel.cutWidth();
  }

  private Sum across(Layer layer) {
    return layer.turn() == Material.Turn.ALONG ? panel.cutWidth() : panel.cutLength();
  }

  /** The job says how the grain of a layer lies, and by that it is judged, whatever its sheet. */
  private static Direction direction(Material from) {
    boolean keeps =
        from.grain() == Material.Grain.LENGTHWISE
            || !Reference.bendsAlikeAllWays(Reference.substances().get(from.of()));
    return keeps ? Direction.ALONG_LENGTH : Direction.EITHER_WAY;
  }

  private CutItem item(
      Layer layer, String name, int quantity, Sum length, Sum width, Length thickness, int before) {
    Material from = cutFrom(layer);
    return new CutItem(
        panel.line() + before + 1,
        panel.caseName(),
        panel.marks(),
        name,
        panel.role(),
        from.name(),
        quantity,
        length,
        width,
        thickness,
        length,
        width,
        direction(from),
        List.of(),
        panel.when());
  }
}
