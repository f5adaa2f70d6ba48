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
