package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop file as a whole: brought in, brought back, and the way back from what was brought. */
class ShopFileTest {

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

  private void begin(String name) {
    caller.submit("/shop/first", "name", name, "unit", "inch", "open", "TOOLS");
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

  private static final String BARE = "shop: Harrow Mill workshop\nunit: inch\n";

  private HttpResponse<String> bare() throws IOException {
    caller.upload("/shop/bring", example("shop.yaml"), "seen", "");
    return caller.upload("/shop/bring", BARE, "seen", seen());
  }

  private HttpResponse<String> nonetheless(HttpResponse<String> asked) {
    String brought = Caller.first(asked.body(), "name=\"brought\" value=\"([^\"]*)\"");
    return caller.submit("/shop/bring/nonetheless", "brought", brought);
  }

  @Test
  void aFileThatLacksToolsIsPutInPlaceOnlyWhenItsMakerHasSeenWhich() throws IOException {
    HttpResponse<String> asked = bare();
    assertThat(asked.statusCode()).isEqualTo(409);
    assertThat(Caller.all(asked.body(), "<li>([^<]*)</li>"))
        .contains("tools · thin-mdf")
        .allMatch(lacks -> lacks.startsWith("tools · ") || lacks.startsWith("settings · "));
    assertThat(file()).isEqualTo(example("shop.yaml"));
    assertThat(nonetheless(asked).statusCode()).isEqualTo(303);
    assertThat(file()).isEqualTo(BARE);
    assertThat(nonetheless(asked).body()).contains("no longer at hand");
  }

  @Test
  void whatLacksToolsDoesNotGoOverWhatOthersDidSinceItWasShown() throws IOException {
    HttpResponse<String> asked = bare();
    caller.submit("/shop/put", "seen", seen(), "open", "HABITS", "field", "shop", "value", "Ours");
    assertThat(nonetheless(asked).statusCode()).isEqualTo(409);
    assertThat(file()).contains("shop: Ours", "thin-mdf");
  }

  @Test
  void whatWasBroughtIsTakenBackAndBroughtBack() throws IOException {
    nonetheless(bare());
    String back = caller.submit("/shop/undo", "seen", seen(), "open", "TOOLS").body();
    assertThat(back).contains("Taken back.", "taken back: ");
    assertThat(file()).isEqualTo(example("shop.yaml"));
    caller.submit("/shop/redo", "seen", seen(), "open", "TOOLS");
    assertThat(file()).isEqualTo(BARE);
    HttpResponse<String> end = caller.submit("/shop/redo", "seen", seen(), "open", "TOOLS");
    assertThat(end.statusCode()).isEqualTo(409);
    assertThat(end.body()).contains("There is nothing to bring back.");
  }

  @Test
  void theHistoryOfTheShopTellsWhatWasDoneAndLeadsBack() throws IOException {
    nonetheless(bare());
    String history = caller.get("/shop/history").body();
    assertThat(history).contains("brought in as a file", "this machine");
    List<String> revisions = Caller.all(history, "name=\"revision\" value=\"([^\"]*)\"");
    assertThat(revisions).as("all but the newest").hasSize(1);
    String beside = Caller.first(history, "href=\"(/shop/beside[^\"]*)\"").replace("&amp;", "&");
    assertThat(caller.get(beside).body())
        .contains("tools · thin-mdf · kind", "<mark>not stated</mark>");
    HttpResponse<String> back =
        caller.submit("/shop/back", "seen", seen(), "revision", revisions.getFirst());
    assertThat(back.statusCode()).isEqualTo(303);
    assertThat(file()).isEqualTo(example("shop.yaml"));
    assertThat(caller.get("/shop/history").body())
        .contains("back to change 1: brought in as a file");
    HttpResponse<String> late =
        caller.submit("/shop/back", "seen", revisions.getFirst(), "revision", revisions.getFirst());
    assertThat(late.statusCode()).isEqualTo(409);
  }

  @Test
  void aShopThatIsNotBegunHasNoHistory() {
    assertThat(caller.get("/shop/history").statusCode()).isEqualTo(404);
    assertThat(caller.submit("/shop/undo", "seen", "").statusCode()).isEqualTo(404);
  }
}
