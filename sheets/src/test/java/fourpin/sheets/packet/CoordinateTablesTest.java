package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.PanelRows;
import fourpin.boring.way.BitSetting;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is entered into a machine must be where the holes are, read back from what is printed. */
class CoordinateTablesTest {

  private final Plan plan = Planner.plan(SampleJobs.readingRoom());
  private final Part part = plan.cases().getFirst().part("L");
  private final BayGrid grid = plan.grids().getFirst();

  private List<Table> tables(BayGrid shown) {
    BitSetting bit =
        new BitSetting(
            "brad-point bit",
            SampleJobs.in("1/4"),
            Length.ZERO,
            Length.ZERO,
            SampleJobs.in("3/8"),
            SampleJobs.in("1/16"),
            SampleJobs.in("5/16"));
    return new CoordinateTables(new Words(plan.job()), new PanelRows(shown, part))
        .tables(bit).stream().map(Table.class::cast).toList();
  }

  private static List<String> cells(Table.Row row) {
    return row.cells().stream().map(Prose::text).toList();
  }

  private static BayGrid with(BayGrid grid, List<Level> levels) {
    return new BayGrid(
        grid.caseName(),
        grid.bay(),
        grid.support(),
        grid.rows(),
        levels,
        grid.pitch(),
        grid.diameter(),
        grid.depth(),
        grid.runs(),
        grid.seats());
  }

  /** Every line spread out again: first, pitch by pitch, to the last. */
  private List<Length> spread(Table heights) {
    List<Length> all = new ArrayList<>();
    for (Table.Row row : heights.rows()) {
      List<String> cells = cells(row);
      int number = Integer.parseInt(cells.get(3));
      for (int i = 0; i < number; i++) {
        Length pitch = number == 1 ? Length.ZERO : SampleJobs.in(cells.get(2));
        all.add(SampleJobs.in(cells.get(1)).plus(pitch.times(i)));
      }
      assertThat(all.getLast()).isEqualTo(SampleJobs.in(cells.get(4)));
    }
    return all;
  }

  @Test
  void theHeightsAreThoseOfTheLevels() {
    Length end = part.box().at(Face.BOTTOM);
    assertThat(spread(tables(grid).get(2)))
        .containsExactlyElementsOf(grid.levels().stream().map(l -> l.height().minus(end)).toList());
  }

  /** Levels 3 and 7 are left out, so that 4 to 6 stand between two gaps. */
  @Test
  void aGapBeginsANewLine() {
    List<Level> some =
        grid.levels().stream().filter(l -> l.number() != 3 && l.number() != 7).toList();
    Table heights = tables(with(grid, some)).get(2);
    int last = grid.levels().getLast().number();
    assertThat(heights.rows().stream().map(r -> cells(r).getFirst()))
        .startsWith("1 to 2", "4 to 6")
        .last()
        .asString()
        .endsWith(" to " + last);
    Length end = part.box().at(Face.BOTTOM);
    assertThat(spread(heights))
        .containsExactlyElementsOf(some.stream().map(l -> l.height().minus(end)).toList());
  }

  @Test
  void oneLevelHasNoPitch() {
    Table heights = tables(with(grid, List.of(grid.levels().getFirst()))).get(2);
    assertThat(heights.rows()).hasSize(1);
    assertThat(cells(heights.rows().getFirst()).get(2)).isEmpty();
    assertThat(cells(heights.rows().getFirst()).getFirst()).isEqualTo("1");
  }

  @Test
  void theToolBoresEveryHoleOfEveryRow() {
    List<String> tool = cells(tables(grid).getFirst().rows().getFirst());
    assertThat(tool)
        .containsExactly(
            "brad-point bit",
            "1/4 in",
            "3/8 in",
            Integer.toString(grid.rows().size() * grid.levels().size()));
    Length front = part.box().at(Face.FRONT);
    assertThat(tables(grid).get(1).rows().stream().map(r -> cells(r).get(1)))
        .containsExactlyElementsOf(
            grid.rows().stream().map(r -> plan.job().style().text(r.y().minus(front))).toList());
  }
}
