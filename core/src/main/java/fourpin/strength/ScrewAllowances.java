package fourpin.strength;

import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.reference.PanelProduct;
import fourpin.reference.Reference;
import fourpin.reference.Substance;
import fourpin.reference.Wood;
import fourpin.strength.wood.DowelBearing;
import fourpin.strength.wood.Embedment;
import fourpin.strength.wood.YieldedDowel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What codes allow on one screw that goes through a side into the end grain of a shelf, pushed
 * across.
 */
final class ScrewAllowances {

  private static final double MM_PER_INCH = 25.4;

  private static final Source YIELD =
      new Source(
          "Johansen's theory of yield, the least of its six ways",
          "NDS 2018, Table 12.3.1A; EN 1995-1-1:2004, 8.2.2; wedging and rope left out",
          Standing.DERIVED);

  private final Job job;
  private final Settings settings;
  private final String prefix;
  private final Part shelf;
  private final Part side;
  private final ServiceClass air;

  /**
   * @param prefix of the ids of its figures
   * @param side that the screws go through
   */
  ScrewAllowances(Job job, Settings settings, String prefix, Part shelf, Part side) {
    this.job = job;
    this.settings = settings;
    this.prefix = prefix;
    this.shelf = shelf;
    this.side = side;
    this.air = ServiceClass.of(settings);
  }

  /** By the NDS, where that speaks of it, and by Eurocode 5. */
  List<Figure> all() {
    return Stream.concat(nds().stream(), ec5().stream()).toList();
  }

  /** Nothing for boards of particles and fibres, of which the NDS says nothing. */
  private Optional<Figure> nds() {
    return gravity(side.material())
        .flatMap(of -> gravity(shelf.material()).map(into -> nds(of, into)));
  }

  private Figure nds(double sideGravity, double shelfGravity) {
    double shank = settings.length(Setting.SCREW_DIAMETER).mm();
    double inches = shank / MM_PER_INCH;
    Sourced duration = Reference.constant("NDS duration for permanent loads").sourced();
    Sourced wet = air.wetService();
    Sourced end = Reference.constant("NDS end grain").sourced();
    double steel = number("NDS bending yield of screws");
    double root = root();
    YieldedDowel screw =
        new YieldedDowel(
            root,
            side.thickness().mm(),
            grip(),
            DowelBearing.nds(sideGravity, shank, 0),
            DowelBearing.nds(shelfGravity, shank, 90),
            steel * root * root * root / 6);
    double reduction = PinAllowances.reduction(inches).number();
    return figure(
        "joint-screw-nds",
        "load allowed on one screw in end grain, by the NDS",
        force(screw.yieldsAt() * duration.number() * wet.number() * end.number() / reduction),
        "Z C_D C_M C_eg / R_d",
        List.of(
            new Input("Z", "push at which screw or wood yields", force(screw.yieldsAt()), YIELD),
            new Input("d", "root of the screw", length(root), rootSource()),
            new Input("t", "through the side", length(screw.side()), Source.GEOMETRY),
            grip("p"),
            new Input("F₁", "bearing of the side", stress(screw.sideBearing()), YIELD),
            new Input("F₂", "bearing of the shelf", stress(screw.mainBearing()), YIELD),
            duration.input("C_D", "for loads that stay"),
            wet.input("C_M", air.wetWords()),
            end.input("C_eg", "for end grain"),
            PinAllowances.reduction(inches).input("R_d", "from yield to what is allowed")),
        YIELD);
  }

  /** Nothing where either is a board that is not for such air. */
  private Optional<Figure> ec5() {
    return EurocodeMargins.duration(
            Matters.substance(job.material(side.material())),
            Matters.substance(job.material(shelf.material())),
            air)
        .map(this::ec5);
  }

  private Figure ec5(Sourced duration) {
    Sourced margin = EurocodeMargins.material();
    Sourced larger = EurocodeMargins.load();
    Sourced end = Reference.constant("EC5 end grain").sourced();
    double effective = root() * number("EC5 effective diameter of screws");
    Embedment ofSide = embedment(side, effective);
    Embedment ofShelf = embedment(shelf, effective);
    YieldedDowel screw =
        new YieldedDowel(
            effective,
            side.thickness().mm(),
            grip(),
            ofSide.mpa(),
            ofShelf.mpa(),
            number("EC5 yield moment") * Math.pow(effective, 2.6));
    return figure(
        "joint-screw-ec5",
        "load allowed on one screw in end grain, by Eurocode 5, a third as in secondary structures",
        force(
            screw.yieldsAt()
                * duration.number()
                * end.number()
                / (margin.number() * larger.number())),
        "F k_mod k_e / (γ_M γ_Q)",
        List.of(
            new Input("F", "push at which screw or wood yields", force(screw.yieldsAt()), YIELD),
            new Input("d", "1.1 times the root of the screw", length(effective), rootSource()),
            new Input("t", "through the side", length(screw.side()), Source.GEOMETRY),
            grip("p"),
            embedment("f₁", "side", ofSide),
            embedment("f₂", "shelf", ofShelf),
            duration.input("k_mod", air.words() + "; of two materials √(k₁ k₂)"),
            end.input("k_e", "for end grain"),
            margin.input("γ_M", "margin for connections"),
            larger.input("γ_Q", EurocodeMargins.LARGER)),
        YIELD);
  }

  private static Input embedment(String symbol, String of, Embedment embedment) {
    return new Input(
        symbol,
        "characteristic embedment of the " + of + ", " + embedment.words(),
        stress(embedment.mpa()),
        embedment.source());
  }

  private Embedment embedment(Part part, double diameter) {
    Material material = job.material(part.material());
    return switch (Matters.substance(material)) {
      case Wood _ -> Embedment.ofWood(Matters.characteristicDensity(material), diameter);
      case PanelProduct panel ->
          switch (panel.family()) {
            case LAMINATED_WOOD, SOLID_WOOD ->
                Embedment.ofWood(Matters.characteristicDensity(material), diameter);
            case PLYWOOD, GLASS ->
                Embedment.ofPlywood(Matters.characteristicDensity(material), diameter);
            case PARTICLEBOARD, FIBREBOARD, STRAND_BOARD ->
                Embedment.ofBoard(diameter, material.thickness().mm());
          };
    };
  }

  private Optional<Double> gravity(String name) {
    Substance substance = Matters.substance(job.material(name));
    return switch (substance.family()) {
      case SOLID_WOOD, PLYWOOD, LAMINATED_WOOD, STRAND_BOARD ->
          Optional.of(Matters.specificGravity(substance).number());
      case PARTICLEBOARD, FIBREBOARD, GLASS -> Optional.empty();
    };
  }

  private double root() {
    return settings.length(Setting.SCREW_DIAMETER).mm() * number("screw root over shank");
  }

  private static Source rootSource() {
    return Reference.constant("screw root over shank").source();
  }

  private double grip() {
    return settings.length(Setting.SCREW_GRIP).mm();
  }

  private Input grip(String symbol) {
    return new Sourced(length(grip()), settings.source(Setting.SCREW_GRIP))
        .input(symbol, Setting.SCREW_GRIP.meaning());
  }

  private static double number(String constant) {
    return Reference.constant(constant).value();
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
