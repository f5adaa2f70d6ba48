package fourpin.sheets.paint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The cuts of the one family that all outputs letter with; widths come from the font itself. */
public enum Typeface {
  REGULAR("IBMPlexSans-Regular.ttf", Family.NORMAL, Weight.REGULAR),
  BOLD("IBMPlexSans-SemiBold.ttf", Family.NORMAL, Weight.BOLD),
  /** For tables. */
  NARROW("IBMPlexSansCondensed-Regular.ttf", Family.NARROW, Weight.REGULAR),
  NARROW_BOLD("IBMPlexSansCondensed-SemiBold.ttf", Family.NARROW, Weight.BOLD);

  /** How wide the letters run. */
  public enum Family {
    NORMAL,
    NARROW
  }

  /** How heavy the letters are. */
  public enum Weight {
    REGULAR,
    BOLD
  }

  /**
   * Parts of the size, from the font's OS/2 table (capitals) and its tallest and deepest common
   * letters.
   */
  static final double CAPITALS = 0.698;

  static final double ASCENT = 0.80;
  static final double DESCENT = 0.22;

  /** Stands for a character that the font lacks. */
  private static final int MISSING = '?';

  private final String file;
  private final Family family;
  private final Weight weight;

  Typeface(String file, Family family, Weight weight) {
    this.file = file;
    this.family = family;
    this.weight = weight;
  }

  public Family family() {
    return family;
  }

  public Weight weight() {
    return weight;
  }

  /** The font file. */
  public InputStream open() {
    InputStream stream = Typeface.class.getResourceAsStream("/fourpin/sheets/fonts/" + file);
    if (stream == null) {
      throw new IllegalStateException("The font " + file + " is missing from the program");
    }
    return stream;
  }

  /**
   * The text with a question mark for each character that the font lacks, so that nothing vanishes
   * unseen.
   */
  public String shown(String text) {
    Measures measures = measures();
    return text.codePoints().allMatch(measures::has) ? text : replaced(text, measures);
  }

  private static String replaced(String text, Measures measures) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().forEach(c -> shown.appendCodePoint(measures.has(c) ? c : MISSING));
    return shown.toString();
  }

  /** Millimetres that the text runs at a size (height of the em) in millimetres. */
  public double width(String text, double size) {
    Measures measures = measures();
    double ems = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      ems += measures.advance(text.codePointAt(i));
    }
    return ems * size;
  }

  private Measures measures() {
    return Measures.LOADED.computeIfAbsent(this, Measures::read);
  }

  /**
   * Advances of the characters of the basic plane in ems, read from the font once; 0 for those that
   * it lacks.
   */
  private static final class Measures {

    private static final Map<Typeface, Measures> LOADED = new ConcurrentHashMap<>();
    private static final int BASIC_PLANE = 0x10000;

    private final float[] advances = new float[BASIC_PLANE];

    private Measures(TrueTypeFont font) throws IOException {
      CmapLookup glyphs = font.getUnicodeCmapLookup();
      for (int c = ' '; c < BASIC_PLANE; c++) {
        int glyph = glyphs.getGlyphId(c);
        advances[c] = glyph == 0 ? 0 : font.getAdvanceWidth(glyph) / (float) font.getUnitsPerEm();
      }
    }

    static Measures read(Typeface face) {
      try (InputStream stream = face.open();
          TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream))) {
        return new Measures(font);
      } catch (IOException problem) {
        throw new UncheckedIOException("The font " + face.file + " cannot be read", problem);
      }
    }

    boolean has(int character) {
      return character < BASIC_PLANE && advances[character] > 0;
    }

    double advance(int character) {
      return advances[has(character) ? character : MISSING];
    }
  }
}
