package fourpin.shop.store.backup;

import fourpin.shop.store.sql.RevisionRow;
import fourpin.shop.store.sql.Snapshot;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.time.LocalDateTime;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes backups. */
public final class BackupWriter {

  static final String FORMAT = "fourpin-store";
  static final int VERSION = 2;

  /** Not that of the clock: the same store gives the same bytes. */
  private static final LocalDateTime WRITTEN = LocalDateTime.of(1980, 1, 1, 0, 0);

  private static final JsonMapper JSON =
      JsonMapper.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

  private final ZipOutputStream zip;
  private final StringBuilder sums = new StringBuilder();

  private BackupWriter(ZipOutputStream zip) {
    this.zip = zip;
  }

  /**
   * Writes all of a store but its paired devices, as it stands at one moment. The file is there
   * whole or not at all, and replaces one of the same name.
   *
   * @throws IOException if it cannot be written
   */
  public static void write(SqlStore store, Path file) throws IOException {
    Path aside = Files.createTempFile(folder(file), file.getFileName().toString(), ".part");
    try {
      store.snapshot(
          snapshot -> {
            writeAside(snapshot, aside);
            return file;
          });
      Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    } finally {
      Files.deleteIfExists(aside);
    }
  }

  private static Path folder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  private static void writeAside(Snapshot snapshot, Path aside) {
    try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.WRITE);
        ZipOutputStream zip = new ZipOutputStream(Channels.newOutputStream(channel))) {
      new BackupWriter(zip).write(snapshot);
      zip.finish();
      channel.force(true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(Snapshot snapshot) throws IOException {
    entry(Names.ABOUT, out -> JSON.writeValue(out, new Lines.About(FORMAT, VERSION)));
    lines(Names.DOCUMENTS, snapshot.documents().map(Lines.OfDocument::of));
    lines(Names.REVISIONS, snapshot.revisions().map(Lines.OfRevision::of));
    lines(Names.TICKS, snapshot.ticks().map(Lines.OfTick::of));
    lines(Names.LAYOUTS, snapshot.layouts().map(Lines.OfLayout::of));
    lines(Names.RACK, snapshot.pieces().map(Lines.OfPiece::of));
    try (Stream<RevisionRow> revisions = snapshot.revisions()) {
      revisions.forEach(this::text);
    }
    String all = sums.toString();
    entry(Names.SUMS, out -> out.write(all.getBytes(StandardCharsets.UTF_8)));
  }

  private void text(RevisionRow row) {
    String name = Names.text(row.revision().document().value(), row.revision().number());
    row.body()
        .ifPresent(text -> entry(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8))));
  }

  private void lines(String name, Stream<?> rows) {
    try (rows) {
      entry(name, out -> rows.forEach(row -> line(out, row)));
    }
  }

  private static void line(OutputStream out, Object row) {
    try {
      JSON.writeValue(out, row);
      out.write('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void entry(String name, Content content) {
    try {
      ZipEntry entry = new ZipEntry(name);
      entry.setTimeLocal(WRITTEN);
      zip.putNextEntry(entry);
      DigestOutputStream counted = new DigestOutputStream(zip, Sums.digest());
      content.write(counted);
      zip.closeEntry();
      sums.append(Sums.line(name, counted.getMessageDigest()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private interface Content {
    void write(OutputStream out) throws IOException;
  }
}
