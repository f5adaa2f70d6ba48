package fourpin.sheets.pages;

import fourpin.sheets.paint.Typeface;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one document, embedded as far as their letters are used. */
final class PdfFonts {

  private final PDDocument document;
  private final Map<Typeface, PDFont> fonts = new EnumMap<>(Typeface.class);

  PdfFonts(PDDocument document) {
    this.document = document;
  }

  PDFont font(Typeface face) throws IOException {
    PDFont known = fonts.get(face);
    if (known != null) {
      return known;
    }
    PDFont loaded = load(face);
    fonts.put(face, loaded);
    return loaded;
  }

  private PDFont load(Typeface face) throws IOException {
    try (InputStream stream = face.open()) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
      // Ligatures would change widths that layout has already measured letter by letter.
      font.setEnableGsub(false);
      return PDType0Font.load(document, font, true);
    }
  }
}
