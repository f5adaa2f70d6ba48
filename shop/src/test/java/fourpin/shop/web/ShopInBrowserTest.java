package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/**
 * The page of the shop under quick fingers and on a slow network: nothing that is typed is lost.
 */
@ExtendWith(OneBrowser.class)
class ShopInBrowserTest {

  /** What is sent waits until it is let go, as on a slow network. */
  private static final String SLOW =
      """
      window.heldBack = [];
      const send = XMLHttpRequest.prototype.send;
      XMLHttpRequest.prototype.send = function (body) {
        window.heldBack.push(() => send.call(this, body));
      };
      """;

  private static final String BIT = "pin bit: {kind: bit, diameter: 1/4, point: 3/32, reach: 3}";

  @TempDir Path folder;

  private Caller caller;

  private final Browser browser;

  ShopInBrowserTest(Browser browser) {
    this.browser = browser;
  }

  @BeforeEach
  void openTheTools() {
    caller = Caller.at(folder);
    String text = "shop: Harrow Mill workshop\nunit: inch\ntools:\n  " + BIT + "\n";
    assertThat(caller.upload("/shop/bring", text, "seen", "").statusCode()).isEqualTo(303);
    browser.openAnew(caller.origin() + "/shop?open=TOOLS");
  }

  @AfterEach
  void nothingWentWrongBehindThePage() {
    caller.close();
    assertThat(browser.faults()).isEmpty();
  }

  private String file() {
    return caller.get("/shop/shop.yaml").body();
  }

  private void awaitSent(long requests) {
    browser.await("it is sent", () -> browser.run("return heldBack.length").equals(requests));
  }

  private void letGo() {
    browser.run("heldBack.splice(0).forEach((send) => send()); return 1");
  }

  private String seen() {
    return browser.attribute("#head", "data-seen");
  }

  private void awaitAnswer(String before) {
    browser.await("an answer", () -> !seen().equals(before));
  }

  /** Types a point, and leaves it for the reach, whose text the browser selects then. */
  private void typeThePoint() {
    browser.define("heldBack", SLOW);
    browser.type("#v-tools_pin-bit_point", "1/8");
    awaitSent(1);
  }

  private void leaveTheReach() {
    browser.keys(Keys.TAB);
    awaitSent(1);
    String before = seen();
    letGo();
    awaitAnswer(before);
  }

  @Test
  void whatIsTypedAfterAnAnswerStandsInPlaceOfWhatWasSelectedBefore() {
    typeThePoint();
    String before = seen();
    letGo();
    awaitAnswer(before);
    browser.keys("2.5");
    leaveTheReach();
    assertThat(file()).contains("point: 1/8, reach: 2.5}");
  }

  @Test
  void whatIsHalfTypedWhenAnAnswerComesIsSentWhenItIsWhole() {
    typeThePoint();
    browser.keys("2");
    String before = seen();
    letGo();
    awaitAnswer(before);
    browser.keys(".5");
    leaveTheReach();
    assertThat(file()).contains("point: 1/8, reach: 2.5}");
  }

  @Test
  void twoFieldsThatAreLeftBeforeAnyAnswerAreBothKept() {
    typeThePoint();
    browser.keys("2.5", Keys.TAB);
    awaitSent(2);
    letGo();
    browser.await("both", () -> file().contains("point: 1/8, reach: 2.5}"));
    browser.await(
        "both on the page",
        () ->
            browser.value("#v-tools_pin-bit_point").equals("1/8")
                && browser.value("#v-tools_pin-bit_reach").equals("2.5"));
  }

  @Test
  void whatIsHalfFilledInOrRefusedStaysWhenSomethingElseIsKept() {
    browser.run(
        "document.querySelector('#v-tools_more_bit_name').closest('details').open = true;"
            + " return 1");
    browser.type("#v-tools_more_bit_name", "long bit");
    browser.type("#v-tools_more_bit_diameter", "5/16");
    browser.type("#v-tools_pin-bit_point", "abc");
    browser.awaitText("#n-tools_pin-bit_point", "not a length");
    browser.type("#v-tools_pin-bit_reach", "2.5");
    browser.await("it is kept", () -> file().contains("reach: 2.5"));
    browser.awaitText("#notice", "Reach is changed.");
    whatIsNotKeptIsThere();
    browser.type("#v-tools_pin-bit_name", "peg bit");
    browser.await("all the fields anew", () -> browser.has("#v-tools_peg-bit_reach"));
    assertThat(browser.value("#v-tools_more_bit_name")).isEqualTo("long bit");
    assertThat(browser.element("#v-tools_more_bit_diameter").isDisplayed()).isTrue();
    assertThat(browser.value("#v-tools_more_bit_diameter")).isEqualTo("5/16");
  }

  private void whatIsNotKeptIsThere() {
    assertThat(browser.value("#v-tools_more_bit_name")).isEqualTo("long bit");
    assertThat(browser.element("#v-tools_more_bit_diameter").isDisplayed()).isTrue();
    assertThat(browser.value("#v-tools_more_bit_diameter")).isEqualTo("5/16");
    assertThat(browser.value("#v-tools_pin-bit_point")).isEqualTo("abc");
    assertThat(browser.attribute("#v-tools_pin-bit_point", "aria-invalid")).isEqualTo("true");
    assertThat(browser.text("#n-tools_pin-bit_point")).contains("not a length");
  }

  @Test
  void aPieceThatIsHalfFilledInStaysWhenAnotherIsCounted() {
    browser.open(caller.origin() + "/shop");
    browser.type("#v-rack_material", "oak ply");
    browser.type("#v-rack_thickness", "3/4");
    browser.type("#v-rack_length", "30");
    browser.type("#v-rack_width", "20");
    browser.press("Put it on the rack");
    browser.awaitText("#rack", "oak ply, sheet");
    browser.await("an empty form", () -> browser.value("#v-rack_material").isEmpty());
    browser.type("#v-rack_material", "birch ply");
    browser.type("input[name=count]", "5");
    browser.press("#rack", "Set");
    browser.awaitText("#notice", "It is counted.");
    assertThat(browser.value("input[name=count]")).isEqualTo("5");
    assertThat(browser.value("#v-rack_material")).isEqualTo("birch ply");
  }
}
