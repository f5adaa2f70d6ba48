package fourpin.shop.file;

import fourpin.job.Material;
import fourpin.job.QuantityReader;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.reference.Reference;
import fourpin.reference.Substance;
import fourpin.reference.Wood;
import java.util.List;
import java.util.Optional;

/** A material. */
final class MaterialForm {

  private static final Key<Material.Kind> KIND =
      Key.required(
          "kind",
          Words.choice(Material.Kind.class),
          "sheet for sheet goods, board for solid wood, or glass");
  private static final Key<String> OF =
      Key.required(
          "of",
          Words.row("a substance", "plywood, veneer core", Reference.substances()),
          "the substance in the reference tables, which know how it bends, weighs and moves");
  private static final Key<Length> THICKNESS =
      Key.required(
          "thickness", Words.length("0.5 mm", "150 mm"), "the thickness that it is sold by");
  private static final Key<Length> MEASURED =
      Key.optional(
          "measured",
          Words.length("0.5 mm", "150 mm"),
          "the thickness",
          "the thickness by calliper; all joints and lengths follow it");
  private static final Key<Material.Grain> GRAIN =
      Key.optional(
          "grain",
          Words.choice(Material.Grain.class),
          "none for glass, else lengthwise",
          "whether parts keep to the length of the sheet or board; where they need not, all are as stiff as the weaker way of the material");
  private static final Key<Quantity> STIFFNESS =
      Key.optional(
          "stiffness",
          Words.quantity(QuantityReader.STIFFNESS, "12.3 GPa or 1780000 psi", 100, 220_000),
          "as the reference tables say",
          "modulus of elasticity along the grain");
  private static final Key<Quantity> DENSITY =
      Key.optional(
          "density",
          Words.quantity(QuantityReader.DENSITY, "640 kg/m3 or 40 lb/cu ft", 50, 8000),
          "as the reference tables say",
          "weight of a cubic metre or foot");
  private static final Key<Quantity> STRENGTH =
      Key.optional(
          "strength",
          Words.quantity(QuantityReader.STRENGTH, "24 MPa or 3500 psi", 1, 300),
          "as the reference tables say",
          "bending strength along the grain that nearly all of it passes (characteristic, f_m,k), not the mean of tests; codes' margins are taken off it. Not of glass, which has the setting glass-stress");

  private static final int LONGEST_NAME = 30;
  private static final int MOST_LAYERS = 20;
  private static final int PER_CENT = 100;
  private static final Key<String> LAYER_OF =
      Key.required(
          "of",
          Words.row("a substance", "plywood, veneer core", Reference.substances()),
          "the substance of the layer");
  private static final Key<Length> LAYER_THICKNESS =
      Key.required(
          "thickness", Words.length("0.3 mm", "100 mm"), "of the layer, or height of its ribs");
  private static final Key<Integer> SHARE =
      Key.optional(
          "share",
          Words.whole(1, PER_CENT),
          "100",
          "of ribs: the thickness of one over the way from the middle of one to that of the next, per cent: ribs 3/4 in thick, 6 in from middle to middle, are 13; one runs along each edge, and as many between as that takes");
  private static final Key<Material.Turn> TURN =
      Key.optional(
          "grain",
          Words.choice(Material.Turn.class),
          "along",
          "how its grain lies to the panel's; ribs run as their grain does: along, from end to end of a shelf, or across, from front to back");
  private static final Key<String> CUT_FROM =
      Key.optional(
          "cut-from",
          Words.free("the name of a material", "ply-9", LONGEST_NAME),
          "not cut by the plan",
          "the material of the job that the layer, or its ribs, are cut from; state it for all layers of a panel");
  static final Key<List<Material.Layer>> LAYERS =
      Key.optional(
          "layers",
          new ListOf<>(
              new Form<>(
                  "a layer",
                  List.of(LAYER_OF, LAYER_THICKNESS, SHARE, TURN, CUT_FROM),
                  List.of(),
                  v -> Optional.of(layer(v))),
              MOST_LAYERS),
          "one piece",
          "what it is glued up of, top to bottom: two for a doubled panel, faces and ribs for a torsion box");

  static final Form<Material> FORM =
      new Form<>(
          "a material",
          List.of(KIND, OF, THICKNESS, MEASURED, GRAIN, STIFFNESS, DENSITY, STRENGTH, LAYERS),
          List.of(),
          MaterialForm::make);

  private static final double MOST_OFF_NOMINAL = 0.25;
  private static final double MOST_OFF_LAYERS = 0.05;

  private MaterialForm() {}

  private static Material.Layer layer(Values v) {
    return new Material.Layer(
        v.get(LAYER_OF),
        v.get(LAYER_THICKNESS),
        v.find(SHARE).orElse(PER_CENT) / (double) PER_CENT,
        v.find(TURN).orElse(Material.Turn.ALONG),
        v.find(CUT_FROM));
  }

  /** Whether the layers are as thick together as the material, to the twentieth. */
  private static boolean fill(List<Material.Layer> layers, Length thickness) {
    double all = layers.stream().mapToDouble(l -> l.thickness().mm()).sum();
    return layers.isEmpty() || Math.abs(all / thickness.mm() - 1) < MOST_OFF_LAYERS;
  }

  private static Optional<Material> make(Values v) {
    Material.Kind kind = v.get(KIND);
    boolean comesAs = comesAs(kind, Reference.substances().get(v.get(OF)));
    if (!comesAs) {
      return v.spot(OF).refuse("it does not come as " + Words.plain(kind), "check kind and of");
    }
    if (kind == Material.Kind.GLASS && v.find(STRENGTH).isPresent()) {
      return v.spot(STRENGTH)
          .refuse(
              "glass is held against the setting glass-stress, not against a strength",
              "leave it out, and set glass-stress");
    }
    Optional<Length> measured = v.find(MEASURED);
    if (measured.isPresent() && isOff(measured.get(), v.get(THICKNESS))) {
      return v.spot(MEASURED)
          .refuse(
              "it is more than a quarter off the thickness", "check both numbers and their units");
    }
    List<Material.Layer> layers = v.find(LAYERS).orElse(List.of());
    if (!fill(layers, measured.orElse(v.get(THICKNESS)))) {
      return v.spot(LAYERS)
          .refuse(
              "its layers are not as thick together as it is",
              "state every layer, or the thickness that they give");
    }
    if (!layers.isEmpty() && (layers.getFirst().isRibs() || layers.getLast().isRibs())) {
      return v.spot(LAYERS)
          .refuse(
              "its uppermost or lowest layer is of ribs",
              "state a whole layer above its ribs and one below");
    }
    return Optional.of(
        new Material(
            v.name(),
            kind,
            v.get(OF),
            v.get(THICKNESS),
            measured,
            v.find(GRAIN)
                .orElse(
                    kind == Material.Kind.GLASS ? Material.Grain.NONE : Material.Grain.LENGTHWISE),
            v.find(STIFFNESS),
            v.find(DENSITY),
            v.find(STRENGTH),
            layers));
  }

  private static boolean comesAs(Material.Kind kind, Substance substance) {
    boolean glass = substance.family() == Substance.Family.GLASS;
    boolean solid =
        substance instanceof Wood || substance.family() == Substance.Family.LAMINATED_WOOD;
    return switch (kind) {
      case GLASS -> glass;
      case BOARD -> solid;
      case SHEET -> !glass;
    };
  }

  private static boolean isOff(Length measured, Length nominal) {
    return Math.abs(measured.ratioTo(nominal) - 1) > MOST_OFF_NOMINAL;
  }
}
