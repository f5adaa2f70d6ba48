package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A case changed on its page. */
class DesignTest {

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

  private static String example(String name) {
    try {
      return Files.readString(Path.of("..", "examples", name));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String readingRoom() {
    return example("reading-room.yaml");
  }

  private HttpResponse<String> put(String job, String seen, String field, String value) {
    return caller.post(
        job + "/put",
        "seen",
        seen,
        "case",
        "bookcase",
        "open",
        drawer(field),
        "field",
        field,
        "value",
        value);
  }

  /** Where a field lies. */
  private static String drawer(String field) {
    return switch (field.split("_")[0]) {
      case "settings" -> "HABITS";
      case "supports" -> "SHELVES";
      default -> "SIZES";
    };
  }

  @Test
  void aFieldChangesItsLineOfTheFileAndNothingElse() {
    String job = caller.bring(readingRoom());
    HttpResponse<String> answer = put(job, caller.seen(job), "outside_width", "6' 7 1/2\"");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("Width is changed.").containsPattern(">79\\W½</text>");
    assertThat(caller.file(job)).isEqualTo(readingRoom().replace("width: 80", "width: 6' 7 1/2\""));
  }

  @ParameterizedTest
  @CsvSource({
    "outside_width, '9,5', a comma in a length",
    "outside_width, '', it can't be left empty",
    "bays, 13, whole number",
    "bay-2-holds, bricks, do not list it",
    "bay-2-at, '40 1/2, 12', not above the one before",
    "settings_pitch, 3 ft, from 8 mm to 200 mm",
    "supports_pins_diameter, <b>, not a length",
  })
  void whatCannotBeIsSaidAtTheFieldAndKept(String field, String typed, String rule) {
    String job = caller.bring(readingRoom());
    String seen = caller.seen(job);
    HttpResponse<String> answer = put(job, seen, field, typed);
    assertThat(answer.statusCode()).isEqualTo(422);
    String form = Caller.element(answer.body(), "form", "f-" + field);
    assertThat(form).contains("wrong").containsIgnoringCase(rule);
    assertThat(form).contains(typed.replace("<", "&lt;"));
    assertThat(caller.file(job)).isEqualTo(readingRoom());
    assertThat(caller.seen(job)).isEqualTo(seen);
  }

  @Test
  void aFieldLeftEmptyGoesBackToWhatIsUsual() {
    String job = caller.bring(readingRoom());
    put(job, caller.seen(job), "settings_end-play", "");
    assertThat(caller.file(job)).isEqualTo(readingRoom().replace("      end-play: 1/8\n", ""));
  }

  @Test
  void withoutScriptsTheWholePageComes() {
    String job = caller.bring(readingRoom());
    String[] form = {
      "seen", caller.seen(job), "case", "bookcase", "field", "outside_width", "value", "81"
    };
    HttpResponse<String> good = caller.submit(job + "/put", form);
    assertThat(good.statusCode()).isEqualTo(303);
    form[1] = caller.seen(job);
    form[7] = "x";
    HttpResponse<String> bad = caller.submit(job + "/put", form);
    assertThat(bad.statusCode()).isEqualTo(422);
    assertThat(bad.body()).startsWith("<!DOCTYPE html>").contains("value=\"x\"");
  }

  @Test
  void changesAreTakenBackAndBroughtBackStepByStep() {
    String job = caller.bring(readingRoom());
    put(job, caller.seen(job), "outside_width", "81");
    put(job, caller.seen(job), "outside_height", "80");
    String last = caller.file(job);
    caller.post(job + "/undo", "seen", caller.seen(job), "case", "");
    assertThat(caller.file(job)).isEqualTo(readingRoom().replace("width: 80", "width: 81"));
    caller.post(job + "/undo", "seen", caller.seen(job), "case", "");
    assertThat(caller.file(job)).isEqualTo(readingRoom());
    HttpResponse<String> end = caller.post(job + "/undo", "seen", caller.seen(job), "case", "");
    assertThat(end.statusCode()).isEqualTo(409);
    assertThat(end.body()).contains("nothing to take back");
    caller.post(job + "/redo", "seen", caller.seen(job), "case", "");
    caller.post(job + "/redo", "seen", caller.seen(job), "case", "");
    assertThat(caller.file(job)).isEqualTo(last);
  }

  @Test
  void twoPeopleOnDifferentFieldsBothHaveTheirWay() {
    String job = caller.bring(readingRoom());
    String seen = caller.seen(job);
    put(job, seen, "outside_width", "81");
    HttpResponse<String> second = put(job, seen, "outside_height", "80");
    assertThat(second.statusCode()).isEqualTo(200);
    assertThat(Caller.element(second.body(), "form", "f-outside_width")).contains("value=\"81\"");
    assertThat(caller.file(job))
        .isEqualTo(
            readingRoom().replace("width: 80", "width: 81").replace("height: 84", "height: 80"));
  }

  @Test
  void twoPeopleOnOneFieldAreTold() {
    String job = caller.bring(readingRoom());
    String seen = caller.seen(job);
    put(job, seen, "outside_width", "81");
    HttpResponse<String> second = put(job, seen, "outside_width", "82");
    assertThat(second.statusCode()).isEqualTo(409);
    assertThat(Caller.element(second.body(), "form", "f-outside_width"))
        .contains("value=\"82\"", "has changed it to 81 since you looked");
    assertThat(caller.file(job)).contains("width: 81");
  }

  @Test
  void aShelfIsMovedToAnotherLevelOfItsBayOnly() {
    String job = caller.bring(readingRoom());
    HttpResponse<String> answer =
        caller.post(
            job + "/move",
            "seen",
            caller.seen(job),
            "case",
            "bookcase",
            "bay",
            "2",
            "shelf",
            "1",
            "level",
            "3");
    assertThat(answer.statusCode()).isEqualTo(200);
    String handle = Caller.element(answer.body(), "g", "shelf-2-1");
    assertThat(handle).contains("aria-valuenow=\"3\"");
    String file = caller.file(job);
    assertThat(file).contains("    bays:\n      - {}\n      - shelves:\n          at: [");
    assertThat(file).contains("    fixed-shelves: 40\n");
    String other = Caller.element(caller.get(job).body(), "g", "shelf-1-1");
    assertThat(other).doesNotContain("aria-valuenow=\"3\"");
  }

  @ParameterizedTest
  @CsvSource({"2, 1, 0", "2, 1, 999", "2, 9, 3", "9, 1, 3", "x, 1, 3"})
  void whatIsNoShelfOrLevelIsNotMoved(String bay, String shelf, String level) {
    String job = caller.bring(readingRoom());
    HttpResponse<String> answer =
        caller.post(
            job + "/move",
            "seen",
            caller.seen(job),
            "case",
            "bookcase",
            "bay",
            bay,
            "shelf",
            shelf,
            "level",
            level);
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(caller.file(job)).isEqualTo(readingRoom());
  }

  /** 25 3/8 in clear, less a partition of 31/32 in, in halves: finer than what is printed. */
  @Test
  void aBayIsDividedAndTheOthersStayAsTheyAre() {
    String job = caller.bring(readingRoom());
    caller.post(job + "/divide", "seen", caller.seen(job), "case", "bookcase", "bay", "2");
    assertThat(caller.file(job))
        .isEqualTo(
            readingRoom()
                .replace(
                    "bays: 3\n",
                    "bays:\n      - {}\n      - {width: 12 13/64 in}\n      - {width: 12 13/64 in}\n      - {}\n"));
    assertThat(
            Caller.all(
                caller.get(job).body(), "id=\"v-bay-[14]-width\"[^>]*placeholder=\"([^\"]*)\""))
        .containsOnly("25 3/8");
    caller.post(job + "/join", "seen", caller.seen(job), "case", "bookcase", "bay", "2");
    assertThat(caller.file(job)).isEqualTo(readingRoom());
  }

  /** What is of the place in the row stays there. */
  @Test
  void baysChangePlacesWithAllThatTheyStateButTheOffsetOfTheirRows() {
    String listed =
        readingRoom()
            .replace(
                "bays: 3\n",
                "bays:\n      - {width: 20, holds: linen}\n      - {rows-back: 1/2}\n      - {} # by the door\n");
    String job = caller.bring(listed);
    caller.post(job + "/swap", "seen", caller.seen(job), "case", "bookcase", "bay", "1");
    assertThat(caller.file(job))
        .isEqualTo(
            listed
                .replace("- {rows-back: 1/2}", "- TWO")
                .replace("- {width: 20, holds: linen}", "- {}")
                .replace("- TWO", "- {width: 20, holds: linen, rows-back: 1/2}"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "3", "x"})
  void aBayWithoutANextChangesNoPlaces(String bay) {
    String job = caller.bring(readingRoom());
    caller.post(job + "/swap", "seen", caller.seen(job), "case", "bookcase", "bay", bay);
    assertThat(caller.file(job)).isEqualTo(readingRoom());
  }

  @Test
  void baysThatAreAlikeChangeNoPlacesAndThatIsSaid() {
    String job = caller.bring(readingRoom());
    String seen = caller.seen(job);
    assertThat(caller.post(job + "/swap", "seen", seen, "case", "bookcase", "bay", "1").body())
        .contains("Bays 1 and 2 are alike.");
    assertThat(caller.seen(job)).isEqualTo(seen);
  }

  /** Sixteen random bytes, as the page calls the work that it waits for. */
  private static final String WORK = "0123456789abcdef0123456789abcdef";

  @ParameterizedTest
  @ValueSource(strings = {WORK, "0123", ""})
  void workThatIsDoneIsNeitherLookedAtNorStopped(String work) {
    String job = caller.bring(readingRoom());
    String seen = caller.seen(job);
    caller.post(job + "/put", "seen", seen, "work", work, "field", "outside_width", "value", "78");
    assertThat(caller.file(job)).contains("width: 78\n");
    assertThat(caller.get(job + "/work?of=" + work).statusCode()).isEqualTo(404);
    assertThat(caller.post(job + "/stop", "work", work).statusCode()).isEqualTo(404);
  }

  @Test
  void aCureIsDoneByOnePressAndItsFindingIsGone() {
    String job = caller.bring(readingRoom().replace("front-row: 1 1/2", "front-row: 3/8"));
    String page = caller.get(job).body();
    List<String> presses = Caller.all(page, "name=\"cure\" value=\"([^\"]*)\"");
    assertThat(presses).isNotEmpty();
    HttpResponse<String> answer =
        caller.post(
            job + "/cure",
            "seen",
            caller.seen(job),
            "case",
            "bookcase",
            "cure",
            presses.getFirst());
    assertThat(answer.body()).contains("Done: set front-row to ");
    assertThat(Caller.all(answer.body(), "<li class=\"(remark error)\"")).isEmpty();
  }

  @Test
  void aCaseThatCannotBeBuiltIsSaidToBeSoAndCanBeTakenBack() {
    String job = caller.bring(readingRoom());
    HttpResponse<String> answer = put(job, caller.seen(job), "bay-1-width", "100");
    assertThat(answer.body()).contains("cannot be built");
    caller.post(job + "/undo", "seen", caller.seen(job), "case", "");
    assertThat(caller.get(job).body()).contains("<svg").doesNotContain("remark refused");
  }

  /** Every link, of every figure too, leads to a page of ours. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "reading-room.yaml",
        "music-library.yaml",
        "pottery-cabinet.yaml",
        "tool-cupboard.yaml"
      })
  void everyLinkLeadsSomewhere(String name) {
    String page = caller.get(caller.bring(example(name))).body();
    for (String link : new HashSet<>(Caller.all(page, "href=\"([^\"#]+)\""))) {
      assertThat(link).startsWith("/");
      assertThat(caller.get(link.replace("&amp;", "&")).statusCode()).as(link).isEqualTo(200);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "reading-room.yaml",
        "music-library.yaml",
        "pottery-cabinet.yaml",
        "tool-cupboard.yaml"
      })
  void thePageHoldsToItsPolicyAndNamesItsFields(String name) {
    String page = caller.get(caller.bring(example(name))).body();
    assertThat(page).doesNotContainPattern("(?i)<style|\\sstyle=|\\son[a-z]+=\"|javascript:");
    assertThat(Caller.all(page, "<script([^>]*)>")).allMatch(s -> s.contains("src=\"/own/"));
    List<String> ids = Caller.all(page, "\\sid=\"([^\"]+)\"");
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(Caller.all(page, "<label for=\"([^\"]+)\"")).isSubsetOf(ids).isNotEmpty();
    assertThat(Caller.all(page, "<(?:input|select) id=\"(v-[^\"]+)\""))
        .isSubsetOf(Caller.all(page, "<label for=\"([^\"]+)\""));
  }

  @Test
  void namesAreWordsAndNeverMarkup() {
    String title = "<script>alert(1)</script> & \"co\"";
    String job = caller.bring(readingRoom().replace("Reading room bookcases", "'" + title + "'"));
    for (String path : List.of(job, "/")) {
      assertThat(caller.get(path).body())
          .contains("&lt;script&gt;alert(1)")
          .doesNotContain("<script>alert");
    }
  }
}
