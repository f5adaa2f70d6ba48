package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
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

/** The case in three dimensions as a browser draws it. */
@ExtendWith(OneBrowser.class)
class SolidInBrowserTest {

  private static final String CANVAS = "#solid-canvas";

  /** Where the canvas stands on the page: left, top, width, height. */
  private static final String PLACE =
      """
      const box = document.querySelector("#solid-canvas").getBoundingClientRect();
      return [box.left + scrollX, box.top + scrollY, box.width, box.height].map(Math.round);
      """;

  /** The same in the window. */
  private static final String PLACE_IN_WINDOW =
      """
      const box = document.querySelector("#solid-canvas").getBoundingClientRect();
      return [box.left, box.top, box.width, box.height].map(Math.round);
      """;

  /** Counts what the graphics processor holds, and the cases that were fetched and drawn. */
  private static final String COUNT_BUFFERS =
      """
      window.buffers = 0;
      const gl = WebGL2RenderingContext.prototype;
      const { createBuffer, deleteBuffer } = gl;
      gl.createBuffer = function () { window.buffers += 1; return createBuffer.call(this); };
      gl.deleteBuffer = function (buffer) { if (buffer) window.buffers -= 1; return deleteBuffer.call(this, buffer); };
      const get = window.fetch;
      window.fetch = async (...of) => {
        const answer = await get(...of);
        if (String(of[0]).includes("solid.glb")) requestAnimationFrame(() => requestAnimationFrame(() => (window.fetched += 1)));
        return answer;
      };
      """;

  /** Dots by which a finger looks for a shelf, and by which it moves one. */
  private static final int FINE = 3;

  private static final int FAR = 60;

  private static final int CHANGES = 3;

  private static final String WIDTH =
      """
      return Math.round(document.querySelector("#solid-canvas").getBoundingClientRect().width);
      """;

  /** Dots of the frame of the canvas, and of its round corners. */
  private static final int INSET = 6;

  /** Nobody wants to look at a small case in a large picture. */
  private static final double TAKEN = 0.8;

  /** Share of the dots from which on somebody sees that something has moved. */
  private static final double SEEN = 0.005;

  /** Steps of red, green or blue, of 255. */
  private static final int PLAIN = 16;

  @TempDir static Path folder;

  private static Caller caller;

  private final Browser browser;

  SolidInBrowserTest(Browser browser) {
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
  void lookAtTheCase() throws IOException {
    String job = caller.bring(Files.readString(Path.of("..", "examples", "music-library.yaml")));
    browser.openAnew(caller.origin() + job);
    browser.click("#solid-shown summary");
    browser.await("the case", () -> browser.attribute(CANVAS, "data-shown").equals("yes"));
  }

  @AfterEach
  void nothingWentWrongBehindThePage() {
    assertThat(browser.faults()).isEmpty();
  }

  /** The dots of the canvas alone; what stands round it may change as well. */
  private int[] seen() {
    // Taking a picture of all the page takes its scroll bar away, and so the page is laid out anew.
    byte[] page = browser.picture();
    List<Integer> place =
        ((List<?>) browser.run(PLACE)).stream().map(n -> ((Number) n).intValue()).toList();
    try (ByteArrayInputStream picture = new ByteArrayInputStream(page)) {
      int width = place.get(2);
      int height = place.get(3);
      return ImageIO.read(picture)
          .getRGB(place.get(0), place.get(1), width, height, new int[width * height], 0, width);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Share of the dots that differ plainly: light may be rounded otherwise. */
  private static double between(int[] one, int[] other) {
    return IntStream.range(0, one.length).filter(i -> apart(one[i], other[i]) > PLAIN).count()
        / (double) one.length;
  }

  private static int apart(int one, int other) {
    return IntStream.of(0, 8, 16)
        .map(shift -> Math.abs((one >> shift & 0xFF) - (other >> shift & 0xFF)))
        .max()
        .orElseThrow();
  }

  @Test
  void doorsOpenByTheKeyboard() {
    browser.run("document.querySelector('#solid-doors').focus(); return 1;");
    int[] shut = seen();
    browser.keys(Keys.END);
    assertThat(browser.value("#solid-doors")).isEqualTo("100");
    assertThat(between(shut, seen())).isGreaterThan(SEEN);
    browser.keys(Keys.HOME);
    assertThat(between(shut, seen())).as("shut again").isLessThan(SEEN);
  }

  @Test
  void aShelfMovedOnTheDrawingIsMovedHere() {
    int[] before = seen();
    browser.run("document.querySelector('#shelf-1-1').focus({preventScroll: true}); return 1;");
    browser.keys(Keys.ARROW_UP, Keys.ARROW_UP, Keys.ENTER);
    browser.awaitText("#notice", "moved to");
    assertThat(between(before, seen())).isGreaterThan(SEEN);
  }

  @Test
  void whatIsTurnedComesBackAsAtFirst() {
    int[] first = seen();
    browser.click("[data-look='left']");
    assertThat(between(first, seen())).isGreaterThan(SEEN);
    browser.click("[data-look='first']");
    assertThat(between(first, seen())).isLessThan(SEEN);
  }

  /** A call, or a swipe of the system's, takes the finger away. */
  @Test
  void aFingerThatIsTakenAwayMovesNothing() {
    browser.on(Screen.PHONE, Screen.Scheme.LIGHT);
    String before = levels();
    String seen = browser.attribute("#head", "data-seen");
    browser.run(
        "document.querySelector('#solid-canvas').scrollIntoView({block: 'center'}); return 1");
    List<Integer> place =
        ((List<?>) browser.run(PLACE_IN_WINDOW))
            .stream().map(n -> ((Number) n).intValue()).toList();
    int x = place.get(0) + place.get(2) * 3 / 8;
    int y = place.get(1);
    browser.finger("touchStart", x, y);
    while (!browser.has(".handle[data-sent]")) {
      browser.finger("touchCancel");
      y += FINE;
      assertThat(y).as("a shelf under the finger").isLessThan(place.get(1) + place.get(3));
      browser.finger("touchStart", x, y);
    }
    browser.finger("touchMove", x, y + FAR);
    browser.await("the shelf moved", () -> !levels().equals(before));
    browser.finger("touchCancel");
    browser.await("the shelf where it was", () -> levels().equals(before));
    assertThat(browser.attribute("#head", "data-seen")).as("nothing was sent").isEqualTo(seen);
  }

  private String levels() {
    return browser
        .words(
            "return [...document.querySelectorAll('.handle')].map((h) => h.id + ' ' + h.getAttribute('aria-valuenow'))")
        .toString();
  }

  /** Else a graphics processor fills up while somebody works at a case. */
  @Test
  void whatWasShownBeforeAChangeIsLetGo() {
    String job = browser.address();
    browser.eachPage(COUNT_BUFFERS);
    browser.open(job);
    browser.click("#solid-shown summary");
    browser.await("the case", () -> browser.attribute(CANVAS, "data-shown").equals("yes"));
    long before = (long) browser.run("return window.buffers");
    assertThat(before).isPositive();
    for (int i = 0; i < CHANGES; i++) {
      String seen = browser.attribute("#head", "data-seen");
      browser.run("window.fetched = 0; return 1");
      browser.type("#v-outside_depth", 330 + i + " mm");
      browser.await("an answer", () -> !browser.attribute("#head", "data-seen").equals(seen));
      browser.await("the case", () -> browser.run("return window.fetched").equals(1L));
    }
    browser.await(
        "no more than before", () -> (long) browser.run("return window.buffers") <= before);
  }

  @ParameterizedTest
  @EnumSource(Screen.class)
  void theWholeCaseIsInTheFirstPicture(Screen screen) {
    browser.on(screen, Screen.Scheme.LIGHT);
    int[] dots = seen();
    int width = ((Number) browser.run(WIDTH)).intValue();
    int height = dots.length / width;
    List<Integer> wood =
        IntStream.range(0, dots.length)
            .filter(i -> inside(i % width, width) && inside(i / width, height))
            .filter(i -> apart(dots[i], dots[width * INSET + INSET]) > PLAIN)
            .boxed()
            .toList();
    IntSummaryStatistics across = wood.stream().mapToInt(i -> i % width).summaryStatistics();
    IntSummaryStatistics down = wood.stream().mapToInt(i -> i / width).summaryStatistics();
    assertThat(across.getMin()).as("left").isGreaterThan(INSET);
    assertThat(across.getMax()).as("right").isLessThan(width - 1 - INSET);
    assertThat(down.getMin()).as("top").isGreaterThan(INSET);
    assertThat(down.getMax()).as("foot").isLessThan(height - 1 - INSET);
    assertThat(Math.max(spread(across) / width, spread(down) / height))
        .as("share of the picture that the case takes")
        .isGreaterThan(TAKEN);
  }

  /** Within the frame of the canvas and its round corners. */
  private static boolean inside(int at, int length) {
    return at >= INSET && at < length - INSET;
  }

  private static double spread(IntSummaryStatistics dots) {
    return dots.getMax() - dots.getMin();
  }
}
