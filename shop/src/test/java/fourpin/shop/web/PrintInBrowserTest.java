package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pages printed from the browser, by whoever wants the sheet that is on the screen. With {@code
 * -Dscreens=FOLDER} the PDFs are left there to be looked at.
 */
@ExtendWith(OneBrowser.class)
class PrintInBrowserTest {

  private static final String SCREENS = System.getProperty("screens", "");
  private static final double POINTS_PER_INCH = 72;

  /** What is pressed on a screen, and nothing on paper. */
  private static final String PRESSES =
      """
      return [...document.querySelectorAll("button, .press")].map((b) => b.textContent.trim()).filter((w) => w.length > 1);
      """;

  /** Everything in tables, remarks and steps: shut away or not, it belongs on paper. */
  private static final String WORDS =
      """
      return [...document.querySelectorAll("#sheets td, #sheets th, .remark > p, .figures a, .step > .words, .items li, .check, .caution details, svg .words, figure svg text")]
        .map((e) => e.textContent.trim()).filter((w) => w);
      """;

  /** Makes a page that prints badly: a drawing higher and wider than any sheet, and a press. */
  private static final String SPOIL =
      """
      const sheet = new CSSStyleSheet();
      sheet.insertRule("@media print { .paper svg { max-height: none !important; height: 600mm !important; } .presses, .press { display: block !important; } #margin { display: none } }");
      document.adoptedStyleSheets = [sheet];
      return 1;
      """;

  @TempDir static Path folder;

  private static Caller caller;

  private final Browser browser;

  PrintInBrowserTest(Browser browser) {
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

  /** Sizes in inches (ISO 216; ANSI Y14.1). */
  private enum Sheet {
    A4(8.27, 11.69),
    LETTER(8.5, 11);

    private final double width;
    private final double height;

    Sheet(double width, double height) {
      this.width = width;
      this.height = height;
    }
  }

  /** A page of a job on a kind of paper. */
  private record Print(String name, String text, String page, Sheet sheet) {
    @Override
    public String toString() {
      return name + " on " + sheet;
    }
  }

  static Stream<Print> prints() {
    String inch = Caller.readingRoom();
    String remarks = inch.replace("front-row: 1 1/2", "front-row: 3/8");
    String millimetres = example("music-library.yaml");
    return Stream.of(
            new Print("design-with-remarks", remarks, "", Sheet.LETTER),
            new Print("design-millimetres", millimetres, "", Sheet.LETTER),
            new Print("bench", inch, "/bench", Sheet.LETTER),
            new Print("bench-millimetres", millimetres, "/bench", Sheet.LETTER),
            new Print("packet", inch, "/packet", Sheet.LETTER),
            new Print("history", inch, "/history", Sheet.LETTER))
        .flatMap(p -> Stream.of(p, new Print(p.name(), p.text(), p.page(), Sheet.A4)));
  }

  private static String example(String name) {
    try {
      return Files.readString(Path.of("..", "examples", name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Printed print(Print print) {
    byte[] pdf = browser.printed(print.sheet().width, print.sheet().height);
    if (!SCREENS.isEmpty()) {
      String name = "print-" + print.name() + "-" + print.sheet() + ".pdf";
      try {
        Path screens = Files.createDirectories(Path.of(SCREENS));
        Files.write(screens.resolve(name.toLowerCase(Locale.ROOT)), pdf);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return new Printed(pdf);
  }

  private void open(Print print) {
    browser.openAnew(caller.origin() + caller.bring(print.text()) + print.page());
    if (print.page().equals("/bench")) {
      browser.awaitText("#done", "0 of ");
    }
  }

  private List<String> troubles(Printed printed) {
    List<String> troubles = new ArrayList<>(printed.cutOff());
    List<String> lines = printed.lines();
    browser.words(PRESSES).stream()
        .distinct()
        .filter(lines::contains)
        .forEach(p -> troubles.add("a press: " + p));
    String words = printed.words();
    browser.words(WORDS).stream()
        .distinct()
        .filter(w -> !words.contains(Printed.dense(w)))
        .forEach(w -> troubles.add("not there: " + w));
    return troubles;
  }

  @ParameterizedTest
  @MethodSource("prints")
  void pagesComeWholeAndWithoutPresses(Print print) {
    open(print);
    try (Printed printed = print(print)) {
      assertThat(troubles(printed)).isEmpty();
      assertThat(printed.lines()).as("something is printed").hasSizeGreaterThan(3);
      for (PDPage page : printed.sheets().getPages()) {
        assertThat((double) page.getMediaBox().getWidth())
            .isBetween(points(print.sheet().width) - 1, points(print.sheet().width) + 1);
        assertThat((double) page.getMediaBox().getHeight())
            .isBetween(points(print.sheet().height) - 1, points(print.sheet().height) + 1);
      }
    }
  }

  private static double points(double inches) {
    return inches * POINTS_PER_INCH;
  }

  /** Nobody wants a sheet of paper for each line that is written large for two metres. */
  @Test
  void theStepsTakeLessThanASheetEach() {
    Print print = new Print("bench", Caller.readingRoom(), "/bench", Sheet.A4);
    open(print);
    try (Printed printed = print(print)) {
      assertThat(printed.sheets().getNumberOfPages()).isLessThan(browser.all(".step").size());
    }
  }

  /** What the checks are worth. */
  @Test
  void theChecksFindWhatIsWrong() {
    Print print = new Print("spoilt", Caller.readingRoom(), "", Sheet.A4);
    open(print);
    browser.run(SPOIL);
    try (Printed printed = print(print)) {
      assertThat(troubles(printed))
          .anyMatch(t -> t.contains(": a line at "))
          .anyMatch(t -> t.equals("a press: Take back"))
          .anyMatch(t -> t.startsWith("not there: "));
    }
  }
}
