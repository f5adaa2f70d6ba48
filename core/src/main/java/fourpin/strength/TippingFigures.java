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
import java.util.ArrayList;
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

  private static final double MM_PER_M = 1000;

  private static final String HELD = "F (y - n z / 1000)";
  private static final String DOORS = "G (m + n w / 1000)";

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
    this.balances = new EnumMap<>(Load.class);
    for (Load load : Load.values()) {
      balances.put(load, Balance.of(job, built, load));
    }
    this.foot = foot;
    this.under = under;
    this.doors = new OpenDoors(job, built, foot);
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>();
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
                    footed(opened(inputs(Load.NONE))),
                    foot,
                    height(),
                    under))
        .orElseGet(
            () ->
                new DrawerFigures.Rest(
                    held(), HELD, footed(inputs(Load.NONE)), foot, height(), under));
  }

  private List<Input> footed(List<Input> others) {
    List<Input> inputs = new ArrayList<>(others);
    inputs.add(new Input("f", "front of the sides to the front foot", mm(foot), Source.GEOMETRY));
    return inputs;
  }

  /** Least of what keeps it standing with all doors open, and with all drawers out, N·mm. */
  Optional<Double> leastOpen() {
    Stream<Double> open = built.order().doors().stream().map(_ -> opened());
    Stream<Double> out =
        drawers().stream().map(d -> d.held(built.order().drawers().orElseThrow().count()));
    return Stream.concat(open, out).min(Double::compare);
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

  Sourced slope() {
    return new Sourced(
        Quantity.of(settings.number(Setting.FLOOR_SLOPE), QuantityUnit.RATIO),
        settings.source(Setting.FLOOR_SLOPE));
  }

  /** On which floor its figures take it to stand. */
  String floor() {
    return slope().number() == 0
        ? "on a level floor"
        : "on a floor that falls forward by %s mm on each metre"
            .formatted(slope().value().text(job.unit()));
  }

  /** How far the slope brings forward what is so high over the case's foot, mm. */
  private double fall(double up) {
    return slope().number() / MM_PER_M * (up + under);
  }

  /** What keeps it standing empty, N·mm about the front foot. */
  double held() {
    return held(Load.NONE);
  }

  /** What keeps it standing so loaded, shut, N·mm about the front foot. */
  double held(Load load) {
    Balance balance = balance(load);
    return balance.newton() * (balance.back() - foot - fall(balance.up()));
  }

  private Balance balance(Load load) {
    return Objects.requireNonNull(balances.get(load));
  }

  /** Least of what keeps it standing however it is loaded, shut, N·mm. */
  double leastShut() {
    return Stream.of(Load.values()).mapToDouble(this::held).min().orElseThrow();
  }

  double opened() {
    return held() - doors.moment() - doors.weight() * fall(doors.up());
  }

  double hung() {
    return opened() - settings.number(Setting.DOOR_PULL) * hanging();
  }

  /** How far before the foot someone hangs on the top of the widest door, mm. */
  private double hanging() {
    return doors.widest() + doors.before() + fall(doors.top());
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
        HELD + " / H",
        inputs(load));
  }

  Figure leans(Load load) {
    Balance balance = balance(load);
    double behind = balance.back() - foot - fall(balance.up());
    return figure(
        "tips-lean-" + load.id(),
        "how far its top may lean forward until it falls, %s, %s".formatted(load.words(), floor()),
        mm(Math.max(0, height() * behind / balance.up())),
        "H (y / z - n / 1000)",
        inputs(load));
  }

  private Figure doorWeight() {
    DoorLeaf heaviest = doors.heaviest();
    return figure(
        "door-weight",
        "weight of the heaviest door, as if it were of the case's material",
        force(doors.weight(heaviest)),
        "b h t ρ g",
        List.of(
            new Input("b", "its width", mm(OpenDoors.width(heaviest)), Source.GEOMETRY),
            new Input("h", "its height", size(heaviest, Axis.Z), Source.GEOMETRY),
            new Input("t", "its thickness", size(heaviest, Axis.Y), Source.STATED),
            doors.density().input("ρ", "density")));
  }

  private static Quantity size(DoorLeaf leaf, Axis axis) {
    return Quantity.of(leaf.shut().size(axis));
  }

  private Figure open() {
    return figure(
        "tips-at-open",
        "push forward at the top that tips it, empty, all doors swung open, " + floor(),
        force(Math.max(0, opened() / height())),
        "(" + HELD + " - " + DOORS + ") / H",
        opened(inputs(Load.NONE)));
  }

  Figure hungOn() {
    List<Input> inputs = new ArrayList<>(opened(inputs(Load.NONE)));
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
        "(" + HELD + " - " + DOORS + " - Q (b + a + n c / 1000)) / H",
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
    Balance balance = balance(load);
    return List.of(
        new Input("F", "weight of case and contents", force(balance.newton()), STATICS),
        new Input("y", "its middle behind the front foot", mm(balance.back() - foot), STATICS),
        new Input("z", "its middle above the floor", mm(balance.up()), STATICS),
        slope().input("n", Setting.FLOOR_SLOPE.meaning()),
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
