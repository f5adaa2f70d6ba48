package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The history of a job, its variants, and going back. */
class HistoryTest {

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

  private static void width(String job, String width) {
    caller.post(
        job + "/put",
        "seen",
        caller.seen(job),
        "case",
        "bookcase",
        "field",
        "outside_width",
        "value",
        width);
  }

  /** The revisions of a job, the newest first. */
  private static List<String> revisions(String job) {
    return Caller.all(caller.get(job + "/history").body(), "name=\"revision\" value=\"([^\"]*)\"");
  }

  private static HttpResponse<String> back(String job, String seen, String revision) {
    return caller.submit(job + "/back", "seen", seen, "revision", revision);
  }

  @Test
  void itTellsWhoDidWhatAndLeadsBackToAnyState() {
    String job = caller.bring(Caller.readingRoom());
    width(job, "81");
    width(job, "82");
    String page = caller.get(job + "/history").body();
    assertThat(page).contains("Width 81", "Width 82", "brought in as a file", "this machine");
    assertThat(Caller.all(page, "<time datetime=\"([^\"]+)\"")).hasSize(3);
    String first = revisions(job).getLast();
    assertThat(back(job, caller.seen(job), first).statusCode()).isEqualTo(303);
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
    assertThat(caller.get(job + "/history").body())
        .contains("back to change 1: brought in as a file", "Width 82");
    caller.post(job + "/undo", "seen", caller.seen(job), "case", "");
    assertThat(caller.file(job)).contains("width: 82");
  }

  @Test
  void goingBackTakesNothingFromWhoWasFaster() {
    String job = caller.bring(Caller.readingRoom());
    String seen = caller.seen(job);
    width(job, "81");
    HttpResponse<String> answer = back(job, seen, seen);
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("has changed this job since");
    assertThat(caller.file(job)).contains("width: 81");
  }

  @Test
  void variantsStandSideBySideWithTheirDifferencesMarkedAndOneIsAdopted() {
    String job = caller.bring(Caller.readingRoom());
    caller.submit(job + "/variant", "seen", caller.seen(job), "name", "wide");
    width(job, "60");
    caller.submit(job + "/variant", "seen", caller.seen(job), "name", "narrow");
    String page = caller.get(job + "/history").body();
    List<String> variants = Caller.all(page, "name=\"with\" value=\"([^\"]*)\"");
    assertThat(variants).hasSize(2);
    String beside =
        caller.get(job + "/beside?with=" + variants.get(1) + "&with=" + variants.get(0)).body();
    assertThat(Caller.all(beside, "<section class=\"(side)\"")).hasSize(2);
    assertThat(beside)
        .contains(
            "<th scope=\"row\">cases · bookcase · outside · width</th>\n<td>80</td>\n"
                + "<td><mark>60</mark></td>")
        .containsPattern("Stock to buy</th>\n<td>\\$ [0-9.]+</td>\n<td><mark>")
        .doesNotContain("<td><mark>80");
    back(job, caller.seen(job), variants.get(1));
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "0123456789012345678901234567890123456789x"})
  void aVariantHasAName(String name) {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> answer =
        caller.submit(job + "/variant", "seen", caller.seen(job), "name", name);
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("1 to 40 characters");
  }

  @Test
  void aLongHistoryGoesOnOnAnotherPage() {
    String job = caller.bring(Caller.readingRoom());
    for (int i = 0; i < HistoryPage.MOST; i++) {
      caller.post(
          job + "/put",
          "seen",
          caller.seen(job),
          "case",
          "bookcase",
          "open",
          "JOB",
          "field",
          "job_revision",
          "value",
          "R" + i);
    }
    String page = caller.get(job + "/history").body();
    assertThat(page).contains("Revision R49").doesNotContain("brought in as a file");
    String older = Caller.first(page, "href=\"([^\"]*below=[^\"]*)\"");
    assertThat(caller.get(older).body()).contains("brought in as a file");
  }

  @Test
  void whatIsNoStateOfThisJobIsNotShown() {
    String job = caller.bring(Caller.readingRoom());
    String other = caller.seen(caller.bring(Caller.readingRoom()));
    assertThat(caller.get(job + "/beside?with=" + other).statusCode()).isEqualTo(404);
    assertThat(back(job, caller.seen(job), other).statusCode()).isEqualTo(404);
  }
}
