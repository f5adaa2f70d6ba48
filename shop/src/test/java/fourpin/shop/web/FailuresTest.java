package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.guard.Guard;
import fourpin.shop.web.guard.Limits;
import fourpin.shop.web.guard.Reach;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What visitors are told when the program itself fails. */
class FailuresTest {

  private static final String LOOK = "Open its page anew to see whether the last change was kept.";

  private final List<Throwable> details = new CopyOnWriteArrayList<>();

  @TempDir private Path folder;

  @Test
  void one_of_the_program_is_a_page_and_its_details_are_kept() {
    HttpResponse<String> answer = asked("/failure");
    assertThat(answer.statusCode()).isEqualTo(500);
    assertThat(answer.body())
        .startsWith("<!DOCTYPE html>")
        .contains("Fourpin itself failed (IllegalStateException)", LOOK)
        .doesNotContain("entrails");
    assertThat(details).singleElement().isInstanceOf(IllegalStateException.class);
  }

  /** As when memory runs out: an answer without words tells nobody what to do. */
  @Test
  void one_of_the_machine_has_words_and_its_details_are_kept() {
    HttpResponse<String> answer = asked("/error");
    assertThat(answer.statusCode()).isEqualTo(500);
    assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("text/plain");
    assertThat(answer.body())
        .startsWith("Fourpin itself failed (OutOfMemoryError).")
        .contains(LOOK)
        .doesNotContain("entrails");
    assertThat(details).singleElement().isInstanceOf(OutOfMemoryError.class);
  }

  /** As a job kept by a version that read more. The caller has nothing of a failure. */
  @Test
  void a_job_that_can_no_longer_be_read_is_told_line_by_line_and_handed_out() {
    String text = "job: Old\nunit: inch\nshelf-love: 3\n";
    DocumentId job = kept(text);
    try (Caller caller = Caller.at(folder)) {
      HttpResponse<String> page = caller.get("/jobs/" + job.value());
      assertThat(page.statusCode()).isEqualTo(422);
      assertThat(page.body())
          .contains("job:3:1", "shelf-love", "href=\"/jobs/" + job.value() + "/job.yaml\"");
      assertThat(caller.file("/jobs/" + job.value())).isEqualTo(text);
    }
  }

  @Test
  void the_shop_is_no_job() {
    try (Caller caller = Caller.at(folder)) {
      assertThat(caller.get("/jobs/shop").statusCode()).isEqualTo(404);
    }
  }

  private DocumentId kept(String text) {
    DataPlace place = new DataPlace.InFile(folder.resolve("shop.db"));
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      return store.documents().create(new Edit("Old", text, "desk", "new")).document();
    }
  }

  private HttpResponse<String> asked(String path) {
    DataPlace place = new DataPlace.InFile(folder.resolve("shop.db"));
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      Guard guard =
          new Guard(Reach::loopback, Limits.STANDARD, store.devices(), InstantSource.system());
      Javalin server =
          Javalin.create(
                  config -> {
                    config.startup.showJavalinBanner = false;
                    new Failures(details::add, new Pages(guard)).add(config);
                    config.routes.get("/failure", _ -> fails());
                    config.routes.get("/error", _ -> runsOut());
                  })
              .start("127.0.0.1", 0);
      try {
        return answer(URI.create("http://127.0.0.1:" + server.port() + path));
      } finally {
        server.stop();
      }
    }
  }

  private static void fails() {
    throw new IllegalStateException("entrails");
  }

  private static void runsOut() {
    throw new OutOfMemoryError("entrails");
  }

  private static HttpResponse<String> answer(URI where) {
    try (HttpClient client = HttpClient.newHttpClient()) {
      return client.send(
          HttpRequest.newBuilder(where).build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
