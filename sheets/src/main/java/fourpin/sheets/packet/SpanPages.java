package fourpin.sheets.packet;

import fourpin.plan.Plan;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Table;
import fourpin.strength.SpanTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far shelves of the job's materials span: to pin up over the bench. */
final class SpanPages {

  private static final String ABOUT =
      "The longest span of shelves of this job's materials, as deep as the deepest shelf of the case (of the loose ones, if it has any) and on supports like its own, "
          + "within the job's limits of sag at once and after years, of what glass, wood and panels bear, and of what a support may carry. The load lies spread "
          + "evenly, on one half alone, and in a row along the front edge or against the back or, in things deeper than the shelf, out over the front edge; the worst of them counts: "
          + "r marks the row in front, b the one against the back, o what stands out, h the half. Where supports like the case's own bear less than the shelf, the span on others that bear it "
          + "stands in brackets. Each way to make a shelf is bent as a plate; a strip in front "
          + "leaves the back edge as it is, so that it helps less than one thinks. Woods are averages: a board may bend a fifth more. "
          + "Between two loads take the shorter span; lengths hold to 1 per cent. Where 0 stands, no span of this depth holds: what is short enough for its supports may sag too much for it from front to back, or be so light that a hand on its front edge tips it. "
          + "Joints are not counted: where shelves are fixed in dadoes or by screws, these may bear less than the shelf, and \"Will it hold\" tells what those of this job do.";

  private final Plan plan;
  private final Words words;

  SpanPages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  /** Nothing for a job without shelves. */
  Optional<Section> section() {
    List<SpanTable> tables = plan.standing().stream().flatMap(c -> c.spans().stream()).toList();
    if (tables.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>(List.of(Block.Paragraph.of(ABOUT)));
    tables.forEach(table -> blocks.addAll(of(table)));
    return Optional.of(
        new Section(
            "How far shelves span", List.of(new Block.Columns(1, Block.Print.SMALL, blocks))));
  }

  private List<Block> of(SpanTable table) {
    return List.of(
        new Block.Heading(
            "%s: %s, %s thick, %s deep"
                .formatted(
                    table.caseName(),
                    table.material(),
                    words.value(table.thickness()),
                    words.value(table.depth()))),
        new Table(columns(table), table.rows().stream().map(this::row).toList()));
  }

  private List<Table.Column> columns(SpanTable table) {
    List<Table.Column> columns = new ArrayList<>(List.of(Table.left("Made")));
    table
        .loads()
        .forEach(load -> columns.add(Table.right(load.title() + ", " + words.value(load))));
    return columns;
  }

  private Table.Row row(SpanTable.Row row) {
    List<String> cells = new ArrayList<>(List.of(row.made()));
    row.spans().forEach(span -> cells.add(cell(span)));
    return Table.row(cells.toArray(String[]::new));
  }

  private String cell(SpanTable.Span span) {
    String mark =
        switch (span.governs()) {
          case EVENLY -> "";
          case IN_A_ROW -> " r";
          case AGAINST_THE_BACK -> " b";
          case OVER_THE_EDGE -> " o";
          case ON_ONE_HALF -> " h";
        };
    return words.value(span.longest())
        + mark
        + span.onOthers().map(other -> " (" + words.value(other) + ")").orElse("");
  }
}
