package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.job.Material;
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
import fourpin.strength.Balance.Load;
import fourpin.strength.wood.Withdrawal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A case on another one: what slides and tips it there, what screws between them then hold, where
 * its uprights press, and how both tip together. And, for the one below, what stands on it.
 */
public final class StackedCase {

  private static final Source STATICS =
      new Source("statics: middle over middle, backs in line", "rigid cases", Standing.DERIVED);

  private final Job job;
  private final BuiltCase upper;
  private final Settings settings;
  private final String id;
  private final Optional<BuiltCase> lower;
  private final List<BuiltCase> cases;

  /**
   * @param cases all of the job
   */
  public StackedCase(Job job, BuiltCase upper, List<BuiltCase> cases) {
    this.job = job;
    this.upper = upper;
    this.settings = upper.order().settings();
    this.id = Figure.id(upper.order().name());
    this.cases = cases;
    this.lower = upper.order().standsOn().flatMap(this::named);
  }

  private Optional<BuiltCase> named(String name) {
    return cases.stream().filter(c -> c.order().name().equals(name)).findFirst();
  }

  /** The case below; nothing for a case on the floor. */
  public Optional<BuiltCase> lower() {
    return lower;
  }

  /** Screws along its back that hold it down; nothing for a case on the floor. */
  public Optional<Figure> screws() {
    return lower.map(below -> screws(pull(), screw(below)));
  }

  /** How far a screw through its bottom reaches into the top below; nothing on the floor. */
  public Optional<Length> thread() {
    return lower.map(this::thread);
  }

  private Length thread(BuiltCase below) {
    Length grip = settings.length(Setting.SCREW_GRIP);
    Length top = job.material(below.order().material()).thickness();
    return top.isLessThan(grip) ? top : grip;
  }

  /** From the top below up to its bottom: nothing where screws through it draw wood on wood. */
  public Length gap() {
    return upper.part("B").box().low().z();
  }

  /** What stands on this case, loaded as stated, with what is taken to stand on that, N. */
  double above() {
    return carried().mapToDouble(c -> Balance.of(job, c, Load.ALL).newton() + on(c).onTop()).sum();
  }

  private Stream<BuiltCase> carried() {
    return cases.stream()
        .filter(c -> c.order().standsOn().filter(upper.order().name()::equals).isPresent());
  }

  private StackedCase on(BuiltCase other) {
    return new StackedCase(job, other, cases);
  }

  /** The same, or what is taken to stand on its top where no case does, N. */
  double onTop() {
    return above() + OpenTop.newton(job, upper);
  }

  /** The uprights of what stands on this case, with all that stands on them in turn. */
  List<StackedUprights> standing() {
    return carried().map(c -> new StackedUprights(job, c, upper, on(c).onTop())).toList();
  }

  /** Nothing for a case on the floor. */
  List<Figure> figures() {
    return lower.map(this::figures).orElse(List.of());
  }

  private List<Figure> figures(BuiltCase below) {
    Figure pull = pull();
    Figure screw = screw(below);
    List<Figure> all = new ArrayList<>(List.of(slides(), pull, screw, screws(pull, screw)));
    all.addAll(tipping(below).figures());
    all.addAll(new SidewaysTipping(job, List.of(below, upper)).figures());
    StackedUprights uprights = uprights(below);
    all.addAll(uprights.figures());
    uprights.joints().forEach(end -> all.addAll(end.all()));
    return all;
  }

  private StackedUprights uprights(BuiltCase below) {
    return new StackedUprights(job, upper, below, onTop());
  }

  /** Both together; nothing for a case on the floor. */
  Optional<StackTipping> tipping() {
    return lower.map(this::tipping);
  }

  private StackTipping tipping(BuiltCase below) {
    return new StackTipping(job, upper, below, foot(below), back(below) - back(upper));
  }

  List<Finding> findings() {
    return lower.map(this::findings).orElse(List.of());
  }

  private List<Finding> findings(BuiltCase below) {
    List<Finding> all = new ArrayList<>(List.of(gap().isPositive() ? raised(below) : loose(below)));
    new StackTippingFindings(job, tipping(below)).finding().ifPresent(all::add);
    SidewaysFindings sideways = new SidewaysFindings(job, List.of(below, upper));
    sideways.byItself().or(sideways::pushedOver).ifPresent(all::add);
    if (overhangs(below)) {
      all.add(
          finding(
              Severity.ERROR,
              "stack-overhangs",
              "it is wider or deeper than %s, on which it stands".formatted(below.order().name()),
              List.of(),
              List.of(new Remedy("make it no larger than the case below", "room"))));
    } else {
      all.addAll(onTop(below));
    }
    return all;
  }

  /** How the top below bears it. */
  private List<Finding> onTop(BuiltCase below) {
    StackedUprights uprights = uprights(below);
    return Stream.of(
            Stream.of(uprights).filter(u -> !u.isStiff()).map(this::bends),
            uprights.stress().finding(job.unit(), uprights::cures).stream(),
            uprights.joints().stream().flatMap(end -> carries(below, end)).limit(1))
        .flatMap(found -> found)
        .toList();
  }

  private Stream<Finding> carries(BuiltCase below, JointFigures end) {
    List<Part> top = List.of(below.part("T"));
    return new JointFindings(job, below.order().name(), top, end).all().stream();
  }

  /** What bends it may be the bottom alone that lies on it. */
  private Finding bends(StackedUprights uprights) {
    return finding(
        Severity.DOUBT,
        uprights.areBeside() ? "stack-off-uprights" : "stack-top-sags",
        uprights.words(),
        uprights.figures(),
        uprights.cures());
  }

  /** Screws through a bottom that stands off the top below would only bend it. */
  private Finding raised(BuiltCase below) {
    return finding(
        Severity.DOUBT,
        "stack-raised",
        "its bottom stands %s above the top of %s, so that no screw through it draws the two together"
            .formatted(job.style().text(gap()), below.order().name()),
        List.of(slides(), pull()),
        List.of(
            new Remedy(
                "leave out its kick, and join its bottom by a rabbet", "a bottom at its foot"),
            new Remedy(
                "glue strips as high as the gap under its bottom, along front and back, and screw"
                    + " them to the top below from the lower case",
                "wood, in no cut list")));
  }

  private Finding loose(BuiltCase below) {
    Figure screws = screws(pull(), screw(below));
    return finding(
        Severity.NOTE,
        "stack-loose",
        "it is only set on %s: a push of %s at its top slides it, empty; screw it down with %s screws or more"
            .formatted(below.order().name(), text(slides()), screws.value().text(job.unit())),
        List.of(slides(), pull(), screws),
        List.of(
            new Remedy(
                "drive the screws from inside through its bottom into the top below, along the back",
                "screws")));
  }

  private boolean overhangs(BuiltCase below) {
    return size(upper, Axis.X) > size(below, Axis.X) || size(upper, Axis.Y) > size(below, Axis.Y);
  }

  private Finding finding(
      Severity severity, String kind, String what, List<Figure> shown, List<Remedy> remedies) {
    Part bottom = upper.part("B");
    Place place = Place.of(upper.order().name(), bottom.mark(), bottom.box());
    return new Finding(severity, kind, what, shown, place, remedies);
  }

  private static double size(BuiltCase of, Axis axis) {
    return of.outside().size(axis).mm();
  }

  private Figure slides() {
    Sourced friction = Matters.ratio(Setting.WOOD_FRICTION, settings);
    double weight = Balance.of(job, upper, Load.NONE).newton();
    return figure(
        "stack-slides-at",
        "push that slides it on the case below, empty and not screwed down",
        force(friction.number() * weight),
        "μ F",
        List.of(
            friction.input("μ", Setting.WOOD_FRICTION.meaning()),
            new Input("F", "weight of the empty case", force(weight), STATICS)),
        STATICS);
  }

  /** From back, front and sides: not to split edges, and for the back ones to have their arm. */
  public Length inset() {
    return job.unit().customary() ? Length.inches(1, 1) : Length.mm(25);
  }

  /** About its own front foot, as for anchors at the top. */
  private Figure pull() {
    Sourced push =
        new Sourced(
            Quantity.of(settings.number(Setting.TIP_PUSH), QuantityUnit.FORCE),
            settings.source(Setting.TIP_PUSH));
    TippingFigures.Least least = new TippingFigures(job, upper, foot(upper)).least();
    double arm = back(upper) - inset().mm() - foot(upper);
    double moment = push.number() * size(upper, Axis.Z) - least.moment();
    return figure(
        "stack-pull",
        "pull on the screws along its back under the push that is asked for at its top",
        force(Math.max(0, moment / arm)),
        "max(0, P H - M) / d",
        List.of(
            push.input("P", Setting.TIP_PUSH.meaning()),
            new Input("H", "its height", mm(size(upper, Axis.Z)), Source.GEOMETRY),
            new Input(
                "M",
                "the least that keeps it standing on its front foot, which is " + least.words(),
                Quantity.of(least.moment(), QuantityUnit.MOMENT),
                STATICS),
            new Input(
                "d",
                "front foot to the screws, which stand %s from its back"
                    .formatted(job.style().text(inset())),
                mm(arm),
                Source.GEOMETRY)),
        STATICS);
  }

  /** From the front of the sides; a face frame stands in front of them. */
  private static double back(BuiltCase of) {
    return of.outside().high().y().mm();
  }

  private static double foot(BuiltCase of) {
    return of.order().kick().map(Kick::recess).map(Length::mm).orElse(0.0);
  }

  private Figure screw(BuiltCase below) {
    PowerLaw law = Withdrawal.woodScrew();
    Material top = job.material(below.order().material());
    double gravity = Matters.specificGravity(Matters.substance(top)).number();
    double thread = thread(below).mm();
    double diameter = settings.length(Setting.SCREW_DIAMETER).mm();
    return new Figure(
        id + "/stack-screw",
        "pull allowed on one screw in the top below",
        force(law.of(gravity, diameter) * thread),
        "2850 G² D p lbf, D and p in inches",
        List.of(
            new Input(
                "G",
                "specific gravity of the top, the low end for panels",
                Quantity.of(gravity, QuantityUnit.RATIO),
                Matters.substance(top).source()),
            new Sourced(mm(diameter), settings.source(Setting.SCREW_DIAMETER))
                .input("D", "diameter of the screw"),
            new Input("p", "thread in the top", mm(thread), Source.GEOMETRY)),
        law.source());
  }

  private Figure screws(Figure pull, Figure screw) {
    double count = Math.ceil(pull.value().value() / screw.value().value());
    return figure(
        "stack-screws",
        "screws that this takes along its back; two more in front against sliding",
        Quantity.count(Math.max(2, (long) count)),
        "max(2, ⌈T / w⌉)",
        List.of(
            new Input("T", pull.title(), pull.value(), pull.source()),
            new Input("w", screw.title(), screw.value(), screw.source())),
        STATICS);
  }

  private String text(Figure figure) {
    return figure.value().text(job.unit());
  }

  private Figure figure(
      String name,
      String title,
      Quantity value,
      String formula,
      List<Input> inputs,
      Source source) {
    return new Figure(id + "/" + name, title, value, formula, inputs, source);
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }
}
