package fourpin.sheets.packet;

import fourpin.bench.Numbers;
import fourpin.boring.BayGrid;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.casework.Face;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import fourpin.sheets.packet.DrillingPages.Bored;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Block.SetUp;
import fourpin.sheets.pages.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a drilling sheet says beside its picture. */
record DrillingWords(Words words) {

  /** Letters that find room beside the picture. */
  private static final int ROOM = 1200;

  /** Settings in large type, then what to do in order, each with a box to tick. */
  record Told(SetUp setUp, List<Block.Step> steps) {

    boolean isShort() {
      int large = setUp.lines().stream().mapToInt(l -> 2 * l.to().length()).sum();
      return large + steps.stream().mapToInt(s -> s.prose().text().length()).sum() < ROOM;
    }
  }

  Told guided(Bored bored, Guide guide, List<Clamping> clampings) {
    Method.Guided guided = (Method.Guided) bored.boring().method();
    BitSetting bit = guided.bit();
    List<SetUp.Line> lines = new ArrayList<>(bit(bit));
    String side = clampings.getFirst().face() == Face.LEFT ? "A" : "B";
    lines.add(new SetUp.Line("Guide", guide.mark() + ", side " + side + " up"));
    lines.add(new SetUp.Line("Holes", holes(clampings)));
    List<String> steps = new ArrayList<>(List.of(lay(bored), scrap(bit)));
    if (guided.how() == Method.How.DRILL_PRESS) {
      steps.add(
          "Move panel and guide under the drill press together, both ends held up level with the"
              + " table, and bring each hole of the guide under the bit.");
    }
    ClampingWords clamped = new ClampingWords(words);
    for (Clamping clamping : clampings) {
      String reaches =
          clamping.reaches().stream().map(clamped::reach).collect(Collectors.joining(". Then "));
      steps.add(
          Words.lower(clamping.row())
              + " row: "
              + clamped.end(clamping)
              + ", "
              + clamped.edge(clamping)
              + ". Clamp both ends, "
              + reaches
              + ".");
    }
    steps.add(check(bored));
    return new Told(new SetUp(lines), numbered(steps));
  }

  Told marked(Bored bored, Method.Marked marked) {
    List<SetUp.Line> lines = new ArrayList<>(bit(marked.bit()));
    lines.add(new SetUp.Line("Holes", bored.grid().levels().size() + " in each row"));
    String mark =
        "Lay the stick along the panel, its zero in line with the foot of the case, and bring every"
            + " mark over to the line of each row.";
    String bore =
        switch (marked.how()) {
          case BY_HAND -> "Punch each cross, then bore square to the face, stop on.";
          case DRILL_PRESS ->
              "Set the fence from the centre of the bit: "
                  + fence(bored)
                  + ". Try it in scrap; hold the panel against the fence and bring the bit down on"
                  + " each mark.";
        };
    return new Told(
        new SetUp(lines),
        numbered(List.of(lay(bored), scrap(marked.bit()), rows(bored), mark, bore, check(bored))));
  }

  Told programmed(Bored bored, Method.Programmed programmed) {
    List<SetUp.Line> lines = new ArrayList<>(bit(programmed.bit()));
    lines.add(new SetUp.Line("Machine", programmed.machine()));
    lines.add(new SetUp.Line("Holes", bored.grid().levels().size() + " in each row"));
    String zero = "Zero is the corner of the lower end and the front edge, both drawn heavy.";
    return new Told(
        new SetUp(lines),
        numbered(List.of(lay(bored), zero, scrap(programmed.bit()), rows(bored), check(bored))));
  }

  private List<SetUp.Line> bit(BitSetting bit) {
    Sum stop = Sum.of("hole", bit.depth()).plus("guide", bit.over());
    String to =
        bit.over().isZero() ? words.length(bit.stop()) : words.sum(stop) + " " + words.unit();
    return List.of(
        new SetUp.Line("Bit", words.length(bit.diameter()) + ", " + bit.tool()),
        new SetUp.Line(
            "Stop", to + (bit.point().isZero() ? "" : ", to the full diameter, not to the point")));
  }

  /** One line where all clampings use the same holes. */
  private static String holes(List<Clamping> clampings) {
    List<String> all = clampings.stream().map(DrillingWords::holes).distinct().toList();
    return all.size() == 1
        ? all.getFirst()
        : clampings.stream()
            .map(c -> Words.lower(c.row()) + " " + holes(c))
            .collect(Collectors.joining("; "));
  }

  private static String holes(Clamping clamping) {
    return clamping.reaches().stream()
        .map(r -> Numbers.words(r.holes(), "hole"))
        .collect(Collectors.joining(", then "));
  }

  private static String lay(Bored bored) {
    String front = bored.face() == Face.RIGHT ? "left" : "right";
    return Words.lower(bored.face())
        + " face up, lower end towards you: the front edge is on your "
        + front
        + ".";
  }

  private String scrap(BitSetting bit) {
    String point =
        bit.point().isZero() ? "" : " The point goes " + words.length(bit.point()) + " deeper";
    String behind =
        point.isEmpty() ? "" : "; " + words.length(bit.reserve()) + " of wood stay behind it.";
    return "Try bit and stop in scrap as thick as the panel: the hole is "
        + words.length(bit.depth())
        + " deep and a pin goes in by hand."
        + point
        + behind;
  }

  private String rows(Bored bored) {
    Length front = bored.part().box().at(Face.FRONT);
    return bored.grid().rows().stream()
        .map(r -> Words.lower(r.name()) + " row " + words.length(r.y().minus(front)))
        .collect(Collectors.joining(", ", "Draw the rows, from the front edge: ", "."));
  }

  /** The edge that a row is nearest to runs along the fence. */
  private String fence(Bored bored) {
    return bored.grid().rows().stream().map(r -> fence(bored, r)).collect(Collectors.joining("; "));
  }

  private String fence(Bored bored, BayGrid.Row row) {
    boolean back = row.name() == BayGrid.Row.Name.BACK;
    Length edge = bored.part().box().at(back ? Face.BACK : Face.FRONT);
    return Words.lower(row.name())
        + " row "
        + words.length(row.y().minus(edge).abs())
        + (back ? ", back edge at the fence" : ", front edge at the fence");
  }

  private String check(Bored bored) {
    Length end = bored.part().box().at(Face.BOTTOM);
    List<BayGrid.Level> levels = bored.grid().levels();
    return "Check: from the lower end to the first hole "
        + words.length(levels.getFirst().height().minus(end))
        + ", to the last "
        + words.length(levels.getLast().height().minus(end))
        + "; "
        + levels.size()
        + " holes in each row, all of one depth.";
  }

  private static List<Block.Step> numbered(List<String> steps) {
    return IntStream.range(0, steps.size())
        .mapToObj(
            i ->
                new Block.Step(
                    Integer.toString(i + 1), Prose.plain(Words.sentence(steps.get(i))), List.of()))
        .toList();
  }
}
