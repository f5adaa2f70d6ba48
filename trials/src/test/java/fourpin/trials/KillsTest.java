package fourpin.trials;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.OnePostgres;
import fourpin.shop.store.PostgresServer;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A handful of what {@code trials/run store} does. */
@ExtendWith(OnePostgres.class)
class KillsTest {

  private static final int KILLS = 3;

  @TempDir private Path folder;

  @Test
  void nothingAcknowledgedIsLostInAFile() throws IOException {
    check(new DataPlace.InFile(folder.resolve("shop.db")), Kills.Crash.NONE);
  }

  @Test
  void nothingAcknowledgedIsLostOnAServerThatIsKilledToo(PostgresServer server) throws IOException {
    check(server.database(), server::crash);
  }

  private static void check(DataPlace place, Kills.Crash crash) throws IOException {
    Kills.Tally tally = new Kills(place, Savers.plain(), crash, KILLS).run(KILLS, 7);
    assertThat(tally.lost()).isEmpty();
    assertThat(tally.acknowledged()).isGreaterThan(KILLS);
  }
}
