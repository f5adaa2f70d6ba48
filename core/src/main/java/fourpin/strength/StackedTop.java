package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.strength.Beam.Load;
import fourpin.strength.Section.Layer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The top of a case under another case: a beam that rests on two neighbouring uprights, between
 * which it bends most. A bottom that lies on it all the way bends along, not glued to it. Joints at
 * its ends, its going on over partitions and the backs are not counted on. Of a top that is deeper
 * than the case on it, the backs of both in line, only what is under that case is counted on: the
 * front bends along less than it would in a beam, and what it holds up is left out.
 *
 * @param uprights middles of those below, from the left, mm
 * @param points what stands on it beside them
 * @param lying the bottom on it and then what stands in each of its bays; none where it stands off
 *     the top
 */
record StackedTop(
    Job job,
    BuiltCase upper,
    BuiltCase below,
    List<Double> uprights,
    List<Point> points,
    List<Load.Even> lying) {

  private static final int STATIONS = 40;

  static final Source STATICS =
      new Source(
          "beam on two supports that bends and shears, by singularity functions, at "
              + (STATIONS - 1)
              + " places along it; top below and bottom above bend alike, not glued; of a deeper top,"
              + " what is under the case on it",
          "any strength of materials; joints, backs and going on over partitions are not counted on",
          Standing.DERIVED);

  StackedTop {
    uprights = List.copyOf(uprights);
    points = List.copyOf(points);
    lying = List.copyOf(lying);
  }

  /** An upright beside those below. @param at from the left, mm */
  record Point(Part upright, double at, Figure press) {}

  /** Whether a bottom lies on what it stands on. */
  static boolean lies(Part bottom) {
    return !bottom.box().low().z().isPositive();
  }

  /** One part between two uprights. */
  record Span(double from, double to) {
    double length() {
      return to - from;
    }
  }

  /** Whether it bends no further than it may, and nowhere near breaking. */
  boolean holds() {
    return holds(thickness());
  }

  private boolean holds(double thickness) {
    return isStiff(thickness) && stress().holds(thickness);
  }

  /** How hard it is bent, beside its strength. */
  StackedTopStress stress() {
    return new StackedTopStress(this);
  }

  /** Whether it bends no further than it may. */
  boolean isStiff() {
    return isStiff(thickness());
  }

  private boolean isStiff(double thickness) {
    return spans()
        .allMatch(
            s -> {
              double sag = sag(s, thickness);
              return sag <= s.length() / limit(Setting.SAG_LIMIT)
                  && sag * creep().number() <= s.length() / limit(Setting.SAG_LIMIT_YEARS);
            });
  }

  /** How thick it has to be at the least; nothing if that is far from what it is. */
  Optional<Material> thicker() {
    return Thicknesses.first(job, job.material(top().material()), this::holds);
  }

  Quantity limitNow() {
    return mm(worst().length() / limit(Setting.SAG_LIMIT));
  }

  Quantity limitYears() {
    return mm(worst().length() / limit(Setting.SAG_LIMIT_YEARS));
  }

  Figure now() {
    Span span = worst();
    return figure(
        "stack-top-sag",
        "how far the top below bends under what stands on it, at its most between two uprights",
        mm(sag(span, thickness())),
        "max (w + s)(x) of E I w,xxxx = -G A s,xx = Σ R δ(x - a) + Σ q [b ≤ x ≤ c] + g, w = w,xx = s = 0 at 0 and L",
        inputs(span));
  }

  Figure years() {
    Figure now = now();
    return figure(
        "stack-top-sag-years",
        "how far the top below bends under what stands on it after years",
        mm(now.value().value() * creep().number()),
        "k s",
        List.of(
            creep().input("k", "sag after years over sag at first"),
            new Input("s", now.title(), now.value(), now.source())));
  }

  private List<Input> inputs(Span span) {
    List<Input> inputs = new ArrayList<>();
    for (Point point : pointsIn(span)) {
      String mark = point.upright().mark();
      inputs.add(new Input("R", point.press().title(), point.press().value(), STATICS));
      inputs.add(
          new Input("a", "from the upright on the left to " + mark, mm(at(point, span)), STATICS));
    }
    lyingIn(span).forEach(load -> inputs.addAll(inputs(load)));
    inputs.add(new Input("g", "the top's own weight", line(own(thickness())), STATICS));
    inputs.add(new Input("L", "between the two uprights", mm(span.length()), Source.GEOMETRY));
    inputs.add(
        new Input(
            "E I",
            "stiffness of the top below"
                + shallow()
                + (along(span) ? " and of the bottom above, each for itself" : ""),
            Quantity.of(stiffness(span, counted(thickness())), QuantityUnit.BENDING_STIFFNESS),
            STATICS));
    inputs.add(
        new Input(
            "G A",
            "the same in shear, 5/6 of its area"
                + (along(span) ? ", both as if of that which shears more" : ""),
            Quantity.of(shear(span, counted(thickness())), QuantityUnit.FORCE),
            STATICS));
    return inputs;
  }

  private static List<Input> inputs(Load.Even load) {
    return List.of(
        new Input(
            "q",
            "what lies on the top, the bottom above or what stands in one of its bays",
            line(load.perMm()),
            STATICS),
        new Input("b", "from the upright on the left to where it begins", mm(load.from()), STATICS),
        new Input("c", "from the upright on the left to where it ends", mm(load.to()), STATICS));
  }

  Stream<Span> spans() {
    return IntStream.range(1, uprights.size())
        .mapToObj(i -> new Span(uprights.get(i - 1), uprights.get(i)));
  }

  /** That which uses most of what it is allowed. */
  private Span worst() {
    return spans()
        .max(Comparator.comparingDouble(s -> sag(s, thickness()) / s.length()))
        .orElseThrow();
  }

  private List<Point> pointsIn(Span span) {
    return points.stream().filter(p -> p.at() > span.from() && p.at() < span.to()).toList();
  }

  private static double at(Point point, Span span) {
    return point.at() - span.from();
  }

  private double sag(Span span, double thickness) {
    Beam.Bent bent = bent(span, thickness);
    return stations(span).map(bent::deflection).max().orElse(0);
  }

  /** The largest between two uprights that bends the top, and the bottom that lies on it, N·mm. */
  double moment(Span span, double thickness) {
    Beam.Bent bent = bent(span, thickness);
    DoubleStream under = pointsIn(span).stream().mapToDouble(p -> at(p, span));
    return DoubleStream.concat(stations(span), under).map(bent::moment).max().orElse(0);
  }

  private static DoubleStream stations(Span span) {
    return IntStream.range(1, STATIONS).mapToDouble(i -> span.length() * i / STATIONS);
  }

  private Beam.Bent bent(Span span, double thickness) {
    List<Load> loads = new ArrayList<>();
    pointsIn(span).forEach(p -> loads.add(new Load.Point(p.press().value().value(), at(p, span))));
    loads.add(new Load.Even(own(thickness), 0, span.length()));
    loads.addAll(lyingIn(span));
    Section counted = counted(thickness);
    return Beam.simple(span.length(), stiffness(span, counted), shear(span, counted)).under(loads);
  }

  /** What of it lies between two uprights, from the left one of them. */
  private List<Load.Even> lyingIn(Span span) {
    return lying.stream()
        .map(
            load ->
                new Load.Even(
                    load.perMm(),
                    Math.max(0, load.from() - span.from()),
                    Math.min(span.length(), load.to() - span.from())))
        .filter(load -> load.to() > load.from())
        .toList();
  }

  /** The top's own weight along it, N/mm, of another thickness. */
  private double own(double thickness) {
    double newton = new Masses(job).of(top()) * Gravity.STANDARD * thickness / thickness();
    return newton / top().box().size(Axis.X).mm();
  }

  /**
   * Of the top and what bends along.
   *
   * @param top what of it is counted on
   */
  double stiffness(Span span, Section top) {
    return sections(span, top).mapToDouble(Section::bendingStiffness).sum();
  }

  /** Two that bend alike are at the least as stiff as if both sheared as the one that does more. */
  private double shear(Span span, Section top) {
    return stiffness(span, top)
        * sections(span, top)
            .mapToDouble(s -> s.shearStiffness() / s.bendingStiffness())
            .min()
            .orElseThrow();
  }

  private Stream<Section> sections(Span span, Section top) {
    return along(span)
        ? Stream.of(top, new ShelfReader(job, upper).section(bottom()))
        : Stream.of(top);
  }

  /** Of the top alone, over all its depth. */
  Section whole(double thickness) {
    return new ShelfReader(job, below).section(top()).withPanel(thickness);
  }

  /** What of that is under the case on it. */
  Section counted(double thickness) {
    return new Section(
        whole(thickness).layers().stream()
            .filter(layer -> layer.front() + layer.width() > before())
            .map(this::behind)
            .toList());
  }

  private Layer behind(Layer layer) {
    double front = Math.max(layer.front(), before());
    return layer.at(front, layer.front() + layer.width() - front);
  }

  /** How far the top stands out before what stands on it; as much as it is thick counts. */
  private double before() {
    double deep = upper.outside().high().y().mm() - bottom().box().low().y().mm();
    double front = below.outside().high().y().mm() - deep - top().box().low().y().mm();
    return Math.clamp(front, 0, Math.max(0, depth() - thickness()));
  }

  private double depth() {
    return top().box().size(Axis.Y).mm();
  }

  /** Which part of a deeper top is counted on. */
  String shallow() {
    return before() > 0
        ? " (counted: the %s of its depth under what stands on it)"
            .formatted(mm(depth() - before()).text(job.unit()))
        : "";
  }

  /** Whether the bottom above bends along, from one upright to the next. */
  private boolean along(Span span) {
    double near = top().thickness().mm();
    return lies(bottom())
        && lying.getFirst().from() <= span.from() + near
        && lying.getFirst().to() >= span.to() - near;
  }

  Part top() {
    return below.part("T");
  }

  private Part bottom() {
    return upper.part("B");
  }

  double thickness() {
    return top().thickness().mm();
  }

  private Sourced creep() {
    return Matters.creep(job.material(top().material()), settings());
  }

  private double limit(Setting setting) {
    return settings().number(setting);
  }

  Settings settings() {
    return below.order().settings();
  }

  Figure figure(String name, String title, Quantity value, String formula, List<Input> inputs) {
    return new Figure(id(name), title, value, formula, inputs, STATICS);
  }

  String id(String name) {
    return Figure.id(upper.order().name(), name);
  }

  private static Quantity line(double perMm) {
    return Quantity.of(perMm, QuantityUnit.LINE_LOAD);
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }
}
