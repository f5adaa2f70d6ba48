package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A job file that leaves the pages, is edited elsewhere, and comes back. */
class JobFileTest {

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

  private static void width81(String job, String seen) {
    caller.post(job + "/put", "seen", seen, "field", "outside_width", "value", "81");
  }

  @Test
  void aFileGoesOutAndComesBackAsItWas() {
    String job = caller.bring(Caller.readingRoom());
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
    String edited = Caller.readingRoom().replace("bays: 3", "bays: 4 # one more");
    HttpResponse<String> answer = caller.upload(job + "/file", edited, "seen", caller.seen(job));
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(caller.file(job)).isEqualTo(edited);
  }

  @Test
  void aFileThatCannotBeReadChangesNothingAndIsAnsweredLineByLine() {
    String job = caller.bring(Caller.readingRoom());
    String bad =
        Caller.readingRoom().replace("bays: 3", "bays: many").replace("width: 80", "width: 9,5");
    HttpResponse<String> answer = caller.upload(job + "/file", bad, "seen", caller.seen(job));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("job file:50:14", "job file:57:11");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void aFileDoesNotUndoWhatOthersDidMeanwhile() {
    String job = caller.bring(Caller.readingRoom());
    String seen = caller.seen(job);
    width81(job, seen);
    HttpResponse<String> answer = caller.upload(job + "/file", Caller.readingRoom(), "seen", seen);
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(caller.file(job)).contains("width: 81");
  }

  /** The page was loaded anew in between, and so shows what the file does not hold. */
  @Test
  void aFileThatWasAwayDoesNotUndoWhatOthersDidMeanwhile() {
    String job = caller.bring(Caller.readingRoom());
    String away = caller.download(job).replace("bays: 3", "bays: 4");
    width81(job, caller.seen(job));
    HttpResponse<String> answer = caller.upload(job + "/file", away, "seen", caller.seen(job));
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("is change 1 of the job, which is at change 2 by now");
    assertThat(caller.file(job)).contains("width: 81", "bays: 3");
  }

  /** What the page showed when it was loaded does not matter: the file says what it was. */
  @Test
  void aFileThatLeftAfterAChangeComesBackToThePageFromBefore() {
    String job = caller.bring(Caller.readingRoom());
    String seen = caller.seen(job);
    width81(job, seen);
    String away = caller.download(job).replace("bays: 3", "bays: 4");
    assertThat(away).endsWith("leave this line in it.\n");
    assertThat(caller.upload(job + "/file", away, "seen", seen).statusCode()).isEqualTo(303);
    assertThat(caller.file(job))
        .isEqualTo(
            Caller.readingRoom().replace("width: 80", "width: 81").replace("bays: 3", "bays: 4"));
  }

  @Test
  void aFileThatLeftAnotherJobDoesNotReplaceThisOneUnasked() throws IOException {
    String job = caller.bring(Caller.readingRoom());
    String other =
        caller.download(
            caller.bring(Files.readString(Path.of("..", "examples", "tool-cupboard.yaml"))));
    HttpResponse<String> answer = caller.upload(job + "/file", other, "seen", caller.seen(job));
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("This file left another job");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
    String meant = Leaf.back(other).text();
    caller.upload(job + "/file", meant, "seen", caller.seen(job));
    assertThat(caller.file(job)).isEqualTo(meant);
  }

  /**
   * What editors and mail do to a file unasked: a mark of byte order, other line ends, none last.
   */
  static Stream<UnaryOperator<String>> unasked() {
    return Stream.of(
        away -> away,
        away -> "\uFEFF" + away,
        away -> away.replace("\n", "\r\n"),
        away -> "\uFEFF" + away.replace("\n", "\r\n"),
        String::stripTrailing);
  }

  @ParameterizedTest
  @MethodSource("unasked")
  void aFileThatSaysTheSameIsNoChange(UnaryOperator<String> unasked) {
    String job = caller.bring(Caller.readingRoom());
    String seen = caller.seen(job);
    String back = unasked.apply(caller.download(job));
    assertThat(caller.upload(job + "/file", back, "seen", seen).statusCode()).isEqualTo(303);
    assertThat(caller.seen(job)).isEqualTo(seen);
    String other = back.replace("bays: 3", "bays: 4");
    assertThat(caller.upload(job + "/file", other, "seen", seen).statusCode()).isEqualTo(303);
    assertThat(caller.seen(job)).isNotEqualTo(seen);
    assertThat(caller.file(job)).as("its line ends are kept").isEqualTo(Leaf.back(other).text());
  }
}
