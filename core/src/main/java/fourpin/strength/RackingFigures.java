package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.job.Job;
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
import fourpin.reference.Reference;
import fourpin.strength.RackedCase.Hold;
import fourpin.strength.RackedCase.Turning;
import fourpin.strength.frame.Corner;
import fourpin.strength.frame.ShearPanel;
import fourpin.strength.frame.SwayFrame;
import fourpin.strength.wood.Slip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How far one case sways sideways, with its back and without, each with its working. */
final class RackingFigures {

  private static final Source FRAME =
      new Source(
          "a frame of panels bent in an S, joints and panels turning one after the other",
          "any structural analysis, approximate sway of frames; kick, face frame and doors not counted on",
          Standing.DERIVED);

  private static final Source PANEL =
      new Source(
          "a thin panel in shear, its fasteners sliding alike",
          "statics; as the nail-slip term of the building codes' sway of panelled walls",
          Standing.DERIVED);

  private static final Source STRUT =
      new Source(
          "a panel jammed in its frame as a strut from corner to corner, a tenth of the diagonal wide",
          "cautious reading of the rules for infilled frames",
          Standing.FROM_MEMORY);

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final RackedCase racked;
  private final SwayFrame frame;
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
    this.id = Figure.id(built.order().name());
  }

  /** Sway and what it comes from; without a sway for a case that falls over. */
  List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    frame.sway(racked.push()).ifPresent(sway -> all.addAll(sways(sway)));
    SwayFrame bare = racked.held(Hold.NO_BACK, racked.spacing());
    bare.sway(racked.push()).ifPresent(sway -> all.add(withoutBack(bare, sway)));
    all.add(allowed());
    all.add(reserve("sway-reserve", "joints and back", frame));
    all.add(reserve("sway-reserve-joints", "the joints alone", bare));
    all.add(joints());
    if (racked.hold() != Hold.NO_BACK) {
      all.add(back());
    }
    if (racked.hold() == Hold.LOOSE) {
      all.add(free());
    }
    if (racked.hold() == Hold.SCREWED) {
      all.addAll(List.of(slipEc5(), slipNds()));
    }
    return all;
  }

  private List<Figure> sways(double sway) {
    Figure top =
        figure(
            "sway",
            "sway of the top sideways under that push, " + words(),
            mm(sway),
            swaying(),
            inputs(frame));
    return List.of(top, diagonals(top));
  }

  /** Joints that do not hold what leans on them let the case go until the back holds. */
  private String swaying() {
    if (frame.free() == 0) {
      return "P h² / (J + K - B)";
    }
    String held = "(M + K φ) / (J + K - B)";
    return frame.corners() > frame.burden()
        ? "h min(M / (J - B), " + held + "), M = P h"
        : "h " + held + ", M = P h";
  }

  private String words() {
    return switch (racked.hold()) {
      case NO_BACK -> "without a back";
      case LOOSE -> "the back loose in its grooves";
      case SCREWED -> "the back screwed all round";
      case GLUED -> "the back glued all round";
    };
  }

  private List<Input> inputs(SwayFrame of) {
    Sourced push =
        new Sourced(
            Quantity.of(racked.push(), QuantityUnit.FORCE), settings.source(Setting.SWAY_PUSH));
    return List.of(
        push.input("P", Setting.SWAY_PUSH.meaning()),
        new Input(
            "h", "middle of the bottom to middle of the top", mm(of.height()), Source.GEOMETRY),
        new Input("J", "stiffness of the joints, N·mm for each radian", turn(of.corners()), FRAME),
        new Input("K", "stiffness of the back, N·mm for each radian", turn(of.panel()), PANEL),
        new Input(
            "φ",
            "lean until the back holds, radians",
            Quantity.of(of.free(), QuantityUnit.RATIO),
            Source.GEOMETRY),
        new Input("B", "Σ weight times height of case and contents", turn(of.burden()), FRAME));
  }

  /** What makers measure. */
  private Figure diagonals(Figure sway) {
    double width = racked.width();
    double off = 2 * sway.value().value() * width / Math.hypot(width, racked.height());
    return figure(
        "sway-diagonals",
        "by how much the two diagonals then differ",
        mm(off),
        "2 s b / √(b² + h²)",
        List.of(
            new Input("s", sway.title(), sway.value(), sway.source()),
            new Input("b", "width over the sides", mm(width), Source.GEOMETRY),
            new Input("h", "height of the frame", mm(racked.height()), Source.GEOMETRY)));
  }

  private Figure withoutBack(SwayFrame bare, double sway) {
    return figure(
        "sway-joints",
        "the same by the joints alone, the back not counted",
        mm(sway),
        "P h² / (J + K - B)",
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

  private Figure reserve(String name, String what, SwayFrame of) {
    Sourced creep = Matters.creep(job.material(built.order().material()), settings);
    List<Input> inputs = new ArrayList<>(inputs(of));
    inputs.removeIf(input -> List.of("P", "h", "φ").contains(input.symbol()));
    inputs.add(creep.input("k", "lean after years over lean at first"));
    return figure(
        name,
        "times that what it holds must weigh to lean it over sideways by itself after years, held by "
            + what,
        Quantity.of(of.reserve() / creep.number(), QuantityUnit.RATIO),
        "(J + K) / (B k)",
        inputs);
  }

  private Figure joints() {
    List<Input> inputs = new ArrayList<>();
    alike(racked.corners()).forEach((corner, count) -> inputs.addAll(inputs(corner, count)));
    inputs.add(new Input("h", "height of the frame", mm(racked.height()), Source.GEOMETRY));
    return figure(
        "sway-joints-stiffness",
        "stiffness of all joints against leaning, each radian",
        turn(frame.corners()),
        "Σ n / (1 / (10 k D) + L / (6 E I₁) + h / (6 E I₂))",
        inputs);
  }

  /** How many there are of each, in their order. */
  private static <T> Map<T, Long> alike(List<T> all) {
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
        new Input("L", "its panel that lies, clear", mm(corner.span()), Source.GEOMETRY),
        stiffness("E I₁", "its panel that lies", corner.level()),
        stiffness("E I₂", "its upright", corner.upright()));
  }

  private Figure back() {
    List<ShearPanel> backs = racked.backs();
    ShearPanel first = backs.getFirst();
    Material material = job.material(built.order().back().orElseThrow().material());
    List<Input> inputs = new ArrayList<>();
    alike(backs)
        .forEach(
            (piece, count) -> {
              inputs.add(
                  new Input(
                      "n", "pieces alike of the back", Quantity.count(count), Source.GEOMETRY));
              inputs.add(new Input("b", "their width", mm(piece.width()), Source.GEOMETRY));
              inputs.add(new Input("h", "their height", mm(piece.height()), Source.GEOMETRY));
            });
    inputs.add(new Input("t", "thickness of the back", mm(first.thickness()), Source.GEOMETRY));
    inputs.addAll(inputs(material, first));
    return new Figure(
        id + "/sway-back-stiffness",
        "stiffness of the back against leaning, each radian, " + words(),
        turn(frame.panel()),
        formula(),
        inputs,
        racked.hold() == Hold.LOOSE ? STRUT : PANEL);
  }

  private List<Input> inputs(Material material, ShearPanel first) {
    Flat flat = Matters.of(material).flat();
    return switch (racked.hold()) {
      case NO_BACK -> List.of();
      case LOOSE ->
          List.of(
              new Input(
                  "E",
                  "the lower of its moduli of elasticity",
                  Quantity.of(first.elastic(), QuantityUnit.STRESS),
                  flat.across().source()));
      case GLUED -> List.of(flat.shear().input("G", "shear modulus in its plane"));
      case SCREWED ->
          List.of(
              flat.shear().input("G", "shear modulus in its plane"),
              new Sourced(
                      Quantity.of(settings.length(Setting.SCREW_SPACING)),
                      settings.source(Setting.SCREW_SPACING))
                  .input("s", Setting.SCREW_SPACING.meaning()),
              new Input(
                  "k",
                  "stiffness of one screw, the lower of both codes",
                  Quantity.of(racked.slip(), QuantityUnit.SPRING),
                  lowerSlip().source()));
    };
  }

  private String formula() {
    return switch (racked.hold()) {
      case NO_BACK, LOOSE -> "Σ n E t b² h² / (10 (b² + h²))";
      case SCREWED -> "Σ n b h / (1 / (G t) + 2 (s / k) (1 / b + 1 / h))";
      case GLUED -> "Σ n G t b h";
    };
  }

  private Figure free() {
    Length play = settings.length(Setting.PANEL_PLAY);
    ShearPanel last =
        Collections.max(
            racked.backs(), Comparator.comparingDouble(back -> back.freeLean(play.mm())));
    return figure(
        "sway-free",
        "sway of the top until the back jams in its grooves",
        mm(frame.free() * frame.height()),
        "h p (1 / b + 1 / H)",
        List.of(
            new Input("h", "height of the frame", mm(frame.height()), Source.GEOMETRY),
            new Sourced(Quantity.of(play), settings.source(Setting.PANEL_PLAY))
                .input("p", Setting.PANEL_PLAY.meaning()),
            new Input("b", "width of the piece that jams last", mm(last.width()), Source.GEOMETRY),
            new Input("H", "its height", mm(last.height()), Source.GEOMETRY)));
  }

  private Figure lowerSlip() {
    Figure ec5 = slipEc5();
    Figure nds = slipNds();
    return ec5.value().value() <= nds.value().value() ? ec5 : nds;
  }

  private Figure slipEc5() {
    Source source = Reference.constant("EC5 slip").source();
    return new Figure(
        id + "/back-slip-ec5",
        "how stiffly one screw of the back holds against sliding, by Eurocode 5",
        Quantity.of(
            Slip.ec5(racked.backDensity(), racked.caseDensity(), racked.screw()),
            QuantityUnit.SPRING),
        "√(ρ₁ ρ₂)^1.5 d / 23 N/mm, ρ₁ and ρ₂ in kg/m³, d in mm",
        List.of(
            density("ρ₁", "mean density of the back", racked.backDensity()),
            density("ρ₂", "mean density of the case", racked.caseDensity()),
            screw()),
        source);
  }

  private Figure slipNds() {
    Source source = Reference.constant("NDS load over slip").source();
    return new Figure(
        id + "/back-slip-nds",
        "the same by the NDS, which knows wood alone",
        Quantity.of(Slip.nds(racked.screw()), QuantityUnit.SPRING),
        "180000 d^1.5 lbf/in, d in inches",
        List.of(screw()),
        source);
  }

  private Input screw() {
    return new Sourced(
            Quantity.of(settings.length(Setting.BACK_SCREW)), settings.source(Setting.BACK_SCREW))
        .input("d", Setting.BACK_SCREW.meaning());
  }

  private static Input density(String symbol, String meaning, double value) {
    return new Input(
        symbol,
        meaning,
        Quantity.of(value, QuantityUnit.DENSITY),
        new Source("the job's materials and the tables", "", Standing.DERIVED));
  }

  private static Input stiffness(String symbol, String what, double value) {
    return new Input(
        symbol, "stiffness of " + what, Quantity.of(value, QuantityUnit.BENDING_STIFFNESS), FRAME);
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
