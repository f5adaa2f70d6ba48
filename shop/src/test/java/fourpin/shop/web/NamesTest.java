package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names, whole cases and single bays, changed on the page. */
class NamesTest {

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

  /** Sends a form of the page. @param more names and values in turn */
  private static HttpResponse<String> send(
      String job, String aCase, String does, Drawer open, String... more) {
    List<String> form =
        new ArrayList<>(List.of("seen", caller.seen(job), "case", aCase, "open", open.name()));
    form.addAll(List.of(more));
    return caller.post(job + "/" + does, form.toArray(String[]::new));
  }

  /** The hall's bookcases say oak-ply five times, twice in words of other materials. */
  @Test
  void allThatCallsAMaterialByItsNameFollows() {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> answer =
        send(
            job, "bookcase", "put", Drawer.WOOD, "field", "job_materials_oak_name", "value", "elm");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(caller.file(job))
        .isEqualTo(
            Caller.readingRoom()
                .replaceAll("(?m)^  oak:$", "  elm:")
                .replace("material: oak\n", "material: elm\n")
                .replace("strip: oak\n", "strip: elm\n"));
    send(job, "bookcase", "undo", Drawer.WOOD);
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void aNameThatIsTakenOrNoneIsRefusedAtTheField() {
    String job = caller.bring(Caller.readingRoom());
    String[] field = {"field", "job_materials_oak_name", "value", "oak-ply"};
    HttpResponse<String> taken = send(job, "bookcase", "put", Drawer.WOOD, field);
    assertThat(taken.statusCode()).isEqualTo(409);
    assertThat(taken.body()).contains("there is one of this name already");
    field[3] = "oak/2";
    HttpResponse<String> wrong = send(job, "bookcase", "put", Drawer.WOOD, field);
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(Caller.element(wrong.body(), "p", "n-job_materials_oak_name"))
        .contains("1 to 30 letters");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  /** The page goes on with the case that was looked at. */
  @Test
  void aCaseIsCopiedRenamedAndLeftOut() {
    String job = caller.bring(Caller.readingRoom());
    send(
        job,
        "bookcase",
        "begin",
        Drawer.CASES,
        "part",
        "job_cases_bookcase_more",
        "b-name",
        "annexe");
    assertThat(caller.file(job)).startsWith(Caller.readingRoom().stripTrailing());
    assertThat(caller.get(job).body()).contains(">annexe</a>");
    String copied = caller.file(job);
    HttpResponse<String> renamed =
        send(
            job,
            "annexe",
            "put",
            Drawer.CASES,
            "field",
            "job_cases_annexe_name",
            "value",
            "north wall");
    assertThat(renamed.body()).contains("data-case=\"north wall\"");
    assertThat(caller.file(job)).isEqualTo(copied.replace("  annexe:", "  north wall:"));
    send(job, "north wall", "leave", Drawer.CASES, "part", "job_cases_north-wall");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void theLastCaseCannotBeLeftOut() {
    String page = caller.get(caller.bring(Caller.readingRoom()) + "?open=CASES").body();
    assertThat(page).contains("Add: one like bookcase").doesNotContain("Leave out bookcase");
  }

  /** The hutch stands on the low case, and says so. */
  @Test
  void aCaseThatAnotherStandsOnTakesItAlong() throws IOException {
    String stacked = Files.readString(Path.of("..", "examples", "reading-room.yaml"));
    String both =
        stacked.stripTrailing()
            + "\n  hutch:\n    quantity: 2\n    outside: {width: 60, height: 30, depth: 10}\n"
            + "    material: oak-ply\n    stands-on: bookcase\n";
    String job = caller.bring(both);
    assertThat(caller.get(job + "?case=hutch").body())
        .contains("<option value=\"bookcase\" selected>");
    send(
        job,
        "hutch",
        "put",
        Drawer.CASES,
        "field",
        "job_cases_bookcase_name",
        "value",
        "tall case");
    assertThat(caller.file(job))
        .contains("\n  tall case:\n    quantity: 2", "stands-on: tall case\n");
  }

  /** Written as a number until a bay has something of its own, and a number again afterwards. */
  @Test
  void aSingleBayHasSupportsAndShelvesOfItsOwn() {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> begun =
        send(
            job,
            "bookcase",
            "begin",
            Drawer.BAYS,
            "part",
            "single-2_supports_pins",
            "b-diameter",
            "5 mm",
            "b-stem",
            "10 mm",
            "b-reach",
            "8 mm");
    assertThat(begun.statusCode()).isEqualTo(200);
    assertThat(caller.file(job))
        .contains(
            "    bays:\n      - {}\n      - supports:\n"
                + "          pins: {diameter: 5 mm, stem: 10 mm, reach: 8 mm}\n      - {}\n");
    send(job, "bookcase", "put", Drawer.BAYS, "field", "single-3_shelves_setback", "value", "1/2");
    assertThat(caller.file(job)).contains("      - {shelves: {setback: 1/2}}\n");
    assertThat(
            Caller.element(
                caller.get(job + "?open=BAYS").body(), "form", "f-single-2_supports_pins_diameter"))
        .contains("value=\"5 mm\"");
    send(job, "bookcase", "undo", Drawer.BAYS);
    send(job, "bookcase", "undo", Drawer.BAYS);
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void theEdgingOfASingleBaysShelvesIsBegunAndLeftOut() {
    String job = caller.bring(Caller.readingRoom());
    send(
        job,
        "bookcase",
        "begin",
        Drawer.BAYS,
        "part",
        "single-1_shelves_edging_more",
        "b-strip",
        "oak",
        "b-thickness",
        "1/2");
    assertThat(caller.file(job)).contains("strip: oak").contains("thickness: 1/2");
    HttpResponse<String> left =
        send(job, "bookcase", "leave", Drawer.BAYS, "part", "single-1_shelves_edging_1");
    assertThat(left.statusCode()).isEqualTo(200);
    assertThat(caller.file(job)).doesNotContain("thickness: 1/2");
  }
}
