package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.job.Setting;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.strength.Section.Layer;
import fourpin.strength.plate.Bent;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A length of a bottom behind its kick, as a plate: uprights carry its ends, and the kick its front
 * edge. What it stands over in front of the kick is left out, and so is the back, which may hold
 * the back edge up.
 *
 * @param length between the uprights, mm
 * @param behind how far the kick stands behind the front edge of the bottom, mm
 * @param depth behind the front of the kick, mm
 * @param panel what bends
 * @param back how its back edge is held
 */
record BottomPlate(double length, double behind, double depth, Layer panel, Hold back) {

  /** How its figures are worked out. */
  static final String BENDING = "max w(x, y)" + PlateFigures.BENDING + ", and along three edges";

  /** What carries the bottom of a case in front; nothing where that lies on something. */
  static Optional<Kick> kick(BuiltCase built) {
    return built.order().kick().filter(kick -> kick.height().isPositive());
  }

  /** Of the bottom as it is made. */
  static BottomPlate of(Job job, BuiltCase built, double length) {
    return of(job, built, length, built.part("B").thickness().mm(), back(built));
  }

  /** How the back edge is held as the settings say; blocks hold no edge. */
  static Hold back(BuiltCase built) {
    return behind(built) == Behind.BOARD ? Hold.HINGED : Hold.FREE;
  }

  /** The same in words. */
  static String held(BuiltCase built) {
    return switch (behind(built)) {
      case NOTHING, BLOCKS -> "its back edge free";
      case BOARD -> "its back edge on a second board";
    };
  }

  /** What stands behind a kick. */
  enum Behind {
    NOTHING,
    BLOCKS,
    BOARD
  }

  static Behind behind(BuiltCase built) {
    String stated = built.order().settings().choice(Setting.BEHIND_KICK);
    return Behind.valueOf(stated.toUpperCase(Locale.ROOT));
  }

  static BottomPlate of(Job job, BuiltCase built, double length, double thickness, Hold back) {
    Part bottom = built.part("B");
    double behind = kick(built).map(Kick::recess).map(Length::mm).orElse(0.0);
    double depth = bottom.box().size(Axis.Y).mm() - behind;
    Layer whole =
        new Layer("bottom", Matters.of(job.material(bottom.material())), depth, thickness, 0, 0);
    Layer panel = new Section(List.of(whole)).asPlate(length, depth).layers().getFirst();
    return new BottomPlate(length, behind, depth, panel, back);
  }

  Plate plate() {
    return Plate.even(
        length,
        depth,
        panel.matter().flat().plate(panel.thickness()),
        new Edges(Hold.HINGED, Hold.HINGED, Hold.HINGED, back),
        List.of());
  }

  /** Its own weight along it, N/mm. */
  double own() {
    return new Section(List.of(panel)).weight();
  }

  /** The most of any place, the middle of the back edge among them, mm. */
  static double most(Bent bent) {
    Plate plate = bent.plate();
    return Math.max(bent.deepest(), bent.deflection(plate.length() / 2, plate.depth()));
  }

  /** The largest bending stress in it along, of any direction where it is alike all ways, MPa. */
  double stress(Bent bent) {
    double moment =
        bent.alongX().stream()
            .flatMap(x -> bent.alongY().stream().map(y -> bent.moments(x, y)))
            .mapToDouble(panel.matter().flat()::breaks)
            .max()
            .orElseThrow();
    return 6 * panel.matter().outer() * moment / (panel.thickness() * panel.thickness());
  }

  /** How {@link #stress} is worked out. */
  String stressFormula() {
    return "max 6 %s / t²%s"
        .formatted(panel.matter().flat().isAlikeAllWays() ? "M₁" : "Mx", PlateFigures.BENDING);
  }

  /**
   * @param length what its length is
   */
  List<Input> inputs(String length) {
    Flat flat = panel.matter().flat();
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        new Input(
            "g", "its own weight", Quantity.of(own(), QuantityUnit.LINE_LOAD), PlateFigures.PLATE));
    inputs.add(new Input("L", length, mm(length()), Source.GEOMETRY));
    inputs.add(
        new Input(
            "D",
            "depth behind the front of the kick; what stands over before that is left out, strips too",
            mm(depth),
            Source.GEOMETRY));
    inputs.add(new Input("t", "thickness", mm(panel.thickness()), Source.GEOMETRY));
    inputs.add(flat.along().input("E₁", "modulus of elasticity along"));
    inputs.add(flat.across().input("E₂", "modulus of elasticity across"));
    inputs.add(flat.shear().input("G", "shear modulus in its plane"));
    inputs.add(flat.poisson().input("ν", "Poisson ratio"));
    return inputs;
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }
}
