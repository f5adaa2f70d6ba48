package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.Documents;
import fourpin.shop.store.Edit;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** The commands {@code backup} and {@code restore}, and where they look for the data. */
class BackupCommandTest {

  @TempDir private Path folder;

  private static String run(Object command, Object... args) {
    StringWriter told = new StringWriter();
    PrintWriter out = new PrintWriter(told);
    CommandLine line = new CommandLine(command).setOut(out).setErr(out);
    int code = line.execute(Stream.of(args).map(Object::toString).toArray(String[]::new));
    return code + "\n" + told;
  }

  private SqlStore store(String name) {
    return SqlStore.open(new DataPlace.InFile(folder.resolve(name)), InstantSource.system());
  }

  @Test
  void backsUpAndRestores() throws IOException {
    Path file = folder.resolve("backup.zip");
    Path from = folder.resolve("from.db");
    Path to = folder.resolve("to.db");
    try (SqlStore store = store("from.db")) {
      store.documents().create(new Edit("Box", "text", "desk", "new"));
    }
    assertThat(run(new BackupCommand(), file, "--data", from))
        .isEqualTo("0\nThe backup is in " + file + ".\n");
    assertThat(run(new BackupCommand(), file, "--data", from))
        .isEqualTo(
            "2\nfourpin: " + file + ": there is a file already; name another, or add --replace\n");
    assertThat(run(new BackupCommand(), file, "--data", from, "--replace")).startsWith("0\n");
    assertThat(run(new RestoreCommand(), file, "--data", to))
        .isEqualTo("0\nThe shop keeps now what " + file + " holds.\n");
    assertThat(run(new RestoreCommand(), file, "--data", to))
        .isEqualTo(
            "2\nfourpin: the shop keeps something already; name another place for its data, or add"
                + " --replace\n");
    assertThat(run(new RestoreCommand(), file, "--data", to, "--replace")).startsWith("0\n");
    try (SqlStore store = store("to.db")) {
      assertThat(store.documents().jobs(Documents.Place.AT_HAND)).hasSize(1);
    }
  }

  @Test
  void refusesWhatIsNoBackup() throws IOException {
    Path data = folder.resolve("to.db");
    Path text = Files.writeString(folder.resolve("job.yaml"), "job: Box\n");
    assertThat(run(new RestoreCommand(), text, "--data", data))
        .isEqualTo("2\nfourpin: " + text + ": it is damaged, or not a backup; use another\n");
    assertThat(run(new RestoreCommand(), folder.resolve("none.zip"), "--data", data))
        .contains("there is no such file; check its name and folder");
    assertThat(run(new BackupCommand(), folder, "--data", data))
        .isEqualTo("2\nfourpin: " + folder + ": it is a folder; name a file\n");
    assertThat(run(new BackupCommand(), folder.resolve("none/b.zip"), "--data", data))
        .contains("it cannot be written; check its folder and the room on the disk");
  }

  @Test
  void refusesDataThatCannotBeOpened() throws IOException {
    Path text = Files.writeString(folder.resolve("job.yaml"), "job: Box\n".repeat(200));
    assertThat(run(new BackupCommand(), folder.resolve("b.zip"), "--data", text))
        .startsWith("2\nfourpin: the data in " + text + " cannot be opened: ");
    assertThat(text).hasContent("job: Box\n".repeat(200));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          jdbc:postgresql://shop/fourpin?user=a&password=b | a password stands where everybody on the machine can read it; leave it out, and set the environment variable FOURPIN_DATA_PASSWORD
          jdbc:postgresql://a:b@shop/fourpin               | a password stands where everybody on the machine can read it; leave it out, and set the environment variable FOURPIN_DATA_PASSWORD
          jdbc:other:shop                                  | only PostgreSQL is known as a server; write jdbc:postgresql://host/database, or a file
          ' '                                              | it names no file; name the file that holds the data
          """)
  void refusesPlacesThatItDoesNotKnow(String place, String message) {
    assertThat(run(new BackupCommand(), folder.resolve("b.zip"), "--data", place))
        .isEqualTo("2\nfourpin: --data: " + message + "\n");
  }

  @Test
  void looksForTheDataWhereItIsTold() {
    assertThat(place(Map.of("FOURPIN_DATA", "/a/b.db", "XDG_DATA_HOME", "/x")))
        .isEqualTo(new DataPlace.InFile(Path.of("/a/b.db")));
    assertThat(place(Map.of("XDG_DATA_HOME", "/x")))
        .isEqualTo(new DataPlace.InFile(Path.of("/x/fourpin/shop.db")));
    assertThat(place(Map.of("XDG_DATA_HOME", "not/absolute")))
        .isEqualTo(
            new DataPlace.InFile(
                Path.of(System.getProperty("user.home"), ".local/share/fourpin/shop.db")));
  }

  private static DataPlace place(Map<String, String> environment) {
    return new DataOption().place(environment).orThrow();
  }
}
