package fourpin.sheets.packet;

import fourpin.casework.Axis;
import fourpin.casework.Feature;
import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.sheets.drawings.PanelView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is cut into one face of a part, in numbers: joints and notches with where they start and
 * end, and the holes that the table of rows does not have. Along is counted from the lower or left
 * end, across from the front edge.
 *
 * @param alike panels that differ at most in what their joints are for; at least one
 */
record PanelTables(Words words, List<Part> alike) {

  private Part part() {
    return alike.getFirst();
  }

  private static final String FROM_THE_BLANK =
      "bored whole in the blank, which is then ripped in two through their middle; see the drilling"
          + " sheet of the blank. Do not bore the strip.";

  /** Of each panel by itself, where it is not the same. */
  private String purpose(Feature feature) {
    int index = part().features().indexOf(feature);
    Map<String, List<String>> marks = new LinkedHashMap<>();
    alike.forEach(
        part ->
            marks
                .computeIfAbsent(part.features().get(index).purpose(), _ -> new ArrayList<>())
                .add(part.mark()));
    return marks.size() == 1
        ? feature.purpose()
        : Words.list(
            marks.entrySet().stream()
                .map(e -> e.getKey() + " (" + Words.list(e.getValue()) + ")")
                .toList());
  }

  List<Block> blocks(PanelView view) {
    List<Block> blocks = new ArrayList<>();
    if (!view.joints().isEmpty()) {
      blocks.add(joints(view.joints()));
    }
    List<Hole> bored = view.otherHoles().stream().filter(this::isBoredHere).toList();
    if (!bored.isEmpty()) {
      blocks.add(new Block.Paragraph(Prose.bold("Holes for screws and the like")));
      blocks.add(holes(bored));
    }
    List<Hole> halves = view.otherHoles().stream().filter(h -> !isBoredHere(h)).toList();
    if (!halves.isEmpty()) {
      blocks.add(new Block.Paragraph(Prose.bold("Half holes: ").then(Prose.plain(FROM_THE_BLANK))));
      blocks.add(halves(halves));
    }
    return blocks;
  }

  private boolean isBoredHere(Hole hole) {
    return PanelView.isBoredHere(part(), hole);
  }

  private Table joints(List<PanelView.Joint> joints) {
    return new Table(
        List.of(
            Table.left("Joint"),
            Table.left("For"),
            Table.right("Along"),
            Table.right("Across"),
            Table.right("Wide"),
            Table.right("Deep")),
        joints.stream().map(this::joint).toList());
  }

  private Row joint(PanelView.Joint joint) {
    Channel channel = joint.channel();
    return Table.row(
        joint.letter(),
        Words.lower(channel.kind()) + " for " + purpose(channel),
        range(channel, part().lengthAxis()),
        range(channel, part().widthAxis()),
        words.number(
            Length.min(
                channel.volume().size(part().lengthAxis()),
                channel.volume().size(part().widthAxis()))),
        depth(channel.volume().size(part().thicknessAxis())));
  }

  private String range(Channel channel, Axis axis) {
    return channel.volume().size(axis).equals(part().box().size(axis))
        ? "all"
        : distance(channel.volume().low().along(axis), axis)
            + " to "
            + distance(channel.volume().high().along(axis), axis);
  }

  private String distance(Length place, Axis axis) {
    return words.number(part().from(axis, place));
  }

  private String depth(Length depth) {
    return depth.equals(part().thickness()) ? "through" : words.number(depth);
  }

  /**
   * @param across from the front edge; of half holes, the edge that they are in
   */
  private record Line(String purpose, String diameter, String depth, String across) {}

  /** Holes that differ only in how far along they lie share a line. */
  private Map<Line, List<String>> lines(List<Hole> holes) {
    Map<Line, List<String>> lines = new LinkedHashMap<>();
    for (Hole hole : holes) {
      lines
          .computeIfAbsent(line(hole), _ -> new ArrayList<>())
          .add(distance(hole.centre().along(part().lengthAxis()), part().lengthAxis()));
    }
    return lines;
  }

  private Table halves(List<Hole> holes) {
    return new Table(
        List.of(
            Table.left("For"), Table.left("Along"), Table.left("In the"), Table.right("Diameter")),
        lines(holes).entrySet().stream().map(e -> half(e.getKey(), e.getValue())).toList());
  }

  private Table holes(List<Hole> holes) {
    return new Table(
        List.of(
            Table.left("For"),
            Table.left("Along"),
            Table.right("Across"),
            Table.right("Bit"),
            Table.right("Deep")),
        lines(holes).entrySet().stream().map(e -> row(e.getKey(), e.getValue())).toList());
  }

  private Line line(Hole hole) {
    return new Line(
        purpose(hole),
        words.diameterNumber(hole.diameter()),
        depth(hole.depth()),
        isBoredHere(hole)
            ? distance(hole.centre().along(part().widthAxis()), part().widthAxis())
            : edge(hole));
  }

  private String edge(Hole hole) {
    Axis across = part().widthAxis();
    return part().from(across, hole.centre().along(across)).isNegative()
        ? "front edge"
        : "back edge";
  }

  private static Row half(Line line, List<String> along) {
    return Table.row(line.purpose, Words.list(along), line.across, line.diameter);
  }

  private static Row row(Line line, List<String> along) {
    return Table.row(line.purpose, Words.list(along), line.across, line.diameter, line.depth);
  }
}
