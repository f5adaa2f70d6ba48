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
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.LazyList;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.strength.plate.Bent;
import fourpin.strength.plate.MirroredPlate;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.PlateSolver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How far the bottom of each bay sags that stands on a kick, however its load lies: a plate that
 * rests on the uprights at its ends and on the kick in front; its back edge is free, unless the job
 * states a second board. Partitions are taken to stand on something here; {@link PartitionedBottom}
 * tells what comes of it where they do not.
 */
final class KickBottoms {

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;

  /** Of bays alike once; whoever looks into cures may do so at the same time. */
  private final Map<Loaded, BottomAnswer> bent = new ConcurrentHashMap<>();

  /** What is bent, and what it carries along it besides its own weight, N/mm. */
  private record Loaded(BottomPlate plate, double line, List<BottomLoad> ways) {}

  KickBottoms(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
  }

  /** Sag now and after years, bay by bay; none where the bottom lies on what it stands on. */
  List<Figure> all() {
    return bays().stream().flatMap(bay -> all(bay).stream()).toList();
  }

  private List<Figure> all(BaySpace bay) {
    List<Figure> all = new ArrayList<>(List.of(now(bay), years(bay)));
    BottomStress.Most most = most(bay).stress();
    all.addAll(stress(bay, plate(bay)).figures(most, inputs(bay, most.of())));
    return all;
  }

  List<Finding> findings() {
    List<Finding> all = new ArrayList<>();
    bays().stream().filter(bay -> !holds(bay, sag(bay).mm())).map(this::sags).forEach(all::add);
    bays().stream()
        .filter(bay -> !stress(bay, plate(bay)).holds(most(bay).stress()))
        .map(this::breaks)
        .forEach(all::add);
    return all;
  }

  private Finding breaks(BaySpace bay) {
    BottomStress.Most most = most(bay).stress();
    return stress(bay, plate(bay))
        .finding(most, inputs(bay, most.of()), place(), job.unit(), LazyList.of(() -> cures(bay)));
  }

  private BottomStress stress(BaySpace bay, BottomPlate plate) {
    return new BottomStress(
        Figure.id(built.order().name(), "bottom-" + bay.number()),
        "the bottom of bay %s between the uprights behind its kick, %s"
            .formatted(bay.number(), BottomPlate.held(built)),
        plate,
        ServiceClass.of(settings));
  }

  private Place place() {
    return Place.of(built.order().name(), bottom().mark(), bottom().box());
  }

  private BottomPlate plate(BaySpace bay) {
    return BottomPlate.of(job, built, span(bay));
  }

  private List<BaySpace> bays() {
    return BottomPlate.kick(built).isPresent() ? built.bays() : List.of();
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

  private BottomAnswer.Sag sag(BaySpace bay) {
    return most(bay).sag();
  }

  private BottomAnswer most(BaySpace bay) {
    return most(bay, plate(bay));
  }

  private BottomPlate plate(BaySpace bay, double thickness, Hold back) {
    return BottomPlate.of(job, built, span(bay), thickness, back);
  }

  private BottomAnswer most(BaySpace bay, BottomPlate plate) {
    Length depth = bottom().box().size(Axis.Y);
    List<BottomLoad> ways = BottomLoad.all(LoadCases.of(built.order(), bay.number(), depth));
    return bent.computeIfAbsent(
        new Loaded(plate, load(bay).value().value(), ways), KickBottoms::most);
  }

  /** Of those that sag it alike, the first. */
  private static BottomAnswer most(Loaded of) {
    Plate plate = of.plate().plate();
    MirroredPlate solver = new MirroredPlate(plate, PlateSolver.PARTS);
    return of.ways().stream()
        .map(way -> answer(of, way, plate, solver))
        .reduce(BottomAnswer::more)
        .orElseThrow();
  }

  private static BottomAnswer answer(Loaded of, BottomLoad way, Plate plate, MirroredPlate solver) {
    BottomPlate bottom = of.plate();
    List<PlateLoad> all = new ArrayList<>(List.of(plate.evenly(bottom.own() / bottom.depth())));
    way.on(of.line(), 0, bottom.length(), bottom.behind()).ifPresent(all::add);
    Bent under = solver.under(all).orElseThrow();
    return BottomAnswer.of(way, BottomPlate.most(under), () -> bottom.stress(under));
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
    BottomAnswer.Sag sag = sag(bay);
    return new Figure(
        id(bay, "sag"),
        "sag of the bottom of bay %s between the uprights, behind the kick, %s, the load %s"
            .formatted(bay.number(), BottomPlate.held(built), sag.of().place()),
        mm(sag.mm()),
        BottomPlate.BENDING + BottomLoad.PRESSURE,
        inputs(bay, sag.of()),
        PlateFigures.PLATE);
  }

  private List<Input> inputs(BaySpace bay, BottomLoad way) {
    Figure load = load(bay);
    List<Input> inputs = new ArrayList<>();
    inputs.add(new Input("q", load.title(), load.value(), load.source()));
    inputs.addAll(way.inputs());
    inputs.addAll(BottomPlate.of(job, built, span(bay)).inputs("clear width of the bay"));
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
    BottomAnswer.Sag most = sag(bay);
    Quantity now = mm(most.mm());
    Quantity years = mm(most.mm() * creep().number());
    Quantity first = mm(limit(bay, Setting.SAG_LIMIT));
    Quantity last = mm(limit(bay, Setting.SAG_LIMIT_YEARS));
    return new Finding(
        Severity.DOUBT,
        "bottom-sags",
        "the bottom of bay %s sags by %s now and %s after years between the uprights behind its kick, %s, with %s, the back not counted on; %s and %s are allowed"
            .formatted(
                bay.number(),
                now.textBeside(first, job.unit()),
                years.textBeside(last, job.unit()),
                BottomPlate.held(built),
                most.of().words(job.unit()),
                first.textBeside(now, job.unit()),
                last.textBeside(years, job.unit())),
        List.of(now(bay), years(bay)),
        place(),
        LazyList.of(() -> cures(bay)));
  }

  private String words(double sag) {
    return "by %s now and %s after years".formatted(text(sag), text(sag * creep().number()));
  }

  /** What it does in the worst of its bays while blocks carry the partitions. */
  String onBlocks() {
    BaySpace worst =
        bays().stream().max(Comparator.comparingDouble(bay -> share(bay, free(bay)))).orElseThrow();
    double sag = free(worst).sag().mm();
    return "between them the bottom then sags %s, %s"
        .formatted(
            words(sag),
            holds(worst, sag) ? "which is allowed" : "which is too much: cure that too");
  }

  private BottomAnswer free(BaySpace bay) {
    return then(bay, thickness(), Hold.FREE);
  }

  private static double share(BaySpace bay, BottomAnswer then) {
    return then.sag().mm() / span(bay);
  }

  /** Those that hold in all bays, since the case has one bottom. */
  private List<Remedy> cures(BaySpace bay) {
    List<Remedy> all = new ArrayList<>();
    if (BottomPlate.back(built) == Hold.FREE) {
      kickBehind(bay).ifPresent(all::add);
    }
    thicker(bay).ifPresent(all::add);
    return all;
  }

  private Optional<Remedy> kickBehind(BaySpace bay) {
    return bays().stream().allMatch(b -> holds(b, then(b, thickness(), Hold.HINGED)))
        ? Optional.of(
            new BehindKick(job, built)
                .board("it then sags " + words(then(bay, thickness(), Hold.HINGED).sag().mm())))
        : Optional.empty();
  }

  private Optional<Remedy> thicker(BaySpace bay) {
    Material now = job.material(bottom().material());
    return Thicknesses.first(job, now, this::holds)
        .map(
            thick ->
                new Remedy(
                    "%s: it then sags %s"
                        .formatted(
                            Thicknesses.words(job, "the bottom", thick),
                            words(as(bay, thick.thickness().mm()).sag().mm())),
                    "wood and weight"));
  }

  private boolean holds(double thickness) {
    return bays().stream().allMatch(bay -> holds(bay, as(bay, thickness)));
  }

  private BottomAnswer as(BaySpace bay, double thickness) {
    return then(bay, thickness, BottomPlate.back(built));
  }

  private BottomAnswer then(BaySpace bay, double thickness, Hold back) {
    return most(bay, plate(bay, thickness, back));
  }

  private boolean holds(BaySpace bay, BottomAnswer then) {
    return holds(bay, then.sag().mm()) && stress(bay, plate(bay)).holds(then.stress());
  }

  private String text(double mm) {
    return mm(mm).text(job.unit());
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }
}
