package fourpin.reference;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The reference tables, read once from the class path. */
public final class Reference {

  private static final Catalogue<Constant> CONSTANTS = table("constants.csv", Constant::of);
  private static final Catalogue<Wood> WOODS = table("woods.csv", Wood::of);
  private static final Catalogue<PanelProduct> PANELS = table("panels.csv", PanelProduct::of);
  private static final Catalogue<Substance> SUBSTANCES =
      new Catalogue<>(Stream.concat(WOODS.rows().stream(), PANELS.rows().stream()).toList());
  private static final Catalogue<WoodMovement> MOVEMENT =
      table("wood_movement.csv", WoodMovement::of);
  private static final Catalogue<ElasticRatios> ELASTIC_RATIOS =
      table("elastic_ratios.csv", ElasticRatios::of);
  private static final Catalogue<CreepFactor> CREEP = table("creep.csv", CreepFactor::of);
  private static final Catalogue<ReferenceLoad> LOADS =
      table("reference_loads.csv", ReferenceLoad::of);
  private static final Catalogue<ReferenceLoad> FLOOR_LOADS =
      table("floor_loads.csv", ReferenceLoad::of);
  private static final Catalogue<SagLimit> SAG_LIMITS = table("sag_limits.csv", SagLimit::of);
  private static final Catalogue<HeldThing> THINGS = table("held_things.csv", HeldThing::of);
  private static final Catalogue<ShelfPin> PINS = table("shelf_pins.csv", ShelfPin::of);
  private static final Catalogue<PinSleeve> SLEEVES = table("sleeves.csv", PinSleeve::of);
  private static final Catalogue<ShelfStandard> STANDARDS =
      table("standards.csv", ShelfStandard::of);
  private static final Catalogue<PowerLaw> POWER_LAWS = table("power_laws.csv", PowerLaw::of);
  private static final Catalogue<TemperatureCurve> MOISTURE =
      table("equilibrium_moisture.csv", TemperatureCurve::of);
  private static final Catalogue<GlassStress> GLASS = table("glass_stresses.csv", GlassStress::of);
  private static final Catalogue<GlassThickness> GLASS_THICKNESSES =
      table("glass_thicknesses.csv", GlassThickness::of);

  private static final Catalogue<BendingStrength> BENDING =
      table("bending_strengths.csv", BendingStrength::of);
  private static final Catalogue<Colour> COLOURS = table("colours.csv", Colour::of);

  private Reference() {}

  private static <T extends Listed> Catalogue<T> table(String file, Function<Row, T> make) {
    List<T> rows = Row.all(file, make);
    return new Catalogue<>(rows);
  }

  public static Catalogue<Wood> woods() {
    return WOODS;
  }

  public static Catalogue<PanelProduct> panels() {
    return PANELS;
  }

  /** Woods and panels together: all that a part can be made of. */
  public static Catalogue<Substance> substances() {
    return SUBSTANCES;
  }

  public static Catalogue<WoodMovement> movement() {
    return MOVEMENT;
  }

  public static Catalogue<ElasticRatios> elasticRatios() {
    return ELASTIC_RATIOS;
  }

  /** Those of a wood, or of its kind; those of a panel's family. */
  public static ElasticRatios ratiosOf(Substance substance) {
    return switch (substance) {
      case Wood wood ->
          ELASTIC_RATIOS
              .find(wood.name())
              .orElseGet(() -> ELASTIC_RATIOS.get(ElasticRatios.rowOf(wood.kind())));
      case PanelProduct panel -> ELASTIC_RATIOS.get(ElasticRatios.rowOf(panel.family()));
    };
  }

  /** Whether it bends across as it does along. */
  public static boolean bendsAlikeAllWays(Substance substance) {
    return substance
        .modulusAcross()
        .map(across -> across.typical().equals(substance.modulus().typical()))
        .orElseGet(() -> ratiosOf(substance).across() == 1);
  }

  public static Catalogue<BendingStrength> bendingStrengths() {
    return BENDING;
  }

  /** That of its own row, or of its kind or family; nothing of glass. */
  public static Optional<BendingStrength> bendingStrength(Substance substance) {
    Enum<?> group =
        switch (substance) {
          case Wood wood -> wood.kind();
          case PanelProduct panel -> panel.family();
        };
    return BENDING.find(substance.name()).or(() -> BENDING.find(ElasticRatios.rowOf(group)));
  }

  /** What woods, panels, and what else is seen of a case look like. */
  public static Catalogue<Colour> colours() {
    return COLOURS;
  }

  /** That of a wood, or of its kind; that of a panel's family. */
  public static Colour colourOf(Substance substance) {
    return switch (substance) {
      case Wood wood ->
          COLOURS.find(wood.name()).orElseGet(() -> COLOURS.get(ElasticRatios.rowOf(wood.kind())));
      case PanelProduct panel -> COLOURS.get(ElasticRatios.rowOf(panel.family()));
    };
  }

  public static Catalogue<CreepFactor> creep() {
    return CREEP;
  }

  /** The three loads that every shelf is held against, lightest first. */
  public static Catalogue<ReferenceLoad> loads() {
    return LOADS;
  }

  /** Loads that floors are designed for, lightest first. */
  public static Catalogue<ReferenceLoad> floorLoads() {
    return FLOOR_LOADS;
  }

  public static Catalogue<SagLimit> sagLimits() {
    return SAG_LIMITS;
  }

  /** What stands on shelves, with its weight and size. */
  public static Catalogue<HeldThing> things() {
    return THINGS;
  }

  public static Catalogue<ShelfPin> pins() {
    return PINS;
  }

  public static Catalogue<PinSleeve> sleeves() {
    return SLEEVES;
  }

  public static Catalogue<ShelfStandard> standards() {
    return STANDARDS;
  }

  public static Catalogue<GlassStress> glassStresses() {
    return GLASS;
  }

  /** Thinnest first of each unit. */
  public static Catalogue<GlassThickness> glassThicknesses() {
    return GLASS_THICKNESSES;
  }

  /** Strengths of fasteners. */
  public static Catalogue<PowerLaw> powerLaws() {
    return POWER_LAWS;
  }

  /** The curves of equilibrium moisture: W, K, K1, K2. */
  public static Catalogue<TemperatureCurve> moisture() {
    return MOISTURE;
  }

  /**
   * @throws IllegalArgumentException if no constant has the name
   */
  public static Catalogue<Constant> constants() {
    return CONSTANTS;
  }

  public static Constant constant(String name) {
    return CONSTANTS.get(name);
  }
}
