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
import fourpin.strength.frame.ShearPanel;
import fourpin.strength.frame.SwayFrame;
import fourpin.strength.wood.Slip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** How the back of a case that is pushed sideways holds it, with its working. */
final class RackedBackFigures {

  static final Source PANEL =
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
   * @param frame from the bottom upwards
   */
  RackedBackFigures(Job job, BuiltCase built, RackedCase racked, SwayFrame frame) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
    this.racked = racked;
    this.frame = frame;
    this.id = Figure.id(built.order().name());
  }

  /** None without a back. */
  List<Figure> all() {
    return switch (racked.hold()) {
      case NO_BACK -> List.of();
      case GLUED -> List.of(back());
      case LOOSE -> List.of(back(), free());
      case SCREWED -> List.of(back(), slipEc5(), slipNds());
    };
  }

  String words() {
    return switch (racked.hold()) {
      case NO_BACK -> "without a back";
      case LOOSE -> "the back loose in its grooves";
      case SCREWED -> "the back screwed all round";
      case GLUED -> "the back glued all round";
    };
  }

  private Figure back() {
    List<ShearPanel> backs = racked.backs();
    ShearPanel first = backs.getFirst();
    Material material = job.material(built.order().back().orElseThrow().material());
    List<Input> inputs = new ArrayList<>();
    RackingFigures.alike(backs)
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
    return new Figure(
        id + "/sway-free",
        "sway of the top over the bottom until the back jams in its grooves",
        mm(frame.free() * racked.headroom()),
        "h p (1 / b + 1 / H)",
        List.of(
            new Input(
                "h",
                "middle of the bottom to middle of the top",
                mm(racked.headroom()),
                Source.GEOMETRY),
            new Sourced(Quantity.of(play), settings.source(Setting.PANEL_PLAY))
                .input("p", Setting.PANEL_PLAY.meaning()),
            new Input("b", "width of the piece that jams last", mm(last.width()), Source.GEOMETRY),
            new Input("H", "its height", mm(last.height()), Source.GEOMETRY)),
        RackingFigures.FRAME);
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

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }

  private static Quantity turn(double value) {
    return Quantity.of(value, QuantityUnit.MOMENT);
  }
}
