package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * Sheet goods, boards or glass.
 *
 * @param name what the rest of the job calls it
 * @param of its row in the reference tables: "plywood, veneer core", "oak, white", "glass,
 *     annealed"
 * @param nominal the thickness that it is sold by
 * @param measured the thickness by calliper; all joints and lengths follow it
 * @param grain whether parts must keep to the length of the sheet or board
 * @param stiffness modulus of elasticity along the grain, over the reference table's
 * @param density over the reference table's
 * @param strength in bending along the grain, that nearly all of it passes, over the reference
 *     table's
 * @param layers of which it is glued up, top to bottom, as thick together; none for a plain
 *     material. Then {@code of} is what its faces are of, by which it creeps and bears
 */
public record Material(
    String name,
    Kind kind,
    String of,
    Length nominal,
    Optional<Length> measured,
    Grain grain,
    Optional<Quantity> stiffness,
    Optional<Quantity> density,
    Optional<Quantity> strength,
    List<Layer> layers) {

  /** A box has a rib along each of its edges at the least. */
  private static final long LEAST_RIBS = 2;

  private static final double ROUNDING = 1e-9;

  /**
   * A layer of a material that is glued up.
   *
   * @param of its row in the reference tables
   * @param share of the width that it fills: 1, or less for ribs
   * @param turn how its grain lies to the panel's
   * @param cutFrom the material of the job that the plan cuts it from; none if it is not cut here
   * @param rib how thick one of its ribs is: what they are cut from; none of a whole layer, or
   *     where nothing says so
   */
  public record Layer(
      String of,
      Length thickness,
      double share,
      Turn turn,
      Optional<String> cutFrom,
      Optional<Length> rib) {

    /** A layer whose ribs, if it is of ribs, are as thick as the job's material. */
    public Layer(String of, Length thickness, double share, Turn turn, Optional<String> cutFrom) {
      this(of, thickness, share, turn, cutFrom, Optional.empty());
    }

    /** Whether it is of ribs with hollows between, which run as their grain does. */
    public boolean isRibs() {
      return share < 1;
    }

    /** From the middle of one rib to the middle of the next at the most, mm. */
    public Optional<Double> pitch() {
      return rib.map(thick -> thick.mm() / share);
    }

    /**
     * How many ribs stand over a width, one along each edge of it and none farther from the next
     * than the pitch.
     */
    public long ribCount(Length width) {
      double thick = rib.orElseThrow().mm();
      double between = (width.mm() - thick) * share / thick;
      return LEAST_RIBS + Math.max(0, (long) Math.ceil(between - ROUNDING) - 1);
    }

    private Layer from(List<Material> materials) {
      return new Layer(
          of,
          thickness,
          share,
          turn,
          cutFrom,
          materials.stream()
              .filter(m -> isRibs() && cutFrom.equals(Optional.of(m.name())))
              .findFirst()
              .map(Material::thickness)
              .or(() -> rib));
    }

    /** A layer that the plan does not cut. */
    public Layer(String of, Length thickness, double share, Turn turn) {
      this(of, thickness, share, turn, Optional.empty());
    }
  }

  /** How the grain of a layer lies. */
  public enum Turn {
    ALONG,
    ACROSS
  }

  public Material {
    layers = List.copyOf(layers);
  }

  /** A material of one piece that breaks as its row in the tables does. */
  public Material(
      String name,
      Kind kind,
      String of,
      Length nominal,
      Optional<Length> measured,
      Grain grain,
      Optional<Quantity> stiffness,
      Optional<Quantity> density) {
    this(name, kind, of, nominal, measured, grain, stiffness, density, Optional.empty(), List.of());
  }

  /** What it comes as. */
  public enum Kind {
    SHEET,
    BOARD,
    GLASS
  }

  /** Whether parts have a direction. */
  public enum Grain {
    LENGTHWISE,
    NONE
  }

  /** With ribs as thick as what they are cut from. */
  Material among(List<Material> materials) {
    return layers.isEmpty()
        ? this
        : new Material(
            name,
            kind,
            of,
            nominal,
            measured,
            grain,
            stiffness,
            density,
            strength,
            layers.stream().map(layer -> layer.from(materials)).toList());
  }

  /** Whether the plan cuts all its layers, and has them glued up. */
  public boolean isCutInLayers() {
    return !layers.isEmpty() && layers.stream().allMatch(layer -> layer.cutFrom().isPresent());
  }

  /** The same whose parts keep to the length of the sheet or board. */
  public Material lengthwise() {
    return new Material(
        name, kind, of, nominal, measured, Grain.LENGTHWISE, stiffness, density, strength, layers);
  }

  /** The thickness that parts are made to. */
  public Length thickness() {
    return measured.orElse(nominal);
  }
}
