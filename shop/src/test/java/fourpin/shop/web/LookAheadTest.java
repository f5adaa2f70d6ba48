package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job that was changed last is planned before it is asked for. */
class LookAheadTest {

  private static final String AT_HAND = "Working it out.";

  @TempDir Path folder;
  private SqlStore store;
  private Desk desk;

  @BeforeEach
  void open() {
    store = SqlStore.open(new DataPlace.InFile(folder.resolve("shop.db")), InstantSource.system());
    desk = new Desk(store.documents(), store.layouts());
  }

  @AfterEach
  void close() {
    store.close();
  }

  private DocumentId keep(String text) {
    return store.documents().create(new Edit("Shelf", text, "desk", "new")).document();
  }

  private static String example() throws IOException {
    return Files.readString(Path.of("..", "examples", "reading-room.yaml"));
  }

  /** What a page that waits for the job would be told last. */
  private String toldWhileOpening(DocumentId job) {
    Work work = new Work();
    assertThat(ScopedValue.where(Work.NOW, work).call(() -> desk.newest(job))).isPresent();
    return work.words();
  }

  @Test
  void theLatestJobIsAtHand() throws IOException {
    DocumentId former = keep(example() + "# former\n");
    DocumentId latest = keep(example());
    desk.lookAhead();
    assertThat(toldWhileOpening(latest)).isEqualTo(AT_HAND);
    assertThat(toldWhileOpening(former)).isNotEqualTo(AT_HAND);
  }

  @Test
  void aShopWithoutJobsIsNothingToLookAt() {
    assertThatCode(desk::lookAhead).doesNotThrowAnyException();
  }

  @Test
  void aJobThatCannotBeReadIsLeftToWhoAsksForIt() {
    keep("no job at all");
    assertThatCode(desk::lookAhead).doesNotThrowAnyException();
  }

  @Test
  void aStoreThatIsClosedMeanwhileIsNoFailure() throws IOException {
    keep(example());
    store.close();
    assertThatCode(desk::lookAhead).doesNotThrowAnyException();
  }
}
