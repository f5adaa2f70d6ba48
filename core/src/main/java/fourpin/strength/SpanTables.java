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
import fourpin.reference.Reference;
import fourpin.reference.ReferenceLoad;
import fourpin.strength.Made.Layers;
import fourpin.strength.Made.Stripped;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.Verdict.Most;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Span tables of a case's materials, at the depth of its deepest shelf, on the supports of that and
 * with things as deep as on that.
 */
final class SpanTables {

  /** Thinner sheets are for backs. */
  private static final double THINNEST = 10;

  private static final double KPA_PER_MPA = 1000;

  /** From which the longest span is looked for, mm. */
  private static final double FIRST_SPAN = 1000;

  private static final Source SPANS =
      new Source(
          PlateFigures.WITHIN_LIMITS,
          "checked against the span tables of the woodwork standard, docs/validation.md",
          Standing.DERIVED);

  private final Job job;
  private final ShelfReader reader;
  private final SupportReader supports;
  private final PlateBending.Memory plates = new PlateBending.Memory();

  SpanTables(Job job, ShelfReader reader, SupportReader supports) {
    this.job = job;
    this.reader = reader;
    this.supports = supports;
  }

  /** One for each material that shelves can be made of; nothing for a case without shelves. */
  List<SpanTable> all() {
    return reader.shelves().stream()
        .max(Comparator.comparing(SpanTables::isLoose).thenComparing(s -> s.box().size(Axis.Y)))
        .map(this::all)
        .orElse(List.of());
  }

  /** Fixed shelves, often as deep as the case, rest on no supports to speak of. */
  private static boolean isLoose(Part shelf) {
    return shelf.role() == Part.Role.SHELF;
  }

  private List<SpanTable> all(Part deepest) {
    ShelfOnSupports like = reader.read(deepest);
    Candidate on = Candidate.of(like, supports.limits(deepest, reader));
    return job.materials().stream()
        .filter(m -> m.kind() == Kind.GLASS || m.thickness().mm() >= THINNEST)
        .map(
            m ->
                table(
                    like,
                    on,
                    reader.stripRoom(deepest, on.bearing()),
                    m,
                    deepest.box().size(Axis.Y)))
        .toList();
  }

  private SpanTable table(
      ShelfOnSupports like, Candidate on, StripRoom room, Material material, Length depth) {
    String id = Figure.id(like.caseName(), "spans", material.name());
    Figure wide = stated(id + "/depth", "depth of the shelf", Quantity.of(depth), Source.GEOMETRY);
    List<Figure> loads =
        Reference.loads().rows().stream().map(load -> load(id, load, wide)).toList();
    List<SpanTable.Row> rows = new ArrayList<>();
    made(material, room, depth.mm()).forEach(way -> rows.add(row(id, way, on, loads)));
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
    String formula = source.isStated() ? "as stated" : "as deep as the deepest shelf";
    return new Figure(id, title, value, formula, List.of(), source);
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

  private List<Way> made(Material material, StripRoom room, double depth) {
    List<Way> ways = new ArrayList<>();
    ways.add(new Way("plain", "plain", Made.plain(material, depth, Layers.ONE)));
    if (material.kind() != Kind.GLASS) {
      if (material.layers().isEmpty()) {
        ways.add(new Way("doubled", "two layers glued", Made.plain(material, depth, Layers.TWO)));
      }
      board(room).ifPresent(board -> ways.addAll(stripped(material, board, room, depth)));
    }
    return ways;
  }

  /** The first that leaves the supports their place. */
  private Optional<Material> board(StripRoom room) {
    return job.materials().stream()
        .filter(m -> m.kind() == Kind.BOARD && room.has(m, Stripped.FRONT))
        .findFirst();
  }

  private List<Way> stripped(Material material, Material board, StripRoom room, double depth) {
    Length height = reader.settings().length(Setting.TABLE_STRIP);
    boolean fits =
        height.isMoreThan(material.thickness())
            && Made.panel(board, depth, Stripped.FRONT_AND_BACK) > 0;
    Way front =
        new Way(
            "strip",
            "a strip of %s %s high in front".formatted(board.name(), job.style().text(height)),
            Made.stripped(material, board, depth, height, Stripped.FRONT));
    Way both =
        new Way(
            "strips",
            "one in front and one at the back",
            Made.stripped(material, board, depth, height, Stripped.FRONT_AND_BACK));
    return !fits
        ? List.of()
        : room.has(board, Stripped.FRONT_AND_BACK) ? List.of(front, both) : List.of(front);
  }

  private SpanTable.Row row(String id, Way way, Candidate like, List<Figure> loads) {
    ShelfLimits limits = reader.limits(way.made().panel());
    List<SpanTable.Span> spans = new ArrayList<>();
    double overBeam = 1;
    for (Figure load : loads) {
      LoadedShelf beam = new LoadedShelf(way.made().section(), FIRST_SPAN, 0, load.value().value());
      double most = limits.longestSpan(beam, 1);
      Candidate shelf = like.made(beam.section(), limits).with(beam.over(overBeam * most));
      Optional<Most> bent = longest(shelf.on(List.of()), most);
      overBeam = bent.map(l -> l.number() / most).orElse(overBeam);
      spans.add(span(id + "/" + way.id() + "-" + kind(load), way, shelf, load, bent));
    }
    return new SpanTable.Row(way.words(), spans);
  }

  private Optional<Most> longest(Candidate shelf, double ofBeam) {
    return new Verdict(shelf, plates).longestSpan(ofBeam);
  }

  /** On the case's own supports; where these bear less, on others as well. */
  private SpanTable.Span span(
      String id, Way way, Candidate shelf, Figure load, Optional<Most> bent) {
    Optional<Most> borne = bent.flatMap(most -> borne(shelf, most));
    String title = "%s, %s".formatted(way.words(), load.title());
    return new SpanTable.Span(
        figure(id, title, shelf, load, borne),
        borne.equals(bent)
            ? Optional.empty()
            : Optional.of(
                figure(
                    id + "-bending",
                    title + ", on supports that bear it",
                    shelf.on(List.of()),
                    load,
                    bent)),
        borne.map(m -> m.governs().of().lying()).orElse(SpanTable.Lying.EVENLY));
  }

  /**
   * As far as it spans without its supports' limits if they bear that; else the longest that they
   * bear. There may be none: what needs so short a span for its supports may sag too much for it
   * from front to back.
   */
  private Optional<Most> borne(Candidate shelf, Most bent) {
    Candidate over = shelf.over(bent.number());
    return new Verdict(over, plates).holds() ? Optional.of(bent) : longest(over, bent.number());
  }

  private Figure figure(
      String id, String title, Candidate shelf, Figure load, Optional<Most> longest) {
    Section section = shelf.beam().section();
    Limits limits = new Limits(shelf);
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
    inputs.addAll(limits.inputs());
    return new Figure(
        id,
        longest
                .map(l -> "longest span (%s%s), ".formatted(l.governs().words(), uncounted(shelf)))
                .orElse("no span holds, ")
            + title,
        Quantity.of(longest.map(Most::number).orElse(0.0), QuantityUnit.LENGTH),
        longest.map(_ -> "greatest L with ").orElse("no L found with ") + limits.formula(),
        inputs,
        SPANS);
  }

  /** No job says how other materials would be joined. */
  private static String uncounted(Candidate shelf) {
    return shelf.bearing() instanceof Bearing.WholeEnd ? "; joints not counted" : "";
  }

  private static String kind(Figure load) {
    return load.id().substring(load.id().lastIndexOf("/load-") + "/load-".length());
  }
}
