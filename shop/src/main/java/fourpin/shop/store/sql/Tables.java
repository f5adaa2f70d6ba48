package fourpin.shop.store.sql;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.zip.CRC32;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** Our tables, and the scripts that bring those of an older version to the present form. */
final class Tables {

  /** In their order. */
  static final List<String> SCRIPTS = List.of("V1__first.sql", "V2__variants_and_layouts.sql");

  private static final String NOTED =
      "select script, checksum, success from flyway_schema_history order by installed_rank";

  /**
   * What Flyway notes of a script that was run.
   *
   * @param checksum of its lines, CRC-32
   */
  private record Note(String script, int checksum, boolean success) {}

  private Tables() {}

  /**
   * Brings them to the present form. Whether they have it stands in what Flyway noted, and is read
   * without Flyway, which takes longer than all else about opening a store; in any doubt it is
   * asked.
   *
   * @throws SQLException if the database cannot be reached
   * @throws org.flywaydb.core.api.FlywayException if it has the tables of a newer version
   */
  static void bringUpToDate(DataSource source) throws SQLException {
    if (!areUpToDate(source)) {
      Flyway.configure()
          .dataSource(source)
          .locations("classpath:fourpin/shop/store/sql")
          .ignoreMigrationPatterns(new String[0])
          .load()
          .migrate();
    }
  }

  static boolean areUpToDate(DataSource source) throws SQLException {
    try (Connection connection = source.getConnection()) {
      return noted(connection).equals(SCRIPTS.stream().map(Tables::done).toList());
    }
  }

  /** Nothing if there is no such table. */
  private static List<Note> noted(Connection connection) {
    List<Note> notes = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(NOTED)) {
      while (rows.next()) {
        notes.add(new Note(rows.getString(1), rows.getInt(2), rows.getBoolean(3)));
      }
      return notes;
    } catch (SQLException e) {
      return List.of();
    }
  }

  private static Note done(String script) {
    CRC32 checksum = new CRC32();
    try (var lines =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(Tables.class.getResourceAsStream(script)),
                StandardCharsets.UTF_8))) {
      lines.lines().forEach(line -> checksum.update(line.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Note(script, (int) checksum.getValue(), true);
  }
}
