package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fourpin.job.Job;
import fourpin.plan.Planner;
import fourpin.shop.edit.Change;
import fourpin.shop.edit.Edit;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.sql.SqlStore;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changes that are looked at and stopped while they are planned. */
class WorkTest {

  @TempDir Path folder;

  private SqlStore store;
  private Desk desk;
  private DocumentId job;

  @BeforeEach
  void bring() {
    store = SqlStore.open(new DataPlace.InFile(folder.resolve("shop.db")), InstantSource.system());
    desk = new Desk(store.documents(), store.layouts());
    Desk.Taking taken = desk.create(Caller.readingRoom(), "hall", "brought");
    job = ((Desk.Taking.Taken) taken).revision().document();
  }

  @AfterEach
  void close() {
    store.close();
  }

  private State newest() {
    return desk.newest(job).orElseThrow();
  }

  private Answer widen() {
    Route width = Route.of("cases", "bookcase", "outside", "width");
    Edit edit = Edit.on(newest().text(), width, new Change.Put(Value.of("78")));
    return desk.change(job, List.of(edit), "hall", "Width 78");
  }

  private void during(Work work, Runnable change) {
    ScopedValue.where(Work.NOW, work).run(change);
  }

  @Test
  void whatIsStoppedIsNotKept() {
    State before = newest();
    Work work = new Work();
    assertThat(work.stop()).isTrue();
    assertThatThrownBy(() -> during(work, this::widen)).isInstanceOf(Work.StoppedException.class);
    assertThat(newest().revision()).isEqualTo(before.revision());
  }

  @Test
  void whatIsKeptCannotBeStopped() {
    Work work = new Work();
    assertThat(work.words()).isEqualTo("Working it out.");
    assertThat(newest().revision().number()).isEqualTo(1);
    during(work, () -> assertThat(widen()).isInstanceOf(Answer.Saved.class));
    assertThat(work.stop()).isFalse();
    assertThat(newest().revision().number()).isEqualTo(2);
    assertThat(work.words()).as("sheets, backs and boards").contains("lot 3 of sheets");
  }

  @Test
  void itStopsBeforeTheNextLot() {
    Job job = newest().job();
    Work work = new Work();
    assertThatThrownBy(
            () ->
                during(
                    work,
                    () ->
                        Planner.plan(
                            job,
                            Work.watched(
                                _ -> {
                                  work.stop();
                                  return Optional.empty();
                                }))))
        .isInstanceOf(Work.StoppedException.class);
    assertThat(work.words()).contains("lot 1 of");
  }

  @Test
  void whoWaitsForNothingIsNotStopped() {
    assertThat(widen()).isInstanceOf(Answer.Saved.class);
  }
}
