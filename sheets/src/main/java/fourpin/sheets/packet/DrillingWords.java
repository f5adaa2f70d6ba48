package fourpin.sheets.packet;

import fourpin.bench.Numbers;
import fourpin.boring.BayGrid;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Hand;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import fourpin.plan.PlannedStep;
import fourpin.sheets.packet.DrillingPages.Bored;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Block.SetUp;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Typeface;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a drilling sheet says beside its picture. */
record DrillingWords(Words words) {

  /** Letters that find room beside the picture. */
  private static final int ROOM = 850;

  /** Millimetres: of the type of settings, and of what stands round one. */
  private static final double LARGE = 5;

  private static final double ROUND_A_SETTING = 11;

  /** Letters of a line across the page. */
  private static final int ACROSS = 90;

  /** Letters that a line of a table takes the room of. */
  private static final int LINE = 35;

  /**
   * Settings in large type, then what to do in order, each with a box to tick, then tables if any.
   */
  record Told(SetUp setUp, List<Block.Step> steps, List<Table> tables) {

    Told {
      steps = List.copyOf(steps);
      tables = List.copyOf(tables);
    }

    /**
     * Two short settings stand on a line.
     *
     * @param width of the page
     */
    int setUpLines(double width) {
      List<Double> widths = setUp.lines().stream().map(Told::width).toList();
      int lines = 0;
      for (int i = 0; i < widths.size(); i++) {
        boolean two =
            i + 1 < widths.size() && Math.max(widths.get(i), widths.get(i + 1)) <= width / 2;
        lines += two ? 1 : (int) Math.ceil(widths.get(i) / width);
        i += two ? 1 : 0;
      }
      return lines;
    }

    private static double width(SetUp.Line line) {
      return Lettering.of(line.what() + line.to(), Typeface.BOLD, LARGE).width() + ROUND_A_SETTING;
    }

    /** Of steps and tables across the whole page. */
    int linesAcross() {
      int told =
          steps.stream().mapToInt(s -> 1 + Math.ceilDiv(s.prose().text().length(), ACROSS)).sum();
      return told + tables.stream().mapToInt(t -> 2 + t.rows().size()).sum();
    }

    boolean isShort() {
      int told = steps.stream().mapToInt(s -> s.prose().text().length()).sum();
      int listed = tables.stream().mapToInt(t -> LINE * (t.rows().size() + 1)).sum();
      return told + listed < ROOM;
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
    Length end = bored.part().box().at(Face.BOTTOM);
    ClampingWords clamped = new ClampingWords(words);
    for (Clamping clamping : clampings) {
      steps.add(
          Words.lower(clamping.row())
              + " row: "
              + clamped.end(clamping)
              + ", "
              + clamped.edge(clamping)
              + ". Clamp both ends, "
              + clamped.reaches(clamping)
              + ". Key: "
              + clamped.key(clamping, guide, end, bored.grid())
              + ".");
    }
    if (bored.lot().isLast()) {
      steps.add(check(bored));
    }
    return new Told(new SetUp(lines), numbered(steps), List.of());
  }

  /** The steps as the bench runs them. */
  Told grooved(Method.Grooved grooved, List<PlannedStep> onSheet) {
    List<SetUp.Line> lines = new ArrayList<>();
    lines.add(new SetUp.Line("Tool", grooved.tool()));
    lines.add(
        new SetUp.Line(
            "Depth",
            String.join(", then ", grooved.depths().stream().map(words::length).toList())));
    List<String> told = new ArrayList<>();
    told.add("Cuts with a letter are told on the panel's page under that letter.");
    for (PlannedStep step : onSheet) {
      told.add(step.words());
      told.addAll(step.items());
      told.add("Check: " + step.check());
    }
    return new Told(new SetUp(lines), numbered(told), List.of());
  }

  Told marked(Bored bored, Method.Marked marked) {
    List<SetUp.Line> lines = new ArrayList<>(bit(marked.bit()));
    lines.add(new SetUp.Line("Holes", bored.grid().levels().size() + " in each row"));
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
        numbered(
            List.of(
                lay(bored),
                scrap(marked.bit()),
                rows(bored),
                marked
                    .gang(bored.grid().bay())
                    .map(_ -> "Heights: the lines squared across, see the steps.")
                    .orElseGet(() -> mark(bored)),
                bore,
                check(bored))),
        List.of());
  }

  /** In the words of the steps: a loose partition has no foot of the case to lay a stick to. */
  private String mark(Bored bored) {
    Settings settings = bored.built().order().settings();
    if (settings.choice(Setting.DRILL).equals("after-assembly")) {
      return "Stand the stick of each opening on the panel below it and bring its marks over to the"
          + " line of each row.";
    }
    Length end = bored.part().box().at(Face.BOTTOM);
    List<Integer> marks = marks(bored);
    return "Lay the stick along the panel, "
        + (end.isZero() ? "its zero" : "its end mark " + words.length(end))
        + " at the panel's lower end, and bring marks "
        + Numbers.words(marks, "mark")
        + " over to the line of each row. Key: mark "
        + marks.getFirst()
        + " of the stick is level "
        + bored.grid().levels().getFirst().number()
        + " of the bay, mark "
        + marks.getLast()
        + " level "
        + bored.grid().levels().getLast().number()
        + ".";
  }

  /** Numbers on the stick, which carries the heights of every bay. */
  private static List<Integer> marks(Bored bored) {
    List<Length> all =
        bored.built().parts().stream()
            .filter(part -> part.role() != Part.Role.STRIP)
            .flatMap(part -> part.features().stream())
            .filter(f -> f instanceof Hole hole && hole.use() == Hole.Use.SUPPORT)
            .map(f -> ((Hole) f).centre().z())
            .distinct()
            .sorted()
            .toList();
    return bored.grid().levels().stream().map(level -> all.indexOf(level.height()) + 1).toList();
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

  static String lay(Bored bored) {
    return Words.lower(bored.face())
        + " face up, lower end towards you: the front edge is on your "
        + Hand.ofFront(bored.face()).word()
        + ".";
  }

  String scrap(BitSetting bit) {
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

  String check(Bored bored) {
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

  static List<Block.Step> numbered(List<String> steps) {
    return IntStream.range(0, steps.size())
        .mapToObj(
            i ->
                new Block.Step(
                    Integer.toString(i + 1), Prose.plain(Words.sentence(steps.get(i))), List.of()))
        .toList();
  }
}
