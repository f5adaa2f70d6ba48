package fourpin.shop.file;

import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Whether layers can be cut from the materials that they name. */
record LayerChecks(List<Material> materials, Spot spot) {

  private static final double MOST_OFF = 0.05;

  void run() {
    materials.forEach(m -> m.layers().forEach(layer -> check(m, layer)));
    materials.stream().filter(LayerChecks::isCutInPart).forEach(this::inPart);
  }

  private static boolean isCutInPart(Material material) {
    return !material.isCutInLayers()
        && material.layers().stream().anyMatch(layer -> layer.cutFrom().isPresent());
  }

  private void inPart(Material material) {
    spot.refuse(
        "some layers of '%s' say what they are cut from, and some do not"
            .formatted(material.name()),
        "state cut-from for all of its layers, or for none");
  }

  private void check(Material panel, Layer layer) {
    layer.cutFrom().ifPresent(name -> check(panel, layer, name));
  }

  private void check(Material panel, Layer layer, String name) {
    Optional<Material> from = materials.stream().filter(m -> m.name().equals(name)).findFirst();
    if (from.isEmpty()) {
      spot.refuse(
          "a layer of '%s' is cut from '%s', which is no material of the job"
              .formatted(panel.name(), name),
          "its materials are "
              + materials.stream().map(Material::name).collect(Collectors.joining(", ")));
    } else if (!from.get().layers().isEmpty() || from.get().kind() == Material.Kind.GLASS) {
      spot.refuse(
          "a layer of '%s' is cut from '%s', which is %s"
              .formatted(
                  panel.name(),
                  name,
                  from.get().layers().isEmpty() ? "glass" : "glued up of layers itself"),
          "name sheets or boards as they are sold");
    } else if (!from.get().of().equals(layer.of())) {
      spot.refuse(
          "a layer of '%s' is of %s, and cut from '%s', which is of %s"
              .formatted(panel.name(), layer.of(), name, from.get().of()),
          "make them the same");
    } else if (layer.share() == 1 && isOff(layer.thickness(), from.get().thickness())) {
      spot.refuse(
          "a layer of '%s' is not as thick as '%s', from which it is cut"
              .formatted(panel.name(), name),
          "make them the same; a share below 100 is for ribs, which are ripped to the layer's height");
    }
  }

  private static boolean isOff(Length layer, Length sold) {
    return Math.abs(layer.ratioTo(sold) - 1) > MOST_OFF;
  }
}
