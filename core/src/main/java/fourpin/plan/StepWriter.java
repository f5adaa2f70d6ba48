package fourpin.plan;

import fourpin.bench.Spacing;
import fourpin.bench.Span;
import fourpin.bench.Step;
import fourpin.bench.Step.BoreRow.Line;
import fourpin.bench.Surface;
import fourpin.boring.way.BitSetting;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.job.Edging;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** What is done to one part, as typed steps. */
final class StepWriter {

  private final Part part;
  private final PieceLayout layout;
  private final Sticks sticks;
  private final CaseWays ways;

  StepWriter(Part part, Sticks sticks, CaseWays ways) {
    this.part = part;
    this.layout = PieceLayout.of(part);
    this.sticks = sticks;
    this.ways = ways;
  }

  Step cut() {
    return new Step.CutToSize(
        part.mark(),
        part.material(),
        part.cutLength().total(),
        part.cutWidth().total(),
        part.thickness());
  }

  List<Step> bands() {
    return part.edging().stream().map(this::band).toList();
  }

  private Step band(Part.EdgeBand band) {
    Edging edging = band.edging();
    String what = edging.material() + (edging.kind() == Edging.Kind.STRIP ? " strip" : "");
    return new Step.Band(part.mark(), layout.surface(band.face()), what, edging.thickness());
  }

  Step marks() {
    Map<Surface, String> labels = new EnumMap<>(Surface.class);
    labels.put(Surface.FACE, lower(layout.face()));
    labels.put(Surface.INDEX_EDGE, lower(layout.indexEdge()));
    labels.put(Surface.INDEX_END, lower(layout.indexEnd()));
    return new Step.MarkSurfaces(part.mark(), labels);
  }

  private static String lower(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT);
  }

  List<Step.Channel> channels() {
    List<Step.Channel> steps = new ArrayList<>();
    for (Feature feature : part.features()) {
      if (feature instanceof Channel channel) {
        steps.add(channel(channel));
      }
    }
    return steps;
  }

  private Step.Channel channel(Channel channel) {
    Span length = layout.alongLength(channel.volume());
    Span width = layout.acrossWidth(channel.volume());
    Span thickness = layout.throughThickness(channel.volume());
    Surface surface = layout.surface(channel.face());
    return switch (surface) {
      case FACE, REVERSE -> channel(channel, surface, length, width, thickness.size());
      case INDEX_EDGE, FAR_EDGE -> channel(channel, surface, length, thickness, width.size());
      case INDEX_END, FAR_END -> channel(channel, surface, width, thickness, length.size());
    };
  }

  private Step.Channel channel(
      Channel channel, Surface surface, Span along, Span across, Length depth) {
    Step.Channel.Shape shape = Step.Channel.Shape.valueOf(channel.kind().name());
    return new Step.Channel(part.mark(), shape, surface, along, across, depth, channel.purpose());
  }

  /** Screw holes, row by row across or along. */
  List<Step> screws() {
    return rows(holes(Hole.Use.SCREW).toList());
  }

  /** Faces with rows for supports that are bored in one manner. */
  List<Face> faces(CaseWays.Manner manner) {
    return supported(manner).map(Hole::face).distinct().toList();
  }

  /** Rows for supports that are bored in one manner, front to back. */
  List<Step> supports(CaseWays.Manner manner) {
    return rows(supported(manner).toList());
  }

  /** Rows of one face for supports that are bored in one manner, front to back. */
  List<Step> supports(CaseWays.Manner manner, Face face) {
    return rows(supported(manner).filter(h -> h.face() == face).toList());
  }

  /** What bores the rows of one face for supports. */
  List<BitSetting> bits(Face face) {
    return holes(Hole.Use.SUPPORT)
        .filter(h -> h.face() == face)
        .flatMap(h -> ways.bit(h).stream())
        .distinct()
        .toList();
  }

  private Stream<Hole> supported(CaseWays.Manner manner) {
    return holes(Hole.Use.SUPPORT).filter(h -> ways.manner(h) == manner);
  }

  private Stream<Hole> holes(Hole.Use use) {
    return part.features().stream()
        .filter(f -> f instanceof Hole h && h.use() == use)
        .map(f -> (Hole) f);
  }

  /** Holes that share everything but one place are one row. */
  private record RowKey(
      Surface surface, Line line, Length offset, Length diameter, Length depth, String purpose) {}

  private List<Step> rows(List<Hole> holes) {
    Map<RowKey, List<Hole>> rows = new LinkedHashMap<>();
    holes.forEach(h -> rows.computeIfAbsent(key(h, holes), _ -> new ArrayList<>()).add(h));
    List<Step> steps = new ArrayList<>();
    rows.forEach((key, row) -> steps.addAll(row(key, row)));
    return steps;
  }

  private RowKey key(Hole hole, List<Hole> all) {
    boolean across =
        hole.use() == Hole.Use.SCREW
            && all.stream().filter(h -> fromEnd(h).equals(fromEnd(hole))).count() > 1;
    return new RowKey(
        layout.surface(hole.face()),
        across ? Line.ACROSS : Line.ALONG,
        across ? fromEnd(hole) : fromEdge(hole),
        hole.diameter(),
        hole.depth(),
        hole.purpose());
  }

  private Length fromEnd(Hole hole) {
    return layout.from(layout.indexEnd(), hole.centre().along(layout.indexEnd().axis()));
  }

  private Length fromEdge(Hole hole) {
    return layout.from(layout.indexEdge(), hole.centre().along(layout.indexEdge().axis()));
  }

  private List<Step> row(RowKey key, List<Hole> holes) {
    Hole first = holes.getFirst();
    if (first.use() == Hole.Use.SCREW) {
      return List.of(row(key, each(key, holes)));
    }
    return switch (ways.manner(first)) {
      case BY_HAND -> sticks.spacings(part, holes).stream().map(s -> row(key, s)).toList();
      case DRILL_PRESS ->
          sticks.spacings(part, holes).stream()
              .map(s -> atFence(key, ways.edge(first), s))
              .toList();
      case MACHINE -> List.of(row(key, each(key, holes)));
      case GUIDED -> throw new IllegalStateException(key.purpose() + " is bored through a guide");
    };
  }

  private Spacing each(RowKey key, List<Hole> holes) {
    boolean along = key.line() == Line.ALONG;
    return new Spacing.Each(holes.stream().map(h -> along ? fromEnd(h) : fromEdge(h)).toList());
  }

  private Step atFence(RowKey key, Face edge, Spacing spacing) {
    Surface surface = layout.surface(edge);
    Length whole = part.width().total();
    return new Step.BoreAtFence(
        part.mark(),
        key.surface(),
        surface,
        surface == Surface.INDEX_EDGE ? key.offset() : whole.minus(key.offset()),
        spacing,
        key.diameter(),
        key.depth(),
        key.purpose());
  }

  private Step row(RowKey key, Spacing spacing) {
    return new Step.BoreRow(
        part.mark(),
        key.surface(),
        key.line(),
        key.offset(),
        spacing,
        key.diameter(),
        key.depth(),
        key.purpose());
  }
}
