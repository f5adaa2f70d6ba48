package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.reference.Constant;
import fourpin.reference.PanelProduct;
import fourpin.reference.Reference;
import fourpin.reference.Wood;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What the ends of one fixed shelf do to their joints: the shelf bears on the lower wall of a dado,
 * or the shoulder of a rabbet, or hangs on the screws of a butt joint. Glue is not counted on: it
 * holds end grain badly, and no figure for glued dadoes was found that one could build on.
 */
final class JointFigures {

  private static final Source STATICS =
      new Source("statics; glue not counted on", "", Standing.DERIVED);

  private final Job job;
  private final Settings settings;
  private final Part shelf;
  private final Part side;
  private final JointLoad carried;
  private final Joint joint;
  private final ServiceClass air;

  /**
   * @param side that one end is joined to
   * @param carried what that end brings
   */
  JointFigures(Job job, Settings settings, Part shelf, Part side, JointLoad carried, Joint joint) {
    this.job = job;
    this.settings = settings;
    this.shelf = shelf;
    this.side = side;
    this.carried = carried;
    this.joint = joint;
    this.air = ServiceClass.of(settings);
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>(List.of(carried.load()));
    switch (joint.kind()) {
      case DADO, RABBET -> all.addAll(List.of(bearing(), allowedBearing()));
      case BUTT -> {
        all.add(screwLoad());
        all.addAll(allowedScrew());
      }
    }
    return all;
  }

  /** For what may be asked of it beyond its load. */
  EndJoint end() {
    List<Double> screws = screws();
    return screwed()
        ? new EndJoint(load -> load.onScrew(screws), least(allowedScrew()))
        : new EndJoint(load -> onLine(load) / depth(), allowedBearing());
  }

  private static Figure least(List<Figure> allowed) {
    return Collections.min(allowed, Comparator.comparingDouble(f -> f.value().value()));
  }

  boolean screwed() {
    return joint.kind() == Joint.Kind.BUTT;
  }

  /** What the end carries. */
  JointLoad carried() {
    return carried;
  }

  /** How deep the shelf stands in the side. */
  double depth() {
    return side.box().shared(shelf.box()).size(Axis.X).mm();
  }

  double along() {
    return shelf.box().size(Axis.Y).mm();
  }

  /** Of how its load lies, what presses hardest on the wall of the dado. */
  EndLoad pressing() {
    return EndLoad.most(carried.loads(), this::onLine);
  }

  private double onLine(EndLoad load) {
    return load.onLine(along(), shelf.thickness().mm());
  }

  private String noun() {
    return switch (shelf.role()) {
      case BOTTOM -> "bottom";
      case TOP -> "top";
      default -> "shelf";
    };
  }

  /** What its ends stand in; asked only where they do. */
  String cut() {
    return joint.kind() == Joint.Kind.RABBET ? "rabbet" : "dado";
  }

  /** What bears it. */
  private String wall() {
    return joint.kind() == Joint.Kind.RABBET ? "shoulder of its rabbet" : "lower wall of its dado";
  }

  Figure bearing() {
    EndLoad of = pressing();
    return figure(
        "joint-bearing",
        "pressure of the " + noun() + " on the " + wall() + ", the load " + of.place(),
        stress(onLine(of) / depth()),
        of.onLineFormula(along()),
        List.of(
            new Input("R", carried.load().title(), force(of.newton()), STATICS),
            new Input("a", "depth of the " + cut(), length(depth()), Source.GEOMETRY),
            new Input("D", "depth of the " + noun(), length(along()), Source.GEOMETRY),
            new Input("y", EndLoad.MIDDLE, length(of.middle()), STATICS),
            new Input(
                "t",
                "thickness of the " + noun() + ", over which it bears at the least",
                length(shelf.thickness().mm()),
                Source.GEOMETRY)),
        STATICS);
  }

  Figure allowedBearing() {
    return switch (Matters.substance(job.material(shelf.material()))) {
      case Wood wood -> allowedBearing(wood);
      case PanelProduct panel -> allowedBearing(panel);
    };
  }

  /** What the air takes off their strength it takes off this too; unless they are not for it. */
  private Figure allowedBearing(PanelProduct panel) {
    Sourced dry = Reference.constant("bearing on the face of panels").sourced();
    Sourced indoors = EurocodeMargins.duration(panel, ServiceClass.FIRST).orElseThrow();
    Sourced here = EurocodeMargins.duration(panel, air).orElse(indoors);
    return figure(
        "joint-bearing-allowed",
        "pressure allowed on the face of the " + noun(),
        stress(dry.number() * here.number() / indoors.number()),
        "p k_mod / k₁",
        List.of(
            new Input("p", "allowed on the face of panels", stress(dry.number()), dry.source()),
            here.input("k_mod", air.words() + " of Eurocode 5"),
            indoors.input("k₁", "the same in service class 1")),
        dry.source());
  }

  private Figure allowedBearing(Wood wood) {
    Constant crush =
        Reference.constant(
            wood.kind() == Wood.Kind.SOFTWOOD
                ? "crush across the grain of softwood"
                : "crush across the grain of hardwood");
    Sourced duration = EurocodeMargins.duration(wood, air).orElseThrow();
    Sourced margin = EurocodeMargins.material();
    Sourced larger = EurocodeMargins.load();
    double density = Matters.characteristicDensity(job.material(shelf.material()));
    return figure(
        "joint-bearing-allowed",
        "pressure allowed across the grain of the " + noun() + ", by Eurocode 5",
        stress(crush.value() * density * duration.number() / (margin.number() * larger.number())),
        "c ρ k_mod / (γ_M γ_Q), ρ in kg/m³",
        List.of(
            crush.sourced().input("c", "characteristic strength over density"),
            new Input(
                "ρ",
                "characteristic density",
                Quantity.of(density, QuantityUnit.DENSITY),
                wood.source()),
            duration.input("k_mod", air.words()),
            margin.input("γ_M", "margin for solid wood"),
            larger.input("γ_Q", EurocodeMargins.LARGER)),
        crush.source());
  }

  /** Screws of one end, each so far behind the front edge, mm. */
  private List<Double> screws() {
    double front = shelf.box().low().y().mm();
    return side.features().stream()
        .filter(Hole.class::isInstance)
        .map(Hole.class::cast)
        .filter(hole -> hole.use() == Hole.Use.SCREW)
        .filter(hole -> hole.purpose().equals(shelf.name()) && within(hole))
        .map(hole -> hole.centre().y().mm() - front)
        .toList();
  }

  /** Shelves of one bay share their name; their screws stand at their own height. */
  private boolean within(Hole hole) {
    double z = hole.centre().z().mm();
    return z > shelf.box().low().z().mm() && z < shelf.box().high().z().mm();
  }

  /** Of how its load lies, what pulls hardest at a screw. */
  EndLoad pulling() {
    return EndLoad.most(carried.loads(), load -> load.onScrew(screws()));
  }

  /**
   * As many as hold by {@code most} on each, spread as they are bored; at least those there are.
   */
  int screwsFor(double most) {
    return IntStream.iterate(screws().size(), n -> n + 1)
        .filter(n -> n > along() || pulling().onScrew(spread(n)) <= most)
        .findFirst()
        .orElseThrow();
  }

  private List<Double> spread(int screws) {
    return IntStream.range(0, screws).mapToObj(i -> along() * (2 * i + 1) / (2 * screws)).toList();
  }

  Figure screwLoad() {
    EndLoad of = pulling();
    List<Input> inputs = new ArrayList<>();
    inputs.add(new Input("R", carried.load().title(), force(of.newton()), STATICS));
    inputs.add(
        new Input("n", "screws of one end", Quantity.count(screws().size()), Source.GEOMETRY));
    inputs.add(new Input("y", EndLoad.MIDDLE, length(of.middle()), STATICS));
    inputs.add(
        new Input(
            "y₀",
            "from the front edge to the middle of the screws",
            length(EndLoad.mean(screws())),
            Source.GEOMETRY));
    inputs.add(
        new Input(
            "y₁ - y₀",
            "from the middle of the screws to the furthest",
            length(EndLoad.furthest(screws())),
            Source.GEOMETRY));
    screws().stream().map(JointFigures::place).forEach(inputs::add);
    return figure(
        "joint-screw",
        "load on the most loaded screw of the joint, the load " + of.place(),
        force(of.onScrew(screws())),
        EndLoad.onScrewFormula(screws()),
        inputs,
        STATICS);
  }

  /** What codes allow on one screw of the end. */
  List<Figure> allowedScrew() {
    return new ScrewAllowances(job, settings, carried.prefix(), shelf, side).all();
  }

  private static Input place(double screw) {
    return new Input("yᵢ", "from the front edge to a screw", length(screw), Source.GEOMETRY);
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs, Source source) {
    return new Figure(carried.prefix() + "/" + id, title, value, formula, inputs, source);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }

  private static Quantity stress(double mpa) {
    return Quantity.of(mpa, QuantityUnit.STRESS);
  }
}
