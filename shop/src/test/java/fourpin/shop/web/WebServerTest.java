package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.web.guard.Limits;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The guard stands before all pages, and every page can be had. */
class WebServerTest {

  private static final int SLOW = 100;

  /** A form of which only the first letter has come. */
  private static final String BEGUN =
      "POST /jobs HTTP/1.1\r\nHost: HERE\r\nOrigin: http://HERE\r\n"
          + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 900\r\n\r\nt";

  /** Less than the server waits for the rest of a form. */
  private static final Duration PATIENCE = Duration.ofSeconds(25);

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

  @ParameterizedTest
  @CsvSource({
    "/, 200",
    "/new, 200",
    "/own/desk.js, 200",
    "/own/htmx.js, 200",
    "/own/fourpin.css, 200",
    "/own/mark.svg, 200",
    "/own/other.js, 404",
    "/nowhere, 404",
    "/jobs/nothing, 404",
    "/jobs/nothing/packet.pdf, 404",
    "/jobs/nothing/working, 404",
  })
  void everyAnswerIsHardened(String path, int status) {
    HttpResponse<String> answer = caller.get(path);
    assertThat(answer.statusCode()).isEqualTo(status);
    String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
    assertThat(policy).contains("default-src 'none'", "frame-ancestors 'none'");
    assertThat(policy).doesNotContain("unsafe", "http", "*", "data:");
    assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    assertThat(answer.headers().firstValue("Server")).isEmpty();
  }

  @Test
  void anAssetThatTheBrowserHasIsNotSentAgain() {
    String tag = caller.get("/own/desk.js").headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> again =
        caller.send(caller.request("/own/desk.js").header("If-None-Match", tag));
    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(again.body()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"/new", "/jobs", "/jobs/x/put", "/jobs/x/undo", "/jobs/x/file"})
  void changesFromElsewhereAreRefused(String path) {
    var foreign = caller.posting(path, "title", "forged").header("Origin", "http://evil.example");
    assertThat(caller.send(foreign).statusCode()).isEqualTo(403);
    var unmarked =
        caller
            .request(path)
            .header("Origin", caller.origin())
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString("title=forged"));
    assertThat(caller.send(unmarked).statusCode()).isEqualTo(403);
    assertThat(caller.get("/").body()).doesNotContain("forged");
  }

  @Test
  void answersSayHowLongTheyTookButNotToStrangers() {
    assertThat(caller.get("/").headers().firstValue("Server-Timing"))
        .hasValueSatisfying(t -> assertThat(t).matches("answer;dur=\\d+\\.\\d\\d"));
    var foreign = caller.posting("/jobs", "title", "x").header("Origin", "http://evil.example");
    HttpResponse<String> refused = caller.send(foreign);
    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(refused.headers().firstValue("Server-Timing")).isEmpty();
  }

  @Test
  void tooLargeAFileIsRefused() {
    String text = "#".repeat((int) Limits.STANDARD.fileBytes());
    HttpResponse<String> refused = caller.upload("/jobs", text);
    assertThat(refused.statusCode()).isEqualTo(413);
    assertThat(refused.body()).contains("may have 1 MiB", "Nothing was changed.");
  }

  /** A line cut off would leave a browser without an answer. */
  @Test
  void aFileFarTooLargeIsReadToItsEndAndRefused() {
    byte[] packet = new byte[20 << 20];
    for (int i = 0; i < 3; i++) {
      assertThat(caller.upload("/jobs", packet).statusCode()).isEqualTo(413);
    }
  }

  @Test
  void theSurveyLeadsToACaseOnTheBoard() {
    HttpResponse<String> answer =
        caller.submit("/new", "title", "By the stove", "unit", "inch", "width", "7' 2 1/4\"");
    assertThat(answer.statusCode()).isEqualTo(303);
    String job = answer.headers().firstValue("Location").orElseThrow();
    assertThat(caller.get(job).body()).contains("<h1>By the stove</h1>", "<svg");
    assertThat(caller.file(job)).contains("room: {width: 7' 2 1/4\"}\n");
  }

  /** Bays as wide as the rule of thumb allows would sag here. */
  @Test
  void theSurveysCaseMayBeCutFromTheFirstMoment() {
    HttpResponse<String> answer =
        caller.submit(
            "/new", "unit", "mm", "width", "1450", "holds", "books, paperback", "wood", "MDF");
    String job = answer.headers().firstValue("Location").orElseThrow();
    assertThat(caller.get(job).body()).contains("class=\"verdict").doesNotContain("Do not cut");
  }

  @Test
  void whatCannotBeAnsweredIsSaidAtItsQuestionAndAllAnswersStay() {
    HttpResponse<String> answer =
        caller.submit("/new", "title", "Stove", "unit", "inch", "width", "9,5", "depth", "12");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("value=\"Stove\"", "value=\"9,5\"", "value=\"12\"", "a comma in a length");
  }

  /** A shop's devices, each with as many lines as a browser opens. */
  @Test
  void manyWhoAreServedSlowlyKeepNobodyFromBeingServed() throws IOException {
    String begun = BEGUN.replace("HERE", "127.0.0.1:" + caller.port());
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < SLOW; i++) {
        Socket line = new Socket(InetAddress.getLoopbackAddress(), caller.port());
        slow.add(line);
        line.getOutputStream().write(begun.getBytes(StandardCharsets.US_ASCII));
      }
      HttpResponse<String> answer = caller.send(caller.request("/").timeout(PATIENCE));
      assertThat(answer.statusCode()).isEqualTo(200);
    } finally {
      for (Socket line : slow) {
        line.close();
      }
    }
  }
}
