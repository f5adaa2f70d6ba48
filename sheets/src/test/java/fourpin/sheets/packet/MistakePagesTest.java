package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Job;
import fourpin.measure.Unit;
import fourpin.plan.Mistake;
import fourpin.plan.MistakeReport;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.PdfWriter;
import fourpin.sheets.pages.Table;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * All mistakes of a case stand on one page, in the largest type in which they do, at last with
 * lines close together: here those of a guide that is as long as its rows.
 */
class MistakePagesTest {

  private static List<MistakeReport> reports(String caseName, int times) {
    String text = "The row stands nearer to the edge. ".repeat(times);
    return Stream.of(Mistake.values())
        .filter(m -> m != Mistake.PIN_IN_WRONG_HOLE)
        .map(
            m ->
                new MistakeReport(
                    m,
                    caseName,
                    "L",
                    new MistakeReport.Outcome.Harmless("it is"),
                    text,
                    text,
                    text,
                    MistakeReport.Rescue.PLUG,
                    text,
                    List.of()))
        .toList();
  }

  private static Section section(Job job, int times) {
    List<MistakeReport> both =
        Stream.concat(reports("one", times).stream(), reports("two", times).stream()).toList();
    return new MistakePages(both, new Words(job)).section().orElseThrow();
  }

  private static int pages(Job job, Section section) throws IOException {
    byte[] pdf =
        PdfWriter.write(
            new Booklet(
                job.title(),
                "Mistakes",
                job.title(),
                job.revision(),
                Optional.empty(),
                new Words(job).paper(),
                List.of(section)));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "INCH, 2, USUAL, false",
    "INCH, 3, SMALL, false",
    "INCH, 4, SMALL, false",
    "MILLIMETRE, 2, USUAL, false",
    "MILLIMETRE, 4, SMALL, false",
    "MILLIMETRE, 5, SMALLEST, false",
    "MILLIMETRE, 6, SMALLEST, true"
  })
  void mistakesOfACaseStandOnOnePage(
      Unit unit, int times, Table.Lettering lettering, boolean isClose) throws IOException {
    Job job = SampleJobs.job("Shelves", "case", unit, 1, "36");
    Section section = section(job, times);
    assertThat(
            section.blocks().stream()
                .flatMap(b -> b instanceof Block.Columns c ? c.blocks().stream() : Stream.of(b))
                .flatMap(b -> b instanceof Table t ? Stream.of(t.lettering()) : Stream.empty()))
        .containsOnly(lettering);
    assertThat(
            section.blocks().stream()
                .filter(b -> b instanceof Block.Columns c && c.print() == Block.Print.SMALL))
        .hasSize(isClose ? 2 : 0);
    // The title of the packet stands above the first page here, so that it has less room.
    assertThat(pages(job, section)).isEqualTo(2);
    assertThat(section.blocks()).hasAtLeastOneElementOfType(Block.NewPage.class);
  }
}
