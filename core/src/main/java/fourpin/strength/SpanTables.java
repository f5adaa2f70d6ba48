package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.reference.ReferenceLoad;
import fourpin.strength.Made.Layers;
import fourpin.strength.Made.Stripped;
import fourpin.strength.ShelfPlate.Prop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Span tables of a case's materials, at the depth of its deepest shelf and on the supports of that:
 * each way to make a shelf is bent as a plate at two spans, and its beam is then corrected by how
 * much more the plate sags.
 */
final class SpanTables {

  /** Thinner sheets are for backs. */
  private static final double THINNEST = 10;

  private static final double KPA_PER_MPA = 1000;

  /** The plate allows a shorter span than the beam under the heaviest load. */
  private static final double LESS = 0.85;

  private static final int STEPS = 6;

  /** From which the longest span is looked for, mm. */
  private static final double FIRST_SPAN = 1000;

  private static final Source SPANS =
      new Source(
          "the limits in force, a beam corrected by its plate at about that span",
          "checked against the span tables of the woodwork standard, docs/validation.md",
          Standing.DERIVED);

  private final Job job;
  private final ShelfReader reader;
  private final PlateBending.Memory plates;

  SpanTables(Job job, ShelfReader reader, PlateBending.Memory plates) {
    this.job = job;
    this.reader = reader;
    this.plates = plates;
  }

  /** One for each material that shelves can be made of; nothing for a case without shelves. */
  List<SpanTable> all() {
    return reader.shelves().stream()
        .max(Comparator.comparing(shelf -> shelf.box().size(Axis.Y)))
        .map(this::all)
        .orElse(List.of());
  }

  private List<SpanTable> all(Part deepest) {
    ShelfOnSupports like = reader.read(deepest);
    return job.materials().stream()
        .filter(m -> m.kind() == Kind.GLASS || m.thickness().mm() >= THINNEST)
        .map(m -> table(like, m, deepest.box().size(Axis.Y)))
        .toList();
  }

  private SpanTable table(ShelfOnSupports like, Material material, Length depth) {
    String id = Figure.id(like.caseName(), "spans", material.name());
    Figure wide = stated(id + "/depth", "depth of the shelf", Quantity.of(depth), Source.GEOMETRY);
    List<Figure> loads =
        Reference.loads().rows().stream().map(load -> load(id, load, wide)).toList();
    List<SpanTable.Row> rows = new ArrayList<>();
    made(material, depth.mm()).forEach(way -> rows.add(row(id, way, like, loads)));
    return new SpanTable(
        like.caseName(),
        material.name(),
        stated(
            id + "/thickness",
            "thickness of " + material.name(),
            Quantity.of(material.thickness()),
            Source.STATED),
        wide,
        loads,
        rows);
  }

  private static Figure stated(String id, String title, Quantity value, Source source) {
    return new Figure(id, title, value, "", List.of(), source);
  }

  private static Figure load(String id, ReferenceLoad load, Figure depth) {
    double line = load.load().value() / KPA_PER_MPA * depth.value().value();
    return new Figure(
        id + "/load-" + load.name().replace(' ', '-'),
        "load, " + load.name(),
        Quantity.of(line, QuantityUnit.LINE_LOAD),
        "p D",
        List.of(
            new Input("p", load.use(), load.load(), load.source()),
            new Input("D", depth.title(), depth.value(), depth.source())),
        load.source());
  }

  /** A way to make it. @param id at the end of its figures' ids */
  private record Way(String id, String words, Made made) {}

  private List<Way> made(Material material, double depth) {
    List<Way> ways = new ArrayList<>();
    ways.add(new Way("plain", "plain", Made.plain(material, depth, Layers.ONE)));
    if (material.kind() != Kind.GLASS) {
      if (material.layers().isEmpty()) {
        ways.add(new Way("doubled", "two layers glued", Made.plain(material, depth, Layers.TWO)));
      }
      board().ifPresent(board -> ways.addAll(stripped(material, board, depth)));
    }
    return ways;
  }

  private Optional<Material> board() {
    return job.materials().stream().filter(m -> m.kind() == Kind.BOARD).findFirst();
  }

  private List<Way> stripped(Material material, Material board, double depth) {
    Length height = reader.settings().length(Setting.TABLE_STRIP);
    boolean fits =
        height.isMoreThan(material.thickness())
            && Made.panel(board, depth, Stripped.FRONT_AND_BACK) > 0;
    return fits
        ? List.of(
            new Way(
                "strip",
                "a strip of %s %s high in front".formatted(board.name(), job.style().text(height)),
                Made.stripped(material, board, depth, height, Stripped.FRONT)),
            new Way(
                "strips",
                "one in front and one at the back",
                Made.stripped(material, board, depth, height, Stripped.FRONT_AND_BACK)))
        : List.of();
  }

  private SpanTable.Row row(String id, Way way, ShelfOnSupports like, List<Figure> loads) {
    ShelfLimits limits = reader.limits(way.made().panel());
    OverBeam over = overBeam(way, like, limits, loads);
    return new SpanTable.Row(
        way.words(), loads.stream().map(load -> span(id, way, like, limits, load, over)).toList());
  }

  /**
   * How many times as much a plate uses as its beam, bent at a short and at a long span, and taken
   * to change evenly between.
   */
  private record OverBeam(double near, double atNear, double far, double atFar) {

    double at(double span) {
      return atNear + (atFar - atNear) * (span - near) / (far - near);
    }
  }

  /** At the beam's spans under the lightest load and, a little less, under the heaviest. */
  private OverBeam overBeam(Way way, ShelfOnSupports like, ShelfLimits limits, List<Figure> loads) {
    double far = limits.longestSpan(beam(way, loads.getFirst().value().value()), 1);
    double near = LESS * limits.longestSpan(beam(way, loads.getLast().value().value()), 1);
    return new OverBeam(
        near, overBeam(way, like, limits, near), far, overBeam(way, like, limits, far));
  }

  private double overBeam(Way way, ShelfOnSupports like, ShelfLimits limits, double span) {
    LoadedShelf at = beam(way, 1).over(span);
    Verdict verdict = new Verdict(at, like.bearing(), Prop.NONE, limits, plates);
    return verdict.by() == Verdict.By.PLATE ? verdict.use() / limits.use(at) : 1;
  }

  /** At the span that it allows itself: each step goes half of the way there. */
  private static double times(OverBeam over, ShelfLimits limits, LoadedShelf beam) {
    double times = over.atNear();
    for (int i = 0; i < STEPS; i++) {
      times = Math.sqrt(times * over.at(limits.longestSpan(beam, times)));
    }
    return times;
  }

  private static LoadedShelf beam(Way way, double load) {
    return new LoadedShelf(way.made().section(), FIRST_SPAN, 0, load);
  }

  /**
   * Shorter than what was bent, nothing is known of the plate, which may sag too much from front to
   * back over any span: it is bent there.
   */
  private Optional<Double> longest(
      LoadedShelf beam, ShelfOnSupports like, ShelfLimits limits, OverBeam over) {
    double guess = limits.longestSpan(beam, times(over, limits, beam));
    return guess >= over.near()
        ? Optional.of(guess)
        : new LongestSpan(span -> rough(beam.over(span), like, limits).use())
            .find(guess, limits.longestSpan(beam, 1));
  }

  private Verdict rough(LoadedShelf shelf, ShelfOnSupports like, ShelfLimits limits) {
    return new Verdict(shelf, like.bearing(), Prop.NONE, limits, plates.rough());
  }

  private Figure span(
      String id, Way way, ShelfOnSupports like, ShelfLimits limits, Figure load, OverBeam over) {
    LoadedShelf beam = beam(way, load.value().value());
    Optional<Double> longest = longest(beam, like, limits, over);
    double times =
        longest
            .map(span -> 1 / limits.use(beam.over(span)))
            .orElseGet(() -> times(over, limits, beam));
    Section section = way.made().section();
    List<Input> inputs = new ArrayList<>();
    inputs.add(new Input("q", load.title(), load.value(), load.source()));
    inputs.add(
        new Input(
            "g",
            "the shelf's own weight",
            Quantity.of(section.weight(), QuantityUnit.LINE_LOAD),
            ShelfFigures.SECTION));
    inputs.add(
        new Input(
            "E I",
            "stiffness of the section",
            Quantity.of(section.bendingStiffness(), QuantityUnit.BENDING_STIFFNESS),
            ShelfFigures.SECTION));
    inputs.add(
        new Sourced(Quantity.of(times, QuantityUnit.RATIO), PlateFigures.PLATE)
            .input("r", "how many times as much it uses of what is allowed as its beam"));
    inputs.add(limits.creep().input("k", "sag after years over sag at first"));
    inputs.add(limits.firstOver().input("n₁", "span over the sag allowed at first"));
    inputs.add(limits.yearsOver().input("n₂", "span over the sag allowed after years"));
    limits.stress().ifPresent(s -> inputs.add(s.input("σ₀", "stress allowed in glass for years")));
    return new Figure(
        id + "/" + way.id() + "-" + kind(load),
        (longest.isPresent() ? "longest span, %s, %s" : "no span holds, %s, %s")
            .formatted(way.words(), load.title()),
        Quantity.of(longest.orElse(0.0), QuantityUnit.LENGTH),
        "greatest L with r s ≤ L / n₁, r k s ≤ L / n₂, s = 5 (q + g) L⁴ / (384 E I) + (q + g) L² / (8 G A)",
        inputs,
        SPANS);
  }

  private static String kind(Figure load) {
    return load.id().substring(load.id().lastIndexOf("/load-") + "/load-".length());
  }
}
