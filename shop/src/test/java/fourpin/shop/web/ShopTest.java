package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
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

  private static String example(String name) throws IOException {
    return Files.readString(Path.of("..", "examples", name));
  }

  /** Jobs that name a shop file can be brought in once it is here. */
  @Test
  void aShopFileIsBroughtInWholeAndServesTheJobsThatNameIt() throws IOException {
    String job = example("ways/router-guide.yaml");
    HttpResponse<String> early = caller.upload("/jobs", job);
    assertThat(early.statusCode()).isEqualTo(422);
    assertThat(early.body()).contains("Bring the shop file in on the page Shop first");
    assertThat(caller.upload("/shop/bring", example("shop.yaml"), "seen", "").statusCode())
        .isEqualTo(303);
    assertThat(file()).isEqualTo(example("shop.yaml"));
    assertThat(caller.get("/shop?open=HABITS").body()).contains("Harrow Mill workshop");
    assertThat(caller.get(caller.bring(job)).body()).doesNotContain("no shop file is kept");
  }

  @Test
  void anEditedShopFileComesBackOnlyIfNobodyElseChangedItSince() {
    begin("Harrow Mill workshop");
    String away = caller.get("/shop/shop.yaml").body();
    String edited = away.replace("unit: inch", "unit: mm # as we measure");
    caller.submit("/shop/put", "seen", seen(), "open", "HABITS", "field", "shop", "value", "Ours");
    String theirs = file();
    assertThat(theirs).contains("shop: Ours");
    HttpResponse<String> late = caller.upload("/shop/bring", edited, "seen", seen());
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(late.body()).contains("has changed the shop since");
    assertThat(file()).isEqualTo(theirs);
    String again =
        caller.get("/shop/shop.yaml").body().replace("unit: inch", "unit: mm # as we measure");
    assertThat(caller.upload("/shop/bring", again, "seen", "").statusCode()).isEqualTo(303);
    assertThat(file()).isEqualTo(theirs.replace("unit: inch", "unit: mm # as we measure"));
  }

  @Test
  void aShopFileWithFaultsIsRefusedWithAllOfThem() {
    begin("Harrow Mill workshop");
    String before = seen();
    HttpResponse<String> wrong =
        caller.upload(
            "/shop/bring",
            "shop: Ours\nunit: furlong\ntools: {bit: {bit: wide}}\n",
            "seen",
            before);
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.body()).contains("shop file:2:7", "furlong", "shop file:3:");
    assertThat(caller.upload("/shop/bring", file(), "seen", before).statusCode()).isEqualTo(303);
    String lines = file().replace("\n", "\r\n");
    assertThat(caller.upload("/shop/bring", lines, "seen", before).statusCode()).isEqualTo(303);
    assertThat(seen()).as("the same file is no change").isEqualTo(before);
  }

  @Test
  void itIsBegunWithANameAndGetsItsToolsOneByOne() {
    assertThat(caller.get("/shop?open=TOOLS").body()).contains("has told nothing of itself yet");
    begin("Harrow Mill workshop");
    String[] bit = {
      "seen",
      seen(),
      "open",
      "TOOLS",
      "part",
      "tools_more_bit",
      "b-name",
      "pin bit",
      "b-diameter",
      "1/4",
      "b-point",
      "",
      "b-reach",
      "3"
    };
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
