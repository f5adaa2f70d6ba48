package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.job.Bay;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.job.Support.Mounting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.Made.Piece;
import fourpin.strength.Section.Layer;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.ShelfOnSupports.Doubt;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sees the shelves of one case as beams: span, section, load, supports. */
final class ShelfReader {

  /** Supports of either side may reach over less than a quarter of the bay. */
  private static final int FAR = 4;

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final Map<String, ShelfOnSupports> seen = new HashMap<>();

  ShelfReader(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
  }

  /** Adjustable and fixed shelves, in the order of the parts. */
  List<Part> shelves() {
    return built.parts().stream()
        .filter(p -> p.role() == Part.Role.SHELF || p.role() == Part.Role.FIXED_SHELF)
        .toList();
  }

  /** Read once: supports, sides and findings all ask for it. */
  ShelfOnSupports read(Part shelf) {
    return seen.computeIfAbsent(shelf.mark(), _ -> see(shelf));
  }

  private ShelfOnSupports see(Part shelf) {
    Figure span = span(shelf);
    Figure load = load(shelf);
    return new ShelfOnSupports(
        built.order().name(),
        shelf.mark(),
        prefix(shelf),
        new LoadedShelf(
            section(shelf), span.value().value(), overhang(shelf, span), load.value().value()),
        span,
        load,
        standing(shelf, space(shelf)),
        bearing(shelf),
        limits(material(shelf)),
        doubt());
  }

  private Optional<Sourced> standing(Part shelf, BaySpace bay) {
    return ShelfLoad.depthOfRow(built.order(), bay.number(), shelf.box().size(Axis.Y));
  }

  /** The bottom of one bay, its ends in joints. */
  ShelfOnSupports bottom(Part bottom, BaySpace bay) {
    return inJoints(
        bottom,
        bay,
        "bottom-" + bay.number(),
        ShelfLoad.of(built.order(), bay.number()),
        standing(bottom, bay));
  }

  /** The top of one bay likewise, under what is taken to stand on it. */
  ShelfOnSupports top(BaySpace bay) {
    Part top = built.part("T");
    return inJoints(
        top,
        bay,
        "top",
        ShelfLoad.ofTop(built.order()),
        ShelfLoad.depthOfUnnamedRow(built.order(), top.box().size(Axis.Y)));
  }

  private ShelfOnSupports inJoints(
      Part part, BaySpace bay, String name, ShelfLoad carries, Optional<Sourced> standing) {
    String prefix = Figure.id(built.order().name(), name);
    Figure span =
        new Figure(
            prefix + "/span",
            "clear width of the bay",
            Quantity.of(bay.clear().size(Axis.X)),
            "W",
            List.of(input("W", "clear width of the bay", bay.clear().size(Axis.X))),
            Source.GEOMETRY);
    Figure load = carries.figure(prefix + "/load", part.box().size(Axis.Y));
    return new ShelfOnSupports(
        built.order().name(),
        part.mark(),
        prefix,
        new LoadedShelf(section(part), span.value().value(), 0, load.value().value()),
        span,
        load,
        standing,
        new Bearing.WholeEnd(),
        limits(material(part)),
        doubt());
  }

  Settings settings() {
    return settings;
  }

  Climate climate() {
    return new Climate(job, built);
  }

  Uprights uprights() {
    return new Uprights(job, built);
  }

  Material material(Part shelf) {
    return job.material(shelf.material());
  }

  String prefix(Part shelf) {
    return Figure.id(built.order().name(), "shelf-" + shelf.mark());
  }

  ShelfLimits limits(Material material) {
    return new ShelfLimits(
        Matters.creep(material, settings),
        Matters.ratio(Setting.SAG_LIMIT, settings),
        Matters.ratio(Setting.SAG_LIMIT_YEARS, settings),
        material.kind() == Material.Kind.GLASS ? Optional.of(glassStress()) : Optional.empty(),
        ServiceClass.of(settings));
  }

  private Doubt doubt() {
    return new Doubt(setback(Setting.LOW_SUPPORT, Length.ZERO), LoadCases.hand(settings));
  }

  private Sourced glassStress() {
    return new Sourced(
        Quantity.of(settings.number(Setting.GLASS_STRESS), QuantityUnit.STRESS),
        settings.source(Setting.GLASS_STRESS));
  }

  /** The bay that the shelf stands in. */
  BaySpace space(Part shelf) {
    return built.bays().stream()
        .filter(bay -> bay.clear().overlaps(shelf.box()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(shelf.mark() + " stands in no bay"));
  }

  private Bay bay(Part shelf) {
    return built.order().bays().get(space(shelf).number() - 1);
  }

  /** Between the middles of what carries the shelf; a fixed shelf spans the whole bay. */
  private Figure span(Part shelf) {
    Length clear = space(shelf).clear().size(Axis.X);
    Input width = input("W", "clear width of the bay", clear);
    return support(shelf)
        .map(support -> span(shelf, clear, width, support))
        .orElseGet(() -> spanOf(shelf, clear, "W", List.of(width)));
  }

  Optional<Support> support(Part shelf) {
    return shelf.role() == Part.Role.SHELF ? supportInBay(shelf) : Optional.empty();
  }

  /** For strips that hang below a shelf like this. @param bearing that it then has */
  StripRoom stripRoom(Part shelf, Bearing bearing) {
    return StripRoom.of(bearing, support(shelf).map(s -> s.breadth(settings)).orElse(Length.ZERO));
  }

  /** What carries the adjustable shelves of its bay, whatever carries it. */
  Optional<Support> supportInBay(Part shelf) {
    return bay(shelf).supports();
  }

  private Figure span(Part shelf, Length clear, Input width, Support support) {
    return switch (support) {
      case Support.Standards s when s.mounting() == Mounting.SURFACE ->
          spanOf(
              shelf,
              clear.minus(s.thickness().times(2)),
              "W - 2 t",
              List.of(width, input("t", "thickness of a standard", s.thickness())));
      case Support.Standards _ -> spanOf(shelf, clear, "W", List.of(width));
      case Support.Pins _, Support.Sleeved _, Support.Cleats _ ->
          inboard(shelf, clear, width, reach(support));
    };
  }

  /** How far a support stands out from the side, under the shelf. */
  private static Length reach(Support support) {
    return switch (support) {
      case Support.Pins pins -> pins.reach();
      case Support.Sleeved sleeved -> sleeved.pins().reach();
      case Support.Cleats cleats -> cleats.cleatThickness();
      case Support.Standards _ -> Length.ZERO;
    };
  }

  /** Whether the supports reach so far into the bay that the shelf is no beam between its ends. */
  boolean supportsReachFar(Part shelf) {
    Length clear = space(shelf).clear().size(Axis.X);
    return support(shelf).map(s -> reach(s).times(FAR).isAtLeast(clear)).orElse(false);
  }

  /**
   * Shelf and support share the middle of the support; supports that reach far are not counted on.
   */
  private Figure inboard(Part shelf, Length clear, Input width, Length reach) {
    return supportsReachFar(shelf)
        ? spanOf(shelf, clear, "W", List.of(width))
        : spanOf(
            shelf,
            clear.minus(reach),
            "W - 2 r / 2",
            List.of(
                width, new Input("r", "reach of a support", Quantity.of(reach), Source.STATED)));
  }

  private Figure spanOf(Part shelf, Length span, String formula, List<Input> inputs) {
    return new Figure(
        prefix(shelf) + "/span",
        "span between the supports",
        Quantity.of(span),
        formula,
        inputs,
        Source.GEOMETRY);
  }

  private static Input input(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.GEOMETRY);
  }

  private static double overhang(Part shelf, Figure span) {
    boolean loose = shelf.role() == Part.Role.SHELF;
    double over = (shelf.box().size(Axis.X).mm() - span.value().value()) / 2;
    return loose ? Math.max(0, over) : 0;
  }

  /**
   * A shelf, bottom or top itself, and strips of solid wood with their tops flush; banding stiffens
   * nothing.
   */
  Section section(Part shelf) {
    double front = edging(shelf, Face.FRONT);
    double panel = shelf.box().size(Axis.Y).mm() - front - edging(shelf, Face.BACK);
    Material material = material(shelf);
    List<Layer> layers = new ArrayList<>();
    layers.add(
        new Layer("shelf", Matters.of(material), panel, material.thickness().mm(), front, 0));
    strip(shelf, Face.FRONT).map(s -> layer(s, "front strip", 0)).ifPresent(layers::add);
    strip(shelf, Face.BACK).map(s -> layer(s, "back strip", front + panel)).ifPresent(layers::add);
    return new Section(layers);
  }

  /** What a shelf is cut from, its strips too. */
  List<Piece> pieces(Part shelf) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Piece(material(shelf), section(shelf).layers().getFirst().width()));
    for (Face face : List.of(Face.FRONT, Face.BACK)) {
      strip(shelf, face)
          .map(s -> new Piece(job.material(s.material()), s.height().mm()))
          .ifPresent(pieces::add);
    }
    return pieces;
  }

  private Layer layer(Edging strip, String name, double front) {
    return new Layer(
        name,
        Matters.of(job.material(strip.material())),
        strip.thickness().mm(),
        strip.height().mm(),
        front,
        0);
  }

  private static Optional<Edging> strip(Part shelf, Face face) {
    return shelf.edging().stream()
        .filter(band -> band.face() == face)
        .map(EdgeBand::edging)
        .filter(edging -> edging.kind() == Edging.Kind.STRIP)
        .findFirst();
  }

  private static double edging(Part shelf, Face face) {
    return shelf.edging().stream()
        .filter(band -> band.face() == face)
        .mapToDouble(band -> band.edging().thickness().mm())
        .sum();
  }

  private Figure load(Part shelf) {
    return ShelfLoad.of(built.order(), space(shelf).number())
        .figure(prefix(shelf) + "/load", shelf.box().size(Axis.Y));
  }

  private Bearing bearing(Part shelf) {
    return support(shelf)
        .map(ShelfReader::setting)
        .map(where -> rows(shelf, where))
        .orElseGet(Bearing.WholeEnd::new);
  }

  /** The settings that say where the front and the back row stand. */
  private static List<Setting> setting(Support support) {
    return switch (support) {
      case Support.Pins _, Support.Sleeved _ -> List.of(Setting.FRONT_ROW, Setting.BACK_ROW);
      case Support.Standards _, Support.Cleats _ ->
          List.of(Setting.STANDARD_SETBACK, Setting.STANDARD_SETBACK);
    };
  }

  /** The setting that says where a row of a shelf on supports stands. */
  Setting rowSetting(Part shelf, Over row) {
    List<Setting> both = support(shelf).map(ShelfReader::setting).orElseThrow();
    return switch (row) {
      case FRONT -> both.getFirst();
      case BACK -> both.getLast();
    };
  }

  /** How much further back the rows of its bay stand than that. */
  Length rowsBack(Part shelf) {
    return bay(shelf).rowsBack();
  }

  /** Rows that do not fit under the shelf are found fault with where they are bored. */
  private Bearing rows(Part shelf, List<Setting> where) {
    Length rowsBack = rowsBack(shelf);
    Sourced front = setback(where.getFirst(), rowsBack);
    Sourced back = setback(where.getLast(), rowsBack.negated());
    return front.number() + back.number() < shelf.box().size(Axis.Y).mm()
        ? new Bearing.Rows(front, back, rowCount(shelf))
        : new Bearing.WholeEnd();
  }

  /** Loose cleats run from front to back, and have no middle row. */
  private Bearing.Count rowCount(Part shelf) {
    boolean deep = shelf.box().size(Axis.Y).isMoreThan(settings.length(Setting.MIDDLE_ROW_FROM));
    boolean cleats = support(shelf).filter(Support.Cleats.class::isInstance).isPresent();
    return deep && !cleats ? Bearing.Count.THREE : Bearing.Count.TWO;
  }

  private Sourced setback(Setting setting, Length further) {
    Quantity setback = Quantity.of(settings.length(setting).plus(further));
    return new Sourced(setback, settings.source(setting));
  }
}
