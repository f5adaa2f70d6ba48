package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.reference.Constant;
import fourpin.reference.PanelProduct;
import fourpin.reference.PowerLaw;
import fourpin.reference.Reference;
import fourpin.reference.Substance;
import fourpin.reference.Wood;
import fourpin.strength.wood.DowelBearing;
import fourpin.strength.wood.DowelInWood;
import fourpin.strength.wood.Embedment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a pin in a side may carry for years: by the National Design Specification and by Eurocode 5,
 * which rest on different tests and margins.
 */
final class PinAllowances {

  private static final double MM_PER_INCH = 25.4;
  private static final double LARGE_INCHES = 0.25;
  private static final double SMALL_INCHES = 0.17;

  static final Source YIELD =
      new Source(
          "Johansen's theory of yield, a stiff dowel that turns in its hole",
          "NDS 2018, 12.3.1; EN 1995-1-1:2004, 8.2",
          Standing.DERIVED);

  private static final String DENSITY = "characteristic density of the side";

  private static final Source STATICS = new Source("statics", "", Standing.DERIVED);

  private final String prefix;

  /**
   * @param prefix of the ids of its figures
   */
  PinAllowances(String prefix) {
    this.prefix = prefix;
  }

  /** One for each code that speaks of what the side is of. */
  List<Figure> all(PinInSide in) {
    return Stream.of(nds(in), ec5(in)).flatMap(Optional::stream).toList();
  }

  /** What codes allow on a pin, and what bends it no further than {@code stress}. */
  static List<SupportLimit> limits(PinInSide in, Sourced stress) {
    List<Figure> codes = new PinAllowances("").all(in);
    return Stream.concat(
            codes.stream().map(code -> byCode(code, in.air())),
            bearing(codes).map(f -> byBending(in, f, stress)).stream())
        .toList();
  }

  /** The lowest bearing of the side that a code knows, which bends the pin most. */
  static Optional<Double> bearing(List<Figure> codes) {
    return codes.stream().map(f -> f.inputs().getFirst().value().value()).min(Double::compare);
  }

  private static SupportLimit byBending(PinInSide in, double bearing, Sourced stress) {
    double most = in.dowel().pushOf(in.mostMoment(stress.number()), bearing);
    return new SupportLimit(force(most), force(most), "by the bending of its pin", stress.source());
  }

  private static SupportLimit byCode(Figure figure, ServiceClass air) {
    String by = figure.title().substring(figure.title().indexOf(", by ") + 2);
    return new SupportLimit(figure.value(), brief(figure, air), by, figure.source());
  }

  /**
   * The same for minutes. Wood's k_mod grows by less than that of boards, for which it is taken.
   */
  private static Quantity brief(Figure figure, ServiceClass air) {
    boolean nds = figure.id().endsWith("nds");
    double times =
        nds
            ? number("NDS duration for brief loads") / number("NDS duration for permanent loads")
            : EurocodeMargins.brief(air);
    return force(times * figure.value().value());
  }

  private static double number(String constant) {
    return Reference.constant(constant).value();
  }

  /** Load allowed by the NDS, which knows wood and plywood. */
  Optional<Figure> nds(PinInSide in) {
    return gravity(in).map(gravity -> nds(in, gravity));
  }

  private Figure nds(PinInSide in, Sourced gravity) {
    double diameter = in.diameter().number();
    boolean along = !Matters.isCutEitherWay(in.side());
    PowerLaw law = along ? DowelBearing.ndsAlong(diameter) : DowelBearing.ndsAcross(diameter);
    double bearing = law.of(gravity.number(), diameter);
    Sourced duration = Reference.constant("NDS duration for permanent loads").sourced();
    Sourced reduction = reduction(diameter / MM_PER_INCH);
    Sourced wet = in.air().wetService();
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        new Input(
            "Fₑ",
            (along
                    ? "bearing of the side along its grain, %s × G^%s psi"
                    : "bearing of the side across its grain, since it may be cut either way, %s × G^%s psi and by the root of the diameter from 1/4 in on")
                .formatted(plain(law.factor()), plain(law.gravityPower())),
            stress(bearing),
            law.source()));
    inputs.add(
        gravity.input(
            "G",
            "specific gravity of the side; for panels the low end of its range, in the formula for"
                + " solid wood, since the table of the NDS for plywood was not found"));
    inputs.addAll(sizes(in));
    inputs.add(duration.input("C_D", "for loads that stay"));
    inputs.add(wet.input("C_M", in.air().wetWords()));
    inputs.add(reduction.input("R_d", "from yield to what is allowed"));
    return figure(
        "support-allowed-nds",
        "load allowed on a support, by the NDS",
        force(in.dowel().yieldsAt(bearing) * duration.number() * wet.number() / reduction.number()),
        "Fₑ d (" + DowelInWood.SHARE + ") C_D C_M / R_d",
        inputs,
        YIELD);
  }

  /** The yield of one member in bearing; for dowels under 1/4 in by their diameter. */
  static Sourced reduction(double inches) {
    Constant small = Reference.constant("NDS reduction of small dowels");
    Constant large = Reference.constant("NDS reduction of large dowels");
    double factor =
        inches >= LARGE_INCHES
            ? large.value()
            : inches <= SMALL_INCHES ? small.value() : 10 * inches + 0.5;
    return new Sourced(Quantity.of(factor, QuantityUnit.RATIO), large.source());
  }

  /** The NDS says nothing of boards of particles and fibres. */
  private static Optional<Sourced> gravity(PinInSide in) {
    Substance substance = Matters.substance(in.side());
    return switch (substance.family()) {
      case PLYWOOD, LAMINATED_WOOD, STRAND_BOARD, SOLID_WOOD ->
          Optional.of(Matters.specificGravity(substance));
      case PARTICLEBOARD, FIBREBOARD, GLASS -> Optional.empty();
    };
  }

  /** Load allowed by Eurocode 5; nothing in glass, nor in boards that are not for such air. */
  Optional<Figure> ec5(PinInSide in) {
    return EurocodeMargins.duration(Matters.substance(in.side()), in.air())
        .flatMap(duration -> embedment(in).map(bearing -> ec5(in, bearing, duration)));
  }

  /** How a side bears by Eurocode 5. @param of what it hangs on besides the diameter */
  private record Bearing(Embedment embedment, Input of) {}

  private static Optional<Bearing> embedment(PinInSide in) {
    return switch (Matters.substance(in.side())) {
      case Wood _ -> Optional.of(ofWood(in));
      case PanelProduct panel ->
          switch (panel.family()) {
            case LAMINATED_WOOD, SOLID_WOOD -> Optional.of(ofWood(in));
            case PLYWOOD -> Optional.of(ofPlywood(in));
            case PARTICLEBOARD, FIBREBOARD, STRAND_BOARD -> Optional.of(ofBoard(in));
            case GLASS -> Optional.empty();
          };
    };
  }

  private static Bearing ofWood(PinInSide in) {
    Sourced density = characteristic(in);
    Embedment along = Embedment.ofWood(density.number(), in.diameter().number());
    return new Bearing(
        Matters.isCutEitherWay(in.side())
            ? along.across(DowelBearing.k90(kind(in), in.diameter().number()))
            : along,
        density.input("ρ", DENSITY));
  }

  /** Laminated wood is of softwoods, which bear less across. */
  private static Wood.Kind kind(PinInSide in) {
    return Matters.substance(in.side()) instanceof Wood wood ? wood.kind() : Wood.Kind.SOFTWOOD;
  }

  private static Bearing ofPlywood(PinInSide in) {
    Sourced density = characteristic(in);
    return new Bearing(
        Embedment.ofPlywood(density.number(), in.diameter().number()), density.input("ρ", DENSITY));
  }

  private static Bearing ofBoard(PinInSide in) {
    Length thickness = in.side().thickness();
    return new Bearing(
        Embedment.ofBoard(in.diameter().number(), thickness.mm()),
        new Input("T", "thickness of the side", Quantity.of(thickness), Source.STATED));
  }

  private Figure ec5(PinInSide in, Bearing bearing, Sourced duration) {
    Embedment embedment = bearing.embedment();
    Sourced material = EurocodeMargins.material();
    Sourced load = EurocodeMargins.load();
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        new Input(
            "f",
            "characteristic embedment of the side, " + embedment.words(),
            stress(embedment.mpa()),
            embedment.source()));
    inputs.add(bearing.of());
    inputs.addAll(sizes(in));
    inputs.add(duration.input("k_mod", in.air().words() + ", in what the side is of"));
    inputs.add(material.input("γ_M", "margin for connections"));
    inputs.add(load.input("γ_Q", EurocodeMargins.LARGER));
    return figure(
        "support-allowed-ec5",
        "load allowed on a support, by Eurocode 5",
        force(
            in.dowel().yieldsAt(embedment.mpa())
                * duration.number()
                / (material.number() * load.number())),
        "f d (" + DowelInWood.SHARE + ") k_mod / (γ_M γ_Q)",
        inputs,
        YIELD);
  }

  private static Sourced characteristic(PinInSide in) {
    return new Sourced(
        Quantity.of(Matters.characteristicDensity(in.side()), QuantityUnit.DENSITY),
        Matters.substance(in.side()).source());
  }

  private static List<Input> sizes(PinInSide in) {
    return List.of(
        in.diameter().input("d", "diameter of what presses on the wood"),
        in.depth().input("t", "its depth in the wood"),
        new Input(
            "e",
            "from the side to the middle of what lies on the pin, (r + g) / 2: a shelf that sags"
                + " bears on the tip first, at r, but a pin that is about to yield has turned"
                + " further than the end of the shelf, and is borne upon nearer the side",
            length(in.lever()),
            STATICS),
        in.reach().input("r", "reach of the pin"),
        in.gap().input("g", "gap at the end, the shelf pushed to the other side"));
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs, Source source) {
    return new Figure(prefix + "/" + id, title, value, formula, inputs, source);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }

  private static Quantity stress(double mpa) {
    return Quantity.of(mpa, QuantityUnit.STRESS);
  }
}
