package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.strength.SidewaysBalance.Load;
import fourpin.strength.SidewaysBalance.Side;
import fourpin.strength.SidewaysBalance.Stand;
import fourpin.strength.SidewaysBalance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * How a case, or one on another, screwed together, tips about the foot of one of its sides. Nothing
 * is taken to stand beside it, whatever the room or the job's other cases.
 */
final class SidewaysTipping {

  /** Sides that differ by no more than rounding are alike. */
  private static final double ALIKE = 1e-9;

  private static final Source STATICS =
      new Source(
          "statics: a case that turns about the foot of one side, nothing beside it",
          "rigid cases; one on another middle over middle",
          Standing.DERIVED);

  private static final String HELD = "F (x - n z / 1000)";

  private final Job job;
  private final List<BuiltCase> cases;
  private final Settings settings;
  private final LightPush light;
  private final Map<Seen, SidewaysBalance> balances = new ConcurrentHashMap<>();

  private record Seen(Load load, Side side) {}

  /**
   * @param cases from the floor upwards
   */
  SidewaysTipping(Job job, List<BuiltCase> cases) {
    this.job = job;
    this.cases = List.copyOf(cases);
    this.settings = cases.getFirst().order().settings();
    this.light = LightPush.of(settings);
  }

  /** Their parts as they are, ordered otherwise. */
  SidewaysTipping ordered(UnaryOperator<CaseOrder> change) {
    return new SidewaysTipping(
        job, cases.stream().map(built -> CaseTippingCures.ordered(built, change)).toList());
  }

  List<Figure> figures() {
    List<Figure> all = new ArrayList<>();
    Stream.of(Load.NONE, Load.ALL, Load.ONE_SIDE).map(this::atTop).forEach(all::add);
    if (worst() == Load.TURNING) {
      all.add(atTop(Load.TURNING));
    }
    all.add(pushedOver());
    return all;
  }

  /** How it is loaded when it stands least. */
  Load worst() {
    return held(Load.TURNING) < held(Load.NONE) ? Load.TURNING : Load.NONE;
  }

  /** What keeps it standing, loaded as it stands least, N·mm. */
  double held() {
    return held(worst());
  }

  private double held(Load load) {
    return held(load, side(load));
  }

  private double held(Load load, Side side) {
    return balance(load, side).weights().stream()
        .mapToDouble(w -> w.newton() * (w.from() - slope().at(w.up())))
        .sum();
  }

  /** Over which it tips the sooner. */
  private Side side(Load load) {
    return held(load, Side.RIGHT) < held(load, Side.LEFT) ? Side.RIGHT : Side.LEFT;
  }

  /** Which way it tips the sooner. */
  String way() {
    return way(worst());
  }

  private String way(Load load) {
    double left = held(load, Side.LEFT);
    return Math.abs(left - held(load, Side.RIGHT)) <= ALIKE * Math.abs(left)
        ? "to either side"
        : side(load).words();
  }

  private SidewaysBalance balance(Load load, Side side) {
    return balances.computeIfAbsent(new Seen(load, side), this::weighed);
  }

  private SidewaysBalance weighed(Seen seen) {
    List<Weight> all = new ArrayList<>();
    double under = 0;
    for (BuiltCase built : cases) {
      Stand stand = new Stand(seen.side(), inwards(built), under, slope().share());
      all.addAll(SidewaysBalance.of(job, built, seen.load(), stand).weights());
      under += height(built);
    }
    return new SidewaysBalance(all);
  }

  private double inwards(BuiltCase built) {
    return (SidewaysBalance.width(cases.getFirst()) - SidewaysBalance.width(built)) / 2;
  }

  private FloorSlope slope() {
    return FloorSlope.of(FloorSlope.To.SIDE, settings);
  }

  String floor() {
    return slope().words(job.unit());
  }

  LightPush light() {
    return light;
  }

  private static double height(BuiltCase built) {
    return built.outside().size(Axis.Z).mm();
  }

  double height() {
    return cases.stream().mapToDouble(SidewaysTipping::height).sum();
  }

  List<CaseOrder> orders() {
    return cases.stream().map(BuiltCase::order).toList();
  }

  /** How far from the foot of a side the middle of the lowest bottom hangs, the slope taken, mm. */
  double lever() {
    BuiltCase lowest = cases.getFirst();
    double up = lowest.part("B").box().high().z().mm();
    return SidewaysBalance.width(lowest) / 2 - slope().at(up);
  }

  private boolean isStack() {
    return cases.size() > 1;
  }

  private Figure atTop(Load load) {
    return figure(
        load.id(),
        "push sideways at the top that tips %s, %s".formatted(how(load), floor()),
        held(load) / height(),
        "max(0, " + HELD + ") / H",
        inputs(load));
  }

  private String how(Load load) {
    return "%s %s, %s, nothing beside it"
        .formatted(isStack() ? "both together" : "it", way(load), load.words());
  }

  /** The push no higher than a hand reaches, which is the one that is asked for. */
  Figure pushedOver() {
    List<Input> inputs = new ArrayList<>(inputs(worst()));
    inputs.add(light.height().input("h", Setting.LIGHT_PUSH_HEIGHT.meaning()));
    return figure(
        "pushed",
        "push sideways, no higher than a light push is taken, that tips %s, %s"
            .formatted(how(worst()), floor()),
        held() / light.at(height()),
        "max(0, " + HELD + ") / min(H, h)",
        inputs);
  }

  private List<Input> inputs(Load load) {
    SidewaysBalance balance = balance(load, side(load));
    return List.of(
        new Input("F", "weight of it and its contents", force(balance.newton()), STATICS),
        new Input(
            "x", "its middle from the side about which it turns", mm(balance.from()), STATICS),
        new Input("z", "its middle above the floor", mm(balance.up()), STATICS),
        slope().input(),
        new Input("H", "height over all", mm(height()), Source.GEOMETRY));
  }

  private Figure figure(
      String name, String title, double push, String formula, List<Input> inputs) {
    return new Figure(
        Figure.id(cases.getLast().order().name())
            + (isStack() ? "/stack-tips-sideways-" : "/tips-sideways-")
            + name,
        title,
        force(Math.max(0, push)),
        formula,
        inputs,
        STATICS);
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }
}
