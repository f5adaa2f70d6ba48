package fourpin.shop.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.Interaction;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * Chromium without a window, driven as people do: by pointer, finger and keys. What takes time is
 * waited for by what comes of it.
 */
final class Browser implements AutoCloseable {

  private static final Duration LONGEST_WAIT = Duration.ofSeconds(30);
  private static final Duration BETWEEN_LOOKS = Duration.ofMillis(20);
  private static final int STEPS_OF_A_DRAG = 6;

  private final ChromeDriver driver;
  private final Path aside;
  private final Path downloads;
  private Screen screen = Screen.DESK;

  private Browser(ChromeDriver driver, Path aside, Path downloads) {
    this.driver = driver;
    this.aside = aside;
    this.downloads = downloads;
  }

  /**
   * @throws IllegalStateException with what is missing on this machine
   */
  static Browser start() {
    try {
      Path aside = Files.createTempDirectory("fourpin-browser");
      Path downloads = Files.createDirectory(aside.resolve("downloads"));
      return new Browser(Chromium.driver(aside, downloads), aside, downloads);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
    try (Stream<Path> all = Files.walk(aside)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  // Looking

  /** A page in a new tab, on a desk's screen, in the light; other tabs are shut. */
  void openAnew(String address) {
    List<String> old = List.copyOf(driver.getWindowHandles());
    driver.switchTo().newWindow(WindowType.TAB);
    String fresh = driver.getWindowHandle();
    for (String tab : old) {
      driver.switchTo().window(tab).close();
    }
    driver.switchTo().window(fresh);
    faults();
    on(Screen.DESK, Screen.Scheme.LIGHT);
    open(address);
  }

  void open(String address) {
    driver.get(address);
  }

  void on(Screen wanted, Screen.Scheme scheme) {
    boolean finger = wanted.pointing() == Screen.Pointing.FINGER;
    screen = wanted;
    cdp(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width",
            wanted.width(),
            "height",
            wanted.height(),
            "deviceScaleFactor",
            1,
            "mobile",
            finger));
    cdp("Emulation.setTouchEmulationEnabled", Map.of("enabled", finger));
    cdp(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(
                Map.of(
                    "name",
                    "prefers-color-scheme",
                    "value",
                    scheme == Screen.Scheme.DARK ? "dark" : "light"))));
  }

  /** Runs a script in each page of this tab before the page's own. */
  void eachPage(String script) {
    cdp("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
  }

  private void cdp(String command, Map<String, Object> parameters) {
    driver.executeCdpCommand(command, parameters);
  }

  String address() {
    return Objects.requireNonNull(driver.getCurrentUrl());
  }

  /** An element that the page has, or will have when it is whole. */
  WebElement element(String css) {
    await(css, () -> has(css));
    return driver.findElement(By.cssSelector(css));
  }

  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  boolean has(String css) {
    return !all(css).isEmpty();
  }

  /** What the browser shows of an element: nothing of what is hidden. */
  String text(String css) {
    return element(css).getText();
  }

  String attribute(String css, String name) {
    return Objects.requireNonNullElse(element(css).getDomAttribute(name), "");
  }

  String value(String css) {
    return Objects.requireNonNullElse(element(css).getDomProperty("value"), "");
  }

  /** What a script in the page answers. */
  Object run(String script, Object... arguments) {
    return Objects.requireNonNull(driver.executeScript(script, arguments));
  }

  /** Puts a script into the page, unless what it defines is there. */
  void define(String name, String script) {
    if (run("return typeof window[arguments[0]]", name).equals("undefined")) {
      driver.executeScript(script);
    }
  }

  /** The words that a script in the page answers. */
  List<String> words(String script, Object... arguments) {
    return ((List<?>) run(script, arguments)).stream().map(Object::toString).toList();
  }

  /** The words that a script in the page hands to its last argument when it has them. */
  List<String> wordsLater(String script, Object... arguments) {
    Object words = Objects.requireNonNull(driver.executeAsyncScript(script, arguments));
    return ((List<?>) words).stream().map(Object::toString).toList();
  }

  /** What stands under the finger that a screen reader follows. */
  String focused() {
    return (String)
        run("const e = document.activeElement; return e.id || e.textContent.trim() || e.tagName;");
  }

  /** What scripts and the content policy complained of since this was asked last. */
  List<String> faults() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        // Pages answer forms and what is missing with such codes on purpose.
        .filter(m -> !m.contains("Failed to load resource"))
        // In plain text this header means nothing to a browser; it is sent with every answer.
        .filter(m -> !m.contains("Cross-Origin-Opener-Policy header has been ignored"))
        .toList();
  }

  /** All of the page, not only what the window shows, as PNG. */
  byte[] picture() {
    Object picture =
        driver
            .executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true))
            .get("data");
    return Base64.getDecoder().decode(Objects.requireNonNull(picture).toString());
  }

  /**
   * The page as it comes out of a printer, as PDF.
   *
   * @param width of the paper in inches, as is {@code height}
   */
  byte[] printed(double width, double height) {
    Object pdf =
        driver
            .executeCdpCommand(
                "Page.printToPDF", Map.of("paperWidth", width, "paperHeight", height))
            .get("data");
    return Base64.getDecoder().decode(Objects.requireNonNull(pdf).toString());
  }

  // Waiting

  /** Until something is so; an element that was replaced meanwhile is looked at again. */
  void await(String what, BooleanSupplier so) {
    new WebDriverWait(driver, LONGEST_WAIT, BETWEEN_LOOKS)
        .ignoring(StaleElementReferenceException.class)
        .withMessage(() -> what + ", on " + address() + ", titled “" + driver.getTitle() + "”")
        .until(_ -> so.getAsBoolean());
  }

  void awaitText(String css, String words) {
    await("“" + words + "” in " + css, () -> has(css) && text(css).contains(words));
  }

  /**
   * The file that was downloaded; it is gone afterwards.
   *
   * @param kind how its name ends, as {@code pdf}
   */
  byte[] downloaded(String kind) {
    await("the download of a " + kind, () -> found(kind).isPresent());
    try {
      Path file = found(kind).orElseThrow();
      byte[] bytes = Files.readAllBytes(file);
      Files.delete(file);
      return bytes;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Chromium calls what is not yet whole otherwise. */
  private Optional<Path> found(String kind) {
    try (Stream<Path> files = Files.list(downloads)) {
      return files.filter(f -> f.toString().endsWith("." + kind)).findFirst();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  // Doing

  void click(String css) {
    element(css).click();
  }

  /** Presses the button or link that says so. */
  void press(String words) {
    press("body", words);
  }

  void press(String within, String words) {
    element(within)
        .findElement(By.xpath(".//*[self::button or self::a][normalize-space()='" + words + "']"))
        .click();
  }

  /** Types into a field in place of what stands there, and leaves it. */
  void type(String css, String words) {
    WebElement field = element(css);
    field.sendKeys(Keys.chord(Keys.CONTROL, "a"), words.isEmpty() ? Keys.DELETE : words);
    field.sendKeys(Keys.TAB);
  }

  /** Chooses a file that holds a text, and brings it in. */
  void bring(Path folder, String css, String text) {
    try {
      element(css).sendKeys(Files.writeString(folder.resolve("brought.yaml"), text).toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    press("Bring it in");
  }

  /** Types wherever the focus is. */
  void keys(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  /**
   * Takes hold of a place and leaves it at another, by mouse or finger as the screen has it.
   *
   * @param from x and y in the window, as are those of {@code to}
   */
  void drag(int[] from, int[] to) {
    PointerInput.Kind kind =
        screen.pointing() == Screen.Pointing.FINGER
            ? PointerInput.Kind.TOUCH
            : PointerInput.Kind.MOUSE;
    PointerInput hand = new PointerInput(kind, kind.name());
    Sequence moves = new Sequence(hand, 0);
    moves.addAction(at(hand, from[0], from[1]));
    moves.addAction(hand.createPointerDown(PointerInput.MouseButton.LEFT.asArg()));
    for (int i = 1; i <= STEPS_OF_A_DRAG; i++) {
      moves.addAction(at(hand, between(from[0], to[0], i), between(from[1], to[1], i)));
    }
    moves.addAction(hand.createPointerUp(PointerInput.MouseButton.LEFT.asArg()));
    driver.perform(List.of(moves));
  }

  /**
   * What a finger does, in parts of a drag.
   *
   * @param what touchStart, touchMove, touchEnd or touchCancel, which is what comes of it where the
   *     system takes the finger for itself
   * @param at x and y in the window; nothing where the finger is gone
   */
  void finger(String what, int... at) {
    List<Map<String, Integer>> points =
        at.length == 0 ? List.of() : List.of(Map.of("x", at[0], "y", at[1]));
    cdp("Input.dispatchTouchEvent", Map.of("type", what, "touchPoints", points));
  }

  private static int between(int from, int to, int step) {
    return from + (to - from) * step / STEPS_OF_A_DRAG;
  }

  private static Interaction at(PointerInput hand, int x, int y) {
    return hand.createPointerMove(Duration.ZERO, PointerInput.Origin.viewport(), x, y);
  }
}
