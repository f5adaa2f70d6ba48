package fourpin.trials;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Written;
import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.WebServer;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A little of what {@code trials/run web} does. */
class ChangerTest {

  private static final int CHANGES = 12;

  @TempDir private Path folder;

  @Test
  void everyChangeGivesANewJobAndAnAnswerWithItsTime() throws IOException, InterruptedException {
    DataPlace place = new DataPlace.InFile(folder.resolve("shop.db"));
    String example = Files.readString(Path.of("..", "examples", "reading-room.yaml"));
    try (SqlStore store = SqlStore.open(place, InstantSource.system());
        WebServer server = WebServer.start(store, Throwable::printStackTrace, 0)) {
      DocumentId job =
          store.documents().create(new Edit("Job", example, "trial", "begun")).document();
      URI page = URI.create("http://127.0.0.1:" + server.port() + "/jobs/" + job.value());
      Changer changer = new Changer(page);
      for (int i = 0; i < CHANGES; i++) {
        Changer.Took took = changer.change(i);
        assertThat(took.atServer()).isPositive().isLessThan(took.here());
      }
      Written newest = store.documents().newest(job).orElseThrow();
      assertThat(newest.revision().number()).isEqualTo(CHANGES + 1);
      assertThat(newest.text()).contains("width: 79 2/64", "material: oak-ply");
    }
  }
}
