package fourpin.sheets.drawings;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Scale;
import java.util.ArrayList;
import java.util.List;

/**
 * A QR code (ISO/IEC 18004) with correction level M, since dust and scratches are at home in a
 * shop.
 */
public final class SquareCode {

  /** Of one of its small squares, in millimetres: ten dots of a printer of 600 to the inch. */
  private static final double MODULE = 0.42;

  /** Small squares that stay blank round it (ISO/IEC 18004). */
  private static final int QUIET = 4;

  private SquareCode() {}

  /**
   * @param name for files: small letters, digits and hyphens
   * @param title what it opens
   * @param address that it holds
   */
  public static Drawing of(String name, String title, String address) {
    ByteMatrix squares = squares(address);
    double size = (squares.getWidth() + 2 * QUIET) * MODULE;
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Area(new Box(0, 0, size, size).corners(), Fill.WHITE));
    for (int row = 0; row < squares.getHeight(); row++) {
      double top = size - (QUIET + row) * MODULE;
      for (int from = 0; from < squares.getWidth(); from++) {
        int to = from;
        while (to < squares.getWidth() && squares.get(to, row) == 1) {
          to++;
        }
        if (to > from) {
          marks.add(run(from, to, top));
          from = to;
        }
      }
    }
    return new Drawing(name, title, "A square code that holds " + address, Scale.FULL, marks);
  }

  private static ByteMatrix squares(String address) {
    try {
      return Encoder.encode(address, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("too long for a code: " + address, e);
    }
  }

  /** Dark squares from one number up to another along a row. */
  private static Mark run(int from, int to, double top) {
    Box box = new Box((QUIET + from) * MODULE, top - MODULE, (QUIET + to) * MODULE, top);
    return new Mark.Area(box.corners(), Fill.SOLID);
  }
}
