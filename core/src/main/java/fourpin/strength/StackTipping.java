package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.strength.Balance.Load;
import fourpin.strength.TippingFigures.Least;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * How a case and the one on which it stands, screwed together, tip about the front foot of the
 * lower one: shut, and with the doors of both open and their drawers out.
 */
final class StackTipping {

  private static final Source STATICS =
      new Source(
          "statics: two cases that turn as one about the front foot of the lower one",
          "middle over middle, backs in line; rigid cases",
          Standing.DERIVED);

  private static final String SHUT = "F₁ (y₁ - n z₁ / 1000) + F₂ (y₂ - n z₂ / 1000)";
  private static final String OPEN = SHUT + " - M";

  private final Job job;
  private final BuiltCase upper;
  private final BuiltCase lower;
  private final double foot;
  private final double shift;
  private final TippingFigures high;
  private final TippingFigures low;
  private final LightPush light;

  /**
   * @param foot of the lower case, from the front of its sides, mm
   * @param shift from the front of the lower one's sides back to that of the upper one's, mm
   */
  StackTipping(Job job, BuiltCase upper, BuiltCase lower, double foot, double shift) {
    this.job = job;
    this.upper = upper;
    this.lower = lower;
    this.foot = foot;
    this.shift = shift;
    this.high = new TippingFigures(job, upper, foot - shift, height(lower));
    this.low = new TippingFigures(job, lower, foot);
    this.light = LightPush.of(lower.order().settings());
  }

  List<Figure> figures() {
    List<Figure> all = new ArrayList<>();
    all.add(tips("empty", "both empty", Load.NONE, Load.NONE));
    all.add(topHeavy());
    if (worst()) {
      all.add(forward());
    }
    all.add(pushedOver());
    if (opening().hasDoors()) {
      all.add(doors());
    }
    drawn().ifPresent(one -> all.add(drawer(one)));
    if (reach().isPresent()) {
      all.addAll(List.of(open(), leant()));
    }
    return all;
  }

  /** Their parts as they are, ordered otherwise. */
  StackTipping ordered(UnaryOperator<CaseOrder> change) {
    return new StackTipping(
        job,
        CaseTippingCures.ordered(upper, change),
        CaseTippingCures.ordered(lower, change),
        foot,
        shift);
  }

  BuiltCase upper() {
    return upper;
  }

  BuiltCase lower() {
    return lower;
  }

  /** How far behind the foot the middle of the lower bottom hangs, mm. */
  double lever() {
    return CaseTippingCures.lever(lower, foot);
  }

  LightPush light() {
    return light;
  }

  String floor() {
    return low.floor();
  }

  Opening opening() {
    return new Opening(List.of(upper.order(), lower.order()));
  }

  /** What keeps both standing shut, the upper one loaded or empty, N·mm. */
  double topHeavyHeld() {
    return low.held(Load.NONE) + Math.min(high.held(Load.NONE), high.held(Load.ALL));
  }

  /** What keeps both standing shut, loaded where that turns them forward, N·mm. */
  double forwardHeld() {
    return low.held(low.worst()) + high.held(high.worst());
  }

  /** Whether anything that stands on either turns them forward. */
  private boolean worst() {
    return high.worst() == Load.FORWARD || low.worst() == Load.FORWARD;
  }

  String loaded() {
    return worst() ? Load.FORWARD.words() : Load.NONE.words();
  }

  Figure forward() {
    return tips("forward", Load.FORWARD.words(), high.worst(), low.worst());
  }

  /** What keeps both standing with all open and someone leaning on that, N·mm. */
  double held() {
    return opened() - leaning();
  }

  /** How far before the foot someone can lean on a door or drawer of either, mm. */
  Optional<Double> reach() {
    return Stream.of(high.reach(), low.reach()).flatMap(Optional::stream).max(Double::compare);
  }

  Figure topHeavy() {
    return tips("top-heavy", "the upper one loaded, the lower one empty", Load.ALL, Load.NONE);
  }

  /** The same with all doors open, N·mm. */
  double doorsOpened() {
    return high.doorsOpened() + low.doorsOpened();
  }

  /** With one full drawer out where that turns both the most; nothing without drawers. */
  Optional<Double> drawn() {
    Stream<Double> above = high.oneDrawn().map(one -> one + low.held(low.worst())).stream();
    Stream<Double> below = low.oneDrawn().map(one -> one + high.held(high.worst())).stream();
    return Stream.concat(above, below).min(Double::compare);
  }

  /** However they are loaded, shut or open. */
  Least least() {
    return reach().isPresent() && opened() < forwardHeld()
        ? new Least("both %s, %s".formatted(loaded(), opening().done()), opened())
        : new Least("both " + loaded(), forwardHeld());
  }

  /** Of all that findings tell of: someone leans on what is open, or pushes lightly. */
  Least leastUsed() {
    return reach().isPresent() && held() < pushed()
        ? new Least(
            "both %s, %s, and someone leaning on that".formatted(loaded(), opening().done()),
            held())
        : new Least("both %s, shut and lightly pushed".formatted(loaded()), pushed());
  }

  double opened() {
    return opened(high) + opened(low);
  }

  private static double opened(TippingFigures of) {
    return of.leastOpen().map(Least::moment).orElseGet(() -> of.held(of.worst()));
  }

  private Sourced lean() {
    return new Sourced(
        force(lower.order().settings().number(Setting.DOOR_PULL)),
        lower.order().settings().source(Setting.DOOR_PULL));
  }

  private double leaning() {
    return lean().number() * reach().orElse(0.0);
  }

  /** What is left of it under a light push, shut and loaded as they then stand least, N·mm. */
  double pushed() {
    return forwardHeld() - light.moment(height());
  }

  /** How high the upper one stands, mm. */
  double under() {
    return height(lower);
  }

  private static double height(BuiltCase of) {
    return of.outside().size(Axis.Z).mm();
  }

  double height() {
    return height(upper) + height(lower);
  }

  private Figure tips(String when, String words, Load up, Load down) {
    return top(
        when,
        "push forward at the top that tips both together, " + words + ", " + low.floor(),
        high.held(up) + low.held(down),
        "max(0, " + SHUT + ") / H",
        inputs(up, down));
  }

  /** The middle of the upper case behind the foot of the lower one, mm. */
  private double behind(Balance above) {
    return above.back() + shift - foot;
  }

  Figure open() {
    return top(
        "open",
        "push forward at the top that tips both together, %s, %s, %s"
            .formatted(loaded(), opening().done(), low.floor()),
        opened(),
        "max(0, " + OPEN + ") / H",
        opened(opening().done(), opened()));
  }

  Figure doors() {
    return top(
        "doors",
        "push forward at the top that tips both together, %s, all doors open, %s"
            .formatted(loaded(), low.floor()),
        doorsOpened(),
        "max(0, " + OPEN + ") / H",
        opened("doors open", doorsOpened()));
  }

  Figure drawer(double held) {
    return top(
        "drawer",
        "push forward at the top that tips both together, %s, one full drawer pulled out, %s"
            .formatted(loaded(), low.floor()),
        held,
        "max(0, " + OPEN + ") / H",
        opened("one full drawer out, doors before it open", held));
  }

  Figure leant() {
    List<Input> inputs = new ArrayList<>(opened(opening().done(), opened()));
    inputs.add(lean().input("Q", Setting.DOOR_PULL.meaning()));
    inputs.add(
        new Input(
            "e",
            "how far before the foot an open door or a drawer reaches, the slope taken",
            mm(reach().orElse(0.0)),
            STATICS));
    return top(
        "leant",
        "the same with someone leaning on one of them",
        opened() - leaning(),
        "max(0, " + OPEN + " - Q e) / H",
        inputs);
  }

  private List<Input> opened(String what, double held) {
    List<Input> inputs = new ArrayList<>(inputs(high.worst(), low.worst()));
    inputs.add(
        new Input(
            "M",
            "by how much both are turned forward by " + what,
            Quantity.of(forwardHeld() - held, QuantityUnit.MOMENT),
            STATICS));
    return inputs;
  }

  private List<Input> inputs(Load up, Load down) {
    Balance above = high.balance(up);
    Balance below = low.balance(down);
    return List.of(
        new Input("F₁", "weight of the upper case", force(above.newton()), STATICS),
        new Input(
            "y₁", "its middle behind the front foot of the lower one", mm(behind(above)), STATICS),
        new Input("z₁", "its middle above the floor", mm(above.up() + height(lower)), STATICS),
        new Input("F₂", "weight of the lower case", force(below.newton()), STATICS),
        new Input("y₂", "its middle behind its front foot", mm(below.back() - foot), STATICS),
        new Input("z₂", "its middle above the floor", mm(below.up()), STATICS),
        FloorSlope.of(FloorSlope.To.FRONT, lower.order().settings()).input(),
        new Input("H", "height of both", mm(height()), Source.GEOMETRY));
  }

  Figure pushedOver() {
    List<Input> inputs = new ArrayList<>(inputs(high.worst(), low.worst()));
    inputs.add(light.height().input("h", Setting.LIGHT_PUSH_HEIGHT.meaning()));
    return figure(
        "stack-tips-pushed",
        "push forward, no higher than a light push is taken, that tips both together, %s, %s"
            .formatted(loaded(), low.floor()),
        forwardHeld() / light.at(height()),
        "max(0, " + SHUT + ") / min(H, h)",
        inputs);
  }

  /** As a push at the top. */
  private Figure top(String when, String title, double moment, String formula, List<Input> inputs) {
    return figure("stack-tips-at-" + when, title, moment / height(), formula, inputs);
  }

  private Figure figure(
      String name, String title, double push, String formula, List<Input> inputs) {
    return new Figure(
        Figure.id(upper.order().name()) + "/" + name,
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
