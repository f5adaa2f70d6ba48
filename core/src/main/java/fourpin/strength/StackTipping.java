package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.LazyList;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.strength.Balance.Load;
import fourpin.strength.CaseTippingCures.Falling;
import fourpin.strength.TippingFigures.Least;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
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
    if (reach().isPresent()) {
      all.addAll(List.of(open(), leant()));
    }
    return all;
  }

  /** Both, where they fall by themselves, when they are opened, or when someone leans on that. */
  Optional<Finding> finding() {
    if (topHeavyHeld() <= 0) {
      return Optional.of(
          byThemselves(
              "the upper one loaded and the lower one empty",
              topHeavy(),
              StackTipping::topHeavyHeld));
    }
    if (forwardHeld() <= 0) {
      return Optional.of(byThemselves(Load.FORWARD.words(), forward(), StackTipping::forwardHeld));
    }
    boolean opens = reach().isPresent() && opened() <= 0;
    boolean leans = reach().isPresent() && held() <= 0;
    return leans
        ? Optional.of(finding(opens))
        : Optional.of(overPushed()).filter(_ -> pushed() <= 0);
  }

  private Finding overPushed() {
    return finding(
        Severity.DOUBT,
        "%s and not fastened to the wall, %s, %s tips both forward"
            .formatted(loaded(), low.floor(), light.words(job.unit(), height())),
        pushedOver(),
        StackTipping::pushed);
  }

  private Finding byThemselves(String loaded, Figure figure, ToDoubleFunction<StackTipping> held) {
    return finding(
        Severity.ERROR,
        "%s, %s, both fall forward by themselves".formatted(low.floor(), loaded),
        figure,
        held);
  }

  private Finding finding(boolean opens) {
    String when =
        opens
            ? "when all doors are open and all drawers out, full"
            : "when, with doors open and full drawers out, someone leans on one of them";
    return finding(
        Severity.DOUBT,
        loaded() + " otherwise and not fastened to the wall, both fall forward " + when,
        opens ? open() : leant(),
        StackTipping::held);
  }

  private Finding finding(
      Severity severity, String what, Figure figure, ToDoubleFunction<StackTipping> held) {
    return new Finding(
        severity,
        "stack-tips",
        "screwed to %s, %s".formatted(lower.order().name(), what),
        List.of(figure),
        Place.of(upper.order().name(), "T", upper.part("T").box()),
        LazyList.of(() -> remedies(held)));
  }

  private List<Remedy> remedies(ToDoubleFunction<StackTipping> held) {
    List<Remedy> all = new ArrayList<>();
    all.add(
        new Remedy(
            "fasten both to the wall before anything else; the pull on their anchors stands"
                + " under \"standing and wall\"",
            "screws into studs"));
    all.addAll(new CaseTippingCures(job, falling(held)).all());
    return all;
  }

  private Falling falling(ToDoubleFunction<StackTipping> held) {
    return new Falling(
        List.of(upper.order(), lower.order()),
        change ->
            held.applyAsDouble(
                new StackTipping(
                    job,
                    CaseTippingCures.ordered(upper, change),
                    CaseTippingCures.ordered(lower, change),
                    foot,
                    shift)),
        CaseTippingCures.lever(lower, foot),
        height());
  }

  /** What keeps both standing shut, the upper one loaded or empty, N·mm. */
  private double topHeavyHeld() {
    return low.held(Load.NONE) + Math.min(high.held(Load.NONE), high.held(Load.ALL));
  }

  /** What keeps both standing shut, loaded where that turns them forward, N·mm. */
  private double forwardHeld() {
    return low.held(low.worst()) + high.held(high.worst());
  }

  /** Whether anything that stands on either turns them forward. */
  private boolean worst() {
    return high.worst() == Load.FORWARD || low.worst() == Load.FORWARD;
  }

  private String loaded() {
    return worst() ? Load.FORWARD.words() : Load.NONE.words();
  }

  private Figure forward() {
    return tips("forward", Load.FORWARD.words(), high.worst(), low.worst());
  }

  /** What keeps both standing with all open and someone leaning on that, N·mm. */
  private double held() {
    return opened() - leaning();
  }

  /** How far before the foot someone can lean on a door or drawer of either, mm. */
  private Optional<Double> reach() {
    return Stream.of(high.reach(), low.reach()).flatMap(Optional::stream).max(Double::compare);
  }

  private Figure topHeavy() {
    return tips("top-heavy", "the upper one loaded, the lower one empty", Load.ALL, Load.NONE);
  }

  private double opened() {
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
  private double pushed() {
    return forwardHeld() - light.moment(height());
  }

  private static double height(BuiltCase of) {
    return of.outside().size(Axis.Z).mm();
  }

  private double height() {
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

  private Figure open() {
    return top(
        "open",
        "push forward at the top that tips both together, %s, doors open and full drawers out, %s"
            .formatted(loaded(), low.floor()),
        opened(),
        "max(0, " + OPEN + ") / H",
        opening());
  }

  private Figure leant() {
    List<Input> inputs = new ArrayList<>(opening());
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

  private List<Input> opening() {
    List<Input> inputs = new ArrayList<>(inputs(high.worst(), low.worst()));
    inputs.add(
        new Input(
            "M",
            "by how much doors that are opened and full drawers turn both forward, less what"
                + " drawers hold",
            Quantity.of(forwardHeld() - opened(), QuantityUnit.MOMENT),
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
        Matters.ratio(Setting.FLOOR_SLOPE, lower.order().settings())
            .input("n", Setting.FLOOR_SLOPE.meaning()),
        new Input("H", "height of both", mm(height()), Source.GEOMETRY));
  }

  private Figure pushedOver() {
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
