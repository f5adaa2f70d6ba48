package fourpin.sheets.packet;

import fourpin.plan.MistakeReport;
import fourpin.plan.MistakeReport.Outcome;
import fourpin.plan.MistakeReport.Rescue;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Measure;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import fourpin.sheets.paint.Box;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What goes wrong with the first panel, how it shows, and what to do then: a page for each case.
 */
final class MistakePages {

  private static final String INTRODUCTION =
      "Bore or groove one panel, stop, and look at it with this page and a rule in hand: “1, not 2” is"
          + " what a rule says on a right panel, and with the mistake. Each was made on the virtual bench;"
          + " what stands here came of it. Holes are counted, and shelves' undersides measured, from"
          + " below. A mistake that is found now costs one panel, later all of them.";

  /** Above the first page stands the title of the section, and there are gaps between blocks. */
  private static final double ROUND = 20;

  private final List<MistakeReport> mistakes;
  private final Words words;

  MistakePages(List<MistakeReport> mistakes, Words words) {
    this.mistakes = List.copyOf(mistakes);
    this.words = words;
  }

  Optional<Section> section() {
    if (mistakes.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    Map<String, List<MistakeReport>> cases = new LinkedHashMap<>();
    mistakes.forEach(m -> cases.computeIfAbsent(m.caseName(), _ -> new ArrayList<>()).add(m));
    cases.forEach(
        (name, reports) -> {
          blocks.add(new Block.NewPage());
          blocks.addAll(page(name, reports));
        });
    return Optional.of(new Section("Before you drill the second panel", blocks));
  }

  /**
   * In the largest type in which all mistakes of a case stand on one page, or else the smallest
   * with its lines close together.
   */
  private List<Block> page(String name, List<MistakeReport> reports) {
    return Stream.of(Table.Lettering.values())
        .map(lettering -> page(name, reports, lettering))
        .filter(this::isOnePage)
        .findFirst()
        .orElseGet(() -> laidOut(name, close(reports)));
  }

  private boolean isOnePage(List<Block> page) {
    Box body = words.paper().body();
    return Measure.height(page, body.width()) <= body.height() - ROUND;
  }

  private static List<Block> page(
      String name, List<MistakeReport> reports, Table.Lettering lettering) {
    return laidOut(name, table(reports, lettering));
  }

  private static Block close(List<MistakeReport> reports) {
    return new Block.Columns(
        1, Block.Print.SMALL, List.of(table(reports, Table.Lettering.SMALLEST)));
  }

  private static List<Block> laidOut(String name, Block told) {
    return List.of(
        new Block.Heading(name),
        new Block.Columns(1, Block.Print.COMPACT, List.of(Block.Paragraph.of(INTRODUCTION))),
        told);
  }

  private static Table table(List<MistakeReport> reports, Table.Lettering lettering) {
    return new Table(
        List.of(
            Table.left("Mistake, and what is seen"),
            Table.left("Test on this panel, and in bold the rescue")),
        reports.stream().map(MistakePages::row).toList(),
        lettering);
  }

  private static Row row(MistakeReport report) {
    return new Row(
        Table.Kind.ITEM,
        List.of(
            Prose.bold(Words.sentence(report.mistake().title()) + ". ")
                .then(Prose.plain((report.what() + " " + report.shows()).strip())),
            Prose.plain(report.test() + " ")
                .then(Prose.bold(Words.sentence(words(report)) + ". "))
                .then(Prose.plain(report.how()))));
  }

  private static String words(MistakeReport report) {
    return report.outcome() instanceof Outcome.Impossible
        ? "cannot happen"
        : words(report.rescue());
  }

  private static String words(Rescue rescue) {
    return switch (rescue) {
      case NOT_NEEDED -> "nothing to save";
      case USE -> "use it";
      case OTHERS_ALIKE -> "bore all others alike";
      case BORE_AGAIN -> "bore or cut on";
      case PLUG -> "fill it";
      case SLEEVE -> "sleeve";
      case LOST -> "the panel is lost";
    };
  }
}
