package fourpin.shop.web;

import fourpin.shop.packet.PacketFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Several files as one. */
final class Zip {

  /** Not that of the clock: the same files give the same bytes. */
  private static final LocalDateTime WRITTEN = LocalDateTime.of(1980, 1, 1, 0, 0);

  private Zip() {}

  static byte[] of(List<PacketFile> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (PacketFile file : files) {
        ZipEntry entry = new ZipEntry(file.name());
        entry.setTimeLocal(WRITTEN);
        zip.putNextEntry(entry);
        file.content().writeTo(zip);
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
