package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the shop keeps for all its jobs. */
class ShopTest {

  @TempDir Path folder;

  private Caller caller;

  @BeforeEach
  void start() {
    caller = Caller.at(folder);
  }

  @AfterEach
  void stop() {
    caller.close();
  }

  private String seen() {
    return Caller.first(caller.get("/shop?open=HABITS").body(), "name=\"seen\" value=\"([^\"]*)\"");
  }

  private HttpResponse<String> begin(String name) {
    return caller.submit("/shop/first", "name", name, "unit", "inch", "open", "TOOLS");
  }

  private String file() {
    return Leaf.back(caller.get("/shop/shop.yaml").body()).text();
  }

  private static String[] bit(String seen, String reach) {
    return new String[] {
      "seen",
      seen,
      "open",
      "TOOLS",
      "part",
      "tools_more_bit",
      "b-name",
      "pin bit",
      "b-diameter",
      "1/4",
      "b-point",
      "3/32",
      "b-reach",
      reach
    };
  }

  @Test
  void itIsBegunWithANameAndGetsItsToolsOneByOne() {
    assertThat(caller.get("/shop?open=TOOLS").body()).contains("has told nothing of itself yet");
    begin("Harrow Mill workshop");
    String[] bit = bit(seen(), "3");
    bit[11] = "";
    HttpResponse<String> missing = caller.post("/shop/begin", bit);
    assertThat(missing.statusCode()).isEqualTo(422);
    assertThat(Caller.element(missing.body(), "p", "n-tools_more_bit_point"))
        .contains("It must be stated");
    bit[11] = "3/32";
    assertThat(caller.post("/shop/begin", bit).statusCode()).isEqualTo(200);
    assertThat(file())
        .isEqualTo(
            """
            # What the shop keeps for all its jobs.
            shop: Harrow Mill workshop
            unit: inch
            tools:
              pin bit: {kind: bit, diameter: 1/4, point: 3/32, reach: 3}
            """);
    caller.post(
        "/shop/put",
        "seen",
        seen(),
        "open",
        "TOOLS",
        "field",
        "tools_pin-bit_reach",
        "value",
        "2 1/2");
    assertThat(file()).contains("reach: 2 1/2}");
    caller.post("/shop/leave", "seen", seen(), "open", "TOOLS", "part", "tools_pin-bit");
    assertThat(file()).doesNotContain("pin bit");
  }

  @Test
  void aHabitOfTheShopHoldsForItsJobs() throws java.io.IOException {
    begin("Harrow Mill workshop");
    String job =
        caller.bring(
            java.nio.file.Files.readString(Path.of("..", "examples", "reading-room.yaml")));
    caller.post(
        "/shop/put", "seen", seen(), "open", "HABITS", "field", "settings_pitch", "value", "2 in");
    assertThat(Caller.element(caller.get(job + "?open=HABITS").body(), "form", "f-settings_pitch"))
        .contains("placeholder=\"2 in\"");
  }

  @Test
  void whatCannotBeIsSaidAtTheFieldAndKept() {
    begin("Harrow Mill workshop");
    HttpResponse<String> answer =
        caller.post(
            "/shop/put",
            "seen",
            seen(),
            "open",
            "HABITS",
            "field",
            "settings_pitch",
            "value",
            "3 ft");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(Caller.element(answer.body(), "form", "f-settings_pitch"))
        .contains("from 8 mm to 200 mm", "value=\"3 ft\"");
    assertThat(file()).doesNotContain("pitch");
  }

  /** Lengths without a unit are others in another unit, so that the trouble is with a tool. */
  @Test
  void troubleElsewhereNamesTheThingThatItIsAbout() {
    begin("Harrow Mill workshop");
    caller.post("/shop/begin", bit(seen(), "3"));
    HttpResponse<String> answer =
        caller.post("/shop/put", "seen", seen(), "open", "HABITS", "field", "unit", "value", "mm");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(Caller.element(answer.body(), "form", "f-unit"))
        .containsIgnoringCase("tools.pin bit.");
  }

  private HttpResponse<String> habit(String seen, String key, String value) {
    String field = "settings_" + key;
    return caller.post("/shop/put", "seen", seen, "open", "HABITS", "field", field, "value", value);
  }

  private HttpResponse<String> pitch(String seen, String pitch) {
    return habit(seen, "pitch", pitch);
  }

  @Test
  void whoeverIsLateAtAFieldKeepsWhatWasTypedAndSeesWhatStands() {
    begin("Harrow Mill workshop");
    String both = seen();
    pitch(both, "1 1/4");
    HttpResponse<String> late = pitch(both, "1 1/2");
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(Caller.element(late.body(), "form", "f-settings_pitch"))
        .contains("value=\"1 1/2\"", "This machine has changed it to 1 1/4 since you looked");
    assertThat(late.body()).contains("was not changed to 1 1/2: somebody else was first.");
    assertThat(file()).contains("pitch: 1 1/4");
    String now = Caller.first(late.body(), "name=\"seen\" value=\"([^\"]*)\"");
    assertThat(pitch(now, "1 1/2").statusCode()).isEqualTo(200);
    assertThat(file()).contains("pitch: 1 1/2");
    assertThat(pitch(both, "1 1/2").statusCode())
        .as("the same change is no quarrel")
        .isEqualTo(200);
  }

  /** Each change goes onto what the others have kept meanwhile. */
  @Test
  void differentFieldsThatAreChangedAtOnceAreAllKept() {
    begin("Harrow Mill workshop");
    String all = seen();
    Map<String, String> changes =
        Map.of(
            "pitch", "1 1/4",
            "rows", "grouped",
            "tip-push", "40",
            "creep-solid", "1.4",
            "humidity-low", "31",
            "humidity-high", "62",
            "hole-depth", "1/2",
            "least-web", "1/8",
            "tall-side", "50");
    List<CompletableFuture<HttpResponse<String>>> answers =
        changes.entrySet().stream()
            .map(
                c ->
                    CompletableFuture.supplyAsync(
                        () -> habit(all, c.getKey(), c.getValue()), Thread::startVirtualThread))
            .toList();
    assertThat(answers)
        .allSatisfy(a -> assertThat(a.join().statusCode()).as(a.join().body()).isEqualTo(200));
    String file = file();
    assertThat(changes).allSatisfy((key, value) -> assertThat(file).contains(key + ": " + value));
  }

  /** As after a backup was put back: a page from before would else undo what others did since. */
  @Test
  void aPageOfWhatIsNoLongerKeptChangesNothing() {
    begin("Harrow Mill workshop");
    pitch(seen(), "1 1/4");
    String kept = file();
    for (String does : List.of("put", "begin", "leave", "undo", "redo")) {
      String[] form = {"seen", "x", "open", "HABITS", "field", "settings_pitch", "value", "2"};
      HttpResponse<String> answer = caller.post("/shop/" + does, form);
      assertThat(answer.statusCode()).as(does).isEqualTo(410);
      assertThat(answer.body()).contains("Load the page anew");
    }
    assertThat(file()).isEqualTo(kept);
  }

  @Test
  void whoeverIsLateWithAToolKeepsWhatWasTyped() {
    begin("Harrow Mill workshop");
    String[] bit = bit(seen(), "3");
    caller.post("/shop/begin", bit);
    bit[13] = "4";
    HttpResponse<String> late = caller.post("/shop/begin", bit);
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(late.body())
        .contains("This machine has put something there since you looked", "value=\"4\"");
    assertThat(file()).contains("reach: 3}");
  }

  @Test
  void aShopIsBegunOnce() {
    begin("First");
    HttpResponse<String> second = begin("Second");
    assertThat(second.statusCode()).isEqualTo(409);
    assertThat(file()).contains("shop: First");
  }

  private HttpResponse<String> rack(String thickness, String length, String width, String count) {
    return caller.submit(
        "/shop/rack",
        "rack_material",
        "oak ply",
        "rack_form",
        "offcut",
        "rack_thickness",
        thickness,
        "rack_length",
        length,
        "rack_width",
        width,
        "rack_count",
        count,
        "rack_price",
        "",
        "rack_note",
        "left from the stove wall");
  }

  @Test
  void aPieceComesOnTheRackIsCountedAndTakenOut() {
    String page = rack("3/4", "31 1/2", "600 mm", "2").body();
    assertThat(page)
        .contains("oak ply, offcut", "3/4 in x 31 1/2 in x 600 mm", "left from the stove wall");
    String piece = Caller.first(page, "action=\"(/shop/rack/[^\"/]+)\"");
    String version = Caller.first(page, "name=\"version\" value=\"([^\"]*)\"");
    String counted = caller.submit(piece, "version", version, "count", "5").body();
    assertThat(counted).contains("name=\"count\" value=\"5\"");
    HttpResponse<String> late = caller.submit(piece + "/out", "version", version);
    assertThat(late.statusCode()).isEqualTo(409);
    HttpResponse<String> miscounted = caller.submit(piece, "version", version, "count", "4");
    assertThat(miscounted.statusCode()).isEqualTo(409);
    assertThat(miscounted.body())
        .contains("name=\"count\" value=\"4\"", "Somebody has changed it to 5 since you looked");
    HttpResponse<String> none =
        caller.submit(
            piece,
            "version",
            Caller.first(counted, "name=\"version\" value=\"([^\"]*)\""),
            "count",
            "many");
    assertThat(none.statusCode()).isEqualTo(422);
    assertThat(none.body())
        .contains("name=\"count\" value=\"many\"", "It is a whole number from 1 to 9999");
    String now = Caller.first(counted, "name=\"version\" value=\"([^\"]*)\"");
    assertThat(caller.submit(piece + "/out", "version", now).body())
        .contains("Nothing stands on the rack yet.");
  }

  @ParameterizedTest
  @CsvSource({
    "'9,5', 30, 20, 1, rack_thickness, A comma in a length",
    "3/4, '', 20, 1, rack_length, ''",
    "3/4, 30, 0, 1, rack_width, It is above 0",
    "3/4, 30, 20, 0, rack_count, It is a whole number from 1",
    "3/4, 30, 20, many, rack_count, It is a whole number from 1",
  })
  void aPieceThatCannotBeIsAnsweredAtItsBlank(
      String thickness, String length, String width, String count, String blank, String rule) {
    HttpResponse<String> answer = rack(thickness, length, width, count);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(Caller.element(answer.body(), "p", "n-" + blank)).contains("class=\"wrong\"", rule);
    assertThat(caller.get("/shop").body()).contains("Nothing stands on the rack yet.");
  }

  @Test
  void everyFieldOfThePagesIsNamed() {
    begin("Harrow Mill workshop");
    for (ShopPage.Shelf shelf : ShopPage.Shelf.values()) {
      String page = caller.get("/shop?open=" + shelf.name()).body();
      assertThat(Caller.all(page, "\\sid=\"([^\"]+)\"")).doesNotHaveDuplicates();
      assertThat(Caller.all(page, "<(?:input|select) id=\"(v-[^\"]+)\""))
          .isNotEmpty()
          .isSubsetOf(Caller.all(page, "<label for=\"([^\"]+)\""));
    }
  }

  /** 31 1/2 in by 600 mm of the material's nominal 3/4 in. */
  @Test
  void aJobTakesAPieceFromTheRackAndLeavesItsOffcutsThere() throws java.io.IOException {
    rack("1", "31 1/2", "600 mm", "2");
    rack("1/2", "31 1/2", "600 mm", "2");
    String text = java.nio.file.Files.readString(Path.of("..", "examples", "reading-room.yaml"));
    String job = caller.bring(text);
    String page = caller.get(job + "/rack").body();
    String piece = Caller.first(page, "name=\"piece\" value=\"([^\"]*)\"");
    assertThat(Caller.all(page, "name=\"material\" value=\"([^\"]*)\"")).containsExactly("oak-ply");
    HttpResponse<String> taken =
        caller.submit(
            job + "/take", "seen", caller.seen(job), "piece", piece, "material", "oak-ply");
    assertThat(taken.body()).contains("The job cuts it first, as oak-ply.");
    assertThat(caller.file(job))
        .contains(
            "    - material: oak-ply\n"
                + "      length: 31 1/2 in\n"
                + "      width: 600 mm\n"
                + "      count: 2\n"
                + "      supply: on-hand\n");
    assertThat(
            caller
                .submit(
                    job + "/take", "seen", caller.seen(job), "piece", piece, "material", "back-ply")
                .statusCode())
        .isEqualTo(404);

    int before = Caller.all(caller.get("/shop").body(), "(Take out)</button>").size();
    for (int twice = 0; twice < 2; twice++) {
      String put = caller.submit(job + "/offcut", "seen", caller.seen(job), "offcut", "0").body();
      assertThat(put)
          .contains("It stands on the rack.", "<span class=\"quiet\">on the rack</span>");
    }
    assertThat(Caller.all(caller.get("/shop").body(), "(Take out)</button>")).hasSize(before + 1);
    assertThat(caller.get("/shop").body()).contains("left from Reading room bookcases");
  }
}
