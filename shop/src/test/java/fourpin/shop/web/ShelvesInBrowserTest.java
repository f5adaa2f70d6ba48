package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.Keys;

/** Shelves moved on the drawing: they lie at holes and nowhere else. */
@ExtendWith(OneBrowser.class)
class ShelvesInBrowserTest {

  private static final String SHELF = "#shelf-2-1";

  /** Where a level of a shelf stands in the window. */
  private static final String PLACE_OF_LEVEL =
      """
      const handle = document.querySelector(arguments[0]);
      handle.scrollIntoView({block: "center", inline: "center"});
      const grip = handle.querySelector(".grip");
      const frame = handle.ownerSVGElement;
      const top = Number(handle.dataset.tops.split(" ")[arguments[1] - 1]);
      const x = Number(grip.getAttribute("x")) + Number(grip.getAttribute("width")) / 2;
      const y = top + Number(grip.getAttribute("height")) / 2;
      const place = new DOMPoint(x, y).matrixTransform(frame.getScreenCTM());
      return [Math.round(place.x), Math.round(place.y)];
      """;

  /** In CSS pixels. */
  private static final String HALF_OF_REACH =
      """
      return document.querySelector(arguments[0] + " .reach").getBoundingClientRect().height / 2;
      """;

  @TempDir static Path folder;

  private static Caller caller;

  private final Browser browser;

  private String job = "";

  ShelvesInBrowserTest(Browser browser) {
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

  @BeforeEach
  void openTheJob() throws IOException {
    job = caller.bring(Caller.readingRoom());
    browser.openAnew(caller.origin() + job);
  }

  @AfterEach
  void nothingWentWrongBehindThePage() {
    assertThat(browser.faults()).isEmpty();
  }

  private int level() {
    return Integer.parseInt(browser.attribute(SHELF, "aria-valuenow"));
  }

  private int[] placeOf(int level) {
    List<?> place = (List<?>) browser.run(PLACE_OF_LEVEL, SHELF, level);
    return place.stream().mapToInt(n -> ((Number) n).intValue()).toArray();
  }

  /** Where the page says that it is, and where the file of the job has it. */
  private void assertLies(int level) {
    assertThat(level()).isEqualTo(level);
    String[] heights = browser.attribute(SHELF, "data-heights").split("\\|");
    assertThat(browser.attribute(SHELF, "aria-valuetext")).isEqualTo(heights[level - 1]);
    assertThat(
            Caller.first(caller.get(job).body(), "id=\"shelf-2-1\"[^>]*aria-valuenow=\"(\\d+)\""))
        .isEqualTo(Integer.toString(level));
    assertThat(caller.file(job)).contains("- shelves:\n          at: [");
  }

  @ParameterizedTest
  @EnumSource(
      value = Screen.class,
      names = {"DESK", "TABLET", "PHONE"})
  void mouseAndFingerTakeAShelfToTheNearestHoles(Screen screen) {
    browser.on(screen, Screen.Scheme.LIGHT);
    int from = level();
    int to = from + 4;
    int[] end = placeOf(to);
    int[] start = placeOf(from);
    int[] next = placeOf(to + 1);
    int offTheHoles = (end[1] - next[1]) / 3;
    browser.drag(start, new int[] {start[0], end[1] - offTheHoles});
    browser.awaitText("#notice", "Shelf 1 of bay 2 moved to ");
    assertLies(to);
  }

  /** Its reach is wider than the shelf; a hand that shakes is not a move. */
  @ParameterizedTest
  @EnumSource(
      value = Screen.class,
      names = {"DESK", "PHONE"})
  void aShelfGrabbedAtItsEdgeStaysWhereItIs(Screen screen) {
    browser.on(screen, Screen.Scheme.LIGHT);
    int from = level();
    int[] middle = placeOf(from);
    int edge = ((Number) browser.run(HALF_OF_REACH, SHELF)).intValue() - 1;
    for (int off : List.of(-edge, edge)) {
      int[] start = {middle[0], middle[1] + off};
      browser.drag(start, new int[] {start[0] + 1, start[1] + 1});
      assertThat(level()).as("grabbed %d off", off).isEqualTo(from);
    }
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }

  @Test
  void arrowsMoveAShelfByOneHoleAndEscapeLeavesIt() {
    int from = level();
    browser.run("document.querySelector(arguments[0]).focus(); return true", SHELF);
    browser.keys(Keys.ARROW_UP, Keys.ARROW_UP, Keys.ESCAPE);
    assertThat(level()).isEqualTo(from);
    browser.keys(Keys.ARROW_UP, Keys.ARROW_UP, Keys.ARROW_UP, Keys.ARROW_DOWN, Keys.ENTER);
    browser.awaitText("#notice", "Shelf 1 of bay 2 moved to ");
    assertLies(from + 2);
    assertThat(browser.focused()).as("ready for the next press").isEqualTo(SHELF.substring(1));
    browser.press("Take back");
    browser.await("the shelf where it was", () -> level() == from);
  }

  /** Where their reaches lie over each other, the shelf whose middle is nearest is meant. */
  @ParameterizedTest
  @EnumSource(
      value = Screen.class,
      names = {"DESK", "REFLOW"})
  void aShelfCloseUnderAnotherIsTheOneTakenHoldOf(Screen screen) {
    browser.on(screen, Screen.Scheme.LIGHT);
    browser.run("document.querySelector('#shelf-2-2').focus(); return true");
    browser.keys(Keys.HOME, Keys.ENTER);
    browser.awaitText("#notice", "Shelf 2 of bay 2 moved to ");
    int above = Integer.parseInt(browser.attribute("#shelf-2-2", "aria-valuenow"));
    int from = level();
    int[] start = placeOf(from);
    browser.drag(start, new int[] {start[0], placeOf(from - 4)[1]});
    browser.awaitText("#notice", "Shelf 1 of bay 2 moved to ");
    assertLies(from - 4);
    assertThat(browser.attribute("#shelf-2-2", "aria-valuenow")).isEqualTo(Integer.toString(above));
  }

  /** It neither passes the others of its bay nor lies in them: there would be nothing to draw. */
  @Test
  void aShelfStopsAtTheLastHolesAndUnderTheShelfAboveIt() {
    int highest = Integer.parseInt(browser.attribute(SHELF, "aria-valuemax"));
    int above = Integer.parseInt(browser.attribute("#shelf-2-2", "aria-valuenow"));
    assertThat(highest).isLessThan(above);
    browser.run("document.querySelector(arguments[0]).focus(); return true", SHELF);
    browser.keys(Keys.HOME, Keys.ARROW_DOWN);
    assertThat(level()).isEqualTo(1);
    browser.keys(Keys.END, Keys.ARROW_UP);
    assertThat(level()).isEqualTo(highest);
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "Shelf 1 of bay 2 moved to ");
    assertLies(highest);
    assertThat(browser.attribute("#shelf-2-2", "aria-valuemin"))
        .as("where it lies: there is no room below it now")
        .isEqualTo(Integer.toString(above));
  }
}
