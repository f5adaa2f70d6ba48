package fourpin.sheets.packet;

import fourpin.boring.BayGrid;
import fourpin.boring.PanelRows;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The holes of panels that are bored alike, with the distance of each from the lower end, and where
 * shelves lie first.
 *
 * @param alike at least one
 */
record HoleTable(Words words, List<Bored> alike) {

  /** Holes stand side by side in so many columns. */
  private static final int SIDE_BY_SIDE = 3;

  /** A part and the pattern of the bay that its bored face looks into. */
  record Bored(Part part, BayGrid grid) {

    PanelRows rows() {
      return new PanelRows(grid, part);
    }

    boolean hasShelfAt(int level) {
      return grid.seats().stream().anyMatch(seat -> seat.level() == level);
    }
  }

  /** Whether the same holes are bored in another's panels. */
  boolean isLike(HoleTable other) {
    return holes().equals(other.holes()) && setting().equals(other.setting());
  }

  private List<String> holes() {
    return IntStream.range(0, grid().levels().size())
        .mapToObj(i -> grid().levels().get(i).number() + " " + distance(i))
        .toList();
  }

  HoleTable with(HoleTable other) {
    return new HoleTable(words, Stream.concat(alike.stream(), other.alike.stream()).toList());
  }

  /** How many lines the holes of a bay take. */
  static int lines(BayGrid grid) {
    return Math.ceilDiv(grid.levels().size(), SIDE_BY_SIDE);
  }

  List<Block> blocks() {
    List<Integer> bays = alike.stream().map(b -> b.grid.bay()).distinct().sorted().toList();
    String list = Words.list(bays.stream().map(bay -> Integer.toString(bay)).toList());
    String title = (bays.size() == 1 ? "Holes of bay " : "Holes of bays ") + list + ": ";
    return List.of(new Block.Paragraph(Prose.bold(title).then(Prose.plain(setting()))), table());
  }

  private BayGrid grid() {
    return alike.getFirst().grid;
  }

  private PanelRows rows() {
    return alike.getFirst().rows();
  }

  private String setting() {
    return words.diameter(grid().diameter())
        + " across, "
        + words.length(grid().depth())
        + " deep, "
        + Words.list(grid().rows().stream().map(this::row).toList())
        + " from the front edge. "
        + datum();
  }

  private String row(BayGrid.Row row) {
    return Words.lower(row.name()) + " row " + words.length(rows().fromFront(row));
  }

  private String datum() {
    Length foot = rows().lowerEnd();
    return foot.isZero()
        ? "The lower end is the foot of the case."
        : "The lower end lies " + words.length(foot) + " above the foot of the case.";
  }

  /** Number and distance from the lower end, column beside column. */
  private Table table() {
    List<Table.Column> columns =
        IntStream.range(0, SIDE_BY_SIDE)
            .boxed()
            .flatMap(_ -> Stream.of(Table.right("Hole"), Table.right("Up from end")))
            .toList();
    return new Table(columns, IntStream.range(0, lines(grid())).mapToObj(this::line).toList());
  }

  private Row line(int line) {
    List<Prose> cells = new ArrayList<>();
    for (int column = 0; column < SIDE_BY_SIDE; column++) {
      int index = column * lines(grid()) + line;
      boolean there = index < grid().levels().size();
      cells.add(Prose.plain(there ? hole(index) : ""));
      cells.add(Prose.plain(there ? distance(index) : ""));
    }
    return new Row(Table.Kind.ITEM, cells);
  }

  /** The hole's number, and whether a shelf lies on it first; on which panels, where not on all. */
  private String hole(int index) {
    int number = grid().levels().get(index).number();
    List<Bored> seats = alike.stream().filter(bored -> bored.hasShelfAt(number)).toList();
    if (seats.isEmpty()) {
      return Integer.toString(number);
    }
    String where =
        seats.size() == alike.size()
            ? ""
            : " " + Words.list(seats.stream().map(b -> b.part.mark()).distinct().toList());
    return number + " shelf" + where;
  }

  private String distance(int index) {
    return words.number(rows().up(grid().levels().get(index)));
  }
}
