package fourpin.sheets.packet;

import fourpin.bench.Caution;
import fourpin.casework.BuiltCase;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.Picture;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Measure;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;

/** What it is, and what to know before anything is cut. */
final class FirstPages {

  private static final double PICTURE_HEIGHT = 75;

  /** Of the page's width, for the picture. */
  private static final double SHARE = 0.4;

  private static final double GAP = 5;

  private static final double MOST_BESIDE = 110;

  private static final Block FIGURES = new Block.Paragraph(Prose.bold("Figures of the whole job"));

  private final Plan plan;
  private final Words words;
  private final Findings findings;

  FirstPages(Plan plan, Words words, Findings findings) {
    this.plan = plan;
    this.words = words;
    this.findings = findings;
  }

  Section section() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(findings.verdict());
    if (!plan.cases().isEmpty()) {
      blocks.add(cases());
    }
    blocks.addAll(figures());
    blocks.addAll(cautions());
    blocks.add(new Block.Heading("What is in here, and which pages to take where"));
    blocks.add(new Block.Columns(2, Block.Print.SMALL, List.of(new Block.Contents())));
    return new Section("What it is, and what to know first", blocks);
  }

  /** Beside the picture, where they are no higher than it by much. */
  private List<Block> figures() {
    List<Block> told = List.of(FIGURES, totals());
    double width = (1 - SHARE) * (words.fullPage().width() - GAP);
    if (plan.cases().isEmpty()) {
      return told;
    }
    return Measure.height(told, width) > MOST_BESIDE
        ? List.of(picture(), FIGURES, totals())
        : List.of(new Block.Beside(List.of(picture()), SHARE, told));
  }

  private Block picture() {
    double width = SHARE * (words.fullPage().width() - GAP);
    return new Block.Figure(
        Picture.of(words.fullPage().wide(width).high(PICTURE_HEIGHT), "all", plan.cases()), "");
  }

  private Table cases() {
    return new Table(
        List.of(
            Table.left("Case"),
            Table.right("Make"),
            Table.left("Width x height x depth, " + words.unit()),
            Table.right("Bays"),
            Table.left("Of")),
        plan.cases().stream().map(this::row).toList());
  }

  private Table.Row row(BuiltCase built) {
    return Table.row(
        built.order().name(),
        Integer.toString(built.order().quantity()),
        words.outside(built),
        Integer.toString(built.bays().size()),
        built.order().material());
  }

  private Table totals() {
    return new Table(
        List.of(Table.left("Figure"), Table.right("Value"), Table.left("From")),
        plan.totals().stream()
            .map(f -> Table.row(f.title(), words.value(f), f.source().text()))
            .toList(),
        Table.Lettering.SMALL);
  }

  /** Each hazard of the work once; the same words stand again at the steps. */
  private List<Block> cautions() {
    List<Prose> texts =
        plan.steps().stream()
            .flatMap(step -> step.cautions().stream())
            .distinct()
            .map(FirstPages::prose)
            .toList();
    return texts.isEmpty()
        ? List.of()
        : List.of(
            new Block.Heading("Cautions, each again at its step"),
            new Block.Columns(2, Block.Print.SMALL, List.of(new Block.Bullets(texts))));
  }

  static Prose prose(Caution caution) {
    return Prose.bold(caution.hazard() + ": ").then(Prose.plain(caution.text()));
  }
}
