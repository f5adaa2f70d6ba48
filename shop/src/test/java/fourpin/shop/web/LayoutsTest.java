package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Job;
import fourpin.plan.CutPlanner;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.shop.edit.JobText;
import fourpin.shop.file.JobReader;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The longer search for layouts. */
class LayoutsTest {

  @TempDir Path folder;

  private static State state() throws IOException {
    Job job =
        switch (JobReader.read(Caller.readingRoom().getBytes(StandardCharsets.UTF_8))) {
          case JobReader.Outcome.Good(Job good) -> good;
          case JobReader.Outcome.Refused refused ->
              throw new IllegalStateException(refused.toString());
        };
    RevisionId id = new RevisionId("r");
    return new State(
        new Revision(
            id, new DocumentId("d"), 1, Revision.Kind.EDIT, id, "n", Instant.EPOCH, "b", "w"),
        JobText.of(Caller.readingRoom()),
        job,
        Planner.plan(job));
  }

  /** A clock that has gone on by an hour whenever it is asked: the time is over at once. */
  @Test
  void aSearchEndsWithItsTimeAndEveryPartHasAPlace() throws IOException {
    AtomicLong clock = new AtomicLong();
    State state = state();
    Search search =
        new Search(
            state, Duration.ofSeconds(10), () -> clock.addAndGet(Duration.ofHours(1).toNanos()));
    assertThat(search.isGoing()).isTrue();
    search.run();
    assertThat(search.progress())
        .isInstanceOfSatisfying(
            Search.Progress.Done.class,
            done -> {
              assertThat(done.plan().complete()).isTrue();
              assertThat(done.lots()).allMatch(lot -> lot.sheets() >= lot.fewest());
              assertThat(done.lots()).hasSize(lots(state.plan()));
            });
  }

  private static int lots(Plan plan) {
    return plan.materials().stream().mapToInt(m -> m.layouts().size()).sum();
  }

  /** The clock stands, so that nothing but the word ends it. */
  @Test
  void goodEnoughEndsIt() throws IOException {
    Search search = new Search(state(), Duration.ofDays(1), () -> 0L);
    search.enough();
    search.run();
    assertThat(search.progress()).isInstanceOf(Search.Progress.Done.class);
  }

  @Test
  void aPlanWantsWhatItsLayoutsHold() throws IOException {
    Plan plan = state().plan();
    assertThat(CutPlanner.wanted(plan).stream().map(w -> w.material()))
        .containsExactlyElementsOf(
            plan.materials().stream().map(m -> m.material().name()).toList());
  }

  @Test
  void aSearchIsBegunOnceEndedByAPressAndItsFilesComeOut() throws IOException {
    try (Caller caller = Caller.at(folder)) {
      String job = caller.bring(Caller.readingRoom());
      assertThat(caller.get(job + "/layouts.zip").statusCode()).isEqualTo(404);
      HttpResponse<String> begun = caller.submit(job + "/layouts", "seconds", "1800");
      assertThat(begun.statusCode()).isEqualTo(303);
      HttpResponse<String> ended = caller.submit(job + "/layouts/enough");
      assertThat(ended.statusCode()).isEqualTo(303);
      String page = caller.get(job + "/layouts").body();
      while (page.contains("every 2s")) {
        Thread.onSpinWait();
        page = caller.get(job + "/layouts").body();
      }
      assertThat(page).contains("The search is done.");
      assertThat(new String(caller.bytes(job + "/layouts.zip"), StandardCharsets.ISO_8859_1))
          .startsWith("PK")
          .contains("cutting.pdf");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "7", "99999", "x"})
  void itHasOneOfTheTimesOnThePage(String seconds) throws IOException {
    try (Caller caller = Caller.at(folder)) {
      String job = caller.bring(Caller.readingRoom());
      assertThat(caller.submit(job + "/layouts", "seconds", seconds).statusCode()).isEqualTo(404);
    }
  }
}
