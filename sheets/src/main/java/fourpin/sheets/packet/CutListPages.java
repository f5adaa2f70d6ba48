package fourpin.sheets.packet;

import fourpin.casework.BuiltCase;
import fourpin.casework.Part.CutWhen;
import fourpin.plan.CutItem;
import fourpin.plan.Plan;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
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
    if (plan.cutList().isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.Paragraph.of(
            "Sizes to cut, in "
                + words.units()
                + ", length along the grain. Parts marked \"wait\" are over size: they are cut to"
                + " measure when the case stands."));
    plan.cases().forEach(built -> blocks.addAll(sizes(built)));
    blocks.add(
        new Block.Columns(
            1,
            Block.Print.SMALL,
            List.of(
                new Block.Heading("How the finished sizes come about"),
                Block.Paragraph.of(
                    "Cut sizes are these less the edging on their own edges, and more by the setting over-size where they wait."),
                sums())));
    return Optional.of(new Section("Cut list", blocks));
  }

  private List<Block> sizes(BuiltCase built) {
    List<CutItem> items =
        plan.cutList().stream().filter(i -> i.caseName().equals(built.order().name())).toList();
    Table table =
        new Table(
            List.of(
                Table.right("Line"),
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
            items.stream().map(this::row).toList(),
            Table.Lettering.SMALL);
    return List.of(new Block.Heading("Parts of " + Words.counted(built)), table);
  }

  private Table.Row row(CutItem item) {
    return Table.row(
        Integer.toString(item.line()),
        item.name(),
        Words.list(item.marks()),
        Integer.toString(item.quantity()),
        words.number(item.cutLength().total()),
        words.number(item.cutWidth().total()),
        words.number(item.thickness()),
        item.material(),
        item.grain() == CutItem.Direction.ALONG_LENGTH ? "length" : "any",
        Words.list(item.banded().stream().map(this::edge).toList()),
        item.when() == CutWhen.NOW ? "now" : "wait");
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
