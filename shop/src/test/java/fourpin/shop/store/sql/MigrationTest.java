package fourpin.shop.store.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.OnePostgres;
import fourpin.shop.store.PostgresServer;
import fourpin.shop.store.Revision;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What older versions have kept, brought to the present form. */
@ExtendWith(OnePostgres.class)
class MigrationTest {

  @TempDir Path folder;

  @Test
  void variantsOfTheFirstVersionKeepTheirNamesInAFile() {
    variantsKeepTheirNames(new DataPlace.InFile(folder.resolve("old.db")));
  }

  @Test
  void variantsOfTheFirstVersionKeepTheirNamesOnAServer(PostgresServer server) {
    variantsKeepTheirNames(server.database());
  }

  /** An undo of a variant has its reason too, and is none. */
  private static void variantsKeepTheirNames(DataPlace place) {
    DataSource source = Source.of(place).forWriting();
    Flyway.configure()
        .dataSource(source)
        .locations("classpath:fourpin/shop/store/sql")
        .target("1")
        .load()
        .migrate();
    Jdbi.create(source)
        .useTransaction(
            db -> {
              db.execute("insert into document values ('d', 'AT_HAND', 5)");
              String insert =
                  "insert into revision (id, document, number, kind, shows, made_on, name, body,"
                      + " saved_at, saved_by, why) values (?, 'd', ?, ?, ?, ?, 'Box', ?, 0, 'desk', ?)";
              db.execute(insert, "r1", 1, "EDIT", "r1", null, "one", "new");
              db.execute(insert, "r2", 2, "EDIT", "r2", "r1", "one", "Variant: in oak");
              db.execute(insert, "r3", 3, "UNDO", "r1", null, null, "Variant: in oak");
              db.execute(insert, "r4", 4, "EDIT", "r4", "r1", "two", "Variants: none");
              db.execute(insert, "r5", 5, "EDIT", "r5", "r4", "two", "Variant: it's ½");
            });
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      assertThat(store.documents().variants(new DocumentId("d")))
          .extracting(Revision::number, Revision::variant, Revision::why)
          .containsExactly(
              tuple(5L, Optional.of("it's ½"), "Variant: it's ½"),
              tuple(2L, Optional.of("in oak"), "Variant: in oak"));
    }
  }
}
