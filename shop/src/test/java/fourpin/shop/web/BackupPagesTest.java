package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backup and restore in the browser. */
class BackupPagesTest {

  @TempDir Path folder;

  private static void title(Caller caller, String job, String title) {
    caller.post(
        job + "/put",
        "seen",
        caller.seen(job),
        "case",
        "",
        "open",
        "JOB",
        "field",
        "job_title",
        "value",
        title);
  }

  private static String row(String page, String name) {
    return Caller.first(page, "(?s)<th scope=\"row\">" + name + "</th>(.*?)</tr>");
  }

  /** A page from before that is still open would else undo what others did since. */
  @Test
  void aPageOfWhatIsNoLongerKeptChangesNothing() throws IOException {
    try (Caller caller = Caller.at(folder)) {
      String job = caller.bring(Caller.readingRoom());
      byte[] backup = caller.bytes("/backup.zip");
      title(caller, job, "After");
      String old = caller.seen(job);
      String preview = caller.upload("/backup/look", backup).body();
      String upload = Caller.first(preview, "name=\"upload\" value=\"([^\"]*)\"");
      caller.submit("/backup/restore", "upload", upload);
      title(caller, job, "A colleague's");
      String[] change = {"seen", old, "case", "bookcase", "field", "outside_width", "value", "81"};
      HttpResponse<String> refused = caller.post(job + "/put", change);
      assertThat(refused.statusCode()).isEqualTo(410);
      assertThat(refused.headers().firstValue("Content-Type").orElse("")).startsWith("text/plain");
      assertThat(refused.body()).contains("Load the page anew");
      assertThat(caller.file(job)).contains("title: A colleague's").contains("width: 80");
      change[1] = "7";
      assertThat(caller.post(job + "/undo", change).statusCode()).isEqualTo(410);
    }
  }

  @Test
  void aBackupShowsWhatItWouldReplaceAndThenPutsEverythingBack() throws IOException {
    try (Caller caller = Caller.at(folder)) {
      String kept = caller.bring(Caller.readingRoom());
      String changed = caller.bring(Caller.readingRoom());
      title(caller, changed, "Before");
      title(caller, kept, "Kept");
      byte[] backup = caller.bytes("/backup.zip");
      title(caller, changed, "After");
      String added = caller.bring(Caller.readingRoom());
      title(caller, added, "Added");

      String preview = caller.upload("/backup/look", backup).body();
      assertThat(row(preview, "Kept")).contains("2 changes", "stays as it is");
      assertThat(row(preview, "Before")).contains("3 changes", "2 changes", "is replaced");
      assertThat(row(preview, "Added")).contains("goes, with all its changes", "not there");
      assertThat(caller.file(changed)).contains("title: After");

      String upload = Caller.first(preview, "name=\"upload\" value=\"([^\"]*)\"");
      HttpResponse<String> done = caller.submit("/backup/restore", "upload", upload);
      assertThat(done.body()).contains("The shop keeps now what the backup holds.");
      assertThat(caller.file(changed)).contains("title: Before");
      assertThat(caller.get(added).statusCode()).isEqualTo(404);
      assertThat(caller.bytes("/backup.zip")).isEqualTo(backup);
      assertThat(caller.submit("/backup/restore", "upload", upload).statusCode()).isEqualTo(422);
    }
  }

  /** It would go without ever having been shown. */
  @Test
  void whatCameAfterTheLookIsNotReplacedUntilItWasShownToo() throws IOException {
    try (Caller caller = Caller.at(folder)) {
      caller.bring(Caller.readingRoom());
      byte[] backup = caller.bytes("/backup.zip");
      String preview = caller.upload("/backup/look", backup).body();
      String upload = Caller.first(preview, "name=\"upload\" value=\"([^\"]*)\"");
      String added = caller.bring(Caller.readingRoom());
      title(caller, added, "Added since");

      HttpResponse<String> refused = caller.submit("/backup/restore", "upload", upload);
      assertThat(refused.statusCode()).isEqualTo(409);
      assertThat(refused.body())
          .contains("It was not put in place", "other things now than when you looked");
      assertThat(row(refused.body(), "Added since")).contains("goes, with all its changes");
      assertThat(caller.file(added)).contains("title: Added since");

      String again = Caller.first(refused.body(), "name=\"upload\" value=\"([^\"]*)\"");
      assertThat(caller.submit("/backup/restore", "upload", upload).statusCode()).isEqualTo(422);
      assertThat(caller.submit("/backup/restore", "upload", again).statusCode()).isEqualTo(200);
      assertThat(caller.get(added).statusCode()).isEqualTo(404);
    }
  }

  @Test
  void aDamagedBackupIsRefusedBeforeAnythingIsShown() throws IOException {
    try (Caller caller = Caller.at(folder)) {
      String job = caller.bring(Caller.readingRoom());
      byte[] backup = caller.bytes("/backup.zip");
      backup[backup.length / 2] ^= 1;
      HttpResponse<String> answer = caller.upload("/backup/look", backup);
      assertThat(answer.statusCode()).isEqualTo(422);
      assertThat(answer.body()).contains("cannot be used", "Nothing was changed.");
      assertThat(answer.body()).doesNotContain("name=\"upload\"");
      assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
    }
  }

  @Test
  void whatIsNoBackupIsSaidToBeNone() {
    try (Caller caller = Caller.at(folder)) {
      HttpResponse<String> answer =
          caller.upload("/backup/look", "no zip".getBytes(StandardCharsets.UTF_8));
      assertThat(answer.statusCode()).isEqualTo(422);
      assertThat(answer.body()).contains("it is damaged, or not a backup");
    }
  }

  /** Larger than any job file may be. */
  @Test
  void aBackupMayBeLargerThanAJob() {
    try (Caller caller = Caller.at(folder)) {
      byte[] filled = new byte[3 << 20];
      HttpResponse<String> answer = caller.upload("/backup/look", filled);
      assertThat(answer.statusCode()).isEqualTo(422);
      assertThat(caller.upload("/jobs", filled).statusCode()).isEqualTo(413);
    }
  }
}
