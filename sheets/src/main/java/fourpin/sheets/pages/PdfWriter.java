package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Mark;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.util.Matrix;

/**
 * A booklet as one tagged PDF: made for PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2), fonts
 * embedded, bookmarks, a reading order, no date and no chance in it, so that the same booklet gives
 * the same bytes.
 */
public final class PdfWriter {

  /** A point is 1/72 in (ISO 32000-1, 8.3.2.3). */
  private static final double POINTS_PER_MM = 72 / 25.4;

  private final Layout layout;
  private final PDDocument document;
  private final PdfFonts fonts;
  private final PdfTags tags;

  private PdfWriter(Layout layout, PDDocument document) {
    this.layout = layout;
    this.document = document;
    this.fonts = new PdfFonts(document);
    this.tags = new PdfTags(layout.root());
  }

  /**
   * @throws OverflowException if a block does not fit on a page
   */
  public static byte[] write(Booklet booklet) {
    Layout layout = Layout.of(booklet);
    try (PDDocument document = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      new PdfWriter(layout, document).write();
      document.setDocumentId(fingerprint(layout));
      document.save(out);
      return out.toByteArray();
    } catch (IOException problem) {
      throw new UncheckedIOException("The pages cannot be written", problem);
    }
  }

  /** How many pages the booklet takes. */
  public static int pages(Booklet booklet) {
    return Layout.of(booklet).leaves().size();
  }

  private void write() throws IOException {
    layout.leaves().forEach(leaf -> document.addPage(blankPage()));
    for (int i = 0; i < layout.leaves().size(); i++) {
      write(layout.leaves().get(i), document.getPage(i));
    }
    tags.close();
    new PdfFrame(document, layout.booklet()).build(tags.root(), places());
  }

  private PDPage blankPage() {
    Paper paper = layout.booklet().paper();
    PDPage page = new PDPage(points(new Box(0, 0, paper.width(), paper.height())));
    // The tab key follows the structure (ISO 14289-1, 7.18.3).
    page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    return page;
  }

  private void write(Layout.Leaf leaf, PDPage page) throws IOException {
    PdfTags.OfPage pageTags = tags.page(page);
    try (PDPageContentStream out = new PDPageContentStream(document, page)) {
      out.transform(Matrix.getScaleInstance((float) POINTS_PER_MM, (float) POINTS_PER_MM));
      PdfPainter painter = new PdfPainter(out, fonts);
      for (Piece piece : leaf.pieces()) {
        open(piece, pageTags, out);
        painter.paint(piece.marks());
        out.endMarkedContent();
      }
    }
    for (Piece piece : leaf.pieces()) {
      link(piece, pageTags, page);
    }
  }

  private void open(Piece piece, PdfTags.OfPage pageTags, PDPageContentStream out)
      throws IOException {
    if (piece.tag().isEmpty()) {
      out.beginMarkedContent(COSName.ARTIFACT);
      return;
    }
    Tag tag = piece.tag().get();
    out.beginMarkedContent(COSName.getPDFName(tag.role().type()), pageTags.next(tag));
    if (tag.role() == Tag.Role.FIGURE) {
      tags.place(tag, points(Mark.around(piece.marks())));
    }
  }

  private void link(Piece piece, PdfTags.OfPage pageTags, PDPage page) throws IOException {
    if (piece.tag().isEmpty() || piece.link().isEmpty()) {
      return;
    }
    PDAnnotationLink link = new PDAnnotationLink();
    link.setRectangle(points(Mark.around(piece.marks())));
    link.setContents(piece.tag().get().alternative().orElse(""));
    link.setPrinted(true);
    PDBorderStyleDictionary border = new PDBorderStyleDictionary();
    border.setWidth(0);
    link.setBorderStyle(border);
    PDActionGoTo go = new PDActionGoTo();
    go.setDestination(places().get(piece.link().get().target()).destination());
    link.setAction(go);
    link.setPage(page);
    page.getAnnotations().add(link);
    pageTags.link(piece.tag().get(), link);
  }

  /** Where the anchors lie, by their numbers. */
  private List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < layout.leaves().size(); i++) {
      for (Layout.Landed landed : layout.leaves().get(i).anchors()) {
        places.add(new Place(landed.anchor(), destination(document.getPage(i), landed.top())));
      }
    }
    return places;
  }

  /** An anchor and the way to it. */
  record Place(Strip.Anchor anchor, PDPageXYZDestination destination) {}

  private static PDPageXYZDestination destination(PDPage page, double top) {
    PDPageXYZDestination destination = new PDPageXYZDestination();
    destination.setPage(page);
    destination.setTop((int) Math.ceil(top * POINTS_PER_MM));
    return destination;
  }

  private static PDRectangle points(Box box) {
    return new PDRectangle(
        (float) (box.left() * POINTS_PER_MM),
        (float) (box.bottom() * POINTS_PER_MM),
        (float) (box.width() * POINTS_PER_MM),
        (float) (box.height() * POINTS_PER_MM));
  }

  /** A number that follows from all the words on the pages. */
  private static long fingerprint(Layout layout) {
    CRC32 sum = new CRC32();
    layout.leaves().stream()
        .flatMap(leaf -> leaf.pieces().stream())
        .flatMap(piece -> Mark.flattened(piece.marks()).stream())
        .flatMap(mark -> mark instanceof Mark.Text text ? Stream.of(text) : Stream.empty())
        .forEach(text -> sum.update(text.lettering().words().getBytes(StandardCharsets.UTF_8)));
    return sum.getValue();
  }
}
