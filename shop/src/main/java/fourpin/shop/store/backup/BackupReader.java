package fourpin.shop.store.backup;

import fourpin.shop.store.Revision;
import fourpin.shop.store.StoreException;
import fourpin.shop.store.sql.Intake;
import fourpin.shop.store.sql.RevisionRow;
import fourpin.shop.store.sql.SqlStore;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MappingIterator;
import tools.jackson.databind.json.JsonMapper;

/** Reads backups. */
public final class BackupReader implements AutoCloseable {

  /** Far above what a job file may have; a longer text is none of ours. */
  private static final int MOST_TEXT_BYTES = 16 << 20;

  private static final int FIRST_VERSION = 1;

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build();

  private final ZipFile zip;

  private BackupReader(ZipFile zip) {
    this.zip = zip;
  }

  /**
   * Puts all of a backup into a store, whole or not at all, after every byte of it was checked.
   *
   * @throws BackupException if the file is damaged, not a backup, or of a newer version
   * @throws StoreException if the store is not as it has to be before
   * @throws IOException if the file cannot be read
   */
  public static void restore(Path file, SqlStore store, SqlStore.Before before) throws IOException {
    try (BackupReader reader = new BackupReader(new ZipFile(file.toFile()))) {
      reader.check();
      store.takeIn(before, reader::read);
    } catch (ZipException | EOFException e) {
      throw new BackupException("it is damaged, or not a backup; use another", e);
    }
  }

  /**
   * Tells what a backup holds, after every byte of it was checked.
   *
   * @throws BackupException if the file is damaged, not a backup, or of a newer version
   * @throws IOException if the file cannot be read
   */
  public static Contents look(Path file) throws IOException {
    try (BackupReader reader = new BackupReader(new ZipFile(file.toFile()))) {
      reader.check();
      return reader.contents();
    } catch (ZipException | EOFException e) {
      throw new BackupException("it is damaged, or not a backup; use another", e);
    }
  }

  private Contents contents() {
    List<Revision> revisions = new ArrayList<>();
    revisions(line -> revisions.add(line.row(Optional.empty()).revision()));
    return new Contents(
        Contents.documents(revisions.stream()),
        count(Names.RACK, Lines.OfPiece.class),
        count(Names.TICKS, Lines.OfTick.class));
  }

  private void revisions(Consumer<Lines.OfRevision> sink) {
    if (isOld()) {
      lines(Names.REVISIONS, Lines.OfOldRevision.class, line -> sink.accept(line.now()));
    } else {
      lines(Names.REVISIONS, Lines.OfRevision.class, sink);
    }
  }

  /** Whether it is of the first version, which knew no layouts and no names of variants. */
  private boolean isOld() {
    List<Integer> versions = new ArrayList<>();
    lines(Names.ABOUT, Lines.About.class, about -> versions.add(about.version()));
    return versions.contains(FIRST_VERSION);
  }

  private long count(String name, Class<?> type) {
    LongAdder count = new LongAdder();
    lines(name, type, _ -> count.increment());
    return count.sum();
  }

  private void check() throws IOException {
    Map<String, String> sums = Sums.read(text(Names.SUMS));
    var names = zip.stream().map(ZipEntry::getName).filter(n -> !n.equals(Names.SUMS)).toList();
    if (!names.stream().sorted().toList().equals(sums.keySet().stream().sorted().toList())) {
      throw new BackupException("files are missing in it, or too many; use another backup");
    }
    for (Map.Entry<String, String> sum : sums.entrySet()) {
      checkSum(sum.getKey(), sum.getValue());
    }
    checkVersion();
  }

  private void checkSum(String name, String sum) throws IOException {
    try (DigestInputStream in = new DigestInputStream(open(name), Sums.digest())) {
      in.transferTo(OutputStream.nullOutputStream());
      if (!Sums.hex(in.getMessageDigest()).equals(sum)) {
        throw new BackupException("its " + name + " is damaged; use another backup");
      }
    }
  }

  private void checkVersion() {
    lines(
        Names.ABOUT,
        Lines.About.class,
        about -> {
          if (!about.format().equals(BackupWriter.FORMAT)) {
            throw new BackupException("it is a backup of something else");
          }
          if (about.version() < FIRST_VERSION || about.version() > BackupWriter.VERSION) {
            throw new BackupException(
                "a newer version of Fourpin made it; use the newest version to restore it");
          }
        });
  }

  private void read(Intake intake) {
    lines(Names.DOCUMENTS, Lines.OfDocument.class, line -> intake.put(line.row()));
    revisions(line -> intake.put(revision(line)));
    lines(Names.TICKS, Lines.OfTick.class, line -> intake.put(line.row()));
    if (!isOld()) {
      lines(Names.LAYOUTS, Lines.OfLayout.class, line -> intake.put(line.row()));
    }
    lines(Names.RACK, Lines.OfPiece.class, line -> intake.put(line.row()));
  }

  private RevisionRow revision(Lines.OfRevision line) {
    return line.row(
        line.hasText()
            ? Optional.of(text(Names.text(line.document(), line.number())))
            : Optional.empty());
  }

  private <T> void lines(String name, Class<T> type, Consumer<T> sink) {
    try (InputStream in = open(name);
        MappingIterator<T> rows = JSON.readerFor(type).readValues(in)) {
      rows.forEachRemaining(sink);
    } catch (JacksonException | IllegalArgumentException | IOException e) {
      throw new BackupException("its " + name + " holds what cannot be; use another backup", e);
    }
  }

  private String text(String name) {
    try (InputStream in = open(name)) {
      byte[] bytes = in.readNBytes(MOST_TEXT_BYTES + 1);
      if (bytes.length > MOST_TEXT_BYTES) {
        throw new BackupException("its " + name + " is too long; use another backup");
      }
      return new String(bytes, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new BackupException("its " + name + " is damaged; use another backup", e);
    }
  }

  private InputStream open(String name) throws IOException {
    ZipEntry entry = zip.getEntry(name);
    if (entry == null) {
      throw new BackupException("it has no " + name + ": it is damaged, or not a backup");
    }
    return zip.getInputStream(entry);
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
