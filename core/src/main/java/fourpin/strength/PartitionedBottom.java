package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Lazy;
import fourpin.measure.LazyList;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.plate.BentPlate;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.PlateSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The bottom of a case with partitions that stands on a kick: a partition stands on the kick in
 * front and on nothing behind it, so that the bottom carries it there, and what its shelves and the
 * top bring down, from side to side. As a plate that rests on both sides and on the kick; back and
 * joints to the top, which may hold a partition up, and its own stiffness are not counted on.
 */
final class PartitionedBottom {

  private static final String PRESSURE =
      ", p = q / (y₂ - y₁) from y₁ to y₂ in each bay, R / ((b - a) (y₂ - y₁)) likewise and"
          + " T / ((b - a) y₀) all along under each partition, and g / D";

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final PartitionFeet feet;
  private final Lazy<BottomAnswer> most;

  /**
   * @param feet what its partitions bring down
   */
  PartitionedBottom(Job job, BuiltCase built, PartitionFeet feet) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
    this.feet = feet;
    this.most = Lazy.of(() -> most(BottomPlate.back(built)));
  }

  /** Sag now and after years; nothing where no partition stands on it, or blocks under them. */
  List<Figure> all() {
    if (!stands()) {
      return List.of();
    }
    List<Figure> all = new ArrayList<>(List.of(now(), years()));
    all.addAll(stress().figures(most.get().stress(), inputs(most.get().stress().of())));
    return all;
  }

  /** That it may break; that it bends too far, else that partitions stand on it. */
  List<Finding> findings() {
    List<Finding> all = new ArrayList<>();
    if (stands()) {
      bends().ifPresent(all::add);
      Optional.of(most.get().stress())
          .filter(stressed -> !stress().holds(stressed))
          .map(this::breaks)
          .ifPresent(all::add);
    }
    return all;
  }

  private Optional<Finding> bends() {
    if (!holds(sag().mm())) {
      return Optional.of(sinks());
    }
    return BottomPlate.back(built) == Hold.FREE
        ? Optional.of(feet.stand(List.of(blocks())))
        : Optional.empty();
  }

  private BottomAnswer.Sag sag() {
    return most.get().sag();
  }

  private BottomStress stress() {
    return new BottomStress(
        Figure.id(built.order().name(), "bottom"),
        "the bottom from side to side under its partitions, " + BottomPlate.held(built),
        BottomPlate.of(job, built, length()),
        ServiceClass.of(settings));
  }

  private Finding breaks(BottomStress.Most stressed) {
    return stress()
        .finding(
            stressed, inputs(stressed.of()), feet.place(), job.unit(), LazyList.of(this::cures));
  }

  private boolean stands() {
    return built.bays().size() > 1
        && BottomPlate.kick(built).isPresent()
        && BottomPlate.behind(built) != BottomPlate.Behind.BLOCKS;
  }

  private Part bottom() {
    return built.part("B");
  }

  private double left() {
    return built.bays().getFirst().clear().low().x().mm();
  }

  private double length() {
    return built.bays().getLast().clear().high().x().mm() - left();
  }

  /** Bays and partitions loaded alike, in each way that is known in some bay. */
  private BottomAnswer most(Hold back) {
    BottomPlate plate = BottomPlate.of(job, built, length(), bottom().thickness().mm(), back);
    PlateSolver solver = new PlateSolver(plate.plate());
    return ways().stream()
        .map(way -> answer(plate, solver, way))
        .reduce(BottomAnswer::more)
        .orElseThrow();
  }

  private List<BottomLoad> ways() {
    return built.bays().stream().flatMap(bay -> ways(bay).stream()).distinct().toList();
  }

  private List<BottomLoad> ways(BaySpace bay) {
    return BottomLoad.all(LoadCases.of(built.order(), bay.number(), bottom().box().size(Axis.Y)));
  }

  private BottomAnswer answer(BottomPlate plate, PlateSolver solver, BottomLoad way) {
    List<PlateLoad> loads = new ArrayList<>();
    loads.add(plate.plate().evenly(plate.own() / plate.depth()));
    built.bays().forEach(bay -> on(bay, plate, way).ifPresent(loads::add));
    feet.feet().forEach(foot -> loads.addAll(under(foot, plate, way)));
    BentPlate bent = solver.under(loads).orElseThrow();
    return BottomAnswer.of(way, most(bent), () -> plate.stress(bent));
  }

  private double most(BentPlate bent) {
    double back = bent.plate().depth();
    return feet.feet().stream()
        .mapToDouble(foot -> bent.deflection(foot.middle() - left(), back))
        .reduce(bent.deepest(), Math::max);
  }

  private Optional<PlateLoad> on(BaySpace bay, BottomPlate plate, BottomLoad way) {
    double from = bay.clear().low().x().mm() - left();
    double to = bay.clear().high().x().mm() - left();
    return in(bay, way).on(line(bay), from, to, plate.behind());
  }

  /** How it lies in a bay while it lies so in others; evenly where it can't. */
  private BottomLoad in(BaySpace bay, BottomLoad way) {
    List<BottomLoad> ways = ways(bay);
    return ways.stream().filter(way::isLike).findFirst().orElseGet(ways::getFirst);
  }

  private double line(BaySpace bay) {
    return ShelfLoad.of(built.order(), bay.number()).perMm(bottom().box().size(Axis.Y));
  }

  /** What its shelves carry lies as on the bottom; all else is spread over its depth. */
  private List<PlateLoad> under(PartitionFeet.Foot foot, BottomPlate plate, BottomLoad way) {
    double from = foot.from() - left();
    double to = foot.to() - left();
    double wide = to - from;
    BottomLoad evenly = ways(built.bays().getFirst()).getFirst();
    List<PlateLoad> loads = new ArrayList<>();
    evenly.on(foot.rest() / wide, from, to, plate.behind()).ifPresent(loads::add);
    for (PartitionFeet.Ends ends : foot.ends()) {
      in(ends.bay(), way).on(ends.load() / wide, from, to, plate.behind()).ifPresent(loads::add);
    }
    return loads;
  }

  private Sourced creep() {
    return Matters.creep(job.material(bottom().material()), settings);
  }

  /** So that no shelf beside a partition comes to lie out of level by more than it may sag. */
  private double narrowest() {
    return built.bays().stream()
        .mapToDouble(bay -> bay.clear().size(Axis.X).mm())
        .min()
        .orElseThrow();
  }

  private boolean holds(double sag) {
    return sag <= limit(Setting.SAG_LIMIT)
        && sag * creep().number() <= limit(Setting.SAG_LIMIT_YEARS);
  }

  private double limit(Setting setting) {
    return narrowest() / settings.number(setting);
  }

  private Figure now() {
    return figure(
        "bottom-sag",
        "sag of the bottom from side to side under its partitions, %s, the load "
                .formatted(BottomPlate.held(built))
            + sag().of().place(),
        sag().mm(),
        BottomPlate.BENDING + PRESSURE,
        inputs(sag().of()),
        PlateFigures.PLATE);
  }

  private List<Input> inputs(BottomLoad way) {
    List<Input> inputs = new ArrayList<>();
    for (BaySpace bay : built.bays()) {
      inputs.add(
          new Input(
              "q",
              "load on the bottom of bay " + bay.number(),
              Quantity.of(line(bay), QuantityUnit.LINE_LOAD),
              ShelfLoad.of(built.order(), bay.number()).given().source()));
      inputs.addAll(in(bay, way).inputs());
    }
    feet.feet().forEach(foot -> inputs.addAll(foot.inputs(left())));
    inputs.add(
        new Input(
            "y₀",
            "depth of the bottom",
            Quantity.of(bottom().box().size(Axis.Y)),
            Source.GEOMETRY));
    inputs.addAll(BottomPlate.of(job, built, length()).inputs("from side to side"));
    return inputs;
  }

  private Figure years() {
    Figure now = now();
    return figure(
        "bottom-sag-years",
        "the same after years",
        now.value().value() * creep().number(),
        "k s",
        List.of(
            creep().input("k", "sag after years over sag at first"),
            new Input("s", now.title(), now.value(), now.source())),
        creep().source());
  }

  private Finding sinks() {
    Quantity now = mm(sag().mm());
    Quantity years = mm(sag().mm() * creep().number());
    Quantity first = mm(limit(Setting.SAG_LIMIT));
    Quantity last = mm(limit(Setting.SAG_LIMIT_YEARS));
    return new Finding(
        Severity.DOUBT,
        "partition-sinks",
        "%s, which %s: with %s it bends by %s now and %s after years from side to side, the back not counted on; %s and %s are allowed, as over the narrowest bay"
            .formatted(
                feet.words(),
                alone(),
                sag().of().words(job.unit()),
                now.textBeside(first, job.unit()),
                years.textBeside(last, job.unit()),
                first.textBeside(now, job.unit()),
                last.textBeside(years, job.unit())),
        all(),
        feet.place(),
        LazyList.of(this::cures));
  }

  private String alone() {
    return BottomPlate.back(built) == Hold.FREE
        ? "nothing carries behind the kick"
        : "kick and second board carry along its edges alone";
  }

  private List<Remedy> cures() {
    List<Remedy> all = new ArrayList<>(List.of(blocks()));
    if (BottomPlate.back(built) == Hold.FREE) {
      kickBehind().ifPresent(all::add);
    }
    return all;
  }

  private Remedy blocks() {
    return new BehindKick(job, built).blocks(new KickBottoms(job, built).onBlocks());
  }

  private Optional<Remedy> kickBehind() {
    BottomAnswer then = most(Hold.HINGED);
    return holds(then.sag().mm()) && stress().holds(then.stress())
        ? Optional.of(new BehindKick(job, built).board("it then bends " + words(then.sag().mm())))
        : Optional.empty();
  }

  private String words(double sag) {
    return "by %s now and %s after years".formatted(text(sag), text(sag * creep().number()));
  }

  private Figure figure(
      String name, String title, double mm, String formula, List<Input> inputs, Source source) {
    String id = Figure.id(built.order().name(), name);
    return new Figure(id, title, mm(mm), formula, inputs, source);
  }

  private String text(double mm) {
    return mm(mm).text(job.unit());
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }
}
