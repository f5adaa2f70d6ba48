package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.strength.Balance.Load;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the uprights of a case stand on the case below, how hard they press there, and how far the
 * top below bends under them and under the bottom that lies on it.
 */
final class StackedUprights {

  private static final Source STATICS =
      new Source("statics: middle over middle, backs in line", "rigid cases", Standing.DERIVED);

  private final Job job;
  private final BuiltCase upper;
  private final BuiltCase below;
  private final String id;
  private final double above;
  private final double shift;
  private final List<Stand> stands;

  /**
   * One upright on the top below.
   *
   * @param at its middle from the left of the case below, mm
   * @param nearest the middle of the nearest upright there
   * @param press how hard it presses
   */
  private record Stand(Part upright, double at, double nearest, Figure press) {

    double off() {
      return Math.abs(at - nearest);
    }

    boolean isOff() {
      return off() > upright.thickness().mm();
    }
  }

  /**
   * @param above what stands on the upper one in turn, N
   */
  StackedUprights(Job job, BuiltCase upper, BuiltCase below, double above) {
    this.above = above;
    this.job = job;
    this.upper = upper;
    this.below = below;
    this.id = Figure.id(upper.order().name());
    this.shift =
        (below.outside().size(Axis.X).mm() - upper.outside().size(Axis.X).mm()) / 2
            - upper.outside().low().x().mm();
    this.stands = stands();
  }

  /** From left to right: how hard each upright presses, and how far beside another it does. */
  List<Figure> figures() {
    List<Figure> all = new ArrayList<>();
    for (Stand stand : stands) {
      all.addAll(List.of(stand.press(), off(stand)));
    }
    all.addAll(sag());
    return all;
  }

  /** Sag of the top below now and after years, and how hard that stresses it. */
  List<Figure> sag() {
    StackedTop top = top();
    return Stream.concat(Stream.of(top.now(), top.years()), top.stress().figures().stream())
        .toList();
  }

  /** What the ends of the top below bring to its joints, left and right. */
  List<JointFigures> joints() {
    return new StackedTopJoints(job, upper, below, feet(), lying()).ends();
  }

  private List<StackedTopJoints.Foot> feet() {
    return stands.stream()
        .map(
            s ->
                new StackedTopJoints.Foot(
                    s.at(), s.upright().thickness().mm(), s.press().value().value()))
        .toList();
  }

  /** What an upright below carries of it, the top between two of them taken for a lever, N. */
  double on(Part upright) {
    Tributary share = Tributary.of(middle(upright) - below.outside().low().x().mm(), uprights());
    return stands.stream().mapToDouble(s -> share.of(s.press().value().value(), s.at())).sum()
        + lying().stream().mapToDouble(share::of).sum();
  }

  /** Whether the top below bends no further than it may. */
  boolean isStiff() {
    return top().isStiff();
  }

  /** How hard the top below is stressed. */
  StackedTopStress stress() {
    return top().stress();
  }

  /** What is wrong, in words. */
  String words() {
    StackedTop top = top();
    return "what stands on %s bends its top%s by %s now and %s after years between its uprights; %s and %s are allowed%s"
        .formatted(
            below.order().name(),
            top.shallow(),
            text(top.now().value(), top.limitNow()),
            text(top.years().value(), top.limitYears()),
            text(top.limitNow(), top.now().value()),
            text(top.limitYears(), top.years().value()),
            beside());
  }

  /** Whether an upright stands beside those below. */
  boolean areBeside() {
    return !off().isEmpty();
  }

  private String beside() {
    return off().stream()
        .map(
            s ->
                "; %s %s stands %s beside the nearest of them"
                    .formatted(s.upright().name(), s.upright().mark(), text(mm(s.off()))))
        .reduce("", String::concat);
  }

  /** Each worked out anew. */
  List<Remedy> cures() {
    List<Remedy> all = new ArrayList<>();
    if (areBeside()) {
      under().ifPresent(all::add);
      all.add(new Remedy("make the bays of both alike, upright over upright", "a new width"));
    }
    top()
        .thicker()
        .map(
            thick ->
                new Remedy(
                    Thicknesses.words(job, "the top of " + below.order().name(), thick),
                    "wood and weight"))
        .ifPresent(all::add);
    return all;
  }

  /** Nothing where what lies on the top bends it too far even so. */
  private Optional<Remedy> under() {
    List<Double> added = off().stream().map(Stand::at).toList();
    StackedTop then = top(Stream.concat(uprights().stream(), added.stream()).sorted().toList());
    return then.holds() ? Optional.of(under(then)) : Optional.empty();
  }

  private Remedy under(StackedTop then) {
    String places =
        String.join(
            " and ", off().stream().map(s -> s.upright().mark() + ", " + from(s.at())).toList());
    return new Remedy(
        "put a partition or a post in %s under %s; its top then bends by %s now and %s after years and is stressed to %s, which is allowed"
            .formatted(
                below.order().name(),
                places,
                text(then.now().value()),
                text(then.years().value()),
                text(then.stress().most().value())),
        "wood");
  }

  private String from(double at) {
    return text(mm(at)) + " from its left to the middle";
  }

  private List<Stand> off() {
    return stands.stream().filter(Stand::isOff).toList();
  }

  private StackedTop top() {
    return top(uprights());
  }

  private StackedTop top(List<Double> uprights) {
    return new StackedTop(job, upper, below, uprights, points(uprights), lying());
  }

  /** What stands within its own thickness over an upright bends nothing. */
  private List<StackedTop.Point> points(List<Double> uprights) {
    return stands.stream()
        .filter(
            s ->
                uprights.stream()
                    .noneMatch(x -> Math.abs(x - s.at()) <= s.upright().thickness().mm()))
        .map(s -> new StackedTop.Point(s.upright(), s.at(), s.press()))
        .toList();
  }

  private List<Stand> stands() {
    return uprightsOf(upper).map(this::stand).toList();
  }

  private Stand stand(Part upright) {
    double at = shift + middle(upright);
    double nearest =
        uprights().stream().min(Comparator.comparingDouble(x -> Math.abs(x - at))).orElseThrow();
    return new Stand(upright, at, nearest, press(upright));
  }

  private List<Double> uprights() {
    double left = below.outside().low().x().mm();
    return uprightsOf(below).map(p -> middle(p) - left).toList();
  }

  private static Stream<Part> uprightsOf(BuiltCase of) {
    return of.parts().stream()
        .filter(p -> p.role() == Part.Role.SIDE || p.role() == Part.Role.PARTITION)
        .sorted(Comparator.comparingDouble(StackedUprights::middle));
  }

  private static double middle(Part part) {
    return (part.box().low().x().mm() + part.box().high().x().mm()) / 2;
  }

  private Figure press(Part upright) {
    double shelves = shelves(upright);
    double own = weight(upright);
    double stands = stands(upright);
    double rest = rest() * share(upright);
    return figure(
        "stack-press-" + upright.mark().toLowerCase(Locale.ROOT),
        "load of %s %s on the top below, loaded as stated"
            .formatted(upright.name(), upright.mark()),
        force(shelves + own + stands + rest),
        "Σ R + G + B + S",
        List.of(
            new Input("Σ R", "ends of the shelves beside it", force(shelves), STATICS),
            new Input("G", "its own weight", force(own), STATICS),
            new Input(
                "B",
                "half of what stands on the bottom in each bay beside it, where that is off the top",
                force(stands),
                STATICS),
            new Input(
                "S",
                "its share of what else hangs on the uprights, by the bays beside it",
                force(rest),
                STATICS)));
  }

  private double shelves(Part upright) {
    ShelfReader reader = new ShelfReader(job, upper);
    return reader.shelves().stream()
        .filter(shelf -> isBeside(reader.space(shelf), upright))
        .mapToDouble(shelf -> reader.read(shelf).loaded().reaction())
        .sum();
  }

  private static boolean isBeside(BaySpace bay, Part upright) {
    return bay.left().equals(upright.mark()) || bay.right().equals(upright.mark());
  }

  private double weight(Part part) {
    return new Masses(job).of(part) * Gravity.STANDARD;
  }

  /** Of all that hangs on the uprights, half of each bay beside one. */
  private double share(Part upright) {
    double beside =
        upper.bays().stream()
            .filter(bay -> isBeside(bay, upright))
            .mapToDouble(StackedUprights::clear)
            .sum();
    return beside / 2 / upper.bays().stream().mapToDouble(StackedUprights::clear).sum();
  }

  private static double clear(BaySpace bay) {
    return bay.clear().size(Axis.X).mm();
  }

  /** Of what stands on a bottom that hangs on the uprights, half of each bay beside one, N. */
  private double stands(Part upright) {
    return lies()
        ? 0
        : upper.bays().stream()
            .filter(bay -> isBeside(bay, upright))
            .mapToDouble(bay -> newton(onBottom(bay)) / 2)
            .sum();
  }

  /** All of the case but uprights, shelves, what stands in it, and a bottom that lies, N. */
  private double rest() {
    double uprights = uprightsOf(upper).mapToDouble(p -> shelves(p) + weight(p)).sum();
    double bottom = lies() ? weight(bottom()) : 0;
    double standing = upper.bays().stream().mapToDouble(bay -> newton(onBottom(bay))).sum();
    double all = Balance.of(job, upper, Load.ALL).newton() + above;
    return Math.max(0, all - uprights - bottom - standing);
  }

  /** What stands on the bottom in one bay. */
  private Beam.Load.Even onBottom(BaySpace bay) {
    return new Beam.Load.Even(
        ShelfLoad.of(upper.order(), bay.number()).perMm(bottom().box().size(Axis.Y)),
        shift + bay.clear().low().x().mm(),
        shift + bay.clear().high().x().mm());
  }

  private static double newton(Beam.Load.Even load) {
    return load.perMm() * (load.to() - load.from());
  }

  /** Its bottom and what stands on that in each bay, where the bottom lies on the top below. */
  private List<Beam.Load.Even> lying() {
    return lies()
        ? Stream.concat(Stream.of(ofBottom()), upper.bays().stream().map(this::onBottom)).toList()
        : List.of();
  }

  private Beam.Load.Even ofBottom() {
    double from = shift + bottom().box().low().x().mm();
    double width = bottom().box().size(Axis.X).mm();
    return new Beam.Load.Even(weight(bottom()) / width, from, from + width);
  }

  private boolean lies() {
    return StackedTop.lies(bottom());
  }

  private Part bottom() {
    return upper.part("B");
  }

  private Figure off(Stand stand) {
    return figure(
        "stack-off-" + stand.upright().mark().toLowerCase(Locale.ROOT),
        "how far %s %s stands beside the nearest upright below, middle to middle"
            .formatted(stand.upright().name(), stand.upright().mark()),
        mm(stand.off()),
        "|x₁ - x₂|",
        List.of(
            new Input("x₁", "its middle over the case below", mm(stand.at()), STATICS),
            new Input("x₂", "middle of the nearest upright there", mm(stand.nearest()), STATICS)));
  }

  private String text(Quantity value) {
    return value.text(job.unit());
  }

  private String text(Quantity value, Quantity against) {
    return value.textBeside(against, job.unit());
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
