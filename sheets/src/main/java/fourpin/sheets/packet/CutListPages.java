package fourpin.sheets.packet;

import fourpin.casework.Part.CutWhen;
import fourpin.plan.CutItem;
import fourpin.plan.Plan;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Table;
import java.util.List;
import java.util.Optional;

/** The cut list, and how its sizes come about. */
final class CutListPages {

  private final Plan plan;
  private final Words words;

  CutListPages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Optional<Section> section() {
    return plan.cutList().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Section(
                "Cut list",
                List.of(
                    Block.Paragraph.of(
                        "Sizes to cut, in "
                            + words.unit()
                            + ", length along the grain. Parts marked \"after assembly\" wait: "
                            + "measure the standing case before you cut them."),
                    sizes(),
                    new Block.Heading("How the finished sizes come about"),
                    Block.Paragraph.of("Cut sizes are these less the edging on their own edges."),
                    sums())));
  }

  private Table sizes() {
    return new Table(
        List.of(
            Table.right("Line"),
            Table.left("Case"),
            Table.left("Part"),
            Table.left("Marks"),
            Table.right("Make"),
            Table.right("Length"),
            Table.right("Width"),
            Table.right("Thick"),
            Table.left("Material"),
            Table.left("Grain"),
            Table.left("Edges"),
            Table.left("Cut")),
        plan.cutList().stream().map(this::row).toList());
  }

  private Table.Row row(CutItem item) {
    return Table.row(
        Integer.toString(item.line()),
        item.caseName(),
        item.name(),
        Words.list(item.marks()),
        Integer.toString(item.quantity()),
        words.number(item.cutLength().total()),
        words.number(item.cutWidth().total()),
        words.number(item.thickness()),
        item.material(),
        item.grain() == CutItem.Direction.ALONG_LENGTH ? "length" : "any",
        Words.list(item.banded().stream().map(this::edge).toList()),
        item.when() == CutWhen.NOW ? "now" : "after assembly");
  }

  private String edge(CutItem.EdgeNote note) {
    return note.edge() + " " + note.what();
  }

  private Table sums() {
    return new Table(
        List.of(
            Table.right("Line"),
            Table.left("Part"),
            Table.left("Finished length"),
            Table.left("Finished width")),
        plan.cutList().stream()
            .map(
                item ->
                    Table.row(
                        Integer.toString(item.line()),
                        item.name(),
                        words.sum(item.length()),
                        words.sum(item.width())))
            .toList());
  }
}
