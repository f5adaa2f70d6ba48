package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.web.Screen.Scheme;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page, for everybody: judged by axe-core on a desk and a phone, in the light and in the
 * dark, and without a scroll to the side at 320 px. With {@code -Dscreens=FOLDER} pictures of all
 * are left there to be looked at.
 */
@ExtendWith(OneBrowser.class)
class EveryPageTest {

  private static final String SCREENS = System.getProperty("screens", "");

  /**
   * What stands out of the window to the side, unless it lies in a place that scrolls by itself.
   */
  private static final String WIDER =
      """
      const wide = document.documentElement.clientWidth;
      const roots = [document.documentElement, document.body];
      const scrolls = (e) => !roots.includes(e)
        && (getComputedStyle(e).overflowX !== "visible" || scrolls(e.parentElement));
      const wider = [...document.body.querySelectorAll("*")]
        .filter((e) => e.getBoundingClientRect().right > wide + 0.5 && !scrolls(e.parentElement))
        .map((e) => e.outerHTML.slice(0, 120) + " ends at " + e.getBoundingClientRect().right);
      const all = document.documentElement.scrollWidth;
      return all > wide ? [`the page is ${all} wide`, ...wider] : [];
      """;

  /** Whether what keeps the page for when there is no network has come. */
  private static final String WORKER = "return navigator.serviceWorker.controller !== null";

  /** Lettering of pictures that a style sheet of the page has made larger or smaller. */
  private static final String LETTERING =
      """
      return [...document.querySelectorAll("svg text[font-size]")]
        .filter((t) => Math.abs(parseFloat(getComputedStyle(t).fontSize) - t.getAttribute("font-size")) > 0.01)
        .map((t) => t.outerHTML.slice(0, 120) + " is " + getComputedStyle(t).fontSize);
      """;

  @TempDir static Path folder;

  private static Caller caller;
  private static ShopPages shop;
  private static Relay relay;

  private final Browser browser;

  EveryPageTest(Browser browser) {
    this.browser = browser;
  }

  @BeforeAll
  static void start() {
    caller = Caller.onNetwork(folder);
    shop = new ShopPages(caller, folder);
    relay = Relay.to(caller.port());
  }

  @AfterAll
  static void stop() {
    relay.close();
    caller.close();
  }

  /** A page as somebody meets it. */
  private record Page(String name, Consumer<Browser> open) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Page at(String name, String path) {
    return new Page(name, b -> b.open(caller.origin() + path));
  }

  private static Page job(String name, String text) {
    return new Page(name, b -> b.open(caller.origin() + caller.bring(text)));
  }

  private static String example(String name) {
    try {
      return Files.readString(Path.of("..", "examples", name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String readingRoom() {
    return example("reading-room.yaml");
  }

  private static void trust(Browser browser) {
    browser.open("http://" + OneAuthority.HOST + ":" + caller.port() + "/");
    browser.awaitText("h1", "Trust this machine");
  }

  static Stream<Page> pages() {
    return Stream.of(
        new Page("jobs", EveryPageTest::jobs),
        at("questions", "/new"),
        new Page("questions-wrong", EveryPageTest::wrongAnswers),
        job("inch", readingRoom()),
        job("millimetres", example("music-library.yaml")),
        new Page("remarks", EveryPageTest::remarks),
        new Page("cure-asks", EveryPageTest::asked),
        new Page("wrong-field", EveryPageTest::wrongField),
        new Page("not-built", EveryPageTest::notBuilt),
        new Page("working", EveryPageTest::working),
        new Page("working-alone", EveryPageTest::workingAlone),
        new Page("three-dimensions", EveryPageTest::solid),
        new Page("history", EveryPageTest::history),
        new Page("beside", EveryPageTest::beside),
        drawer(Drawer.SHELVES),
        drawer(Drawer.BAYS),
        drawer(Drawer.PANELS),
        new Page("group-wrong", EveryPageTest::wrongGroup),
        drawer(Drawer.WOOD),
        drawer(Drawer.HABITS),
        drawer(Drawer.CASES),
        drawer(Drawer.JOB),
        drawer(Drawer.ALL_CASES),
        new Page("packet", b -> of(b, "/packet")),
        new Page("layouts", b -> of(b, "/layouts")),
        new Page("job-rack", b -> of(b, "/rack")),
        new Page("rack", b -> shop.rack(b)),
        new Page("tools", b -> shop.shelf(b, "TOOLS")),
        new Page("shop-settings", b -> shop.shelf(b, "HABITS")),
        new Page("shop-lacks", b -> shop.lacks(b)),
        new Page("shop-history", b -> shop.history(b)),
        new Page("shop-beside", b -> shop.beside(b)),
        new Page("shop-late", b -> shop.late(b)),
        at("backup", "/backup"),
        new Page("backup-looked-at", EveryPageTest::backup),
        new Page("bench", EveryPageTest::bench),
        new Page("bench-away", EveryPageTest::benchAway),
        new Page("devices", EveryPageTest::devices),
        new Page("trust", EveryPageTest::trust),
        new Page("pairing", EveryPageTest::pairing),
        at("nothing-here", "/jobs/none"),
        new Page("wrong-file", EveryPageTest::wrongFile));
  }

  private static Page drawer(Drawer drawer) {
    return new Page("drawer-" + drawer.name(), b -> of(b, "?open=" + drawer.name()));
  }

  /** A page of a job. */
  private static void of(Browser browser, String page) {
    browser.open(caller.origin() + caller.bring(readingRoom()) + page);
  }

  private static void wrongGroup(Browser browser) {
    of(browser, "?open=FRONT");
    browser.click("details.begin summary");
    browser.type("#v-face-frame_stile", "9,5");
    browser.press("details.begin", "Add: Face frame");
    browser.awaitText("#n-face-frame_stile", "comma");
  }

  private static void backup(Browser browser) {
    caller.bring(readingRoom());
    try {
      Path file = Files.write(folder.resolve("backup.zip"), caller.bytes("/backup.zip"));
      browser.open(caller.origin() + "/backup");
      browser.element("#file").sendKeys(file.toString());
      browser.press("Look at it");
      browser.awaitText("h2", "What the backup would do");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void jobs(Browser browser) {
    caller.bring(readingRoom());
    browser.open(caller.origin() + "/");
  }

  private static void wrongAnswers(Browser browser) {
    browser.open(caller.origin() + "/new");
    browser.type("#q-width", "9,5");
    browser.press("Put it on the board");
    browser.awaitText("#h-width", "comma");
  }

  private static void remarks(Browser browser) {
    browser.open(
        caller.origin()
            + caller.bring(readingRoom().replace("front-row: 1 1/2", "front-row: 3/8")));
    browser.run(
        "document.querySelectorAll('.remark details').forEach((d) => (d.open = true)); return 1");
  }

  private static void asked(Browser browser) {
    browser.open(caller.origin() + caller.bring(example("music-library.yaml")));
    browser.click("[aria-label^='Do this: set hole-depth to 5.1']");
    browser.awaitText(".asks", "may crush the wood");
  }

  private static void wrongField(Browser browser) {
    browser.open(caller.origin() + caller.bring(readingRoom()));
    browser.type("#v-outside_width", "9,5");
    browser.awaitText("#n-outside_width", "comma");
  }

  private static void notBuilt(Browser browser) {
    browser.open(
        caller.origin()
            + caller.bring(readingRoom().replace("bays: 3", "bays: [{width: 100}, {}, {}]")));
    browser.awaitText("#board", "cannot be built");
  }

  private static void working(Browser browser) {
    browser.open(caller.origin() + caller.bring(readingRoom()));
    browser.click(".sums a.figure");
    browser.await("the working", () -> browser.element("#look").isDisplayed());
  }

  private static void workingAlone(Browser browser) {
    String job = caller.bring(readingRoom());
    String figure = Caller.first(caller.get(job).body(), "href=\"([^\"]*/working[^\"]*)\"");
    browser.open(caller.origin() + figure.replace("&amp;", "&"));
  }

  private static void solid(Browser browser) {
    browser.open(caller.origin() + caller.bring(example("pottery-cabinet.yaml")));
    browser.click("#solid-shown summary");
    browser.await("the case", () -> browser.attribute("#solid-canvas", "data-shown").equals("yes"));
  }

  private static void history(Browser browser) {
    String job = caller.bring(readingRoom());
    browser.open(caller.origin() + job);
    browser.press(".column", "Divide");
    browser.await("another bay", () -> browser.all(".column").size() == 4);
    browser.open(caller.origin() + job + "/history");
    browser.type("#variant-name", "four bays");
    browser.press("Keep as a variant");
    browser.await("the variant", () -> browser.has("input[name=with]"));
  }

  private static void beside(Browser browser) {
    history(browser);
    browser.click("[aria-label='What change 2 did']");
    browser.await("what differs", () -> browser.has(".compare mark"));
  }

  private static void bench(Browser browser) {
    browser.open(caller.origin() + caller.bring(readingRoom()) + "/bench");
    browser.run(
        "location.hash = document.querySelector('.more').closest('.step').id; return location.hash");
    browser.await("a counter", () -> browser.element(".step.now .more").isDisplayed());
  }

  private static void benchAway(Browser browser) {
    String job = caller.bring(readingRoom());
    String code = code(browser);
    browser.open(OneAuthority.origin(relay.port()) + job + "/bench");
    browser.type("#code", code);
    browser.press("Pair");
    browser.await("the worker", () -> (boolean) browser.run(WORKER));
    relay.is(Relay.Line.AWAY);
    browser.press("Done");
    browser.awaitText("#net", "No network");
    relay.is(Relay.Line.UP);
  }

  private static String code(Browser browser) {
    browser.open(caller.origin() + "/devices");
    browser.press("Pair a device");
    browser.await("a code", () -> browser.has(".code output"));
    return browser.text(".code output");
  }

  private static void devices(Browser browser) {
    String code = code(browser);
    browser.open(OneAuthority.origin(relay.port()) + "/pair");
    browser.type("#code", code);
    browser.type("#name", "bench phone");
    browser.press("Pair");
    browser.awaitText("h1", "Jobs");
    code(browser);
  }

  private static void pairing(Browser browser) {
    browser.open(OneAuthority.origin(relay.port()) + "/pair");
    browser.type("#code", "1");
    browser.press("Pair");
    browser.awaitText("#trouble", "not right");
  }

  private static void wrongFile(Browser browser) {
    browser.open(caller.origin() + "/");
    String wrong = readingRoom().replace("bays: 3", "bays: many");
    browser.bring(folder, "#file", wrong.replace("width: 80", "width: 9,5"));
    browser.awaitText("h1", "cannot be taken");
  }

  @ParameterizedTest
  @MethodSource("pages")
  void isThereForEverybody(Page page) {
    browser.openAnew(caller.origin() + "/new");
    page.open().accept(browser);
    List<String> troubles = new ArrayList<>();
    for (Screen screen : List.of(Screen.DESK, Screen.PHONE)) {
      show(page, screen, Scheme.LIGHT);
      Axe.violations(browser).forEach(v -> troubles.add(screen + ": " + v));
      show(page, screen, Scheme.DARK);
      Axe.contrasts(browser).forEach(v -> troubles.add(screen + ", dark: " + v));
    }
    show(page, Screen.TABLET, Scheme.LIGHT);
    browser.on(Screen.REFLOW, Scheme.LIGHT);
    Axe.violations(browser).forEach(v -> troubles.add(Screen.REFLOW + ": " + v));
    troubles.addAll(browser.words(WIDER));
    troubles.addAll(browser.words(LETTERING));
    assertThat(troubles).isEmpty();
    assertThat(browser.faults()).isEmpty();
  }

  /** What the checks are worth: they find what is wrong when something is. */
  @Test
  void theChecksFindWhatIsWrong() {
    browser.openAnew(caller.origin() + "/new");
    browser.on(Screen.REFLOW, Scheme.LIGHT);
    assertThat(browser.words(WIDER)).isEmpty();
    browser.run(
        """
        document.querySelector("label[for=q-title]").remove();
        document.querySelector("h1 + p").style.color = "#d0d0d0";
        document.querySelector("h1 + p").style.width = "500px";
        return true;
        """);
    assertThat(Axe.violations(browser))
        .anyMatch(v -> v.startsWith("label: "))
        .anyMatch(v -> v.startsWith("color-contrast: "));
    assertThat(browser.words(WIDER)).hasSize(2);
  }

  private void show(Page page, Screen screen, Scheme scheme) {
    browser.on(screen, scheme);
    if (!SCREENS.isEmpty()) {
      String name = page.name() + "-" + screen + "-" + scheme + ".png";
      try {
        Path folder = Files.createDirectories(Path.of(SCREENS));
        Files.write(folder.resolve(name.toLowerCase(Locale.ROOT)), browser.picture());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
