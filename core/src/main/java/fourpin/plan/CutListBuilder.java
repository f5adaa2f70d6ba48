package fourpin.plan;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.CutSizes;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.casework.Part.Role;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import fourpin.plan.CutItem.Direction;
import fourpin.plan.CutItem.EdgeNote;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Gathers the parts of each case, and the strips on their edges, into lines of a cut list. */
final class CutListBuilder {

  private final Job job;
  private final List<CutItem> items = new ArrayList<>();

  private CutListBuilder(Job job) {
    this.job = job;
  }

  static List<CutItem> of(Job job, List<BuiltCase> cases) {
    CutListBuilder builder = new CutListBuilder(job);
    cases.forEach(builder::add);
    return List.copyOf(builder.items);
  }

  /** The strips on the edges of one case's parts. */
  static List<CutItem> edgeStrips(Job job, BuiltCase built) {
    CutListBuilder builder = new CutListBuilder(job);
    builder.strips(built);
    return List.copyOf(builder.items);
  }

  private void add(BuiltCase built) {
    Map<List<Object>, List<Part>> alike = new LinkedHashMap<>();
    for (Part part : CleatBlank.cut(built, built.parts())) {
      alike.computeIfAbsent(key(part), _ -> new ArrayList<>()).add(part);
    }
    alike.values().forEach(parts -> addWithLayers(built, item(built, parts)));
    strips(built);
  }

  /** The panel as it is cut when it is glued up, then what it is glued up of. */
  private void addWithLayers(BuiltCase built, CutItem item) {
    items.add(item);
    items.addAll(new LayerItems(job, built.order().settings(), item).all());
  }

  private List<Object> key(Part part) {
    return List.of(
        part.role(),
        part.material(),
        part.length().total(),
        part.width().total(),
        part.cutLength().total(),
        part.cutWidth().total(),
        notes(part),
        part.when());
  }

  private CutItem item(BuiltCase built, List<Part> parts) {
    Part first = parts.getFirst();
    return new CutItem(
        items.size() + 1,
        built.order().name(),
        parts.stream().map(Part::mark).toList(),
        name(first),
        first.role(),
        first.material(),
        parts.size() * built.order().quantity(),
        first.length(),
        first.width(),
        first.thickness(),
        overSize(built, first, first.cutLength()),
        first.role() == Role.BACK ? overSize(built, first, first.cutWidth()) : first.cutWidth(),
        direction(first.material()),
        notes(first),
        first.when());
  }

  private CutSizes sizes(BuiltCase built) {
    return new CutSizes(job, built.order().settings());
  }

  private Sum overSize(BuiltCase built, Part part, Sum size) {
    return sizes(built).cut(size, job.material(part.material()), part.when());
  }

  private static String name(Part part) {
    return CleatBlank.isStrip(part)
        ? part.name()
        : part.role().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private Direction direction(String material) {
    return job.material(material).grain() == Material.Grain.LENGTHWISE
        ? Direction.ALONG_LENGTH
        : Direction.EITHER_WAY;
  }

  private List<EdgeNote> notes(Part part) {
    return part.edging().stream()
        .map(
            b ->
                new EdgeNote(edge(b.face()), words(b.edging()), b.length(), b.edging().thickness()))
        .toList();
  }

  private String words(Edging edging) {
    return switch (edging.kind()) {
      case BANDING -> edging.material() + " banding";
      case STRIP ->
          edging.material()
              + " strip "
              + job.style().number(edging.thickness())
              + " x "
              + job.style().number(edging.height());
    };
  }

  private static String edge(Face face) {
    return face.name().toLowerCase(Locale.ROOT);
  }

  /** Strips of solid wood are parts of their own. */
  private void strips(BuiltCase built) {
    Map<List<Object>, List<StripOn>> alike = new LinkedHashMap<>();
    for (Part part : built.parts()) {
      for (EdgeBand band : part.edging()) {
        if (band.edging().kind() == Edging.Kind.STRIP) {
          List<Object> key =
              List.of(
                  band.edging().material(),
                  band.length(),
                  band.edging().thickness(),
                  band.edging().height(),
                  part.when());
          alike.computeIfAbsent(key, _ -> new ArrayList<>()).add(new StripOn(part, band));
        }
      }
    }
    alike.values().forEach(strips -> items.add(strip(built, strips)));
  }

  private record StripOn(Part part, EdgeBand band) {
    String mark() {
      return part.mark() + " " + edge(band.face());
    }

    Sum length() {
      return band.face().axis() == Axis.Y ? part.length() : part.cutWidth();
    }
  }

  /**
   * Ripped from a board at least as thick as one side of the strip's section; the other is ripped.
   */
  private CutItem strip(BuiltCase built, List<StripOn> strips) {
    StripOn first = strips.getFirst();
    Edging edging = first.band().edging();
    Length board = job.material(edging.material()).thickness();
    boolean onEdge = board.isAtLeast(edging.height());
    Sum rip = Sum.of("strip", onEdge ? edging.thickness() : edging.height());
    return new CutItem(
        items.size() + 1,
        built.order().name(),
        strips.stream().map(StripOn::mark).toList(),
        "edge strip",
        Role.STRIP,
        edging.material(),
        strips.size() * built.order().quantity(),
        first.length(),
        rip,
        onEdge ? edging.height() : edging.thickness(),
        first.band().face().axis() == Axis.Y
            ? overSize(built, first.part(), first.length())
            : first.length(),
        sizes(built).ripped(rip, job.material(edging.material())),
        Direction.ALONG_LENGTH,
        List.of(),
        first.part().when());
  }
}
