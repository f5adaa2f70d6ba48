package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Lazy;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.reference.ReferenceLoad;
import fourpin.strength.Section.Layer;
import fourpin.strength.Section.Matter;
import fourpin.strength.ShelfAnswer.ReferenceSag;
import fourpin.strength.ShelfAnswer.Rest;
import fourpin.strength.ShelfAnswer.WorstSag;
import fourpin.strength.Verdict.Most;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out the figures of one shelf, each with its formula, inputs and source. */
final class ShelfFigures {

  static final Source BENDING =
      Source.published(
          "Wood Handbook FPL-GTR-190 (2010)",
          "Table 9-1, even load on simple supports; overhanging ends by statics");

  static final Source SECTION =
      new Source(
          "transformed section",
          "any strength of materials; glued over the whole length",
          Standing.DERIVED);
  static final Source STATICS = new Source("statics", "", Standing.DERIVED);
  static final Source LIMITS =
      new Source(
          PlateFigures.WITHIN_LIMITS,
          "checked as docs/plate-convergence.md shows",
          Standing.DERIVED);

  private static final String SAG = "(q + g) L² (5 L² - 24 c²) / (384 E I) + (q + g) L² / (8 G A)";
  private static final double KPA_PER_MPA = 1000;

  private final ShelfOnSupports shelf;
  private final LoadedShelf loaded;
  private final Verdict verdict;
  private final Optional<PlateFigures> plate;

  ShelfFigures(ShelfOnSupports shelf, Verdict verdict) {
    this.shelf = shelf;
    this.loaded = shelf.loaded();
    this.verdict = verdict;
    this.plate = PlateFigures.of(shelf, verdict);
  }

  /**
   * @param beyond which limits it passes, and how its load then lies
   * @param rest of its figures, worked out when they are asked for
   */
  ShelfAnswer answer(Beyond beyond, Lazy<Rest> rest) {
    Figure now = sagNow();
    return new ShelfAnswer(
        shelf.caseName(),
        shelf.mark(),
        shelf.mark(),
        shelf.span(),
        shelf.load(),
        now,
        sagYears(now),
        limitNow(),
        limit("limit-years", "sag allowed after years", shelf.limits().yearsOver()),
        most(now),
        beyond.limits(),
        beyond.checked(),
        rest);
  }

  /** What only some pages show. @param inSides what its supports do to the sides */
  Rest rest(List<Figure> inSides) {
    return new Rest(
        Reference.loads().rows().stream().map(this::reference).toList(),
        new RowLoads(shelf).supports(),
        others(),
        plate.map(PlateFigures::all).orElse(List.of()),
        inSides,
        verdict.sagging().flatMap(this::shape));
  }

  private Optional<ShelfShape> shape(LoadCase of) {
    WorstSag most = most(sagNow());
    return verdict.plate().flatMap(p -> p.shape(of, loaded.load(), most.now(), most.years()));
  }

  private WorstSag most(Figure even) {
    LoadCase of = verdict.sagging().orElse(LoadCase.EVEN);
    Optional<UnevenLoad> load =
        plate.filter(_ -> !of.equals(LoadCase.EVEN)).map(p -> p.unevenly(of));
    return new WorstSag(
        of.place(),
        load.flatMap(UnevenLoad::sag).orElse(even),
        load.flatMap(UnevenLoad::years).orElseGet(() -> sagYears(even)));
  }

  private Figure sagYears(Figure now) {
    return years("sag-years", "sag " + there() + ", after years", now);
  }

  Figure limitNow() {
    return limit("limit-now", "sag allowed at first", shelf.limits().firstOver());
  }

  private String there() {
    return verdict.loaded().there();
  }

  /** The most of front edge, middle and back edge. */
  private Figure sagNow() {
    return verdict
        .bends()
        .flatMap(bends -> plate.map(p -> most(List.copyOf(p.lines(bends).values()))))
        .orElseGet(() -> beam("sag-now", "sag in the middle, now", loaded, shelf.load()));
  }

  private Figure most(List<Figure> lines) {
    List<Input> inputs = new ArrayList<>();
    for (Figure line : lines) {
      String symbol = List.of("w₁", "w₂", "w₃").get(inputs.size());
      inputs.add(new Input(symbol, line.title(), line.value(), line.source()));
    }
    inputs.add(
        new Input(
            "w₄",
            "sag at the crossing of its mesh that goes down most",
            length(verdict.loaded().sag()),
            PlateFigures.PLATE));
    return figure(
        "sag-now",
        "sag " + there() + ", now",
        length(verdict.loaded().sag()),
        "max(w₁, w₂, w₃, w₄)",
        inputs,
        PlateFigures.PLATE);
  }

  private Figure beam(String id, String title, LoadedShelf under, Figure load) {
    Section section = shelf.section();
    return figure(
        id,
        title,
        length(under.sag()),
        SAG,
        List.of(
            new Input("q", load.title(), load.value(), load.source()),
            new Input("g", "the shelf's own weight", line(section.weight()), SECTION),
            new Input("L", "span", shelf.span().value(), shelf.span().source()),
            new Input("c", "end over each support", length(shelf.overhang()), STATICS),
            new Input("E I", "stiffness of the section", stiffness(section), SECTION),
            new Input(
                "G A",
                "shear stiffness of the section, 5/6 of its area",
                Quantity.of(section.shearStiffness(), QuantityUnit.FORCE),
                BENDING)),
        BENDING);
  }

  private Figure years(String id, String title, Figure now) {
    Sourced creep = shelf.limits().creep();
    return figure(
        id,
        title,
        length(now.value().value() * creep.number()),
        "k s",
        List.of(
            creep.input("k", "sag after years over sag at first"),
            new Input("s", now.title(), now.value(), now.source())),
        creep.source());
  }

  private Figure limit(String id, String title, Sourced over) {
    return figure(
        id,
        title,
        length(loaded.span() / over.number()),
        "L / n",
        List.of(
            new Input("L", "span", shelf.span().value(), shelf.span().source()),
            over.input("n", "span over the sag allowed")),
        over.source());
  }

  private ReferenceSag reference(ReferenceLoad reference) {
    String id = "reference-" + reference.name().replace(' ', '-');
    double q = reference.load().value() / KPA_PER_MPA * shelf.section().depth();
    Figure load =
        figure(
            id + "-load",
            "reference load: " + reference.name(),
            line(q),
            "p D",
            List.of(
                new Input("p", reference.use(), reference.load(), reference.source()),
                new Input("D", "depth of the shelf", length(shelf.section().depth()), SECTION)),
            reference.source());
    Figure now = reference(id + "-now", "sag now, " + load.title(), q, load);
    return new ReferenceSag(
        load, now, years(id + "-years", "sag after years, " + load.title(), now));
  }

  private Figure reference(String id, String title, double q, Figure load) {
    return verdict
        .bends()
        .flatMap(_ -> plate)
        .map(p -> p.under(id, title, verdict.evenly(q).sag(), load))
        .orElseGet(() -> beam(id, title, loaded.under(q), load));
  }

  private List<Figure> others() {
    List<Figure> figures = new ArrayList<>();
    figures.add(beam("sag-beam", "sag in the middle as a beam, now", loaded, shelf.load()));
    new RowLoads(shelf).tipping().ifPresent(figures::add);
    figures.add(largestLoad());
    figures.add(longestSpan());
    figures.add(stress());
    figures.addAll(StressAllowed.of(shelf).all());
    figures.add(weight());
    figures.add(section());
    return figures;
  }

  private Figure largestLoad() {
    Most most = verdict.largestLoad();
    Limits limits = new Limits(verdict.shelf());
    List<Input> inputs = new ArrayList<>(limits.inputs());
    inputs.add(new Input("L", "span", shelf.span().value(), shelf.span().source()));
    limits.met(most.governs()).ifPresent(inputs::add);
    String title =
        most.number() > 0
            ? "largest load within the limits %s (%%s)"
                .formatted(plate.isPresent() ? "however it lies" : "spread evenly")
            : "no load is within the limits (%s)";
    return figure(
        "largest-load",
        title.formatted(most.governs().words()),
        Quantity.of(most.number(), QuantityUnit.LARGEST_LOAD),
        "greatest q with " + limits.formula(),
        inputs,
        LIMITS);
  }

  private Figure longestSpan() {
    Optional<Most> longest = verdict.longestSpan();
    Limits limits = new Limits(verdict.shelf());
    List<Input> inputs = new ArrayList<>(loadOfSpan());
    inputs.addAll(limits.inputs());
    return figure(
        "longest-span",
        longest
            .map(
                l ->
                    "about the longest span within the limits at this load (%s)"
                        .formatted(l.governs().words()))
            .orElse("no span of this depth, on these supports, is within the limits at this load"),
        length(longest.map(Most::number).orElse(0.0)),
        longest.map(_ -> "greatest L with ").orElse("no L found with ") + limits.formula(),
        inputs,
        LIMITS);
  }

  private List<Input> loadOfSpan() {
    return List.of(
        new Input("q", shelf.load().title(), shelf.load().value(), shelf.load().source()),
        new Input("g", "the shelf's own weight", line(shelf.section().weight()), SECTION),
        new Input("E I", "stiffness of the section", stiffness(shelf.section()), SECTION));
  }

  /** By the plate where it is one. */
  Figure stressNow() {
    return verdict
        .bends()
        .flatMap(bends -> plate.map(p -> p.stress(bends)))
        .orElseGet(this::stress);
  }

  private Figure stress() {
    Section section = shelf.section();
    Layer layer = section.mostStressed();
    double moment = loaded.moment();
    return figure(
        "stress",
        "bending stress in the " + layer.name(),
        Quantity.of(section.stress(layer, moment), QuantityUnit.STRESS),
        "M E z / (E I), M = (q + g) (L² / 8 - c² / 2)",
        List.of(
            new Input(
                "M", "moment in the middle", Quantity.of(moment, QuantityUnit.MOMENT), STATICS),
            new Input("q", shelf.load().title(), shelf.load().value(), shelf.load().source()),
            new Input("g", "the shelf's own weight", line(section.weight()), SECTION),
            new Input("L", "span", shelf.span().value(), shelf.span().source()),
            new Input("c", "end over each support", length(shelf.overhang()), STATICS),
            outer(layer),
            new Input(
                "z",
                "from the neutral axis to its far face",
                length(shelf.section().farFace(layer)),
                SECTION),
            new Input("E I", "stiffness of the section", stiffness(section), SECTION)),
        SECTION);
  }

  /** A panel of layers is stressed most in its outermost one, whose modulus counts there. */
  private static Input outer(Layer layer) {
    Matter matter = layer.matter();
    return matter.outer() == 1
        ? matter.modulus().input("E", "modulus of elasticity of the " + layer.name())
        : new Input(
            "E",
            "modulus of elasticity of the outermost layer of the " + layer.name(),
            Quantity.of(layer.outer(), QuantityUnit.STRESS),
            Matters.LAYERS);
  }

  private Figure weight() {
    List<Input> inputs = new ArrayList<>();
    for (Layer layer : shelf.section().layers()) {
      inputs.addAll(sizes(layer));
      inputs.add(layer.matter().density().input("ρ", "density of the " + layer.name()));
    }
    inputs.add(new Input("l", "length of the shelf", length(loaded.length()), STATICS));
    return figure(
        "weight",
        "weight of the shelf",
        Quantity.of(
            shelf.section().weight() * loaded.length() / Gravity.STANDARD, QuantityUnit.MASS),
        "Σ ρ b t l",
        inputs,
        SECTION);
  }

  private Figure section() {
    List<Input> inputs = new ArrayList<>();
    for (Layer layer : shelf.section().layers()) {
      inputs.add(
          layer.matter().modulus().input("E", "modulus of elasticity of the " + layer.name()));
      inputs.add(
          new Input(
              "S",
              "the same in stretching, lower where it is glued up of layers",
              Quantity.of(layer.stretching(), QuantityUnit.STRESS),
              layer.matter().modulus().source()));
      inputs.addAll(sizes(layer));
      inputs.add(
          new Input(
              "z",
              "its middle below the top of the shelf",
              length(layer.middle()),
              Source.GEOMETRY));
    }
    return figure(
        "stiffness",
        "stiffness of the section",
        stiffness(shelf.section()),
        "Σ b (E t³ / 12 + S t (z - z₀)²), z₀ = Σ S b t z / Σ S b t",
        inputs,
        SECTION);
  }

  private static List<Input> sizes(Layer layer) {
    return List.of(
        new Input("b", "width of the " + layer.name(), length(layer.width()), Source.GEOMETRY),
        new Input(
            "t", "thickness of the " + layer.name(), length(layer.thickness()), Source.GEOMETRY));
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs, Source source) {
    return new Figure(shelf.prefix() + "/" + id, title, value, formula, inputs, source);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity line(double newtonPerMm) {
    return Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD);
  }

  private static Quantity stiffness(Section section) {
    return Quantity.of(section.bendingStiffness(), QuantityUnit.BENDING_STIFFNESS);
  }
}
