package fourpin.shop.store.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.OnePostgres;
import fourpin.shop.store.PostgresServer;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Flyway is spared only where it would find nothing to do. */
@ExtendWith(OnePostgres.class)
class TablesTest {

  @TempDir Path folder;

  private DataSource inFile() {
    return Source.of(new DataPlace.InFile(folder.resolve("shop.db"))).forWriting();
  }

  @Test
  void areUpToDateOnceFlywayHasMadeThemInAFile() throws SQLException {
    areUpToDateOnceFlywayHasMadeThem(inFile());
  }

  @Test
  void areUpToDateOnceFlywayHasMadeThemOnAServer(PostgresServer server) throws SQLException {
    areUpToDateOnceFlywayHasMadeThem(Source.of(server.database()).forWriting());
  }

  private static void areUpToDateOnceFlywayHasMadeThem(DataSource source) throws SQLException {
    assertThat(Tables.areUpToDate(source)).isFalse();
    Tables.bringUpToDate(source);
    assertThat(Tables.areUpToDate(source)).isTrue();
  }

  /** What Flyway itself refuses is left to it to refuse, or to mend. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "update flyway_schema_history set checksum = checksum + 1 where installed_rank = 2",
        "update flyway_schema_history set success = false where installed_rank = 2",
        "update flyway_schema_history set script = 'V2__other.sql' where installed_rank = 2",
        "delete from flyway_schema_history where installed_rank = 1",
        "insert into flyway_schema_history select 3, '3', 'of a newer version', type, 'V3__newer.sql',"
            + " checksum, installed_by, installed_on, execution_time, success"
            + " from flyway_schema_history where installed_rank = 2"
      })
  void areNotUpToDateOnceTheNotesDiffer(String change) throws SQLException {
    DataSource source = inFile();
    Tables.bringUpToDate(source);
    Jdbi.create(source).useHandle(db -> db.execute(change));
    assertThat(Tables.areUpToDate(source)).isFalse();
  }

  @Test
  void ofANewerVersionAreRefusedAsEver() throws SQLException {
    DataSource source = inFile();
    Tables.bringUpToDate(source);
    Jdbi.create(source)
        .useHandle(
            db ->
                db.execute(
                    "insert into flyway_schema_history select 3, '3', 'newer', type, 'V3__newer.sql',"
                        + " checksum, installed_by, installed_on, execution_time, success"
                        + " from flyway_schema_history where installed_rank = 2"));
    assertThatThrownBy(() -> Tables.bringUpToDate(source)).isInstanceOf(FlywayException.class);
  }

  /** The scripts are listed, since a folder within a jar cannot be without Flyway. */
  @Test
  void areMadeByEveryScriptThatFlywayFinds() throws SQLException {
    DataSource source = inFile();
    Tables.bringUpToDate(source);
    assertThat(
            Jdbi.create(source)
                .<List<String>, RuntimeException>withHandle(
                    db ->
                        db.createQuery(
                                "select script from flyway_schema_history order by installed_rank")
                            .mapTo(String.class)
                            .list()))
        .isEqualTo(Tables.SCRIPTS);
  }
}
