package fourpin.sheets.packet;

import fourpin.sheets.pages.PdfWriter;

/** The packet as one PDF. */
public final class PdfPacket {

  private PdfPacket() {}

  /** The same packet gives the same bytes. */
  public static byte[] write(Packet packet) {
    return PdfWriter.write(packet.booklet());
  }
}
