package fourpin.sheets.packet;

import fourpin.boring.way.Purchase.Price;
import fourpin.plan.HardwareItem;
import fourpin.plan.HardwareItem.Amount;
import fourpin.plan.MaterialPlan;
import fourpin.plan.Plan;
import fourpin.plan.ToolItem;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to take from the rack and what to buy. */
final class BuyingPages {

  private static final String STAYS =
      "Each is bought once, however many cases it serves, and stays in the shop. How much of it this"
          + " job bears is the setting tools-borne.";

  private final Plan plan;
  private final Words words;

  BuyingPages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    List<Row> stock = plan.materials().stream().flatMap(m -> stock(m).stream()).toList();
    if (!stock.isEmpty()) {
      blocks.add(new Block.Heading("Sheets and boards"));
      blocks.add(
          new Table(
              List.of(
                  Table.left("Material"),
                  Table.left("Size"),
                  Table.right("Thick"),
                  Table.right("Use"),
                  Table.right("Buy"),
                  Table.right("Each")),
              stock));
    }
    if (!plan.hardware().isEmpty()) {
      blocks.add(new Block.Heading("Hardware"));
      blocks.add(hardware());
    }
    if (!plan.tools().isEmpty()) {
      blocks.add(new Block.Heading("Tools to buy"));
      blocks.add(tools());
      blocks.add(Block.Paragraph.of(STAYS));
    }
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("Hardware and buying list", blocks));
  }

  private List<Row> stock(MaterialPlan material) {
    return material.stock().stream()
        .map(
            use ->
                Table.row(
                    material.material().name(),
                    use.size(),
                    words.length(material.material().thickness()),
                    Long.toString(use.count()),
                    Long.toString(use.buy()),
                    use.each().map(words::money).orElse("")))
        .toList();
  }

  private Table hardware() {
    return new Table(
        List.of(
            Table.left("What"),
            Table.left("Size"),
            Table.right("Needed"),
            Table.right("Buy"),
            Table.left("Where")),
        plan.hardware().stream().map(this::row).toList());
  }

  private Row row(HardwareItem item) {
    return switch (item.amount()) {
      case Amount.Pieces pieces ->
          row(item, Long.toString(pieces.needed()), Long.toString(pieces.buy()));
      case Amount.CutLengths cut -> row(item, Long.toString(cut.needed()), "");
      case Amount.Running running ->
          row(item, words.length(running.needed()), words.length(running.buy()));
      case Amount.ToSuit suits -> row(item, words.quantity(suits.covers()), "to suit");
    };
  }

  private Table tools() {
    return new Table(
        List.of(
            Table.left("Tool"),
            Table.left("What to ask for"),
            Table.right("Price"),
            Table.left("Price from"),
            Table.left("Where")),
        plan.tools().stream().map(this::row).toList());
  }

  private Row row(ToolItem item) {
    Optional<Price> price = item.tool().price();
    return Table.row(
        item.tool().name(),
        item.tool().size(),
        price.map(p -> words.money(p.amount())).orElse("not stated"),
        price.map(p -> p.source().text()).orElse("state it in the shop file"),
        item.where());
  }

  private static Row row(HardwareItem item, String needed, String buy) {
    return Table.row(item.name(), item.size(), needed, buy, item.where());
  }
}
