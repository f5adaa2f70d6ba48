package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The whole way with the keyboard alone, as people without a mouse go it. */
@ExtendWith(OneBrowser.class)
class KeyboardInBrowserTest {

  private static final int MOST_STOPS = 400;

  /** Whether the middle of what has the focus is to be seen (WCAG 2.2, 2.4.7 and 2.4.11). */
  private static final String HIDDEN_FOCUS =
      """
      const e = document.activeElement;
      const box = e.getBoundingClientRect();
      const x = Math.max(0, Math.min(box.left + box.width / 2, innerWidth - 1));
      const y = Math.max(0, Math.min(box.top + box.height / 2, innerHeight - 1));
      const there = document.elementFromPoint(x, y);
      const seen = e === document.body || there && (e.contains(there) || there.contains(e));
      return seen ? [] : [e.outerHTML.slice(0, 150) + " is under " + (there ? there.outerHTML.slice(0, 80) : "nothing")];
      """;

  /**
   * Whether one sees that it has the focus: an outline of 2 px (WCAG 2.2, 2.4.13), or a shelf in
   * colour.
   */
  private static final String UNMARKED_FOCUS =
      """
      const e = document.activeElement;
      const style = getComputedStyle(e);
      const outlined = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
      const grip = e.querySelector(":scope > .grip");
      const coloured = grip && !/none|, 0\\)$/.test(getComputedStyle(grip).stroke) && parseFloat(getComputedStyle(grip).strokeWidth) >= 2;
      return e === document.body || outlined || coloured ? [] : [e.outerHTML.slice(0, 150) + " has " + style.outline];
      """;

  @TempDir static Path folder;

  private static Caller caller;

  private final Browser browser;
  private final List<String> hidden = new ArrayList<>();

  KeyboardInBrowserTest(Browser browser) {
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

  /** Goes on by Tab until the focus is there. */
  private void tabTo(String css, String words) {
    for (int i = 0; i < MOST_STOPS; i++) {
      browser.keys(Keys.TAB);
      hidden.addAll(browser.words(HIDDEN_FOCUS));
      hidden.addAll(browser.words(UNMARKED_FOCUS));
      boolean there =
          (boolean)
              browser.run(
                  "const e = document.activeElement;"
                      + " return e.matches(arguments[0]) && e.textContent.includes(arguments[1])",
                  css,
                  words);
      if (there) {
        return;
      }
    }
    throw new AssertionError("Tab does not come to " + css + " " + words);
  }

  private void focusIsIn(String css) {
    assertThat((boolean) browser.run("return document.activeElement.matches(arguments[0])", css))
        .as(css + " has the focus, not " + browser.run(FOCUSED))
        .isTrue();
  }

  private static final String FOCUSED = "return document.activeElement.outerHTML.slice(0, 200)";

  /** What has the focus comes anew with each answer, some of it under another name. */
  @Test
  void theFocusStaysWhereItIsWhenAnAnswerComes() {
    browser.openAnew(
        caller.origin()
            + caller.bring(Caller.readingRoom().replace("front-row: 1 1/2", "front-row: 3/8"))
            + "?open=CASES");
    tabTo(".column:nth-child(2) button", "Divide");
    browser.keys(Keys.ENTER);
    browser.await("four bays", () -> browser.all(".column").size() == 4);
    focusIsIn(".column:nth-child(2) form[action$=divide] button");
    tabTo("#fields input", "");
    String name = browser.attribute("#fields input:focus", "id");
    browser.keys(Keys.END, "s", Keys.ENTER);
    browser.await("another name", () -> !browser.has("#" + name));
    focusIsIn("#fields .field:first-child input");
    assertThat(browser.value("#fields input:focus")).isEqualTo("bookcases");
    browser.run("document.querySelector('.remark details').open = true; return 1");
    browser.run("document.querySelector('form[action$=cure] button').focus(); return 1");
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "Done: ");
    focusIsIn("#margin");
    assertThat(browser.faults()).isEmpty();
  }

  @Test
  void whatACureWouldSpoilIsAskedWhereTheFocusIs() throws IOException {
    browser.openAnew(
        caller.origin()
            + caller.bring(Files.readString(Path.of("../examples/music-library.yaml"))));
    browser.run(
        "document.querySelector(\"[aria-label^='Do this: set hole-depth']\").focus(); return 1");
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "Not done yet: ");
    focusIsIn(".asks");
    browser.keys(Keys.TAB, Keys.TAB);
    focusIsIn(".asks a");
    browser.keys(Keys.ENTER);
    browser.await("the page as it was", () -> !browser.has(".asks"));
    focusIsIn("[aria-label^='Do this: set hole-depth']");
  }

  @Test
  void onThePageOfTheShopTheFocusStaysWhereItIsAndNothingIsDoneTwice() {
    caller.submit("/shop/first", "name", "Harrow Mill workshop", "unit", "inch");
    for (String material : List.of("oak ply", "birch ply")) {
      caller.submit("/shop/rack", piece(material));
    }
    browser.openAnew(caller.origin() + "/shop");
    browser.run("document.querySelectorAll(\"input[name=count]\")[0].focus(); return 1");
    browser.keys(Keys.END, "7", Keys.TAB);
    focusIsIn("[aria-label^='Set how many of birch ply']");
    browser.keys(Keys.ENTER);
    browser.await("the count", () -> browser.has("input[name=count][value='17']"));
    focusIsIn("[aria-label^='Set how many of birch ply']");
    tabTo("button", "Take out");
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "birch ply is taken out.");
    focusIsIn("#rack");
    browser.openAnew(caller.origin() + "/shop?open=HABITS");
    browser.type("#v-settings_pitch", "1 1/2");
    browser.awaitText("#notice", "is changed.");
    browser.run("document.querySelector(\"form[action='/shop/undo'] button\").focus(); return 1");
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "Taken back.");
    focusIsIn("form[action='/shop/undo'] button");
    assertThat(browser.faults()).isEmpty();
  }

  private static String[] piece(String material) {
    return new String[] {
      "rack_material",
      material,
      "rack_form",
      "sheet",
      "rack_thickness",
      "3/4",
      "rack_length",
      "96",
      "rack_width",
      "48",
      "rack_count",
      "1",
      "rack_price",
      "",
      "rack_note",
      ""
    };
  }

  @Test
  void aCureIsAppliedAndThePacketFetchedWithKeys() throws IOException {
    browser.openAnew(
        caller.origin()
            + caller.bring(Caller.readingRoom().replace("front-row: 1 1/2", "front-row: 3/8")));
    tabTo("form[action$=cure] button", "Do this");
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "Done: ");
    tabTo("#fields input", "");
    browser.keys(Keys.END, Keys.BACK_SPACE, "3", Keys.ENTER);
    browser.awaitText("#notice", "Quantity is changed.");
    tabTo("summary", "In three dimensions");
    tabTo("a.press", "Packet");
    browser.keys(Keys.ENTER);
    browser.awaitText("h1", "Packet of");
    tabTo("a", "Sheets for the bench");
    browser.keys(Keys.ENTER);
    assertThat(new String(browser.downloaded("pdf"), 0, 4, StandardCharsets.US_ASCII))
        .isEqualTo("%PDF");
    assertThat(hidden).as("what has the focus and is not to be seen").isEmpty();
    assertThat(browser.faults()).isEmpty();
  }

  /** Steps, their cautions, counters and what is asked about former ticks. */
  @Test
  void theBenchIsGoneThroughWithKeys() {
    browser.openAnew(caller.origin() + caller.bring(Caller.readingRoom()) + "/bench#step-9");
    browser.awaitText("#done", "0 of ");
    tabTo("summary", "");
    tabTo(".more", "hole");
    browser.keys(Keys.ENTER);
    assertThat(browser.text(".step.now .count")).isEqualTo("1");
    tabTo("#on", "Next");
    browser.keys(Keys.SPACE);
    assertThat(browser.attribute(".step.now", "data-step")).isEqualTo("10");
    assertThat(hidden).as("what has the focus and is not to be seen").isEmpty();
    assertThat(browser.faults()).isEmpty();
  }

  @Test
  void everythingIsReachedSeenAndDoneWithKeys() {
    browser.openAnew(caller.origin() + "/");
    tabTo("a.press", "Begin a new case");
    browser.keys(Keys.ENTER);
    browser.awaitText("h1", "New case");
    tabTo("#q-width", "");
    browser.keys("60 in");
    tabTo("button", "Put it on the board");
    browser.keys(Keys.ENTER);
    browser.await("the drawing", () -> browser.has("#board .handle"));

    tabTo(".handle", "");
    String from = browser.attribute(".handle", "aria-valuenow");
    browser.keys(Keys.ARROW_UP, Keys.ENTER);
    browser.awaitText("#notice", "moved to ");
    browser.await(
        "the shelf higher", () -> !browser.attribute(".handle", "aria-valuenow").equals(from));
    tabTo(".column button", "Divide");
    int bays = browser.all(".column").size();
    browser.keys(Keys.ENTER);
    browser.await("another bay", () -> browser.all(".column").size() == bays + 1);
    tabTo("button", "Take back");
    browser.keys(Keys.SPACE);
    browser.await("the bays as before", () -> browser.all(".column").size() == bays);
    tabTo("a", "At the bench");
    browser.keys(Keys.ENTER);
    browser.await("the bench", () -> browser.has("#tick"));
    tabTo("#tick", "Done");
    browser.keys(Keys.ENTER);
    browser.awaitText("#done", "1 of ");
    browser.keys(Keys.ARROW_RIGHT);
    tabTo("#back", "Back");
    assertThat(hidden).as("what has the focus and is not to be seen").isEmpty();
    assertThat(browser.faults()).isEmpty();
  }
}
