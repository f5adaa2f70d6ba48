package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Grain;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.reference.Constant;
import fourpin.reference.CreepFactor;
import fourpin.reference.ElasticRatios;
import fourpin.reference.PanelProduct;
import fourpin.reference.Reference;
import fourpin.reference.Substance;
import fourpin.reference.Substance.Family;
import fourpin.reference.Wood;
import fourpin.strength.Laminate.Ply;
import fourpin.strength.Laminate.Ribs;
import fourpin.strength.Section.Layer;
import fourpin.strength.Section.Matter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What the job's materials are made of, from the job and the reference tables. */
final class Matters {

  static final Source LAYERS =
      new Source(
          "a panel of layers glued on each other, each of its row in the tables",
          "Jones, Mechanics of Composite Materials, classical theory of laminates; any strength of"
              + " materials for one way",
          Standing.DERIVED);

  /** Specific gravity of a panel from its density at the moisture of rooms, 12 % by mass. */
  private static final double DENSITY_OF_ONE = 1120;

  private Matters() {}

  /**
   * What the job states goes over the tables; the tables' ratios between the ways are kept. Parts
   * that may be cut either way are as stiff as the weaker one.
   */
  static Matter of(Material material) {
    return isCutEitherWay(material) ? asLaid(material).eitherWay() : asLaid(material);
  }

  /** Of a part that bends along its grain. @param depth of what bends, front to back, mm */
  static Section section(Job job, Part part, double depth) {
    Matter matter = of(job.material(part.material()));
    return new Section(List.of(new Layer(part.name(), matter, depth, part.thickness().mm(), 0, 0)));
  }

  /** Of all its depth. */
  static Section section(Job job, Part part) {
    return section(job, part, part.box().size(Axis.Y).mm());
  }

  /** With its grain along the part. */
  static Matter asLaid(Material material) {
    return isOfLayers(material) ? ofLayers(laminate(material), material) : ofOne(material);
  }

  /** Whether it is unlike both ways, and the plan may cut its parts with either along them. */
  static boolean isCutEitherWay(Material material) {
    return material.grain() == Grain.NONE
        && !material.isCutInLayers()
        && !asLaid(material).flat().isAlikeAllWays();
  }

  private static boolean isOfLayers(Material material) {
    return !material.layers().isEmpty() && material.stiffness().isEmpty();
  }

  /** The panel as it is glued up, of the same thickness whatever was measured. */
  static Laminate laminate(Material material) {
    return new Laminate(material.layers().stream().map(Matters::ply).toList());
  }

  private static Ply ply(Material.Layer layer) {
    Substance substance = Reference.substances().get(layer.of());
    Flat flat = flat(modulusOf(substance), substance);
    boolean turned = layer.turn() == Material.Turn.ACROSS;
    Optional<Ribs> ribs =
        Optional.of(layer)
            .filter(Material.Layer::isRibs)
            .map(l -> ribs(l, flat, substance.family()));
    return new Ply(
        (turned ? flat.across() : flat.along()).number(),
        (turned ? flat.along() : flat.across()).number(),
        flat.shear().number(),
        substance.density().typical().value(),
        layer.thickness().mm(),
        layer.share(),
        ribs);
  }

  /** On edge: their height lies across their grain. */
  private static Ribs ribs(Material.Layer layer, Flat flat, Family family) {
    double rolling =
        switch (family) {
          case PARTICLEBOARD, FIBREBOARD, GLASS -> 1;
          case SOLID_WOOD, LAMINATED_WOOD, PLYWOOD, STRAND_BOARD ->
              Reference.constant("rolling shear of wood").value();
        };
    return new Ribs(
        layer.turn(),
        layer.rib().map(Length::mm),
        flat.across().number(),
        rolling * flat.shear().number());
  }

  private static Matter ofLayers(Laminate laminate, Material material) {
    double along = laminate.bendingAlong();
    double across = laminate.bendingAcross();
    return new Matter(
        new Flat(
            layered(along, QuantityUnit.STRESS),
            layered(across, QuantityUnit.STRESS),
            layered(laminate.twisting(), QuantityUnit.STRESS),
            poisson(material, along, across)),
        layered(laminate.shearing(), QuantityUnit.STRESS),
        layered(laminate.turned().shearing(), QuantityUnit.STRESS),
        material
            .density()
            .map(Sourced::stated)
            .orElseGet(() -> layered(laminate.density(), QuantityUnit.DENSITY)),
        laminate.stretching() / along,
        laminate.outer() / along,
        stated(material).or(() -> ofFaces(material)));
  }

  /** Of the weaker of its faces, each as it lies; the layers between them are stressed less. */
  private static Optional<Breaking> ofFaces(Material material) {
    return Stream.of(material.layers().getFirst(), material.layers().getLast())
        .flatMap(layer -> breaking(layer).stream())
        .min(Comparator.comparingDouble(b -> b.allowed().number()));
  }

  private static Optional<Breaking> breaking(Material.Layer layer) {
    Substance substance = Reference.substances().get(layer.of());
    Flat flat = flat(modulusOf(substance), substance);
    double share =
        layer.turn() == Material.Turn.ACROSS
            ? Math.min(1, flat.across().number() / flat.along().number())
            : 1;
    return Breaking.of(substance).map(b -> b.times(share, b.strength().source()));
  }

  /** That of its faces; what is far stiffer across than along narrows less. */
  private static Sourced poisson(Material material, double along, double across) {
    Sourced ofFaces = flat(modulusOf(substance(material)), substance(material)).poisson();
    double times = Math.min(1, Math.sqrt(along / across));
    return new Sourced(Quantity.of(times * ofFaces.number(), QuantityUnit.RATIO), ofFaces.source());
  }

  private static Sourced layered(double value, QuantityUnit unit) {
    return new Sourced(Quantity.of(value, unit), LAYERS);
  }

  private static Matter ofOne(Material material) {
    Substance substance = substance(material);
    Sourced along = material.stiffness().map(Sourced::stated).orElseGet(() -> modulusOf(substance));
    Sourced density =
        material
            .density()
            .map(Sourced::stated)
            .orElse(new Sourced(substance.density().typical(), substance.source()));
    return new Matter(
        flat(along, substance),
        shear(substance, along),
        density,
        stated(material).or(() -> Breaking.of(substance)));
  }

  private static Optional<Breaking> stated(Material material) {
    return material
        .strength()
        .flatMap(strength -> Breaking.of(substance(material)).map(b -> b.stated(strength)));
  }

  /** As the tables have it. */
  static Flat tabled(String of) {
    Substance substance = Reference.substances().get(of);
    return flat(modulusOf(substance), substance);
  }

  private static Sourced modulusOf(Substance substance) {
    return new Sourced(substance.modulus().typical(), substance.source());
  }

  private static Sourced shear(Substance substance, Sourced modulus) {
    Constant ratio =
        Reference.constant(
            substance.family() == Family.GLASS ? "shear ratio of glass" : "shear ratio of wood");
    Quantity shear = Quantity.of(modulus.number() / ratio.value(), QuantityUnit.STRESS);
    return new Sourced(shear, ratio.source());
  }

  private static Flat flat(Sourced along, Substance substance) {
    ElasticRatios ratios = Reference.ratiosOf(substance);
    Sourced across =
        substance
            .modulusAcross()
            .map(a -> times(along, a.typical(), substance))
            .orElseGet(() -> times(along, ratios.across(), ratios.source()));
    return new Flat(
        along,
        across,
        times(along, ratios.shear(), ratios.source()),
        new Sourced(Quantity.of(ratios.poisson(), QuantityUnit.RATIO), ratios.source()));
  }

  private static Sourced times(Sourced along, Quantity across, Substance substance) {
    double ratio = across.value() / substance.modulus().typical().value();
    return times(along, ratio, substance.source());
  }

  private static Sourced times(Sourced along, double ratio, Source source) {
    return new Sourced(Quantity.of(along.number() * ratio, QuantityUnit.STRESS), source);
  }

  /** Specific gravity, for panels of the low end of their range. */
  static Sourced specificGravity(Substance substance) {
    double gravity =
        switch (substance) {
          case Wood wood -> wood.specificGravity();
          case PanelProduct panel -> panel.density().low().value() / DENSITY_OF_ONE;
        };
    return new Sourced(Quantity.of(gravity, QuantityUnit.RATIO), substance.source());
  }

  static Substance substance(Material material) {
    return Reference.substances().get(material.of());
  }

  /**
   * That nearly all of it passes: the mean over 1.2 for wood, the low end of the range for panels.
   */
  static double characteristicDensity(Material material) {
    return switch (substance(material)) {
      case Wood wood ->
          wood.density().typical().value()
              / Reference.constant("mean over characteristic density").value();
      case PanelProduct panel -> panel.density().low().value();
    };
  }

  /** Sag after years over sag at first, for a shelf of this material. */
  static Sourced creep(Material material, Settings settings) {
    Family family = substance(material).family();
    return settings.choice(Setting.CREEP_RULE).equals("eurocode") && family != Family.GLASS
        ? eurocode(family, ServiceClass.of(settings))
        : handbook(family, settings);
  }

  /** The row and its class are named, since it may be that of drier air. */
  private static Sourced eurocode(Family family, ServiceClass air) {
    ServiceClass counted = creepingAs(family, air);
    CreepFactor factor = Reference.creep().get(eurocode(family) + counted.inNames());
    Source of = factor.source();
    String beyond = counted == air ? "" : "; no factor for service class " + air.number();
    return new Sourced(
        Quantity.of(factor.totalOverFirst(), QuantityUnit.RATIO),
        new Source(of.title(), of.place() + ", " + factor.condition() + beyond, of.standing()));
  }

  /** Boards that are not for air so damp have the factor of the dampest air they are for. */
  static ServiceClass creepingAs(Family family, ServiceClass air) {
    return Arrays.stream(ServiceClass.values())
        .filter(upTo -> upTo.compareTo(air) <= 0)
        .filter(upTo -> Reference.creep().find(eurocode(family) + upTo.inNames()).isPresent())
        .reduce((_, damper) -> damper)
        .orElseThrow();
  }

  private static String eurocode(Family family) {
    return "eurocode, " + family.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static Sourced handbook(Family family, Settings settings) {
    return switch (family) {
      case SOLID_WOOD, LAMINATED_WOOD -> ratio(Setting.CREEP_SOLID, settings);
      case PLYWOOD, STRAND_BOARD, PARTICLEBOARD, FIBREBOARD -> ratio(Setting.CREEP_PANEL, settings);
      case GLASS -> noCreep();
    };
  }

  private static Sourced noCreep() {
    double factor = Reference.creep().get("glass").totalOverFirst();
    Source source = Reference.creep().get("glass").source();
    return new Sourced(Quantity.of(factor, QuantityUnit.RATIO), source);
  }

  static Sourced ratio(Setting setting, Settings settings) {
    return new Sourced(
        Quantity.of(settings.number(setting), QuantityUnit.RATIO), settings.source(setting));
  }
}
