package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** Pages that stay open while the server stops, starts anew, or lets the device in no longer. */
@ExtendWith(OneBrowser.class)
class ServerGoneInBrowserTest {

  @TempDir Path folder;

  private Caller caller;

  private final Browser browser;

  ServerGoneInBrowserTest(Browser browser) {
    this.browser = browser;
  }

  @BeforeEach
  void start() {
    caller = Caller.at(folder);
  }

  @AfterEach
  void stop() {
    caller.close();
    // Of requests that come to nothing htmx itself tells whoever looks into the browser's log.
    assertThat(browser.faults()).allMatch(f -> f.contains("/own/htmx.js"));
  }

  private void startAnew(int port) {
    caller = Caller.at(folder, port);
  }

  private void restart() {
    int port = caller.port();
    caller.close();
    startAnew(port);
  }

  private String open() {
    String job = caller.bring(Caller.readingRoom());
    browser.openAnew(caller.origin() + job);
    return job;
  }

  @Test
  void anOpenDeskGoesOnWithAServerThatWasStartedAnew() {
    String job = open();
    restart();
    browser.type("#v-outside_width", "78");
    browser.awaitText("#notice", "Width is changed.");
    assertThat(caller.file(job)).contains("width: 78\n");
    restart();
    browser.run("document.querySelector('#shelf-1-1').focus(); return 1");
    browser.keys(Keys.ARROW_UP, Keys.ENTER);
    browser.awaitText("#notice", "moved to");
    restart();
    browser.press("Take back");
    browser.awaitText("#notice", "Taken back.");
  }

  @Test
  void whatIsTypedWhileTheServerIsAwayStaysAndIsSentAgain() {
    String job = open();
    int port = caller.port();
    caller.close();
    browser.type("#v-outside_width", "78");
    browser.awaitText("#notice", "The server does not answer");
    assertThat(browser.value("#v-outside_width")).isEqualTo("78");
    String level = browser.attribute("#shelf-1-1", "aria-valuenow");
    browser.run("document.querySelector('#shelf-1-1').focus(); return 1");
    browser.keys(Keys.ARROW_UP, Keys.ENTER);
    browser.await(
        "the shelf where it is kept",
        () -> browser.attribute("#shelf-1-1", "aria-valuenow").equals(level));

    startAnew(port);
    browser.run("document.querySelector('#v-outside_width').focus(); return 1");
    browser.keys(Keys.ENTER);
    browser.awaitText("#notice", "Width is changed.");
    assertThat(caller.file(job)).contains("width: 78\n");
  }

  @Test
  void answersToTheQuestionsStayUntilSomebodyTakesThem() {
    browser.openAnew(caller.origin() + "/new");
    browser.type("#q-title", "Stove wall");
    int port = caller.port();
    caller.close();
    browser.press("Put it on the board");
    browser.awaitText(".unsent", "What you typed stays here");
    assertThat(browser.value("#q-title")).isEqualTo("Stove wall");
    assertThat(Axe.violations(browser)).isEmpty();
    startAnew(port);
    browser.press("Put it on the board");
    browser.awaitText("h1", "Stove wall");
  }

  @Test
  void aDeskThatIsNotPairedAnyMoreSaysSo() {
    caller.close();
    caller = Caller.onNetwork(folder);
    try (Relay relay = Relay.to(caller.port())) {
      String job = caller.bring(Caller.readingRoom());
      browser.openAnew(OneAuthority.origin(relay.port()) + "/pair");
      browser.type("#code", Caller.first(caller.submit("/devices/code").body(), "<output>([^<]*)"));
      browser.press("Pair");
      browser.awaitText("h1", "Jobs");
      browser.open(OneAuthority.origin(relay.port()) + job);
      String device = Caller.first(caller.get("/devices").body(), "/devices/([^/\"]*)/end");
      caller.submit("/devices/" + device + "/end");

      browser.type("#v-outside_width", "78");
      browser.awaitText("#notice", "This device is not paired any more");
      assertThat(browser.value("#v-outside_width")).isEqualTo("78");
      browser.run("document.querySelector('#notice').textContent = ''; return 1");
      browser.press(".drawers", "Front");
      browser.awaitText("#notice", "This device is not paired any more");
      assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
    }
  }
}
