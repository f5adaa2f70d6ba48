package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Doors;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.strength.Balance.Load;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What more tips one case forward: a floor that falls away, doors swung open, drawers pulled out,
 * someone on either.
 */
final class TippingFigures {

  private static final double GRAVITY = 9.80665;
  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;
  private static final double MM_PER_M = 1000;

  private static final String HELD = "F (y - n z / 1000)";

  private static final Source STATICS =
      new Source("statics: a case that turns about its front foot", "", Standing.DERIVED);

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final String id;
  private final Balance empty;
  private final double foot;

  /**
   * @param foot from the front of the sides to the front foot, mm
   */
  TippingFigures(Job job, BuiltCase built, double foot) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
    this.id = Figure.id(built.order().name());
    this.empty = Balance.of(job, built, Load.NONE);
    this.foot = foot;
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>(List.of(onSlope()));
    built
        .order()
        .doors()
        .ifPresent(doors -> all.addAll(List.of(doorWeight(doors), open(doors), hungOn(doors))));
    drawers().ifPresent(drawers -> all.addAll(drawers.all()));
    return all;
  }

  private Optional<DrawerFigures> drawers() {
    return built.order().drawers().map(drawers -> new DrawerFigures(built, drawers, rest()));
  }

  /** All but the drawers, doors swung open: what is shut can't be pulled out behind them. */
  private DrawerFigures.Rest rest() {
    return built
        .order()
        .doors()
        .map(
            doors ->
                new DrawerFigures.Rest(
                    opened(doors), HELD + " - N G (b / 2 + f)", inputs(doors), foot, height()))
        .orElseGet(() -> new DrawerFigures.Rest(held(), HELD, footed(), foot, height()));
  }

  private List<Input> footed() {
    List<Input> inputs = new ArrayList<>(inputs());
    inputs.add(new Input("f", "front of the sides to the front foot", mm(foot), Source.GEOMETRY));
    return inputs;
  }

  /** Least of what keeps it standing with all doors open and all drawers out, N·mm. */
  Optional<Double> leastOpen() {
    return drawers()
        .map(d -> d.held(built.order().drawers().orElseThrow().count()))
        .or(() -> built.order().doors().map(this::opened));
  }

  /** Cases that fall forward by themselves, or when a door is opened and hung on. */
  List<Finding> findings() {
    List<Finding> all = new ArrayList<>();
    if (held() <= 0) {
      all.add(
          finding(
              Severity.ERROR,
              "empty, on a floor that falls by %s mm on each metre, it falls forward by itself"
                  .formatted(slope().value().text(job.unit())),
              onSlope()));
    }
    built
        .order()
        .doors()
        .filter(doors -> held() > 0 && hung(doors) <= 0)
        .ifPresent(doors -> all.add(finding(Severity.DOUBT, words(doors), hungOn(doors))));
    drawers().filter(_ -> held() > 0).flatMap(this::pulled).ifPresent(all::add);
    return all;
  }

  /** The worst that drawers do, if it tips the case. */
  private Optional<Finding> pulled(DrawerFigures drawers) {
    int count = built.order().drawers().orElseThrow().count();
    if (drawers.held(1) <= 0) {
      return Optional.of(drawn("when one full drawer is pulled out", drawers.tips(1)));
    }
    if (drawers.held(count) <= 0) {
      return Optional.of(drawn("when all its drawers are pulled out full", drawers.tips(count)));
    }
    return drawers.leantOn() <= 0
        ? Optional.of(drawn("when someone leans on a drawer that is out", drawers.leant()))
        : Optional.empty();
  }

  private Finding drawn(String when, Figure figure) {
    return finding(
        Severity.DOUBT, "empty otherwise and not fastened, it falls forward " + when, figure);
  }

  private String words(Doors doors) {
    String pull =
        Quantity.of(settings.number(Setting.DOOR_PULL), QuantityUnit.FORCE).text(job.unit());
    return opened(doors) <= 0
        ? "empty and not fastened, it falls forward when all its doors are open"
        : "empty and not fastened, with its doors open, it falls forward when "
            + pull
            + " hang on one of them";
  }

  private Finding finding(Severity severity, String what, Figure figure) {
    return new Finding(
        severity,
        "case-tips",
        what,
        List.of(figure),
        Place.of(built.order().name(), "T", built.part("T").box()),
        List.of(
            new Remedy(
                "fasten it to the wall before anything else; the pull on its anchors stands under"
                    + " \"standing and wall\"",
                "screws into studs"),
            built.order().drawers().isPresent()
                ? new Remedy(
                    "take slides that come out less, or that let one drawer out at a time",
                    "slides")
                : new Remedy("hang two narrow doors instead of a wide one", "hinges"),
            new Remedy("level it with shims under the front", "care"),
            new Remedy("keep what is heavy at the bottom, and weigh the bottom down", "weight")));
  }

  private Sourced slope() {
    return new Sourced(
        Quantity.of(settings.number(Setting.FLOOR_SLOPE), QuantityUnit.RATIO),
        settings.source(Setting.FLOOR_SLOPE));
  }

  /** What keeps it standing on the slope, N·mm about the front foot. */
  private double held() {
    double fallen = slope().number() / MM_PER_M * empty.up();
    return empty.newton() * (empty.back() - foot - fallen);
  }

  private double opened(Doors doors) {
    return held() - leaves(doors) * weight(doors) * (width(doors) / 2 + foot);
  }

  private double hung(Doors doors) {
    return opened(doors) - settings.number(Setting.DOOR_PULL) * (width(doors) + foot);
  }

  private int leaves(Doors doors) {
    return doors.perBay() * built.bays().size();
  }

  /** The widest, mm. */
  private double width(Doors doors) {
    return built.bays().stream()
            .map(BaySpace::clear)
            .mapToDouble(clear -> clear.size(Axis.X).mm())
            .max()
            .orElse(0)
        / doors.perBay();
  }

  private double tall() {
    double kick = built.order().kick().map(Kick::height).map(Length::mm).orElse(0.0);
    return height() - kick;
  }

  private double height() {
    return built.outside().size(Axis.Z).mm();
  }

  /** Of one leaf, N, as if it were a panel of the case's material. */
  private double weight(Doors doors) {
    double density = new Masses(job).density(built.order().material()).number();
    double volume = width(doors) * tall() * doors.thickness().mm();
    return volume * density / CUBIC_MM_PER_CUBIC_M * GRAVITY;
  }

  private Figure onSlope() {
    return figure(
        "tips-at-slope",
        "push forward at the top that tips it, empty, on a floor that falls forward",
        force(Math.max(0, held() / height())),
        "F (y - n z / 1000) / H",
        inputs());
  }

  private Figure doorWeight(Doors doors) {
    return figure(
        "door-weight",
        "weight of one door, as if it were of the case's material",
        force(weight(doors)),
        "b h t ρ g",
        List.of(
            new Input("b", "width of a leaf", mm(width(doors)), Source.GEOMETRY),
            new Input("h", "its height", mm(tall()), Source.GEOMETRY),
            new Input("t", "its thickness", Quantity.of(doors.thickness()), Source.STATED),
            new Masses(job).density(built.order().material()).input("ρ", "density")));
  }

  private Figure open(Doors doors) {
    return figure(
        "tips-at-open",
        "push forward at the top that tips it, empty, all doors swung open",
        force(Math.max(0, opened(doors) / height())),
        "(F (y - n z / 1000) - N G (b / 2 + f)) / H",
        inputs(doors));
  }

  private Figure hungOn(Doors doors) {
    List<Input> inputs = new ArrayList<>(inputs(doors));
    inputs.add(
        new Sourced(
                Quantity.of(settings.number(Setting.DOOR_PULL), QuantityUnit.FORCE),
                settings.source(Setting.DOOR_PULL))
            .input("Q", Setting.DOOR_PULL.meaning()));
    return figure(
        "tips-at-hung",
        "the same with someone hanging on a door",
        force(Math.max(0, hung(doors) / height())),
        "(F (y - n z / 1000) - N G (b / 2 + f) - Q (b + f)) / H",
        inputs);
  }

  private List<Input> inputs(Doors doors) {
    List<Input> inputs = new ArrayList<>(inputs());
    inputs.add(new Input("N", "doors", Quantity.count(leaves(doors)), Source.STATED));
    inputs.add(new Input("G", "weight of one", force(weight(doors)), STATICS));
    inputs.add(new Input("b", "width of one", mm(width(doors)), Source.GEOMETRY));
    inputs.add(new Input("f", "front of the sides to the front foot", mm(foot), Source.GEOMETRY));
    return inputs;
  }

  private List<Input> inputs() {
    return List.of(
        new Input("F", "weight of the empty case", force(empty.newton()), STATICS),
        new Input("y", "its middle behind the front foot", mm(empty.back() - foot), STATICS),
        new Input("z", "its middle above the floor", mm(empty.up()), STATICS),
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
