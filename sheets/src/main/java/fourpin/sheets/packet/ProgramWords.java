package fourpin.sheets.packet;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Method;
import fourpin.casework.Face;
import fourpin.casework.Hand;
import fourpin.measure.Length;
import fourpin.sheets.packet.DrillingPages.Bored;
import fourpin.sheets.packet.DrillingWords.Told;
import fourpin.sheets.pages.Block.SetUp;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a panel's sheet says for a machine: the corner of zero, the tool, and where the holes are.
 */
record ProgramWords(Words words, Bored bored) {

  Told told(Method.Programmed programmed) {
    DrillingWords sheet = new DrillingWords(words);
    Hand hand = Hand.ofFront(bored.face());
    String zero =
        "Zero is the lower "
            + hand.word()
            + " corner, of lower end and front edge, both drawn heavy, with a black spot: the front"
            + " edge goes to the "
            + hand.word()
            + " stop. X runs away from you along the panel, Y across it to the "
            + hand.other().word()
            + ".";
    String enter =
        "Enter tool, rows and heights as listed, every height in each row. Let the machine show"
            + " the holes and compare them with the picture.";
    List<SetUp.Line> lines =
        List.of(
            new SetUp.Line("Machine", programmed.machine()),
            new SetUp.Line("Zero", "lower " + hand.word() + " corner"),
            new SetUp.Line("Holes", holes() + " in all, " + levels().size() + " in each row"));
    return new Told(
        new SetUp(lines),
        DrillingWords.numbered(
            List.of(
                DrillingWords.lay(bored),
                zero,
                enter,
                sheet.scrap(programmed.bit()),
                sheet.check(bored))),
        List.of(tool(programmed.bit()), rows(), heights()));
  }

  private List<Level> levels() {
    return bored.grid().levels();
  }

  private int holes() {
    return levels().size() * bored.grid().rows().size();
  }

  private Table tool(BitSetting bit) {
    return new Table(
        List.of(
            Table.left("Tool"),
            Table.right("Diameter"),
            Table.right("Depth"),
            Table.right("Holes")),
        List.of(
            Table.row(
                bit.tool(),
                words.length(bit.diameter()),
                words.length(bit.depth()),
                Integer.toString(holes()))));
  }

  private Table rows() {
    Length front = bored.part().box().at(Face.FRONT);
    return new Table(
        List.of(Table.left("Row"), Table.right("Y, from the front edge")),
        bored.grid().rows().stream()
            .map(r -> Table.row(Words.lower(r.name()), words.length(r.y().minus(front))))
            .toList());
  }

  /** Levels that follow each other by one pitch, as a line each. */
  private Table heights() {
    return new Table(
        List.of(
            Table.left("Levels"),
            Table.right("X, first"),
            Table.right("Pitch"),
            Table.right("Number"),
            Table.right("X, last")),
        runs().stream().map(this::row).toList());
  }

  private Table.Row row(List<Level> run) {
    boolean alone = run.size() == 1;
    int first = run.getFirst().number();
    return Table.row(
        alone ? Integer.toString(first) : first + " to " + run.getLast().number(),
        x(run.getFirst()),
        alone ? "" : words.number(bored.grid().pitch()),
        Integer.toString(run.size()),
        x(run.getLast()));
  }

  private String x(Level level) {
    return words.number(level.height().minus(bored.part().box().at(Face.BOTTOM)));
  }

  private List<List<Level>> runs() {
    List<List<Level>> runs = new ArrayList<>();
    Optional<Level> before = Optional.empty();
    for (Level level : levels()) {
      if (before.filter(b -> follows(b, level)).isEmpty()) {
        runs.add(new ArrayList<>());
      }
      runs.getLast().add(level);
      before = Optional.of(level);
    }
    return runs;
  }

  private boolean follows(Level before, Level level) {
    return level.height().minus(before.height()).equals(bored.grid().pitch());
  }
}
