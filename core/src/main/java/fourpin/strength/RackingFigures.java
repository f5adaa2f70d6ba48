package fourpin.strength;

import fourpin.casework.BuiltCase;
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
import fourpin.strength.RackedCase.Hold;
import fourpin.strength.RackedCase.Turning;
import fourpin.strength.frame.Corner;
import fourpin.strength.frame.Frame;
import fourpin.strength.frame.FrameOnLegs;
import fourpin.strength.frame.Member;
import fourpin.strength.frame.SwayFrame;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How far one case sways sideways, with its back and without, each with its working. */
final class RackingFigures {

  static final Source FRAME =
      new Source(
          "a frame of panels bent in an S and sheared, joints and panels turning one after the other",
          "any structural analysis, approximate sway of frames; face frame and doors not counted on",
          Standing.DERIVED);

  private static final String ON_FLOOR = "P h² / (J + K - B)";

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final RackedCase racked;
  private final Frame frame;
  private final Optional<RackedLegFigures> legs;
  private final RackedBackFigures back;
  private final String id;

  /**
   * @param above what stands on the case, N
   */
  RackingFigures(Job job, BuiltCase built, double above) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
    this.racked = new RackedCase(job, built, above);
    this.frame = racked.frame();
    this.back = new RackedBackFigures(job, built, racked, frame.above());
    this.legs = racked.legs().flatMap(this::figures);
    this.id = Figure.id(built.order().name());
  }

  private Optional<RackedLegFigures> figures(RackedLegs under) {
    return frame instanceof FrameOnLegs on
        ? Optional.of(new RackedLegFigures(job, built, racked, under, on))
        : Optional.empty();
  }

  /** Sway and what it comes from; without a sway for a case that falls over. */
  List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    frame.sway(racked.push()).ifPresent(sway -> all.addAll(sways(sway)));
    Frame bare = racked.held(Hold.NO_BACK, racked.spacing());
    bare.sway(racked.push()).ifPresent(sway -> all.add(withoutBack(bare, sway)));
    all.add(allowed());
    all.add(reserve("sway-reserve", "joints and back", frame));
    all.add(reserve("sway-reserve-joints", "the joints alone", bare));
    all.add(joints());
    legs.ifPresent(under -> all.addAll(under.all()));
    all.addAll(back.all());
    return all;
  }

  private List<Figure> sways(double sway) {
    Figure top =
        figure(
            "sway",
            "sway of the top sideways under that push, " + standing(),
            mm(sway),
            swaying(),
            inputs(frame));
    Optional<Figure> above = legs.flatMap(under -> under.swayAbove(inputs(frame)));
    return Stream.of(Optional.of(top), above, Optional.of(diagonals(above.orElse(top))))
        .flatMap(Optional::stream)
        .toList();
  }

  private String standing() {
    return back.words() + legs.map(under -> ", " + under.words()).orElse("");
  }

  /** Joints that do not hold what leans on them let the case go until the back holds. */
  private String swaying() {
    return switch (frame) {
      case SwayFrame alone -> swaying(alone);
      case FrameOnLegs _ -> RackedLegFigures.SWAY;
    };
  }

  private static String swaying(SwayFrame of) {
    if (of.free() == 0) {
      return ON_FLOOR;
    }
    String held = "(M + K φ) / (J + K - B)";
    return of.corners() > of.burden()
        ? "h min(M / (J - B), " + held + "), M = P h"
        : "h " + held + ", M = P h";
  }

  private List<Input> inputs(Frame of) {
    return switch (of) {
      case SwayFrame alone -> inputs(alone, alone.corners());
      case FrameOnLegs on ->
          inputs(on, on.isPanelReached(racked.push()) ? on.above() : on.above().bare());
    };
  }

  private List<Input> inputs(FrameOnLegs on, SwayFrame above) {
    List<Input> inputs = new ArrayList<>(inputs(above, above.corners() + on.legs().upright()));
    inputs.addAll(RackedLegFigures.inputs(on));
    return inputs;
  }

  /** As what it holds leans it over: until the back holds too. */
  private List<Input> bearing(Frame of) {
    return switch (of) {
      case SwayFrame alone -> inputs(alone, alone.corners());
      case FrameOnLegs on -> inputs(on, on.above());
    };
  }

  private List<Input> inputs(SwayFrame of, double corners) {
    Sourced push =
        new Sourced(
            Quantity.of(racked.push(), QuantityUnit.FORCE), settings.source(Setting.SWAY_PUSH));
    return List.of(
        push.input("P", Setting.SWAY_PUSH.meaning()),
        new Input(
            "h", "middle of the bottom to middle of the top", mm(of.height()), Source.GEOMETRY),
        new Input("J", "stiffness of the joints, N·mm for each radian", turn(corners), FRAME),
        new Input(
            "K",
            "stiffness of the back, N·mm for each radian",
            turn(of.panel()),
            RackedBackFigures.PANEL),
        new Input(
            "φ",
            "lean until the back holds, radians",
            Quantity.of(of.free(), QuantityUnit.RATIO),
            Source.GEOMETRY),
        new Input(
            "B",
            "Σ weight times height of case and contents, and of what stands or is taken to stand on it",
            turn(of.burden()),
            FRAME));
  }

  /** What makers measure. */
  private Figure diagonals(Figure sway) {
    double width = racked.width();
    double off = 2 * sway.value().value() * width / Math.hypot(width, racked.headroom());
    return figure(
        "sway-diagonals",
        "by how much the two diagonals then differ",
        mm(off),
        "2 s b / √(b² + h²)",
        List.of(
            new Input("s", sway.title(), sway.value(), sway.source()),
            new Input("b", "width over the sides", mm(width), Source.GEOMETRY),
            new Input(
                "h",
                "middle of the bottom to middle of the top",
                mm(racked.headroom()),
                Source.GEOMETRY)));
  }

  private Figure withoutBack(Frame bare, double sway) {
    return figure(
        "sway-joints",
        "the same by the joints alone, the back not counted",
        mm(sway),
        bare instanceof FrameOnLegs ? RackedLegFigures.SWAY : ON_FLOOR,
        inputs(bare));
  }

  private Figure allowed() {
    Sourced over = Matters.ratio(Setting.SWAY_LIMIT, settings);
    return figure(
        "sway-allowed",
        "sway allowed",
        mm(racked.allowed()),
        "h / n",
        List.of(
            new Input("h", "height of the frame", mm(racked.height()), Source.GEOMETRY),
            over.input("n", Setting.SWAY_LIMIT.meaning())));
  }

  private Figure reserve(String name, String what, Frame of) {
    Sourced creep = Matters.creep(job.material(built.order().material()), settings);
    List<Input> inputs = new ArrayList<>(bearing(of));
    inputs.removeIf(input -> List.of("P", "h", "l", "φ").contains(input.symbol()));
    inputs.add(creep.input("k", "lean after years over lean at first"));
    return figure(
        name,
        "times that what it holds must weigh to lean it over sideways by itself after years, held by "
            + what,
        Quantity.of(of.reserve() / creep.number(), QuantityUnit.RATIO),
        of instanceof FrameOnLegs ? RackedLegFigures.RESERVE : "(J + K) / (B k)",
        inputs);
  }

  private Figure joints() {
    List<Input> inputs = new ArrayList<>();
    alike(racked.corners()).forEach((corner, count) -> inputs.addAll(inputs(corner, count)));
    inputs.add(
        new Input(
            "h",
            "middle of the bottom to middle of the top",
            mm(racked.headroom()),
            Source.GEOMETRY));
    return figure(
        "sway-joints-stiffness",
        legs.isPresent()
            ? "stiffness of all joints but the bottom's at the sides against leaning, each radian"
            : "stiffness of all joints against leaning, each radian",
        turn(frame.above().corners()),
        "Σ n / (1 / (10 k D) + L / (6 E I₁) + 2 / (G A₁ L) + h / (6 E I₂) + 2 / (G A₂ h))",
        inputs);
  }

  /** How many there are of each, in their order. */
  static <T> Map<T, Long> alike(List<T> all) {
    return all.stream()
        .collect(Collectors.groupingBy(one -> one, LinkedHashMap::new, Collectors.counting()));
  }

  private List<Input> inputs(Turning of, long count) {
    Corner corner = of.corner();
    Setting kind = of.kind();
    return List.of(
        new Input("n", "joints alike that turn", Quantity.count(count), Source.GEOMETRY),
        Matters.ratio(kind, settings).input("k", kind.meaning()),
        new Input("D", "length of such a joint, front to back", mm(of.depth()), Source.GEOMETRY),
        new Input("L", "its panel that lies, clear", mm(corner.level().length()), Source.GEOMETRY),
        stiffness("E I₁", "its panel that lies", corner.level()),
        shear("G A₁", "its panel that lies", corner.level()),
        stiffness("E I₂", "its upright", corner.upright()),
        shear("G A₂", "its upright", corner.upright()));
  }

  static Input stiffness(String symbol, String what, Member of) {
    return new Input(
        symbol,
        "stiffness of " + what,
        Quantity.of(of.bending(), QuantityUnit.BENDING_STIFFNESS),
        FRAME);
  }

  static Input shear(String symbol, String what, Member of) {
    return new Input(
        symbol,
        "stiffness in shear of " + what + ", 5/6 of its area",
        Quantity.of(of.shear(), QuantityUnit.FORCE),
        FRAME);
  }

  private Figure figure(
      String name, String title, Quantity value, String formula, List<Input> inputs) {
    return new Figure(id + "/" + name, title, value, formula, inputs, FRAME);
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }

  private static Quantity turn(double value) {
    return Quantity.of(value, QuantityUnit.MOMENT);
  }
}
