package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A change that is stopped on its way leaves the job as it was, and what was typed where it is. */
class StopTest {

  private static final int MOST_TRIES = 50;

  @TempDir static Path folder;

  private static Caller caller;

  @BeforeAll
  static void start() {
    caller = Caller.at(folder);
  }

  @AfterAll
  static void stop() {
    caller.close();
  }

  /** Sends a change and says stop as long as it is not answered, until a stop was in time. */
  private static HttpResponse<String> stopped(String job, String path, String... form) {
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      String work = String.format(Locale.ROOT, "%032x", tries + 1);
      String[] all = new String[form.length + 4];
      System.arraycopy(form, 0, all, 4, form.length);
      all[0] = "work";
      all[1] = work;
      all[2] = "seen";
      all[3] = caller.seen(job);
      CompletableFuture<HttpResponse<String>> answer =
          CompletableFuture.supplyAsync(() -> caller.post(job + path, all));
      while (!answer.isDone()) {
        caller.post(job + "/stop", "work", work);
      }
      if (answer.join().body().contains("Stopped; nothing was changed.")) {
        return answer.join();
      }
      caller.post(job + "/undo", "seen", caller.seen(job));
    }
    throw new AssertionError("no stop was in time");
  }

  @Test
  void theFieldKeepsWhatWasTyped() {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> answer =
        stopped(
            job,
            "/put",
            "case",
            "bookcase",
            "open",
            "SIZES",
            "field",
            "outside_width",
            "value",
            "78");
    assertThat(answer.statusCode()).isEqualTo(409);
    String field = Caller.element(answer.body(), "form", "f-outside_width");
    assertThat(field).contains("value=\"78\"", "Stopped before it was kept", "Press Enter");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void theGroupThatWasToBeBegunKeepsWhatWasTyped() {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> answer =
        stopped(
            job,
            "/begin",
            "case",
            "bookcase",
            "open",
            "FRONT",
            "part",
            "face-frame",
            "b-stile",
            "1 3/4",
            "b-top-rail",
            "2",
            "b-bottom-rail",
            "3",
            "b-material",
            "oak");
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("value=\"1 3/4\"", "Stopped before it was kept");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }
}
