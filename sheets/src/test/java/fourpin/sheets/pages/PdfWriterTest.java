package fourpin.sheets.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.SvgWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PdfWriterTest {

  private static final double POINTS_PER_MM = 72 / 25.4;

  private final byte[] pdf = PdfWriter.write(Samples.booklet(Paper.A4));

  @Test
  void sameBookletSameBytes() {
    assertThat(PdfWriter.write(Samples.booklet(Paper.A4))).isEqualTo(pdf);
  }

  @Test
  void aLocaleWithCommasChangesNothing() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(PdfWriter.write(Samples.booklet(Paper.A4))).isEqualTo(pdf);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void anotherRevisionIsAnotherFile() throws IOException {
    Booklet old = Samples.booklet(Paper.A4);
    Booklet next =
        new Booklet(
            old.title(),
            old.subtitle(),
            old.job(),
            "4",
            old.warning(),
            old.paper(),
            old.sections());
    byte[] other = PdfWriter.write(next);
    try (PDDocument one = Loader.loadPDF(pdf);
        PDDocument two = Loader.loadPDF(other)) {
      assertThat(one.getDocument().getDocumentID().getObject(0))
          .isNotEqualTo(two.getDocument().getDocumentID().getObject(0));
      assertThat(new PDFTextStripper().getText(two))
          .contains("revision 4")
          .doesNotContain("revision 3");
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void pagesAreOfThePaperAndNoneIsEmpty(Paper paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(Samples.booklet(paper)))) {
      assertThat(document.getNumberOfPages()).isGreaterThanOrEqualTo(6);
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        PDPage page = document.getPage(i);
        assertThat((double) page.getMediaBox().getWidth())
            .isCloseTo(paper.width() * POINTS_PER_MM, within(1e-3));
        assertThat((double) page.getMediaBox().getHeight())
            .isCloseTo(paper.height() * POINTS_PER_MM, within(1e-3));
        String foot = "page " + (i + 1) + " of " + document.getNumberOfPages();
        assertThat(text(document, i + 1).replace(foot, "").replaceAll("revision 3.*", "").strip())
            .hasSizeGreaterThan(40);
        assertThat(text(document, i + 1))
            .contains(foot, "revision 3", paper.label(), "Reading room <&> \"Harrow Mill\"");
      }
    }
  }

  @Test
  void everyFontIsEmbeddedAndOnlyAsFarAsUsed() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<PDFont> fonts = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          fonts.add(page.getResources().getFont(name));
        }
      }
      assertThat(fonts).isNotEmpty().allMatch(PDFont::isEmbedded);
      assertThat(fonts).allMatch(font -> font.getName().matches("[A-Z]{6}\\+.*"));
    }
    assertThat(pdf.length).isLessThan(200_000);
  }

  @Test
  void wordsComeOutInReadingOrder() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " "))
          .containsSubsequence(
              "Reading room bookcases",
              "31 ½ in wide and ¹⁵⁄₆₄ in thin",
              "What to know first",
              "⅝ and ½ as fractions; Ø 5 mm, 90°, ≈ 3 ×.",
              "• First. word word",
              "• Second.",
              "A CAUTION Keep both hands",
              "Again.",
              "Contents",
              "Drawings",
              "Panel A1",
              "A1 inside",
              "DRAWING, DO NOT MEASURE · scale 1:10",
              "Panel A1, seen from inside",
              "After the drawing.",
              "Cut list",
              "P1 Shelf of plywood 1 ¾ 11 ⅞ cut now",
              "P69 Shelf",
              "Sum 1234",
              "Steps",
              "1 Rip the sheet");
    }
  }

  @Test
  void headsOfTablesAreRepeated() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> pages = new ArrayList<>();
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        pages.add(text(document, i));
      }
      List<String> withRows = pages.stream().filter(p -> p.contains("Shelf of plywood")).toList();
      assertThat(withRows).hasSizeGreaterThanOrEqualTo(2);
      assertThat(withRows).allMatch(page -> page.contains("Mark Part"));
    }
  }

  @Test
  void contentsAndBookmarksLeadToTheSamePages() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> bookmarks =
          bookmarks(document, document.getDocumentCatalog().getDocumentOutline());
      assertThat(bookmarks)
          .containsExactly(
              "What to know first 1",
              "Contents 2",
              "Drawings 3",
              "Panel A1 3",
              "Cut list 4",
              "Steps " + document.getNumberOfPages());
      assertThat(text(document, 2).replaceAll("[ \\r\\n]+", " ")).contains(bookmarks);
      assertThat(document.getPage(1).getAnnotations()).hasSize(bookmarks.size());
    }
  }

  private static List<String> bookmarks(PDDocument document, PDOutlineNode parent)
      throws IOException {
    List<String> titles = new ArrayList<>();
    for (PDOutlineItem item : parent.children()) {
      int page = document.getPages().indexOf(item.findDestinationPage(document)) + 1;
      titles.add(item.getTitle() + " " + page);
      titles.addAll(bookmarks(document, item));
    }
    return titles;
  }

  @Test
  void holesLieWhereTheyAreDrawn() throws IOException {
    Drawing drawing = Samples.panel();
    Booklet booklet =
        new Booklet(
            "One panel",
            "",
            "job",
            "1",
            Optional.empty(),
            Paper.LETTER,
            List.of(new Booklet.Section("Panel", List.of(new Block.Figure(drawing, "")))));
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(booklet))) {
      Lines lines = Lines.on(document.getPage(0));
      List<Point> centres = lines.circles(Samples.HOLE_DIAMETER / 2 * drawing.scale().toPaper(1));
      assertThat(centres).hasSize(Samples.HOLES.size());
      Point first = centres.getFirst();
      for (int i = 0; i < centres.size(); i++) {
        Point hole = Samples.HOLES.get(i);
        Point onPaper =
            new Point(
                drawing.scale().toPaper(hole.x() - Samples.HOLES.getFirst().x()),
                drawing.scale().toPaper(hole.y() - Samples.HOLES.getFirst().y()));
        assertThat(centres.get(i).moved(-first.x(), -first.y()).distanceTo(onPaper))
            .isLessThan(0.001);
      }
    }
  }

  @Test
  void pagesAndSvgShowTheSameLines() throws IOException {
    Drawing drawing = Samples.panel();
    Booklet booklet = Samples.one(new Block.Figure(drawing, ""));
    List<Point> drawn = svgPoints(SvgWriter.write(drawing));
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(booklet))) {
      List<Point> printed =
          Lines.on(document.getPage(0)).strokes().stream()
              .filter(stroke -> stroke.curves() == 0)
              .flatMap(stroke -> stroke.points().stream())
              .limit(drawn.size())
              .toList();
      double dx = printed.getFirst().x() - drawn.getFirst().x();
      double dy = printed.getFirst().y() - drawn.getFirst().y();
      assertThat(printed).hasSameSizeAs(drawn).hasSizeGreaterThan(150);
      for (int i = 0; i < drawn.size(); i++) {
        assertThat(printed.get(i).distanceTo(drawn.get(i).moved(dx, dy))).isLessThan(0.005);
      }
    }
  }

  /** The points of all stroked paths, y up. */
  private static List<Point> svgPoints(String svg) {
    List<Point> points = new ArrayList<>();
    Matcher path = Pattern.compile("<path d=\"([^\"]*)\"[^>]* stroke=").matcher(svg);
    while (path.find()) {
      Matcher place = Pattern.compile("(-?[\\d.]+) (-?[\\d.]+)").matcher(path.group(1));
      while (place.find()) {
        points.add(
            new Point(Double.parseDouble(place.group(1)), -Double.parseDouble(place.group(2))));
      }
    }
    return points;
  }

  @Test
  void whatIsTooWideOrTooHighIsRefused() {
    Drawing wide =
        Drawing.toScale(
            "wide",
            "Wide",
            "A line.",
            Scale.FULL,
            List.of(Mark.Path.line(Point.ORIGIN, new Point(400, 0), Pen.EDGE)));
    Drawing high =
        Drawing.toScale(
            "high",
            "High",
            "A box.",
            Scale.FULL,
            List.of(Mark.Path.rectangle(new Box(0, 0, 90, 400), Pen.EDGE, Fill.NONE)));
    assertThatThrownBy(() -> PdfWriter.write(Samples.one(new Block.Figure(wide, ""))))
        .isInstanceOf(OverflowException.class)
        .hasMessageContaining("wide");
    assertThatThrownBy(() -> PdfWriter.write(Samples.one(new Block.Figure(high, ""))))
        .isInstanceOf(OverflowException.class)
        .hasMessageContaining("too high");
    Table table = new Table(Collections.nCopies(30, Table.left("x".repeat(30))), List.of());
    assertThatThrownBy(() -> PdfWriter.write(Samples.one(table)))
        .isInstanceOf(OverflowException.class)
        .hasMessageContaining("too wide");
  }

  @Test
  void allStaysInsideTheBody() {
    for (Paper paper : Paper.values()) {
      Box room = paper.body().with(paper.foot());
      for (Layout.Leaf leaf : Layout.of(Samples.booklet(paper)).leaves()) {
        List<Mark> marks = leaf.pieces().stream().flatMap(p -> p.marks().stream()).toList();
        assertThat(room.grown(0.5).contains(Mark.around(marks))).isTrue();
      }
    }
  }

  @Test
  void lettersThatTheFontLacksAreSeenToBeMissing() throws IOException {
    Booklet booklet = Samples.one(Block.Paragraph.of("書 and \ud83d\udcda stand here"));
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(booklet))) {
      assertThat(text(document, 1)).contains("? and ? stand here");
    }
  }

  @Test
  void whatBelongsTogetherIsNotTornFromItsHeading() throws IOException {
    Block filler = Block.Paragraph.of("filler ".repeat(700));
    Block pair =
        new Block.Together(
            List.of(
                new Block.Heading("Its heading"), new Block.Figure(Samples.panel(), "its figure")));
    Booklet booklet =
        new Booklet(
            "T",
            "",
            "job",
            "1",
            Optional.empty(),
            Paper.A4,
            List.of(new Booklet.Section("S", List.of(filler, pair, pair, pair))));
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(booklet))) {
      assertThat(document.getNumberOfPages()).isEqualTo(3);
      for (int page = 1; page <= 3; page++) {
        String text = text(document, page);
        assertThat(text.split("Its heading", -1)).hasSameSizeAs(text.split("its figure", -1));
      }
    }
  }

  @Test
  void aVeryLongWordInATableIsBroken() throws IOException {
    String word = "Z".repeat(200);
    Table table =
        new Table(
            Collections.nCopies(5, Table.left("x")),
            List.of(Table.row(word, word, "1", "2", word)));
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(Samples.one(table)))) {
      assertThat(new PDFTextStripper().getText(document).replaceAll("[^Z]", "")).hasSize(600);
    }
  }

  @Test
  void theFileShowsItsTitleAndPrintsUnscaled() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var catalog = document.getDocumentCatalog();
      assertThat(catalog.getLanguage()).isEqualTo("en");
      assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
      assertThat(catalog.getViewerPreferences().getPrintScaling()).isEqualTo("None");
      assertThat(catalog.getPageLabels().getLabelsByPageIndices()).startsWith("1", "2", "3");
      assertThat(document.getDocumentInformation().getTitle())
          .isEqualTo("Reading room bookcases, revision 3");
      assertThat(document.getDocumentInformation().getCreationDate()).isNull();
      assertThat(
              StreamSupport.stream(catalog.getStructureTreeRoot().getKids().spliterator(), false))
          .hasSize(1);
    }
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document);
  }
}
