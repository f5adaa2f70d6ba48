package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.file.Forms;
import fourpin.shop.file.Key;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a job states, in drawers of fields that follow the forms of the reader. */
class FieldsTest {

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
  private static HttpResponse<String> send(String job, String does, Drawer open, String... more) {
    List<String> form =
        new ArrayList<>(List.of("seen", caller.seen(job), "case", "bookcase", "open", open.name()));
    form.addAll(List.of(more));
    return caller.post(job + "/" + does, form.toArray(String[]::new));
  }

  @Test
  void everyKeyOfAJobLiesInOneDrawer() {
    Stream<String> ofCase = Stream.of(Drawer.values()).flatMap(d -> d.ofCase().stream());
    Stream<String> ofJob = Stream.of(Drawer.values()).flatMap(d -> d.ofJob().stream());
    assertThat(ofCase)
        .containsExactlyInAnyOrderElementsOf(Forms.CASE.keys().stream().map(Key::name).toList());
    assertThat(ofJob)
        .containsExactlyInAnyOrderElementsOf(Forms.JOB.keys().stream().map(Key::name).toList());
  }

  @ParameterizedTest
  @EnumSource
  void everyFieldOfADrawerIsNamedAndDescribedOnce(Drawer drawer) {
    String page = caller.get(caller.bring(Caller.readingRoom()) + "?open=" + drawer.name()).body();
    List<String> ids = Caller.all(page, "\\sid=\"([^\"]+)\"");
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(Caller.all(page, "<(?:input|select) id=\"(v-[^\"]+)\""))
        .isNotEmpty()
        .isSubsetOf(Caller.all(page, "<label for=\"([^\"]+)\""));
    assertThat(Caller.all(page, "aria-describedby=\"([^\"]+)\"")).isSubsetOf(ids);
  }

  @Test
  void aSettingShowsWhatIsUsualItsRangeAndItsOrigin() {
    String page = caller.get(caller.bring(Caller.readingRoom()) + "?open=HABITS").body();
    assertThat(Caller.element(page, "form", "f-settings_pitch"))
        .contains("placeholder=\"1 in\"", "from 0.315 in to 7.87 in", "(common practice)");
  }

  /** Half-inch overlay doors: every number is this test's own. */
  @Test
  void aGroupIsBegunWholeAndLeftOutAgain() {
    String job = caller.bring(Caller.readingRoom());
    String[] doors = {
      "part",
      "doors",
      "b-kind",
      "inset",
      "b-thickness",
      "1/2",
      "b-gap",
      "1/8",
      "b-plate-heights",
      "9, 30, 55, 77",
      "b-plate-setback",
      "1 1/2",
      "b-plate-length",
      "2",
      "b-plate-width",
      "7/8"
    };
    HttpResponse<String> begun = send(job, "begin", Drawer.FRONT, doors);
    assertThat(begun.statusCode()).isEqualTo(200);
    assertThat(caller.file(job))
        .contains("    doors:\n      kind: inset\n      thickness: 1/2\n")
        .contains("plate-heights: [9, 30, 55, 77]");
    assertThat(begun.body()).contains("id=\"f-doors_plate-setback\"");
    send(job, "leave", Drawer.FRONT, "part", "doors");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void whatIsMissingOrWrongInAGroupIsSaidAtItsBlankAndKept() {
    String job = caller.bring(Caller.readingRoom());
    String[] kept = {"part", "doors", "b-kind", "inset", "b-thickness", "9,5"};
    HttpResponse<String> missing = send(job, "begin", Drawer.FRONT, kept);
    assertThat(missing.statusCode()).isEqualTo(422);
    assertThat(Caller.element(missing.body(), "p", "n-doors_gap")).contains("It must be stated");
    assertThat(missing.body()).contains("value=\"9,5\"");
    String[] wrong = {
      "part",
      "doors",
      "b-kind",
      "inset",
      "b-thickness",
      "9,5",
      "b-gap",
      "1/8",
      "b-plate-heights",
      "30, 9",
      "b-plate-setback",
      "1 1/2",
      "b-plate-length",
      "2",
      "b-plate-width",
      "7/8"
    };
    HttpResponse<String> bad = send(job, "begin", Drawer.FRONT, wrong);
    assertThat(bad.statusCode()).isEqualTo(422);
    assertThat(Caller.element(bad.body(), "p", "n-doors_thickness")).contains("A comma");
    assertThat(Caller.element(bad.body(), "p", "n-doors_gap")).doesNotContain("wrong");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void oneGroupComesInPlaceOfAnother() {
    String job = caller.bring(Caller.readingRoom());
    send(
        job,
        "begin",
        Drawer.SIZES,
        "part",
        "inside",
        "b-width",
        "78",
        "b-height",
        "80",
        "b-depth",
        "11");
    assertThat(caller.file(job))
        .contains("    inside: {width: 78, height: 80, depth: 11}\n")
        .doesNotContain("outside:");
  }

  @Test
  void oneWordComesInPlaceOfAnotherThatStatesTheSame() {
    String job = caller.bring(Caller.readingRoom());
    send(job, "put", Drawer.SHELVES, "field", "load", "value", "20 lb/ft");
    assertThat(caller.file(job)).contains("    load: 20 lb/ft\n").doesNotContain("holds:");
  }

  @Test
  void stockIsAddedChangedAndTakenOutLineByLine() {
    String job = caller.bring(Caller.readingRoom());
    send(
        job,
        "begin",
        Drawer.WOOD,
        "part",
        "job_stock_sheets_more",
        "b-material",
        "oak-ply",
        "b-length",
        "60",
        "b-width",
        "30");
    send(job, "put", Drawer.WOOD, "field", "job_stock_sheets_3_count", "value", "2");
    assertThat(caller.file(job))
        .contains("    - material: oak-ply\n      length: 96\n")
        .contains("    - {material: oak-ply, length: 60, width: 30, count: 2}\n");
    send(job, "leave", Drawer.WOOD, "part", "job_stock_sheets_3");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void aMaterialGetsANameOfItsOwn() {
    String job = caller.bring(Caller.readingRoom());
    String[] pine = {
      "part",
      "job_materials_more",
      "b-name",
      "oak",
      "b-kind",
      "board",
      "b-of",
      "pine, eastern white",
      "b-thickness",
      "3/4"
    };
    HttpResponse<String> taken = send(job, "begin", Drawer.WOOD, pine);
    assertThat(taken.statusCode()).isEqualTo(422);
    assertThat(taken.body()).contains("one of this name already");
    pine[3] = "pine";
    assertThat(send(job, "begin", Drawer.WOOD, pine).statusCode()).isEqualTo(200);
    assertThat(caller.file(job)).contains("  pine: {kind: board, of: ");
  }

  /** The reader says where it is needed, at the notice of the page. */
  @Test
  void whatIsStillNeededIsNotLeftOut() {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> answer = send(job, "leave", Drawer.WOOD, "part", "job_materials_oak");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("no material of the job has this name");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @ParameterizedTest
  @ValueSource(strings = {"put", "begin", "leave"})
  void whatIsNoFieldOrGroupIsNotThere(String does) {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> answer =
        send(job, does, Drawer.SIZES, "part", "nothing", "field", "nothing", "value", "1");
    assertThat(answer.statusCode()).isEqualTo(404);
  }

  @Test
  void aJointWrittenShortIsWrittenOutWhenItNeedsMore() {
    String job =
        caller.bring(
            Caller.readingRoom()
                .replace("    bays: 3\n", "    bays: 3\n    joints: {top: dado}\n"));
    send(job, "put", Drawer.PANELS, "field", "joints_top_kind", "value", "rabbet");
    assertThat(caller.file(job)).contains("    joints: {top: rabbet}\n");
    send(job, "put", Drawer.PANELS, "field", "joints_top_depth", "value", "1/4");
    assertThat(caller.file(job)).contains("    joints: {top: {kind: rabbet, depth: 1/4}}\n");
  }
}
