package fourpin.sheets.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Blocks that are wider or higher than their room. */
class LongBlocksTest {

  @Test
  void aWordWiderThanThePageIsBrokenAndNothingIsLost() throws IOException {
    String word = "abcdefghij".repeat(30);
    try (PDDocument document =
        Loader.loadPDF(PdfWriter.write(Samples.one(Block.Paragraph.of("x " + word + " y"))))) {
      assertThat(new PDFTextStripper().getText(document).replaceAll("\\s", ""))
          .contains("x" + word + "y");
    }
  }

  @Test
  void whatIsHigherThanAPageGoesOnAndNothingIsLost() throws IOException {
    List<String> words = IntStream.range(0, 2000).mapToObj(i -> "w" + i + "w").toList();
    String text = String.join(" ", words);
    Table row = new Table(List.of(Table.left("A"), Table.left("B")), List.of(Table.row(text, "b")));
    Block.Callout callout = new Block.Callout(Block.Sign.NOTE, "Long", List.of(Prose.plain(text)));
    for (Block block : List.of(row, callout, Block.Paragraph.of(text))) {
      try (PDDocument document = Loader.loadPDF(PdfWriter.write(Samples.one(block)))) {
        assertThat(document.getNumberOfPages()).isGreaterThan(1);
        assertThat(new PDFTextStripper().getText(document)).containsSubsequence(words);
      }
    }
  }

  /** A caution is read as a whole: one that has no room in a frame begins the next. */
  @Test
  void aHighCalloutIsPartedBetweenItsTexts() throws IOException {
    List<Prose> texts =
        Stream.of("first ", "second ").map(word -> Prose.plain(word.repeat(240))).toList();
    Block.Callout callout = new Block.Callout(Block.Sign.CAUTION, "Mind", texts);
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(Samples.one(callout)))) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text.split("Mind", -1)).hasSize(3);
      assertThat(text.split("Mind", -1)[1]).contains("first").doesNotContain("second");
      assertThat(text.split("Mind", -1)[2]).contains("second").doesNotContain("first");
    }
  }
}
