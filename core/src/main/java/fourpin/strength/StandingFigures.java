package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
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
import fourpin.reference.PowerLaw;
import fourpin.reference.Reference;
import fourpin.reference.ReferenceLoad;
import fourpin.strength.Balance.Load;
import fourpin.strength.wood.Withdrawal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How one case stands: where its weight hangs, what tips it forward, what anchors then have to
 * hold, and what the floor carries. A free-standing case on a floor that falls as its job says.
 */
final class StandingFigures {

  private static final double MM2_PER_KPA = 1000;

  private static final Source STATICS =
      new Source("statics: a case that turns about its front foot", "", Standing.DERIVED);

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final String id;
  private final TippingFigures tipping;

  private final double above;

  /** With the case on which it stands. */
  private final Optional<StackTipping> stack;

  StandingFigures(Job job, BuiltCase built, StackedCase stacked) {
    this.job = job;
    this.built = built;
    this.above = stacked.above();
    this.stack = stacked.tipping();
    this.settings = built.order().settings();
    this.id = Figure.id(built.order().name());
    this.tipping = new TippingFigures(job, built, foot());
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    tipping.loads().forEach(load -> all.addAll(balance(load)));
    all.addAll(tipping.all());
    all.addAll(new SidewaysTipping(job, List.of(built)).figures());
    Figure pull = pull();
    Figure screw = screw();
    Figure screws = screws(pull, screw);
    Figure studs = studs();
    all.addAll(List.of(anchors(), pull, screw, screws, studs));
    each(screws, studs).ifPresent(all::add);
    if (standsAlone()) {
      Figure floor = floor();
      all.add(floor);
      Reference.floorLoads().rows().forEach(load -> all.add(floorShare(floor, load)));
    }
    return all;
  }

  /** Of a case that carries another, as it stands before that is put on it. */
  List<Finding> findings() {
    TippingFindings findings = new TippingFindings(job, built, foot(), tipping, used());
    SidewaysFindings sideways = new SidewaysFindings(job, List.of(built));
    List<Finding> tips = new ArrayList<>(findings.all());
    boolean forward = tips.isEmpty();
    sideways.byItself().ifPresent(tips::add);
    if (above > 0) {
      return tips.stream().map(StandingFigures::alone).toList();
    }
    if (standsAlone()) {
      findings.pushedOver().filter(_ -> forward).ifPresent(tips::add);
      sideways.pushedOver().ifPresent(tips::add);
    }
    return tips;
  }

  /** A case that is not yet stacked, or not yet screwed down, is not yet in use. */
  private Severity used() {
    return standsAlone() && above == 0 ? Severity.ERROR : Severity.DOUBT;
  }

  /** What is stacked is pushed as a whole. */
  private boolean standsAlone() {
    return built.order().standsOn().isEmpty();
  }

  private static Finding alone(Finding finding) {
    return new Finding(
        finding.severity(),
        finding.kind(),
        "alone, before anything stands on it, " + finding.what(),
        finding.figures(),
        finding.place(),
        finding.remedies());
  }

  /** Middle of weight, the push at the top that tips it, and how far its top may lean. */
  private List<Figure> balance(Load load) {
    Balance balance = tipping.balance(load);
    List<Input> inputs = inputs(balance);
    return List.of(
        figure(
            "weight-back-" + load.id(),
            "middle of weight behind the front foot, " + load.words(),
            mm(balance.back() - foot()),
            "Σ F y / Σ F - f",
            inputs),
        figure(
            "weight-up-" + load.id(),
            "middle of weight above the floor, " + load.words(),
            mm(balance.up()),
            "Σ F z / Σ F",
            inputs),
        tipping.tips(load),
        tipping.leans(load));
  }

  private List<Input> inputs(Balance balance) {
    List<Input> inputs = new ArrayList<>();
    balance
        .parts()
        .forEach(
            (of, weight) -> {
              inputs.add(
                  new Input("F", "weight of " + of.words(), force(weight.newton()), STATICS));
              inputs.add(
                  new Input(
                      "y", "its middle behind the front of the sides", mm(weight.back()), STATICS));
              inputs.add(new Input("z", "its middle above the floor", mm(weight.up()), STATICS));
            });
    inputs.add(new Input("f", "front of the sides to the front foot", mm(foot()), Source.GEOMETRY));
    return inputs;
  }

  private double height() {
    return built.outside().size(Axis.Z).mm();
  }

  /** The sides are notched in front of a kick that stands back, and stand on the rest. */
  private double foot() {
    double front =
        built.parts().stream()
            .filter(part -> part.role() == Part.Role.SIDE)
            .mapToDouble(part -> part.box().low().y().mm())
            .min()
            .orElse(0);
    return front + built.order().kick().map(Kick::recess).map(Length::mm).orElse(0.0);
  }

  /**
   * What anchors under the top have to hold: a push at it, the case loaded as it stands least on
   * its floor, drawers and doors open; or what else tips it, someone on one of them or a light
   * push, where that turns it harder. One person does the one or the other. What stands on another
   * case pulls with that and all that is open in it.
   */
  private Figure pull() {
    Sourced push = number(Setting.TIP_PUSH, QuantityUnit.FORCE);
    TippingFigures.Least least = stack.map(StackTipping::least).orElseGet(tipping::least);
    TippingFigures.Least used = stack.map(StackTipping::leastUsed).orElseGet(tipping::leastUsed);
    double tall = stack.map(StackTipping::height).orElseGet(this::height);
    Figure anchors = anchors();
    double moment = Math.max(push.number() * tall - least.moment(), -used.moment());
    return figure(
        "anchor-pull",
        "pull on the anchors under the top, %sunder the push that is asked for, or under who leans on it, hangs on a door or pushes it lightly where that is more, %s"
            .formatted(holding(), tipping.floor()),
        force(Math.max(0, moment / anchors.value().value())),
        "max(0, P H - M, -M₂) / h",
        List.of(
            push.input("P", Setting.TIP_PUSH.meaning()),
            new Input(
                "H", stack.isPresent() ? "height of both" : "height", mm(tall), Source.GEOMETRY),
            new Input(
                "M",
                "the least that keeps it standing on its floor, which is "
                    + least.words()
                    + "; below nothing it falls by itself",
                Quantity.of(least.moment(), QuantityUnit.MOMENT),
                STATICS),
            new Input(
                "M₂",
                "what is left of that when it is used, least with "
                    + used.words()
                    + "; below nothing it falls",
                Quantity.of(used.moment(), QuantityUnit.MOMENT),
                STATICS),
            new Input("h", anchors.title(), anchors.value(), anchors.source())));
  }

  /** What hangs on them. */
  private String holding() {
    return stack.isPresent()
        ? "which hold both cases, "
        : above > 0 ? "alone, before anything stands on it, " : "";
  }

  /** In a rail or cleat under the top, where they hold most. */
  private Figure anchors() {
    Sourced below = length(Setting.ANCHOR_BELOW);
    double top = built.part("T").box().low().z().mm() + stack.map(StackTipping::under).orElse(0.0);
    return figure(
        "anchor-height",
        stack.isPresent()
            ? "height of the anchors above the floor"
            : "height of the anchors above its foot",
        mm(top - below.number()),
        "t - b",
        List.of(
            new Input("t", "underside of the top", mm(top), Source.GEOMETRY),
            below.input("b", Setting.ANCHOR_BELOW.meaning())));
  }

  private Figure screw() {
    PowerLaw law = Withdrawal.lagScrew();
    Sourced gravity = number(Setting.STUD_GRAVITY, QuantityUnit.RATIO);
    Sourced diameter = length(Setting.ANCHOR_SCREW);
    Sourced thread = length(Setting.ANCHOR_THREAD);
    return new Figure(
        id + "/anchor-screw",
        "pull allowed on one lag screw in the middle of a stud",
        force(law.of(gravity.number(), diameter.number()) * thread.number()),
        "1800 G^1.5 D^0.75 p lbf, D and p in inches",
        List.of(
            gravity.input("G", "specific gravity of the stud"),
            diameter.input("D", "diameter of the screw"),
            thread.input("p", "thread within the stud")),
        law.source());
  }

  private Figure screws(Figure pull, Figure screw) {
    double count = Math.ceil(pull.value().value() / screw.value().value());
    return figure(
        "anchor-count",
        "screws that this takes, into studs, two at the least",
        Quantity.count(Math.max(2, (long) count)),
        "max(2, ⌈T / w⌉)",
        List.of(
            new Input("T", pull.title(), pull.value(), pull.source()),
            new Input("w", screw.title(), screw.value(), screw.source())));
  }

  private Figure studs() {
    Sourced spacing = length(Setting.STUD_SPACING);
    double width = between();
    long behind = (long) Math.floor(width / spacing.number());
    return figure(
        "anchor-studs",
        "studs between the sides of the case, at the least"
            + (behind > 0
                ? ""
                : ": none is sure, and without one a board screwed to two studs beside it, or"
                    + " another anchor, has to hold the pull"),
        Quantity.count(behind),
        "⌊W / s⌋",
        List.of(
            new Input("W", "between the sides of the case", mm(width), Source.GEOMETRY),
            spacing.input("s", "from stud to stud")));
  }

  /** Nothing where no stud is sure to lie behind it: then a board reaches from stud to stud. */
  private Optional<Figure> each(Figure screws, Figure studs) {
    double behind = studs.value().value();
    return behind < 1
        ? Optional.empty()
        : Optional.of(
            figure(
                "anchor-each",
                "screws into each of these studs, one above the other where it is more than one",
                Quantity.count((long) Math.ceil(screws.value().value() / behind)),
                "⌈N / S⌉",
                List.of(
                    new Input("N", screws.title(), screws.value(), screws.source()),
                    new Input("S", studs.title(), studs.value(), studs.source()))));
  }

  /** What the anchors can be driven through stands between the sides. */
  private double between() {
    return built.part("R").box().low().x().minus(built.part("L").box().high().x()).mm();
  }

  private double full() {
    return Balance.of(job, built, Load.ALL).newton();
  }

  private Figure floor() {
    double width = built.outside().size(Axis.X).mm();
    double depth = built.outside().size(Axis.Y).mm();
    double onTop = OpenTop.newton(job, built);
    return figure(
        "floor-load",
        "load on the floor under the case, loaded as stated, on its top too",
        Quantity.of(
            (full() + above + onTop) / (width * depth) * MM2_PER_KPA, QuantityUnit.AREA_LOAD),
        "(F + F₂ + F₃) / (W D)",
        List.of(
            new Input("F", "weight of case and contents", force(full()), STATICS),
            new Input(
                "F₂",
                "weight of cases that stand on it, and of what is taken to stand on them",
                force(above),
                STATICS),
            new Input(
                "F₃",
                "what is taken to stand on its own top, by top-load",
                force(onTop),
                settings.source(Setting.TOP_LOAD)),
            new Input("W", "width of the case", mm(width), Source.GEOMETRY),
            new Input("D", "depth of the case", mm(depth), Source.GEOMETRY)));
  }

  /** Floors spread a load over more than what stands on them, so that this only tells the scale. */
  private Figure floorShare(Figure floor, ReferenceLoad load) {
    return figure(
        "floor-over-" + load.name().replace(' ', '-'),
        "the same over the design load of " + load.name(),
        Quantity.of(floor.value().value() / load.load().value(), QuantityUnit.RATIO),
        "p / p₀",
        List.of(
            new Input("p", floor.title(), floor.value(), floor.source()),
            new Input("p₀", load.use(), load.load(), load.source())));
  }

  private Sourced number(Setting setting, QuantityUnit unit) {
    return new Sourced(Quantity.of(settings.number(setting), unit), settings.source(setting));
  }

  private Sourced length(Setting setting) {
    return new Sourced(Quantity.of(settings.length(setting)), settings.source(setting));
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
