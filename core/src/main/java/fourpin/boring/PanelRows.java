package fourpin.boring;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.casework.Axis;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The pattern of a bay as it is measured on one of the panels round it: heights from the panel's
 * lower end, rows from its edges.
 */
public record PanelRows(BayGrid grid, Part part) {

  /** The panel's lower end above the foot of the case. */
  public Length lowerEnd() {
    return part.box().at(Face.BOTTOM);
  }

  /** From the lower end up to a level. */
  public Length up(Level level) {
    return part.from(Axis.Z, level.height());
  }

  /** From the front edge to the middle of a row. */
  public Length fromFront(Row row) {
    return part.from(Axis.Y, row.y());
  }

  /** From the back edge to the middle of a row. */
  public Length fromBack(Row row) {
    return part.box().at(Face.BACK).minus(row.y());
  }

  /** Levels that follow each other by one pitch, from the bottom up. */
  public List<List<Level>> evenRuns() {
    List<List<Level>> runs = new ArrayList<>();
    for (Level level : grid.levels()) {
      if (runs.isEmpty() || !follows(runs.getLast().getLast(), level)) {
        runs.add(new ArrayList<>());
      }
      runs.getLast().add(level);
    }
    return runs.stream().map(List::copyOf).toList();
  }

  private boolean follows(Level before, Level level) {
    return level.height().minus(before.height()).equals(grid.pitch());
  }
}
