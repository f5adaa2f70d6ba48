package fourpin.sheets.packet;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.PanelRows;
import fourpin.boring.way.BitSetting;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Table;
import java.util.List;

/** What is entered into a machine for one face: the tool, the rows and the heights of the holes. */
record CoordinateTables(Words words, PanelRows panel) {

  List<Block> tables(BitSetting bit) {
    return List.of(tool(bit), rows(), heights());
  }

  private BayGrid grid() {
    return panel.grid();
  }

  private int holes() {
    return grid().levels().size() * grid().rows().size();
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
                words.diameter(bit.diameter()),
                words.length(bit.depth()),
                Integer.toString(holes()))));
  }

  private Table rows() {
    return new Table(
        List.of(Table.left("Row"), Table.right("Y, from the front edge")),
        grid().rows().stream()
            .map(r -> Table.row(Words.lower(r.name()), words.length(panel.fromFront(r))))
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
        panel.evenRuns().stream().map(this::row).toList());
  }

  private Table.Row row(List<Level> run) {
    boolean alone = run.size() == 1;
    int first = run.getFirst().number();
    return Table.row(
        alone ? Integer.toString(first) : first + " to " + run.getLast().number(),
        x(run.getFirst()),
        alone ? "" : words.number(grid().pitch()),
        Integer.toString(run.size()),
        x(run.getLast()));
  }

  private String x(Level level) {
    return words.number(panel.up(level));
  }
}
