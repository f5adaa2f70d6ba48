package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** Drawers of fields, the shop's page, variants and backups, as makers meet them in a browser. */
@ExtendWith(OneBrowser.class)
class DrawersInBrowserTest {

  @TempDir static Path folder;

  private static Caller caller;

  private final Browser browser;

  DrawersInBrowserTest(Browser browser) {
    this.browser = browser;
  }

  @BeforeAll
  static void start() {
    caller = Caller.at(folder);
  }

  @AfterAll
  static void stop() {
    caller.close();
  }

  @AfterEach
  void nothingWentWrongBehindThePage() {
    assertThat(browser.faults()).isEmpty();
  }

  private String open(String path) throws IOException {
    String job = caller.bring(Caller.readingRoom());
    browser.openAnew(caller.origin() + job + path);
    return job;
  }

  @Test
  void aDrawerIsOpenedWithoutLeavingThePageAndAGroupBegunInIt() throws IOException {
    String job = open("");
    browser.press(".drawers", "Front");
    browser.awaitText("#fields h2", "Front");
    browser.click("details.begin:nth-of-type(2) summary");
    browser.type("#v-doors_gap", "9,5");
    browser.type("#v-doors_plate-heights", "9, 30, 55, 77");
    browser.type("#v-doors_plate-length", "2");
    browser.type("#v-doors_plate-width", "7/8");
    browser.press("details.begin:nth-of-type(2)", "Add: Doors");
    browser.awaitText("#n-doors_gap", "comma");
    assertThat(browser.value("#v-doors_plate-heights")).isEqualTo("9, 30, 55, 77");
    browser.type("#v-doors_gap", "1/8");
    browser.press("details.begin:nth-of-type(2)", "Add: Doors");
    browser.await("the doors", () -> browser.has("#f-doors_gap"));
    browser.type("#v-doors_gap", "3/16");
    browser.awaitText("#notice", "Gap is changed.");
    assertThat(caller.file(job)).contains("      gap: 3/16\n");
    browser.press("#fields", "Leave out Doors");
    browser.awaitText("#notice", "Doors left out.");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  /** Of equal stock the first is taken, so that the order is the maker's to state. */
  @Test
  void stockIsMovedUpAndTheFocusGoesAlong() throws IOException {
    String third =
        "\n    - {material: oak-ply, length: 60, width: 30, count: 1, supply: on-hand}\n  boards:";
    String text = Caller.readingRoom().replaceFirst("\n  boards:", third);
    String job = caller.bring(text);
    browser.openAnew(caller.origin() + job + "?open=WOOD");
    assertThat(browser.has("[aria-label='Move up Sheet 1']")).isFalse();
    browser.run("document.querySelector('[aria-label=\"Move up Sheet 3\"]').focus(); return 1");
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "Sheet 3 moved up.");
    browser.await(
        "the focus on it",
        () -> browser.focused().equals("Move up") && label().equals("Move up Sheet 2"));
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "Sheet 2 moved up.");
    browser.await("the focus", () -> browser.focused().equals("fields"));
    assertThat(browser.value("#v-job_stock_sheets_1_length")).isEqualTo("60");
    assertThat(caller.file(job).indexOf("length: 60"))
        .isLessThan(caller.file(job).indexOf("material: back-ply, length"));
    browser.press("Take back");
    browser.awaitText("#notice", "Taken back.");
    browser.press("Take back");
    browser.await("the order as it was", () -> caller.file(job).equals(text));
  }

  private String label() {
    return browser.attribute("button:focus", "aria-label");
  }

  @Test
  void aSettingIsFoundAmongManyByAWord() throws IOException {
    open("?open=HABITS");
    browser.type("#find-settings", "kerf");
    browser.awaitText("#found-settings", "found");
    assertThat(browser.element("#f-settings_kerf").isDisplayed()).isTrue();
    assertThat(browser.element("#f-settings_pitch").isDisplayed()).isFalse();
  }

  @Test
  void aToolOfTheShopIsChangedWithoutLosingThePlaceOnThePage() {
    browser.openAnew(caller.origin() + "/shop?open=TOOLS");
    browser.type("#shop-name", "Harrow Mill workshop");
    browser.press("Begin");
    browser.await("the tools", () -> browser.has("details.begin"));
    browser.click("details.begin summary");
    browser.type("#v-tools_more_hand-drill_name", "old drill");
    browser.type("#v-tools_more_hand-drill_length", "9 1/2");
    browser.press("details.begin", "Add a hand drill");
    browser.await("the drill", () -> browser.has("#f-tools_old-drill_length"));
    browser.type("#v-tools_old-drill_length", "nine");
    browser.awaitText("#n-tools_old-drill_length", "not a length");
    browser.type("#v-tools_old-drill_length", "9");
    browser.awaitText("#notice", "Length is changed.");
    assertThat(caller.get("/shop/shop.yaml").body()).contains("length: 9}");
  }

  @Test
  void aVariantIsKeptPutBesideAndAdopted() throws IOException {
    String job = open("");
    browser.click("#head a[href$='/history']");
    browser.type("#variant-name", "three bays");
    browser.press("Keep as a variant");
    browser.await("the variant", () -> browser.has("input[name=with]"));
    browser.open(caller.origin() + job);
    browser.type("#v-bays", "4");
    browser.awaitText("#notice", "Bays is changed.");
    browser.open(caller.origin() + job + "/history");
    browser.click("input[name=with]");
    browser.press("Put side by side");
    browser.await("both", () -> browser.all(".side").size() == 2);
    assertThat(browser.text("mark")).isNotEmpty();
    browser.press("Adopt this");
    browser.awaitText("h1", "History");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }
}
