package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.reference.Reference;
import fourpin.strength.RackedCase.Turning;
import fourpin.strength.RackedLegs.Brace;
import fourpin.strength.frame.Corner;
import fourpin.strength.frame.FrameOnLegs;
import fourpin.strength.frame.FrameOnLegs.Lean;
import fourpin.strength.frame.Legs;
import fourpin.strength.frame.Member;
import fourpin.strength.wood.Slip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the legs of a case do to its sway, with their working. */
final class RackedLegFigures {

  static final Source LEGS =
      new Source(
          "a frame on legs, sides going on from the floor to the top, their feet free to turn",
          "slope and deflection of frames, second order; the kick not fastened to the bottom, face frame"
              + " and doors not counted on",
          Standing.DERIVED);

  private static final Source BRACE =
      new Source(
          "a board on edge between two legs, its screws at each end pulled and pressed as stiffly as"
              + " they slide, its end's own bearing not counted on",
          "cautious reading of the slip of both codes",
          Standing.DERIVED);

  private static final String BOTH = "(a b - C²), a = J + K - B, b = L - D, M = P h + K φ";

  static final String SWAY = "(b M h + C (M l + P l h) + a P l²) / " + BOTH;

  static final String RESERVE =
      "((J + K) / B + L / D - √(((J + K) / B - L / D)² + 4 C² / (B D))) / (2 k)";

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final RackedCase racked;
  private final RackedLegs under;
  private final FrameOnLegs frame;

  RackedLegFigures(
      Job job, BuiltCase built, RackedCase racked, RackedLegs under, FrameOnLegs frame) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
    this.racked = racked;
    this.under = under;
    this.frame = frame;
  }

  /** What of the part below the bottom is counted on. */
  String words() {
    return under.brace().isPresent()
        ? "its sides below the bottom braced by the kick%s alone"
            .formatted(under.kicks().count() > 1 ? " and a second one" : "")
        : under.kick().isPresent()
            ? "its sides below the bottom standing free, the kick too thin for its screws and not counted on"
            : "its sides below the bottom standing free";
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>(List.of(frame(), legs(), bottom()));
    under.brace().ifPresent(brace -> all.add(kick(brace)));
    return all;
  }

  /** Besides what a frame on the floor has. */
  static List<Input> inputs(FrameOnLegs of) {
    Legs legs = of.legs();
    return List.of(
        new Input("l", "floor to the middle of the bottom", mm(legs.height()), Source.GEOMETRY),
        new Input(
            "L",
            "stiffness of the part below the bottom, N·mm for each radian",
            turn(legs.leaning()),
            LEGS),
        new Input(
            "C",
            "what the one turns the other by, N·mm for each radian",
            turn(legs.coupling()),
            LEGS),
        new Input(
            "D",
            "Σ weight times height over the floor, no higher than the bottom",
            turn(legs.burden()),
            LEGS));
  }

  /** Of the part above, which shows in its diagonals. */
  Optional<Figure> swayAbove(List<Input> inputs) {
    return frame.lean(racked.push()).map(lean -> swayAbove(lean, inputs));
  }

  private Figure swayAbove(Lean lean, List<Input> inputs) {
    return figure(
        "sway-above",
        "of that, sway of the top over the bottom",
        mm(lean.above() * frame.above().height()),
        "h (b M + C P l) / " + BOTH,
        inputs);
  }

  private Figure frame() {
    Legs legs = frame.legs();
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        new Input(
            "T",
            "stiffness of all joints but the bottom's at the sides, each radian",
            turn(frame.above().corners()),
            LEGS));
    inputs.addAll(turned());
    return figure(
        "sway-frame-stiffness",
        "stiffness of all joints against leaning of the part above the bottom alone, each radian",
        turn(frame.above().corners() + legs.upright()),
        "T + U (S + W) / (S + U + W)",
        inputs);
  }

  private Figure legs() {
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        new Input(
            "Q",
            "stiffness of the kick as a brace, N·mm for each radian",
            turn(frame.legs().brace()),
            BRACE));
    inputs.addAll(turned());
    return figure(
        "sway-legs-stiffness",
        "stiffness of the part below the bottom against leaning, each radian, " + words(),
        turn(frame.legs().leaning()),
        "Q + W (S + U) / (S + U + W), U = 2 / (h / (3 V) + 1 / (Y h)), W = 2 / (l / (3 N) + 1 / (Z l))",
        inputs);
  }

  private List<Input> turned() {
    Legs legs = frame.legs();
    return List.of(
        new Input(
            "S",
            "stiffness of the bottom's joints at both sides, N·mm for each radian",
            turn(legs.joints()),
            LEGS),
        new Input(
            "U",
            "stiffness of both sides above the bottom against being turned there, N·mm for each radian",
            turn(legs.above()),
            LEGS),
        new Input("W", "the same below the bottom", turn(legs.below()), LEGS),
        RackingFigures.stiffness("V", "a side above it", above()),
        RackingFigures.shear("Y", "a side above it", above()),
        RackingFigures.stiffness("N", "a side below it", under.sideBelow()),
        RackingFigures.shear("Z", "a side below it", under.sideBelow()),
        new Input(
            "h",
            "middle of the bottom to middle of the top",
            mm(frame.above().height()),
            Source.GEOMETRY),
        new Input("l", "floor to the middle of the bottom", mm(legs.height()), Source.GEOMETRY));
  }

  private Member above() {
    return under.sideAbove(frame.above().height());
  }

  private Figure bottom() {
    List<Input> inputs = new ArrayList<>();
    for (Turning at : racked.bottomCorners()) {
      Corner corner = at.corner();
      inputs.add(Matters.ratio(at.kind(), settings).input("k", at.kind().meaning()));
      inputs.add(
          new Input("D", "length of the joint, front to back", mm(at.depth()), Source.GEOMETRY));
      inputs.add(
          new Input(
              "L", "the bottom's clear length", mm(corner.level().length()), Source.GEOMETRY));
      inputs.add(RackingFigures.stiffness("E I", "the bottom", corner.level()));
      inputs.add(RackingFigures.shear("G A", "the bottom", corner.level()));
    }
    return figure(
        "sway-bottom-stiffness",
        "stiffness of the bottom's joints at both sides against being turned, each radian",
        turn(frame.legs().joints()),
        "Σ 1 / (1 / (10 k D) + L / (6 E I) + 2 / (G A L))",
        inputs);
  }

  private Figure kick(Brace brace) {
    List<Input> inputs = new ArrayList<>();
    for (double offset : brace.offsets()) {
      inputs.add(
          new Input(
              "r",
              "from the middle of the screws of an end to one of them",
              mm(Math.abs(offset)),
              Source.GEOMETRY));
    }
    inputs.add(
        new Input(
            "k",
            "stiffness of one screw, the lower of both codes",
            Quantity.of(brace.slip(), QuantityUnit.SPRING),
            slipSource()));
    inputs.add(new Input("b", "between the sides", mm(brace.kick().length()), Source.GEOMETRY));
    inputs.add(RackingFigures.stiffness("E I", "the kick on edge", brace.kick()));
    inputs.add(RackingFigures.shear("G A", "the kick on edge", brace.kick()));
    inputs.add(
        new Input(
            "n",
            "boards, the kick and a second one behind it where that is stated",
            Quantity.count(brace.boards()),
            Source.GEOMETRY));
    return new Figure(
        Figure.id(built.order().name()) + "/sway-kick-stiffness",
        "stiffness of the kick against leaning of the sides below the bottom, each radian",
        turn(brace.stiffness()),
        "2 n / (1 / (k Σ r²) + b / (6 E I) + 2 / (G A b))",
        inputs,
        BRACE);
  }

  private Source slipSource() {
    Part kick = under.kick().orElseThrow();
    boolean nds = Slip.nds(under.screw()) <= under.slip(job.material(kick.material()));
    return Reference.constant(nds ? "NDS load over slip" : "EC5 slip").source();
  }

  private Figure figure(
      String name, String title, Quantity value, String formula, List<Input> inputs) {
    return new Figure(
        Figure.id(built.order().name()) + "/" + name, title, value, formula, inputs, LEGS);
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }

  private static Quantity turn(double value) {
    return Quantity.of(value, QuantityUnit.MOMENT);
  }
}
