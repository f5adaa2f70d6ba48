package fourpin.sheets.packet;

import fourpin.casework.Finding;
import fourpin.cutting.Grain;
import fourpin.cutting.Matched;
import fourpin.cutting.Part;
import fourpin.cutting.Together;
import fourpin.job.Setting;
import fourpin.measure.Money;
import fourpin.plan.CutMaterial;
import fourpin.plan.CutPlan;
import fourpin.plan.CutPlanner;
import fourpin.plan.Finished;
import fourpin.plan.LayoutCautions;
import fourpin.plan.MaterialPlan.StockUse;
import fourpin.plan.SawCare;
import fourpin.plan.Wanted;
import fourpin.plan.Yield;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The pages for parts that are cut without a case: what to know, the parts, the layouts. */
public final class CutPacket {

  private static final String WORKED =
      "The cut list counts and measures pieces as they come off the saw. These are then jointed,"
          + " glued where they are strips, planed, and cut to their finished size. What is too"
          + " short for the jointer or planer, by its maker's word, is worked by hand.";

  private final CutPlan plan;
  private final Words words;

  private CutPacket(CutPlan plan) {
    this.plan = plan;
    this.words = new Words(plan.job());
  }

  /** The same plan gives the same packet. Every figure in it stands in the plan. */
  public static Packet compose(CutPlan plan) {
    return new Packet(new CutPacket(plan).booklet());
  }

  private Booklet booklet() {
    LayoutPages layouts =
        new LayoutPages(
            plan.materials(),
            (layout, number) -> LayoutCautions.of(plan.job(), layout, number),
            new SawCare(plan.job()),
            LayoutPages.Told.OF_PARTS,
            words);
    return new Booklet(
        plan.job().title(),
        "Cutting layouts",
        plan.job().title(),
        plan.job().revision(),
        warning(),
        words.paper(),
        Stream.of(Optional.of(first()), layouts.section()).flatMap(Optional::stream).toList());
  }

  private Optional<String> warning() {
    return plan.complete() ? Optional.empty() : Optional.of("NOT COMPLETE: parts have no place");
  }

  private Section first() {
    List<Block> blocks = new ArrayList<>();
    if (!plan.findings().isEmpty()) {
      List<Prose> texts = plan.findings().stream().map(Finding::what).map(Prose::plain).toList();
      blocks.add(new Block.Callout(Block.Sign.ERROR, "Parts without a place", texts));
    }
    blocks.add(new Block.Heading("Sheets and boards"));
    blocks.add(stock());
    if (!plan.yields().isEmpty()) {
      blocks.add(new Block.Heading("Yield of the boards"));
      blocks.add(yields());
    }
    blocks.add(new Block.Heading("Cut list"));
    blocks.add(parts());
    if (plan.wanted().stream().anyMatch(each -> !each.finished().isEmpty())) {
      blocks.add(new Block.Heading("Worked to size after cutting"));
      blocks.add(Block.Paragraph.of(WORKED));
      blocks.add(finished());
    }
    blocks.add(new Block.Heading("Settings in force"));
    blocks.add(settings());
    blocks.add(new Block.Heading("Cautions, each again at the layouts"));
    blocks.add(new Block.Bullets(plan.cautions().stream().map(FirstPages::prose).toList()));
    return new Section("What is cut from what", blocks);
  }

  private Table stock() {
    List<Table.Row> rows = new ArrayList<>();
    for (CutMaterial material : plan.materials()) {
      material.stock().forEach(use -> rows.add(row(material, use)));
    }
    plan.priceToBuy()
        .ifPresent(
            sum ->
                rows.add(
                    Table.sum(
                        "To be bought", "where it has a price", "", "", "", Money.text(sum))));
    return new Table(
        List.of(
            Table.left("Material"),
            Table.left("Size"),
            Table.right("Use"),
            Table.right("Buy"),
            Table.right("Each"),
            Table.right("Together")),
        rows);
  }

  private Table yields() {
    return new Table(
        List.of(
            Table.left("Material"),
            Table.right("Wood taken"),
            Table.right("In parts"),
            Table.right("Yield")),
        plan.yields().stream().map(this::row).toList());
  }

  private Table.Row row(Yield yield) {
    return Table.row(
        yield.material(),
        words.value(yield.taken()),
        words.value(yield.inParts()),
        words.value(yield.share()));
  }

  private static Table.Row row(CutMaterial material, StockUse use) {
    return Table.row(
        material.material(),
        use.size(),
        Long.toString(use.count()),
        Long.toString(use.buy()),
        use.each().map(Money::text).orElse(""),
        use.together().map(Money::text).orElse(""));
  }

  private Table parts() {
    List<Table.Row> rows = new ArrayList<>();
    for (Wanted wanted : plan.wanted()) {
      wanted.parts().forEach(part -> rows.add(row(wanted, part)));
    }
    return new Table(
        List.of(
            Table.left("Line and part"),
            Table.left("Material"),
            Table.right("Make"),
            Table.right("Spare"),
            Table.right("Length, " + words.unit()),
            Table.right("Width"),
            Table.left("Grain"),
            Table.left("Goes with")),
        rows);
  }

  private Table.Row row(Wanted wanted, Part part) {
    return Table.row(
        part.mark(),
        wanted.material(),
        Integer.toString(part.count()),
        Optional.ofNullable(wanted.spares().get(part.mark())).map(Object::toString).orElse(""),
        words.number(part.length()),
        words.number(part.width()),
        part.grain() == Grain.FIXED ? "length" : "any",
        Stream.concat(
                wanted.ties().matched(part.mark()).map(Matched::name).stream(),
                wanted.ties().together(part.mark()).map(Together::name).stream())
            .collect(Collectors.joining(", ")));
  }

  private Table finished() {
    List<Table.Row> rows = new ArrayList<>();
    for (Wanted wanted : plan.wanted()) {
      for (Part part : wanted.parts()) {
        Optional.ofNullable(wanted.finished().get(part.mark()))
            .ifPresent(finished -> rows.add(row(part, finished)));
      }
    }
    return new Table(
        List.of(
            Table.left("Line and part"),
            Table.left("Each from"),
            Table.right("Finished length, " + words.unit()),
            Table.right("Width"),
            Table.right("Thickness")),
        rows);
  }

  private Table.Row row(Part part, Finished finished) {
    int strips = finished.blank().strips();
    return Table.row(
        part.mark(),
        strips == 1 ? "one piece" : strips + " strips, glued edge to edge",
        words.number(finished.blank().length()),
        words.number(finished.blank().width()),
        finished.thickness().map(words::number).orElse(""));
  }

  private Table settings() {
    return new Table(
        List.of(
            Table.left("Setting"),
            Table.right("Value"),
            Table.left("What it is"),
            Table.left("From")),
        CutPlanner.SETTINGS.stream().map(this::row).toList());
  }

  private Table.Row row(Setting setting) {
    return Table.row(
        setting.key(),
        words.value(plan.job().settings(), setting),
        setting.meaning(),
        plan.job().settings().source(setting).text());
  }
}
