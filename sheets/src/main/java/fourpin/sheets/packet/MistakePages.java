package fourpin.sheets.packet;

import fourpin.plan.MistakeReport;
import fourpin.plan.MistakeReport.Rescue;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What goes wrong with the first panel, how it shows, and what to do then: a page for each case.
 */
final class MistakePages {

  private static final String INTRODUCTION =
      "Bore or groove one panel, stop, and look at it with this page in hand. Each mistake was made on the"
          + " virtual bench; what stands here is what came of it. A mistake that is found now costs"
          + " one panel, later all of them.";

  /** Find room on a page in the usual and in small type. */
  private static final int FEW_LETTERS = 3800;

  private static final int MANY_LETTERS = 5800;

  private final List<MistakeReport> mistakes;

  MistakePages(List<MistakeReport> mistakes) {
    this.mistakes = List.copyOf(mistakes);
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
          blocks.add(new Block.Heading(name));
          blocks.add(Block.Paragraph.of(INTRODUCTION));
          blocks.add(table(reports));
        });
    return Optional.of(new Section("Before you drill the second panel", blocks));
  }

  private static Table table(List<MistakeReport> reports) {
    List<Row> rows = reports.stream().map(MistakePages::row).toList();
    return new Table(
        List.of(Table.left("Mistake, and what is seen"), Table.left("Test"), Table.left("Rescue")),
        rows,
        lettering(rows));
  }

  /** So that all mistakes of a case stand on one page. */
  private static Table.Lettering lettering(List<Row> rows) {
    int letters =
        rows.stream().flatMap(r -> r.cells().stream()).mapToInt(c -> c.text().length()).sum();
    if (letters <= FEW_LETTERS) {
      return Table.Lettering.USUAL;
    }
    return letters <= MANY_LETTERS ? Table.Lettering.SMALL : Table.Lettering.SMALLEST;
  }

  private static Row row(MistakeReport report) {
    return new Row(
        Table.Kind.ITEM,
        List.of(
            Prose.bold(Words.sentence(report.mistake().title()) + ". ")
                .then(Prose.plain(report.what() + " " + report.shows())),
            Prose.plain(report.test()),
            Prose.bold(Words.sentence(words(report.rescue())) + ". ")
                .then(Prose.plain(report.how()))));
  }

  private static String words(Rescue rescue) {
    return switch (rescue) {
      case NOT_NEEDED -> "nothing to save";
      case USE -> "use it";
      case OTHERS_ALIKE -> "bore all others alike";
      case BORE_AGAIN -> "bore or cut what is missing";
      case PLUG -> "fill, then bore or cut again";
      case SLEEVE -> "sleeve";
      case LOST -> "the panel is lost";
    };
  }
}
