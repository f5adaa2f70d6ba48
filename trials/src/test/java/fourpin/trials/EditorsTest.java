package fourpin.trials;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.OnePostgres;
import fourpin.shop.store.PostgresServer;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A little of what {@code trials/run editors} does. */
@ExtendWith(OnePostgres.class)
class EditorsTest {

  @TempDir private Path folder;

  @Test
  void noChangeIsLostInAFile() throws InterruptedException, ExecutionException {
    check(new DataPlace.InFile(folder.resolve("shop.db")));
  }

  @Test
  void noChangeIsLostOnAServer(PostgresServer server)
      throws InterruptedException, ExecutionException {
    check(server.database());
  }

  @Test
  void noChangeOnThePagesIsLost() throws IOException, InterruptedException, ExecutionException {
    String text = Files.readString(Path.of("..", "examples", "reading-room.yaml"));
    DataPlace place = new DataPlace.InFile(folder.resolve("pages.db"));
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      PageEditors.Tally tally =
          new PageEditors(store, text, 6, 2, 7, 0, changes -> changes < 4).run();
      assertThat(tally.wrong()).isEmpty();
      assertThat(tally.saved()).isEqualTo(24);
    }
  }

  private static void check(DataPlace place) throws InterruptedException, ExecutionException {
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      Editors.Tally tally = new Editors(store, 10, 3, 7, changes -> changes < 8).run();
      assertThat(tally.lost()).isEmpty();
      assertThat(tally.saved()).isEqualTo(80);
    }
  }
}
