package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.DoorLeaf;
import fourpin.job.Drawers;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.strength.Balance.Load;
import fourpin.strength.Balance.Weight;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What more tips one case forward: a floor that falls away, doors swung open, drawers pulled out,
 * someone on either.
 */
final class TippingFigures {

  private static final String HELD = "F (y - n z / 1000)";
  private static final String DOORS = "G (m + n w / 1000)";

  private static final String HUNG = ", all doors open and someone hanging on one";
  private static final String LEANT = ", one full drawer out and leant on";

  private static final Source STATICS =
      new Source("statics: a case that turns about its front foot", "", Standing.DERIVED);

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final String id;
  private final Map<Load, Balance> balances;
  private final double foot;
  private final double under;
  private final OpenDoors doors;
  private final LightPush light;

  /** Loaded where that turns it forward; that is nowhere, and empty, where nothing does. */
  private final Balance withoutDoors;

  /**
   * Of a case on the floor.
   *
   * @param foot from the front of the sides to the front foot, mm
   */
  TippingFigures(Job job, BuiltCase built, double foot) {
    this(job, built, foot, 0);
  }

  /**
   * @param foot from the front of the sides back to the foot about which it turns, mm
   * @param under how high it stands over that foot, mm
   */
  TippingFigures(Job job, BuiltCase built, double foot, double under) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
    this.id = Figure.id(built.order().name());
    this.foot = foot;
    this.under = under;
    this.doors = new OpenDoors(job, built, foot);
    this.light = LightPush.of(settings);
    this.balances = new EnumMap<>(Load.class);
    for (Load load : Load.values()) {
      balances.put(load, Balance.of(job, built, load, this::turnsForward));
    }
    this.withoutDoors = Balance.withoutDoors(job, built, Load.FORWARD, this::turnsForward);
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>(List.of(pushedOver()));
    built.order().doors().ifPresent(_ -> all.addAll(List.of(doorWeight(), open(), hungOn())));
    drawers().ifPresent(drawers -> all.addAll(drawers.all()));
    return all;
  }

  Optional<DrawerFigures> drawers() {
    return built
        .order()
        .drawers()
        .map(drawers -> new DrawerFigures(built, drawers, rest(), floor()));
  }

  private boolean turnsForward(Weight weight) {
    return moment(weight) < 0;
  }

  /** Of one weight about the foot, N·mm. */
  private double moment(Weight weight) {
    return weight.newton() * (weight.back() - foot - fall(weight.up()));
  }

  /** Those that differ from each other. */
  List<Load> loads() {
    return Stream.of(Load.values())
        .filter(load -> load != Load.FORWARD || worst() == Load.FORWARD)
        .toList();
  }

  /** How it is loaded when it stands least, whatever stands on it or does not. */
  Load worst() {
    return held(Load.FORWARD) < held(Load.NONE) ? Load.FORWARD : Load.NONE;
  }

  /** All but the drawers, doors swung open: what is shut can't be pulled out behind them. */
  private DrawerFigures.Rest rest() {
    return built
        .order()
        .doors()
        .map(
            _ ->
                new DrawerFigures.Rest(
                    opened(),
                    HELD + " - " + DOORS,
                    worst().words(),
                    footed(opened(withoutDoors())),
                    foot,
                    height(),
                    under))
        .orElseGet(
            () ->
                new DrawerFigures.Rest(
                    held(worst()),
                    HELD,
                    worst().words(),
                    footed(inputs(worst())),
                    foot,
                    height(),
                    under));
  }

  private List<Input> footed(List<Input> others) {
    List<Input> inputs = new ArrayList<>(others);
    inputs.add(new Input("f", "front of the sides to the front foot", mm(foot), Source.GEOMETRY));
    return inputs;
  }

  /**
   * What keeps a case standing when it stands least.
   *
   * @param words how it then is
   * @param moment about the front foot, N·mm
   */
  record Least(String words, double moment) {
    private static final Comparator<Least> FIRST = Comparator.comparingDouble(Least::moment);
  }

  /** With all doors open, and with all drawers out. */
  Optional<Least> leastOpen() {
    String loaded = worst().words();
    Stream<Least> open =
        built.order().doors().stream().map(_ -> new Least(loaded + ", all doors open", opened()));
    Stream<Least> out =
        drawers().stream()
            .map(d -> new Least(loaded + ", " + d.allOut(), d.held(d.drawers().count())));
    return Stream.concat(open, out).min(Least.FIRST);
  }

  /** However it is loaded, shut or open. */
  Least least() {
    return Stream.concat(
            loads().stream().map(load -> new Least(load.words(), held(load))), leastOpen().stream())
        .min(Least.FIRST)
        .orElseThrow();
  }

  /** Of all that findings tell of: someone hangs on a door, leans on a drawer, pushes lightly. */
  Least leastUsed() {
    String loaded = worst().words();
    List<Least> all = new ArrayList<>();
    all.add(new Least(loaded + ", shut and lightly pushed", pushed()));
    built.order().doors().map(_ -> new Least(loaded + HUNG, hung())).ifPresent(all::add);
    drawers().map(d -> new Least(loaded + LEANT, d.leantOn())).ifPresent(all::add);
    return Collections.min(all, Least.FIRST);
  }

  /** Least of what keeps it standing with drawers out, or one out and leant on, N·mm. */
  double leastDrawn() {
    Drawers stated = built.order().drawers().orElseThrow();
    DrawerFigures all = new DrawerFigures(built, stated, rest(), floor());
    return Math.min(Math.min(all.held(1), all.held(stated.count())), all.leantOn());
  }

  /** How far in front of the foot someone can lean on an open door or a drawer, mm. */
  Optional<Double> reach() {
    Stream<Double> open = built.order().doors().stream().map(_ -> hanging());
    Stream<Double> out =
        built.order().drawers().stream().map(d -> d.out().mm() + foot + fall(d.height().mm()));
    return Stream.concat(open, out).max(Double::compare);
  }

  private FloorSlope slope() {
    return FloorSlope.of(FloorSlope.To.FRONT, settings);
  }

  /** On which floor its figures take it to stand. */
  String floor() {
    return slope().words(job.unit());
  }

  /** How far the slope brings forward what is so high over the case's foot, mm. */
  private double fall(double up) {
    return slope().at(up + under);
  }

  /** What keeps it standing so loaded, shut, N·mm about the front foot. */
  double held(Load load) {
    return held(balance(load));
  }

  private double held(Balance balance) {
    return balance.newton() * (balance.back() - foot - fall(balance.up()));
  }

  Balance balance(Load load) {
    return Objects.requireNonNull(balances.get(load));
  }

  /** What keeps it standing with its doors open, loaded as it then stands least, N·mm. */
  double opened() {
    return held(withoutDoors) - doors.moment() - doors.weight() * fall(doors.up());
  }

  /** What is left of it under a light push, shut and loaded as it then stands least, N·mm. */
  double pushed() {
    return held(worst()) - light.moment(height());
  }

  /** What keeps it standing with its doors open, if it has any, N·mm. */
  double doorsOpened() {
    return built.order().doors().isPresent() ? opened() : held(worst());
  }

  /** The same with one full drawer out; nothing without drawers. */
  Optional<Double> oneDrawn() {
    return drawers().map(drawers -> drawers.held(1));
  }

  double hung() {
    return opened() - settings.number(Setting.DOOR_PULL) * hanging();
  }

  /** How far before the foot someone hangs on the top of the widest door, mm. */
  private double hanging() {
    return doors.widest() + doors.before() + fall(doors.top());
  }

  LightPush light() {
    return light;
  }

  /** As what is asked of it is said. */
  String lightPush() {
    return light.words(job.unit(), height());
  }

  private double height() {
    return built.outside().size(Axis.Z).mm();
  }

  /** The push at the top that tips it, shut. */
  Figure tips(Load load) {
    return figure(
        "tips-at-" + load.id(),
        "push forward at the top that tips it, %s, %s".formatted(load.words(), floor()),
        force(Math.max(0, held(load) / height())),
        "max(0, " + HELD + " / H)",
        inputs(load));
  }

  /** The push no higher than a hand reaches, which is the one that is asked for. */
  Figure pushedOver() {
    List<Input> inputs = new ArrayList<>(inputs(worst()));
    inputs.add(light.height().input("h", Setting.LIGHT_PUSH_HEIGHT.meaning()));
    return figure(
        "tips-pushed",
        "push forward, no higher than a light push is taken, that tips it, %s, %s"
            .formatted(worst().words(), floor()),
        force(Math.max(0, held(worst()) / light.at(height()))),
        "max(0, " + HELD + ") / min(H, h)",
        inputs);
  }

  Figure leans(Load load) {
    Balance balance = balance(load);
    double behind = balance.back() - foot - fall(balance.up());
    return figure(
        "tips-lean-" + load.id(),
        "how far its top may lean forward until it falls, %s, %s".formatted(load.words(), floor()),
        mm(Math.max(0, height() * behind / balance.up())),
        "max(0, H (y / z - n / 1000))",
        inputs(load));
  }

  private Figure doorWeight() {
    DoorLeaf heaviest = doors.heaviest();
    return figure(
        "door-weight",
        "weight of the heaviest door, as if it were of the case's material",
        force(doors.weight(heaviest)),
        "b h t ρ × 9.80665 m/s²",
        List.of(
            new Input("b", "its width", mm(OpenDoors.width(heaviest)), Source.GEOMETRY),
            new Input("h", "its height", size(heaviest, Axis.Z), Source.GEOMETRY),
            new Input("t", "its thickness", size(heaviest, Axis.Y), Source.STATED),
            doors.density().input("ρ", "density")));
  }

  private static Quantity size(DoorLeaf leaf, Axis axis) {
    return Quantity.of(leaf.shut().size(axis));
  }

  Figure open() {
    return figure(
        "tips-at-open",
        "push forward at the top that tips it, %s, all doors swung open, %s"
            .formatted(worst().words(), floor()),
        force(Math.max(0, opened() / height())),
        "max(0, " + HELD + " - " + DOORS + ") / H",
        opened(withoutDoors()));
  }

  Figure hungOn() {
    List<Input> inputs = new ArrayList<>(opened(withoutDoors()));
    inputs.add(
        new Sourced(
                Quantity.of(settings.number(Setting.DOOR_PULL), QuantityUnit.FORCE),
                settings.source(Setting.DOOR_PULL))
            .input("Q", Setting.DOOR_PULL.meaning()));
    inputs.add(new Input("b", "width of the widest door", mm(doors.widest()), Source.GEOMETRY));
    inputs.add(
        new Input("a", "front of the case to the front foot", mm(doors.before()), Source.GEOMETRY));
    inputs.add(new Input("c", "top of the highest door above the floor", mm(doors.top()), STATICS));
    return figure(
        "tips-at-hung",
        "the same with someone hanging on a door",
        force(Math.max(0, hung() / height())),
        "max(0, " + HELD + " - " + DOORS + " - Q (b + a + n c / 1000)) / H",
        inputs);
  }

  private List<Input> opened(List<Input> shut) {
    List<Input> inputs = new ArrayList<>(shut);
    inputs.add(new Input("G", "weight of all doors", force(doors.weight()), STATICS));
    inputs.add(
        new Input(
            "m",
            "their middle before the front foot, all swung straight out",
            mm(doors.middle()),
            STATICS));
    inputs.add(new Input("w", "their middle above the floor", mm(doors.up()), STATICS));
    return inputs;
  }

  private List<Input> inputs(Load load) {
    return inputs("weight of case and contents", balance(load));
  }

  private List<Input> withoutDoors() {
    return inputs("weight of case and contents, doors left out", withoutDoors);
  }

  private List<Input> inputs(String weight, Balance balance) {
    return List.of(
        new Input("F", weight, force(balance.newton()), STATICS),
        new Input("y", "its middle behind the front foot", mm(balance.back() - foot), STATICS),
        new Input("z", "its middle above the floor", mm(balance.up()), STATICS),
        slope().input(),
        new Input("H", "height", mm(height()), Source.GEOMETRY));
  }

  private Figure figure(
      String name, String title, Quantity value, String formula, List<Input> inputs) {
    return new Figure(id + "/" + name, title, value, formula, inputs, STATICS);
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }
}
