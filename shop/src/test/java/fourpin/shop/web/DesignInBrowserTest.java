package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The way from the questions to the packet, as makers go it in a browser. */
@ExtendWith(OneBrowser.class)
class DesignInBrowserTest {

  @TempDir static Path folder;

  private static Caller caller;

  private final Browser browser;

  DesignInBrowserTest(Browser browser) {
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
  void openTheJobs() {
    browser.openAnew(caller.origin() + "/");
  }

  @AfterEach
  void nothingWentWrongBehindThePage() {
    assertThat(browser.faults()).isEmpty();
  }

  /** Brings a job in and opens its page. @return where it stands on the server */
  private String open(String text) {
    String job = caller.bring(text);
    browser.open(caller.origin() + job);
    return job;
  }

  private String seen() {
    return browser.attribute("#head", "data-seen");
  }

  /** Until the page shows another revision than that. */
  private void awaitAnswer(String seen) {
    browser.await("an answer", () -> !seen().equals(seen));
  }

  @Test
  void theQuestionsGiveAWholeCaseAndBadAnswersAreSaidBesideThem() throws IOException {
    browser.press("Begin a new case");
    browser.type("#q-title", "Stove wall");
    browser.type("#q-width", "9,5");
    browser.type("#q-ceiling", "7' 10\"");
    browser.press("Put it on the board");
    browser.awaitText("#h-width .wrong", "comma in a length");
    assertThat(browser.attribute("#q-width", "aria-invalid")).isEqualTo("true");
    assertThat(browser.value("#q-width")).isEqualTo("9,5");
    assertThat(browser.value("#q-ceiling")).as("the other answers stay").isEqualTo("7' 10\"");

    browser.type("#q-width", "7' 2 1/4\"");
    browser.press("Put it on the board");
    browser.awaitText("h1", "Stove wall");
    assertThat(browser.has("#board svg .handle")).isTrue();
    assertThat(browser.text("#sheets")).contains("Cut list");
    assertThat(browser.all("#sheets table tbody tr")).hasSizeGreaterThan(10);
    browser.press("Packet");
    browser.press("Sheets for the bench");
    try (PDDocument packet = Loader.loadPDF(browser.downloaded("pdf"))) {
      assertThat(packet.getNumberOfPages()).isGreaterThan(5);
      assertThat(packet.getDocumentInformation().getTitle()).contains("Stove wall");
    }
  }

  @Test
  void aFieldChangesTheDrawingAndABadOneIsAnsweredBesideIt() throws IOException {
    String job = open(Caller.readingRoom());
    String seen = seen();
    browser.type("#v-outside_width", "6' 7 1/2\"");
    browser.awaitText("#notice", "Width is changed.");
    awaitAnswer(seen);
    assertThat(browser.run("return document.querySelector('#board').textContent").toString())
        .containsPattern("79\\W½");
    assertThat(caller.file(job))
        .isEqualTo(Caller.readingRoom().replace("width: 80", "width: 6' 7 1/2\""));

    String good = seen();
    browser.type("#v-outside_width", "9,5");
    browser.awaitText("#n-outside_width .wrong", "comma in a length");
    assertThat(browser.attribute("#v-outside_width", "aria-invalid")).isEqualTo("true");
    assertThat(browser.value("#v-outside_width")).isEqualTo("9,5");
    assertThat(seen()).isEqualTo(good);
    browser.type("#v-outside_width", "2000 mm");
    browser.await("the trouble gone", () -> !browser.has("#n-outside_width .wrong"));
    assertThat(caller.file(job)).contains("width: 2000 mm\n");
  }

  @Test
  void whatSomebodyElseChangedMeanwhileIsToldAndNotOverwritten() throws IOException {
    String job = open(Caller.readingRoom());
    caller.post(
        job + "/put", "seen", seen(), "case", "bookcase", "field", "outside_width", "value", "81");
    browser.type("#v-outside_width", "82");
    browser.awaitText("#n-outside_width .wrong", "has changed it to 81 since you looked");
    assertThat(caller.file(job)).contains("width: 81\n");
    browser.type("#v-outside_height", "83");
    browser.await("the height", () -> caller.file(job).contains("height: 83\n"));
    assertThat(caller.file(job)).contains("width: 81\n");
  }

  @Test
  void aBayIsDividedAndStepsAreTakenBackAndBroughtBack() throws IOException {
    String job = open(Caller.readingRoom());
    assertThat(browser.all(".column")).hasSize(3);
    browser.press(".column:nth-child(2)", "Divide");
    browser.await("four bays", () -> browser.all(".column").size() == 4);
    String divided = caller.file(job);
    String seen = seen();
    browser.type("#v-outside_height", "80");
    awaitAnswer(seen);
    String lowered = caller.file(job);
    browser.press("Take back");
    browser.await("the height as before", () -> browser.value("#v-outside_height").equals("84"));
    assertThat(caller.file(job)).isEqualTo(divided);
    browser.press("Take back");
    browser.await("three bays", () -> browser.all(".column").size() == 3);
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
    browser.press("Take back");
    browser.awaitText("#notice", "nothing to take back");
    browser.press("Bring back");
    browser.await("four bays", () -> browser.all(".column").size() == 4);
    browser.press("Bring back");
    browser.await("the height again", () -> browser.value("#v-outside_height").equals("80"));
    assertThat(caller.file(job)).isEqualTo(lowered);
  }

  @Test
  void anOlderStateIsGoneBackToAndVariantsStandSideBySide() throws IOException {
    String job = open(Caller.readingRoom());
    browser.press(".column:nth-child(2)", "Divide");
    browser.await("four bays", () -> browser.all(".column").size() == 4);
    String divided = caller.file(job);
    browser.open(caller.origin() + job + "/history");
    browser.type("#variant-name", "four bays");
    browser.press("Keep as a variant");
    browser.await("the variant", () -> browser.has("input[name=with]"));
    browser.click("[aria-label='Go back to change 1']");
    browser.awaitText("main", "back to change 1");
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());

    browser.click("input[name=with]");
    browser.press("Put side by side");
    browser.await("what differs", () -> browser.has(".compare mark"));
    assertThat(browser.text("main")).contains("four bays");
    browser.press("Adopt this");
    browser.awaitText("main", "four bays");
    browser.open(caller.origin() + job);
    assertThat(browser.all(".column")).hasSize(4);
    assertThat(caller.file(job)).isEqualTo(divided);
  }

  @Test
  void aBackupIsTakenAndPutBackInPlaceOfWhatCameAfterIt() throws IOException {
    String job = open(Caller.readingRoom());
    browser.open(caller.origin() + "/backup");
    browser.press("Download a backup");
    Path file = Files.write(folder.resolve("backup.zip"), browser.downloaded("zip"));
    browser.open(caller.origin() + job);
    String seen = seen();
    browser.type("#v-outside_width", "81");
    awaitAnswer(seen);
    assertThat(caller.file(job)).isNotEqualTo(Caller.readingRoom());

    browser.open(caller.origin() + "/backup");
    browser.element("#file").sendKeys(file.toString());
    browser.press("Look at it");
    browser.awaitText("main", "Nothing has been changed yet");
    assertThat(caller.file(job)).contains("width: 81\n");
    browser.press("Put the backup in place of all that is here");
    String before = Caller.readingRoom();
    browser.await("the job as it was", () -> caller.file(job).equals(before));
    browser.open(caller.origin() + job);
    assertThat(browser.value("#v-outside_width")).isEqualTo("80");
  }

  /** Keeps what the page sends until it is let go. */
  private static final String HOLD =
      """
      const send = XMLHttpRequest.prototype.send;
      const held = [];
      XMLHttpRequest.prototype.send = function (...body) { held.push(() => send.apply(this, body)); };
      window.letGo = () => { XMLHttpRequest.prototype.send = send; held.forEach((each) => each()); };
      return 1;
      """;

  @Test
  void whatTakesLongSaysSoAndOffersToStop() throws IOException {
    String job = open(Caller.readingRoom());
    browser.run(HOLD);
    browser.type("#v-outside_width", "78");
    browser.awaitText("#busy-says", "Working it out.");
    assertThat(Axe.violations(browser)).isEmpty();
    browser.press("#busy", "Stop");
    browser.awaitText("#busy-says", "cannot be stopped any more");
    browser.run("window.letGo(); return 1");
    browser.awaitText("#notice", "Width is changed.");
    browser.await("nothing to wait for", () -> !browser.element("#busy").isDisplayed());
    assertThat(caller.file(job)).contains("width: 78\n");
  }

  @Test
  void aFindingIsCuredByOnePress() throws IOException {
    String job = open(Caller.readingRoom().replace("front-row: 1 1/2", "front-row: 3/8"));
    assertThat(browser.text(".verdict")).isNotBlank();
    assertThat(browser.all(".remark.error")).isNotEmpty();
    browser.press(".remark.error .cures", "Do this");
    browser.awaitText("#notice", "Done: set front-row to ");
    browser.await("no error", () -> !browser.has(".remark.error"));
    assertThat(caller.file(job)).doesNotContain("front-row: 3/8");
  }

  @Test
  void aFigureOpensItsWorkingAndTheFocusComesBackToIt() throws IOException {
    open(Caller.readingRoom());
    String figure = ".sums a.figure";
    String words = browser.text(figure);
    browser.run("document.querySelector('.sums a.figure').focus(); return true");
    browser.keys(Keys.ENTER);
    browser.await("the working", () -> browser.element("#look").isDisplayed());
    assertThat(browser.text("#look .formula")).isNotBlank();
    assertThat(browser.text("#working-title")).contains(words);
    assertThat(browser.text("#working")).contains("Source:");
    browser.keys(Keys.ESCAPE);
    browser.await("the working shut", () -> !browser.element("#look").isDisplayed());
    assertThat(browser.focused()).isEqualTo(words);
  }

  @Test
  void theFileGoesOutIsEditedAndComesBackWithItsComments() throws IOException {
    String job = open(Caller.readingRoom());
    String first = seen();
    browser.type("#v-outside_width", "79");
    awaitAnswer(first);
    browser.press("Job file");
    String file = new String(browser.downloaded("yaml"), StandardCharsets.UTF_8);
    String text = Leaf.back(file).text(); // so that only the page can say what was edited
    assertThat(text).isEqualTo(Caller.readingRoom().replace("width: 80", "width: 79"));
    String edited = text.replace("bays: 3", "bays: 4 # one more, for the atlases");
    Path path = Files.writeString(folder.resolve("edited.yaml"), edited);
    browser.element("#file").sendKeys(path.toString());
    browser.press("Put it in place");
    browser.await("four bays", () -> browser.all(".column").size() == 4);
    String seen = seen();
    browser.type("#v-outside_width", "81");
    awaitAnswer(seen);
    assertThat(caller.file(job)).isEqualTo(edited.replace("width: 79", "width: 81"));
  }
}
