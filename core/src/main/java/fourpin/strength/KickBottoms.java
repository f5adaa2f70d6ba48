package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.LazyList;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.Section.Layer;
import fourpin.strength.plate.Bent;
import fourpin.strength.plate.MirroredPlate;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.PlateSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How far the bottom of each bay sags that stands on a kick: a plate that rests on the uprights at
 * its ends and on the kick in front, its back edge free. What it stands over in front of the kick
 * is left out; so is the back, which may hold the back edge up. Partitions are taken to stand on
 * something: they are told of where they do not.
 */
final class KickBottoms {

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;

  /** Of bays alike once; whoever looks into cures may do so at the same time. */
  private final Map<Bending, Double> bent = new ConcurrentHashMap<>();

  private record Bending(double span, double pressure, Layer layer, Hold back) {}

  KickBottoms(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
  }

  /** Sag now and after years, bay by bay; none where the bottom lies on what it stands on. */
  List<Figure> all() {
    return bays().stream().flatMap(bay -> List.of(now(bay), years(bay)).stream()).toList();
  }

  List<Finding> findings() {
    return bays().stream().filter(bay -> !holds(bay, sag(bay))).map(this::sags).toList();
  }

  private List<BaySpace> bays() {
    return kick().isPresent() ? built.bays() : List.of();
  }

  private Optional<Kick> kick() {
    return built.order().kick().filter(kick -> kick.height().isPositive());
  }

  private Part bottom() {
    return built.part("B");
  }

  private double thickness() {
    return bottom().thickness().mm();
  }

  private static double span(BaySpace bay) {
    return bay.clear().size(Axis.X).mm();
  }

  private double recess() {
    return kick().map(Kick::recess).map(Length::mm).orElse(0.0);
  }

  /** Behind the front of the kick. */
  private double depth() {
    return bottom().box().size(Axis.Y).mm() - recess();
  }

  private double sag(BaySpace bay) {
    return sag(bay, thickness(), Hold.FREE);
  }

  private double sag(BaySpace bay, double thickness, Hold back) {
    return bent.computeIfAbsent(
        new Bending(span(bay), pressure(bay, thickness), layer(bay, thickness), back), this::sag);
  }

  /** Its own weight with it, N/mm². */
  private double pressure(BaySpace bay, double thickness) {
    double line = load(bay).value().value() * depth() / bottom().box().size(Axis.Y).mm();
    return (line + new Section(List.of(layer(bay, thickness))).weight()) / depth();
  }

  private double sag(Bending of) {
    Plate plate =
        Plate.even(
            of.span(),
            depth(),
            of.layer().matter().flat().plate(of.layer().thickness()),
            new Edges(Hold.HINGED, Hold.HINGED, Hold.HINGED, of.back()),
            List.of());
    return new MirroredPlate(plate, PlateSolver.PARTS)
        .under(List.of(plate.evenly(of.pressure())))
        .map(bent -> most(plate, bent))
        .orElseThrow();
  }

  private static double most(Plate plate, Bent bent) {
    return Math.max(bent.deepest(), bent.deflection(plate.length() / 2, plate.depth()));
  }

  private Layer layer(BaySpace bay, double thickness) {
    Layer whole =
        new Layer(
            "bottom", Matters.of(job.material(bottom().material())), depth(), thickness, 0, 0);
    return new Section(List.of(whole)).asPlate(span(bay), depth()).layers().getFirst();
  }

  private Figure load(BaySpace bay) {
    return ShelfLoad.of(built.order(), bay.number())
        .figure(id(bay, "load"), bottom().box().size(Axis.Y));
  }

  private String id(BaySpace bay, String what) {
    return Figure.id(built.order().name(), "bottom-" + bay.number() + "-" + what);
  }

  private Sourced creep() {
    return Matters.creep(job.material(bottom().material()), settings);
  }

  private boolean holds(BaySpace bay, double sag) {
    return sag <= limit(bay, Setting.SAG_LIMIT)
        && sag * creep().number() <= limit(bay, Setting.SAG_LIMIT_YEARS);
  }

  private double limit(BaySpace bay, Setting setting) {
    return span(bay) / settings.number(setting);
  }

  private Figure now(BaySpace bay) {
    return new Figure(
        id(bay, "sag"),
        "sag of the bottom of bay "
            + bay.number()
            + " between the uprights, behind the kick, its back edge free",
        mm(sag(bay)),
        "max w(x, y)" + PlateFigures.BENDING + ", and along three edges",
        inputs(bay),
        PlateFigures.PLATE);
  }

  private List<Input> inputs(BaySpace bay) {
    Figure load = load(bay);
    Layer layer = layer(bay, thickness());
    Flat flat = layer.matter().flat();
    List<Input> inputs = new ArrayList<>();
    inputs.add(new Input("q", load.title(), load.value(), load.source()));
    inputs.add(
        new Input(
            "g",
            "its own weight",
            Quantity.of(new Section(List.of(layer)).weight(), QuantityUnit.LINE_LOAD),
            PlateFigures.PLATE));
    inputs.add(new Input("L", "clear width of the bay", mm(span(bay)), Source.GEOMETRY));
    inputs.add(new Input("D", "depth behind the front of the kick", mm(depth()), Source.GEOMETRY));
    inputs.add(new Input("t", "thickness", mm(thickness()), Source.GEOMETRY));
    inputs.add(flat.along().input("E₁", "modulus of elasticity along"));
    inputs.add(flat.across().input("E₂", "modulus of elasticity across"));
    inputs.add(flat.shear().input("G", "shear modulus in its plane"));
    inputs.add(flat.poisson().input("ν", "Poisson ratio"));
    return inputs;
  }

  private Figure years(BaySpace bay) {
    Figure now = now(bay);
    return new Figure(
        id(bay, "sag-years"),
        "sag of the bottom of bay " + bay.number() + " after years",
        mm(now.value().value() * creep().number()),
        "k s",
        List.of(
            creep().input("k", "sag after years over sag at first"),
            new Input("s", now.title(), now.value(), now.source())),
        creep().source());
  }

  private Finding sags(BaySpace bay) {
    Quantity now = mm(sag(bay));
    Quantity years = mm(sag(bay) * creep().number());
    Quantity first = mm(limit(bay, Setting.SAG_LIMIT));
    Quantity last = mm(limit(bay, Setting.SAG_LIMIT_YEARS));
    return new Finding(
        Severity.DOUBT,
        "bottom-sags",
        ("the bottom of bay "
                + bay.number()
                + " sags by %s now and %s after years between the uprights behind its kick, the back"
                + " not counted on; %s and %s are allowed")
            .formatted(
                now.textBeside(first, job.unit()),
                years.textBeside(last, job.unit()),
                first.textBeside(now, job.unit()),
                last.textBeside(years, job.unit())),
        List.of(now(bay), years(bay)),
        Place.of(built.order().name(), bottom().mark(), bottom().box()),
        LazyList.of(() -> cures(bay)));
  }

  private String words(double sag) {
    return "by %s now and %s after years".formatted(text(sag), text(sag * creep().number()));
  }

  private List<Remedy> cures(BaySpace bay) {
    List<Remedy> all = new ArrayList<>(List.of(kickBehind(bay)));
    thicker(bay).stream()
        .mapToObj(
            thick ->
                new Remedy(
                    "make the bottom at least %s thick, of the same material: it then sags %s"
                        .formatted(text(thick), words(sag(bay, thick, Hold.FREE))),
                    "wood and weight"))
        .forEach(all::add);
    return all;
  }

  private Remedy kickBehind(BaySpace bay) {
    double then = sag(bay, thickness(), Hold.HINGED);
    return new Remedy(
        "stand a second kick board under its back edge from upright to upright: it then sags %s, %s"
            .formatted(
                words(then), holds(bay, then) ? "which is allowed" : "which is still too much"),
        "a board, in no cut list");
  }

  private OptionalDouble thicker(BaySpace bay) {
    return LeastThickness.above(
        thickness(), job.unit(), thick -> holds(bay, sag(bay, thick, Hold.FREE)));
  }

  private String text(double mm) {
    return mm(mm).text(job.unit());
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }
}
