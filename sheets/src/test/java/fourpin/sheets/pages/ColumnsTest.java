package fourpin.sheets.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fourpin.sheets.pages.Booklet.Opening;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Mark;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnsTest {

  private static final double HIGHEST = 25;

  /** Lines end in the space before the next word. */
  private static final double A_SPACE = 1;

  @ParameterizedTest
  @CsvSource({"1, 3", "2, 3", "2, 40", "2, 400", "3, 90", "3, 700"})
  void linesKeepToTheirColumns(int count, int paragraphs) {
    for (Paper paper : Paper.values()) {
      Layout layout = Layout.of(booklet(paper, List.of(columns(count, paragraphs))));
      Box body = paper.body();
      double width = (body.width() + Columns.BETWEEN) / count;
      for (Layout.Leaf leaf : layout.leaves()) {
        for (Box box : boxes(leaf)) {
          int column = (int) ((box.left() - body.left() + 0.01) / width);
          double right = body.left() + (column + 1) * width - Columns.BETWEEN;
          assertThat(box.right()).isLessThan(right + A_SPACE);
          assertThat(box.bottom()).isGreaterThan(body.bottom() - 0.5);
        }
      }
    }
  }

  @Test
  void nothingIsLostOverPages() throws IOException {
    List<String> words = IntStream.range(0, 700).mapToObj(i -> "w" + i + "w").toList();
    Block columns =
        new Block.Columns(
            2, Block.Print.SMALL, words.stream().<Block>map(Block.Paragraph::of).toList());
    try (PDDocument document =
        Loader.loadPDF(PdfWriter.write(booklet(Paper.A4, List.of(columns))))) {
      assertThat(document.getNumberOfPages()).isGreaterThan(1);
      assertThat(new PDFTextStripper().getText(document)).containsSubsequence(words);
    }
  }

  /** What comes after columns stands below all of them, and they end about equally long. */
  @Test
  void columnsAreBalancedWhereTheyEnd() {
    Block below = Block.Paragraph.of("below");
    Layout layout = Layout.of(booklet(Paper.A4, List.of(columns(2, 21), below)));
    assertThat(layout.leaves()).hasSize(1);
    List<Box> boxes = boxes(layout.leaves().getFirst());
    double middle = Paper.A4.body().centre().x();
    Box last = boxes.getLast();
    List<Box> columns = boxes.subList(0, boxes.size() - 1);
    double left = lowest(columns.stream().filter(b -> b.right() < middle).toList());
    double right = lowest(columns.stream().filter(b -> b.left() > middle).toList());
    assertThat(last.top()).isLessThan(Math.min(left, right));
    assertThat(Math.abs(left - right)).isLessThan(HIGHEST);
  }

  /** A heading goes over the page with the first lines of the columns that it is for. */
  @Test
  void aHeadingIsNotTornFromItsColumns() throws IOException {
    for (int filled = 40; filled < 52; filled++) {
      List<Block> filler =
          IntStream.range(0, filled).<Block>mapToObj(i -> Block.Paragraph.of("filler")).toList();
      List<Block> blocks = new ArrayList<>(filler);
      blocks.add(new Block.Heading("Heading"));
      blocks.add(columns(2, 90));
      try (PDDocument document = Loader.loadPDF(PdfWriter.write(booklet(Paper.LETTER, blocks)))) {
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
          PDFTextStripper stripper = new PDFTextStripper();
          stripper.setStartPage(page);
          stripper.setEndPage(page);
          String text = stripper.getText(document);
          assertThat(text.contains("Heading") && !text.contains("paragraph"))
              .as("page %s after %s", page, filled)
              .isFalse();
        }
      }
    }
  }

  @Test
  void aSectionThatGoesOnSharesThePage() {
    Section first = new Section("First", List.of(Block.Paragraph.of("a")));
    Section next = new Section("Next", List.of(Block.Paragraph.of("b")));
    assertThat(pages(first, next)).containsExactly(1, 2);
    assertThat(pages(first, next.at("bench", Opening.GOES_ON))).containsExactly(1, 1);
  }

  @Test
  void columnsBeginNoPages() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Block.Columns(2, Block.Print.SMALL, List.of(new Block.NewPage())));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Block.Columns(0, Block.Print.SMALL, List.of()));
  }

  private static List<Integer> pages(Section... sections) {
    return Layout.of(
            new Booklet("T", "", "job", "1", Optional.empty(), Paper.A4, List.of(sections)))
        .pagesOfAnchors();
  }

  private static Block columns(int count, int paragraphs) {
    return new Block.Columns(
        count,
        Block.Print.COMPACT,
        IntStream.range(0, paragraphs)
            .<Block>mapToObj(i -> Block.Paragraph.of("paragraph " + "word ".repeat(1 + i % 23)))
            .toList());
  }

  private static Booklet booklet(Paper paper, List<Block> blocks) {
    return new Booklet(
        "T", "", "job", "1", Optional.empty(), paper, List.of(new Section("S", blocks)));
  }

  /** Of what is read, in reading order. */
  private static List<Box> boxes(Layout.Leaf leaf) {
    return leaf.pieces().stream()
        .filter(piece -> piece.tag().isPresent())
        .map(Piece::marks)
        .map(Mark::around)
        .toList();
  }

  private static double lowest(List<Box> boxes) {
    return boxes.stream().mapToDouble(Box::bottom).min().orElseThrow();
  }
}
