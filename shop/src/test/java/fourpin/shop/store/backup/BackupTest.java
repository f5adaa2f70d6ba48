package fourpin.shop.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents.Place;
import fourpin.shop.store.Edit;
import fourpin.shop.store.OnePostgres;
import fourpin.shop.store.PostgresServer;
import fourpin.shop.store.RandomStore;
import fourpin.shop.store.Revision;
import fourpin.shop.store.StoreException;
import fourpin.shop.store.TestClock;
import fourpin.shop.store.sql.SqlStore;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(OnePostgres.class)
class BackupTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  @TempDir private Path folder;

  private SqlStore inFile(String name) {
    return open(new DataPlace.InFile(folder.resolve(name)));
  }

  private static SqlStore open(DataPlace place) {
    return SqlStore.open(place, new TestClock(NOON));
  }

  private byte[] backup(SqlStore store) throws IOException {
    Path file = folder.resolve("backup.zip");
    BackupWriter.write(store, file);
    return Files.readAllBytes(file);
  }

  private void restore(byte[] backup, SqlStore store) throws IOException {
    BackupReader.restore(written(backup), store, SqlStore.Before.NOTHING);
  }

  private Path written(byte[] backup) throws IOException {
    return Files.write(folder.resolve("given.zip"), backup);
  }

  /** File to server and back: the same bytes each time, and the same answers. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void everythingComesBackAcrossDatabases(long seed, PostgresServer server) throws IOException {
    try (SqlStore first = inFile("first.db");
        SqlStore second = open(server.database());
        SqlStore third = inFile("third.db")) {
      new RandomStore(seed).fill(first);
      byte[] backup = backup(first);
      restore(backup, second);
      assertThat(backup(second)).isEqualTo(backup);
      restore(backup(second), third);
      assertThat(backup(third)).isEqualTo(backup);
      assertThat(answers(second)).isEqualTo(answers(first));
      assertThat(answers(third)).isEqualTo(answers(first));
    }
  }

  private static Map<String, Object> answers(SqlStore store) {
    return Map.of(
        "at hand", store.documents().jobs(Place.AT_HAND),
        "aside", store.documents().jobs(Place.ASIDE),
        "rack", store.rack().all(),
        "variants", ofJobs(store, store.documents()::variants),
        "layouts", ofJobs(store, store.layouts()::of),
        "ticks",
            store.documents().jobs(Place.AT_HAND).stream()
                .map(Revision::document)
                .flatMap(
                    job -> store.ticks().plans(job).stream().map(p -> store.ticks().of(job, p)))
                .toList());
  }

  private static <T> List<List<T>> ofJobs(SqlStore store, Function<DocumentId, List<T>> what) {
    return store.documents().jobs(Place.AT_HAND).stream()
        .map(Revision::document)
        .map(what)
        .toList();
  }

  /** The lines of the first version, as docs/backup.md had them. */
  @Test
  void aBackupOfTheFirstVersionIsTakenInWithItsVariants() throws IOException {
    String revision =
        "{\"document\":\"d\",\"number\":%d,\"id\":\"r%d\",\"kind\":\"edit\",\"shows\":\"r%d\",\"madeOn\":%s,"
            + "\"name\":\"Box\",\"when\":\"2026-03-04T12:00:00Z\",\"by\":\"desk\",\"why\":\"%s\"}\n";
    Map<String, String> files = new TreeMap<>();
    files.put("about.json", "{\"format\":\"fourpin-store\",\"version\":1}");
    files.put("documents.jsonl", "{\"id\":\"d\",\"place\":\"at-hand\",\"revisions\":2}\n");
    files.put(
        "revisions.jsonl",
        revision.formatted(1, 1, 1, "null", "new")
            + revision.formatted(2, 2, 2, "\"r1\"", "Variant: in oak"));
    files.put("ticks.jsonl", "");
    files.put("rack.jsonl", "");
    files.put("texts/d/000001.yaml", "one");
    files.put("texts/d/000002.yaml", "two");
    try (SqlStore store = inFile("old.db")) {
      restore(zip(files), store);
      assertThat(store.documents().variants(new DocumentId("d")))
          .singleElement()
          .satisfies(
              r -> {
                assertThat(r.variant()).contains("in oak");
                assertThat(r.number()).isEqualTo(2);
              });
    }
  }

  private static byte[] zip(Map<String, String> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      StringBuilder sums = new StringBuilder();
      for (Map.Entry<String, String> file : files.entrySet()) {
        MessageDigest digest = Sums.digest();
        digest.update(file.getValue().getBytes(StandardCharsets.UTF_8));
        sums.append(Sums.line(file.getKey(), digest));
        put(zip, file.getKey(), file.getValue());
      }
      put(zip, Names.SUMS, sums.toString());
    }
    return bytes.toByteArray();
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aBackupHoldsTheJobFilesAsTheyAre() throws IOException {
    try (SqlStore store = inFile("one.db")) {
      Revision job = store.documents().create(new Edit("Box", "job: ½ # kept\r\n", "desk", "new"));
      Path file = written(backup(store));
      try (var zip = java.nio.file.FileSystems.newFileSystem(file)) {
        assertThat(zip.getPath("texts", job.document().value(), "000001.yaml"))
            .content()
            .isEqualTo("job: ½ # kept\r\n");
        assertThat(zip.getPath("about.json"))
            .hasContent("{\"format\":\"fourpin-store\",\"version\":2}");
      }
    }
  }

  @Test
  void onlyAnEmptyStoreIsFilledUnlessTold() throws IOException {
    try (SqlStore from = inFile("from.db");
        SqlStore to = inFile("to.db")) {
      from.documents().create(new Edit("Box", "text", "desk", "new"));
      Revision kept = to.documents().create(new Edit("Shelf", "text", "desk", "new"));
      byte[] backup = backup(from);
      assertThatThrownBy(() -> restore(backup, to))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("--replace");
      assertThat(to.documents().jobs(Place.AT_HAND)).containsExactly(kept);
      BackupReader.restore(written(backup), to, SqlStore.Before.ANYTHING);
      assertThat(backup(to)).isEqualTo(backup);
    }
  }

  @Test
  void whatCameAfterTheLookIsNotReplaced(PostgresServer server) throws IOException {
    for (DataPlace place :
        List.of(new DataPlace.InFile(folder.resolve("to.db")), server.database())) {
      try (SqlStore to = open(place)) {
        byte[] backup = backup(to);
        Fingerprint seen = Contents.of(to).fingerprint();
        Revision since = to.documents().create(new Edit("Shelf", "text", "desk", "new"));
        assertThatThrownBy(() -> BackupReader.restore(written(backup), to, seen.unchanged()))
            .isInstanceOf(StoreException.class)
            .hasMessage("the shop keeps other things now than when you looked");
        assertThat(to.documents().jobs(Place.AT_HAND)).containsExactly(since);
        BackupReader.restore(written(backup), to, Contents.of(to).fingerprint().unchanged());
        assertThat(to.documents().jobs(Place.AT_HAND)).isEmpty();
      }
    }
  }

  /** Any change of any row is one. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aFingerprintTellsStatesApartAndTheSameStateFromNone(long seed) throws IOException {
    try (SqlStore from = inFile("from.db");
        SqlStore to = inFile("to.db")) {
      new RandomStore(seed).fill(from);
      Fingerprint before = Contents.of(from).fingerprint();
      restore(backup(from), to);
      assertThat(Contents.of(to).fingerprint()).isEqualTo(before);
      to.documents().create(new Edit("Shelf", "text", "desk", "new"));
      assertThat(Contents.of(to).fingerprint()).isNotEqualTo(before);
    }
  }

  /** Neither waits for the other, which might wait for ever. */
  @Test
  void whoIsSavingOnAServerIsNotCutOff(PostgresServer server) throws Exception {
    DataPlace.OnServer place = server.database();
    try (SqlStore to = open(place);
        Connection other =
            DriverManager.getConnection(place.url(), "fourpin", place.password().orElseThrow())) {
      byte[] backup = backup(to);
      other.setAutoCommit(false);
      other.createStatement().execute("delete from piece");
      assertThatThrownBy(() -> restore(backup, to))
          .isInstanceOf(StoreException.class)
          .hasMessage("others are saving just now; try again in a moment");
      other.rollback();
      restore(backup, to);
    }
  }

  /** Whatever byte is spoilt: the backup is refused, or what it holds came through whole. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aSpoiltBackupIsRefusedAndNothingIsTakenIn(long seed) throws IOException {
    Random random = new Random(seed);
    try (SqlStore from = inFile("from.db");
        SqlStore to = inFile("to.db")) {
      new RandomStore(seed).fill(from);
      from.documents().create(new Edit("Box", "text", "desk", "new"));
      byte[] good = backup(from);
      byte[] empty = backup(to);
      int refused = 0;
      for (int i = 0; i < 150; i++) {
        if (refuses(spoilt(good, random), to)) {
          refused++;
          assertThat(backup(to)).isEqualTo(empty);
        } else {
          assertThat(backup(to)).as("taken in whole").isEqualTo(good);
          BackupReader.restore(written(empty), to, SqlStore.Before.ANYTHING);
        }
      }
      assertThat(refused).as("most bytes matter").isGreaterThan(75);
    }
  }

  private boolean refuses(byte[] backup, SqlStore to) throws IOException {
    try {
      restore(backup, to);
      return false;
    } catch (BackupException e) {
      return true;
    }
  }

  private static byte[] spoilt(byte[] good, Random random) {
    int at = random.nextInt(good.length);
    if (random.nextInt(4) == 0) {
      return Arrays.copyOf(good, at);
    }
    byte[] bad = good.clone();
    bad[at] ^= (byte) (1 + random.nextInt(255));
    return bad;
  }

  @Test
  void aBackupThatCannotBeMadeLeavesTheFormerAndNoPart() throws IOException {
    SqlStore store = inFile("one.db");
    byte[] former = backup(store);
    Files.move(folder.resolve("one.db"), folder.resolve("moved.db"));
    Files.createDirectory(folder.resolve("one.db"));
    store.close();
    assertThatThrownBy(() -> backup(store)).isInstanceOf(StoreException.class);
    assertThat(folder.resolve("backup.zip")).hasBinaryContent(former);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).noneMatch(f -> f.toString().endsWith(".part"));
    }
  }
}
