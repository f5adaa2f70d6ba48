package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A phone at the bench: let in by a code, away from the network for a while, and back. */
@ExtendWith(OneBrowser.class)
class BenchInBrowserTest {

  /** Whether what keeps the page for when there is no network has come. */
  private static final String WORKER = "return navigator.serviceWorker.controller !== null";

  /** Whether the browser lets the page keep the screen on. */
  private static final String STAY_AWAKE =
      """
      const done = arguments[arguments.length - 1];
      navigator.wakeLock.request("screen").then(() => done(["awake"]), (e) => done([String(e)]));
      """;

  @TempDir static Path folder;

  private static Caller caller;
  private static Relay relay;
  private static String job;

  private final Browser browser;

  BenchInBrowserTest(Browser browser) {
    this.browser = browser;
  }

  @BeforeAll
  static void start() throws IOException {
    caller = Caller.onNetwork(folder);
    relay = Relay.to(caller.port());
    job = caller.bring(Files.readString(Path.of("..", "examples", "reading-room.yaml")));
  }

  @AfterAll
  static void stop() {
    relay.close();
    caller.close();
  }

  @AfterEach
  void nothingWentWrongBehindThePage() {
    assertThat(browser.faults()).isEmpty();
  }

  private static String origin() {
    return OneAuthority.origin(relay.port());
  }

  private String code() {
    browser.openAnew(caller.origin() + "/devices");
    browser.press("Pair a device");
    browser.await("a code", () -> browser.has(".code output"));
    return browser.text(".code output");
  }

  private void openOnPhone(String path) {
    browser.openAnew(origin() + path);
    browser.on(Screen.PHONE, Screen.Scheme.LIGHT);
  }

  private String shown() {
    return browser.attribute(".step.now", "data-step");
  }

  @Test
  void aPhoneIsPairedTicksWithoutNetworkAndBringsItsTicksBack() {
    openOnPhone(job + "/bench");
    assertThat(browser.text("h1")).isEqualTo("Pair this device");
    browser.type("#code", "0000 0000");
    browser.press("Pair");
    browser.awaitText("#trouble", "That code is not right");

    String code = code();
    openOnPhone(job + "/bench#step-1");
    browser.type("#code", "0000 0000");
    browser.type("#name", "bench phone");
    browser.press("Pair");
    browser.awaitText("#trouble", "That code is not right");
    browser.type("#code", code);
    browser.press("Pair");
    browser.awaitText("#done", "0 of ");
    assertThat(browser.address()).isEqualTo(origin() + job + "/bench#step-1");
    assertThat(caller.get("/devices").body()).contains("bench phone");
    assertThat(browser.all(".step").stream().filter(s -> s.isDisplayed())).hasSize(1);
    String first = shown();
    browser.press("Done");
    browser.await("the next step", () -> !shown().equals(first));
    browser.await("the tick at the server", () -> held().contains("\"bench phone\""));

    browser.await("the worker", () -> (boolean) browser.run(WORKER));
    assertThat(browser.wordsLater(STAY_AWAKE)).containsExactly("awake");
    assertThat(browser.element("#sleeps").isDisplayed()).isFalse();
    relay.is(Relay.Line.AWAY);
    String second = shown();
    browser.press("Done");
    browser.awaitText("#net", "No network: 1 kept here until there is");
    browser.open(origin() + job + "/bench");
    browser.awaitText("#done", "2 of ");
    browser.run(
        "location.hash = 'step-' + document.querySelector('.more').closest('.step').dataset.step; return 1");
    browser.await("a counter", () -> browser.element(".step.now .more").isDisplayed());
    String bored = shown();
    browser.click(".step.now .more");
    browser.click(".step.now .more");
    browser.click(".step.now .more");
    browser.click(".step.now .fewer");
    assertThat(browser.text(".step.now .count")).isEqualTo("2");
    browser.awaitText("#net", "No network: 2 kept here until there is");
    assertThat(held()).doesNotContain("\"step\":\"" + second + "\"");

    relay.is(Relay.Line.UP);
    browser.run("dispatchEvent(new Event('online')); return 1");
    browser.await("all at the server", () -> browser.text("#net").isEmpty());
    assertThat(held().replaceAll("\"at\":\\d+,", ""))
        .contains(
            "{\"step\":\""
                + second
                + "\",\"state\":\"done\",\"counted\":0,\"device\":\"bench phone\"}")
        .contains(
            "{\"step\":\""
                + bored
                + "\",\"state\":\"open\",\"counted\":2,\"device\":\"bench phone\"}");

    browser.openAnew(caller.origin() + job + "/bench");
    browser.awaitText("#done", "2 of ");
    browser.run("location.hash = 'step-" + second + "'; return 1");
    browser.awaitText(".step.now .by", "Done, says bench phone");
  }

  /** Steps of few numbers with a picture, each as it comes up: what does not lie in sight. */
  private static final String OUT_OF_SIGHT =
      """
      const hidden = [];
      for (const step of document.querySelectorAll('.step:has(.few):has(.pictures)')) {
        location.hash = step.id;
        dispatchEvent(new HashChangeEvent('hashchange'));
        scrollTo(0, 0);
        const bar = (step.querySelector('.counter') || document.querySelector('.moves')).getBoundingClientRect();
        const seen = [...step.querySelectorAll('.hazards, .numbers dd, .pictures figure:first-child')];
        if (seen.some((s) => s.getBoundingClientRect().bottom > bar.top + 1)) hidden.push(step.id);
        if (bar.top < innerHeight * 0.75) hidden.push(step.id + ' under buttons');
      }
      return hidden.join(' ');
      """;

  @ParameterizedTest
  @EnumSource(Screen.class)
  void pictureNumbersAndKindsOfCautionsAreSeenAtOnce(Screen screen) {
    browser.openAnew(caller.origin() + job + "/bench");
    browser.on(screen, Screen.Scheme.LIGHT);
    assertThat(browser.all(".step .few")).isNotEmpty();
    assertThat(browser.run(OUT_OF_SIGHT)).isEqualTo("");
  }

  /** Steps at which the page, and not the picture alone, could be moved sideways. */
  private static final String WIDER =
      """
      const wide = document.documentElement.clientWidth;
      const wider = [];
      for (const step of document.querySelectorAll('.step')) {
        location.hash = step.id;
        dispatchEvent(new HashChangeEvent('hashchange'));
        if (document.documentElement.scrollWidth > wide) wider.push(step.id);
      }
      return wider.join(' ');
      """;

  @ParameterizedTest
  @ValueSource(strings = {"reading-room", "music-library", "tool-cupboard"})
  void noStepIsWiderThanASmallPhone(String example) throws IOException {
    String text = Files.readString(Path.of("..", "examples", example + ".yaml"));
    browser.openAnew(caller.origin() + caller.bring(text) + "/bench");
    browser.on(Screen.REFLOW, Screen.Scheme.LIGHT);
    assertThat(browser.run(WIDER)).isEqualTo("");
    browser.run("document.querySelector('.step.now').style.width = '500px'; return 1");
    assertThat(browser.run(WIDER)).as("what the check is worth").isNotEqualTo("");
  }

  @Test
  void thePartsCodeOpensItsFirstStepThatIsNotDone() throws IOException {
    String own = caller.bring(Files.readString(Path.of("..", "examples", "reading-room.yaml")));
    browser.openAnew(caller.origin() + own + "/bench#part-bookcase.p2");
    String first = shown();
    assertThat(browser.attribute(".step.now", "data-parts")).contains("bookcase.p2");
    browser.press("Done");
    browser.await("the next step", () -> !shown().equals(first));
    browser.run("location.hash = 'part-bookcase.p2'; return 1");
    browser.await(
        "another step of it",
        () -> browser.attribute(".step.now", "data-parts").contains("bookcase.p2"));
    assertThat(shown()).isNotEqualTo(first);
    browser.run("location.hash = 'part-%E0%A4%A'; return 1");
    assertThat(browser.attribute(".step.now", "data-parts")).contains("bookcase.p2");
  }

  @Test
  void theCodeOfASheetOpensItsNextStepAndSaysWhenTheJobHasOthersSince() throws IOException {
    String own = caller.bring(Files.readString(Path.of("..", "examples", "reading-room.yaml")));
    String page = caller.get(own + "/bench").body();
    String print = Caller.first(page, "data-plan=\"([0-9a-f]{8})");
    browser.openAnew(caller.origin() + own + "/bench#step-9-10.12:" + print);
    assertThat(shown()).isEqualTo("9");
    assertThat(browser.text("#printed")).isEmpty();
    browser.press("Done");
    browser.await("the next step", () -> shown().equals("10"));
    browser.press("Done");
    browser.run("location.hash = 'step-9-10.12:" + print + "'; return 1");
    browser.await("the last of the sheet", () -> shown().equals("12"));

    caller.submit(own + "/put", "seen", seen(own), "field", "outside_width", "value", "78");
    browser.openAnew(caller.origin() + own + "/bench#step-9-10.12:" + print);
    browser.awaitText("#printed", "another state of this job");
    assertThat(shown()).isEqualTo("9");
    assertThat(Axe.violations(browser)).isEmpty();
  }

  private String seen(String job) {
    return Caller.first(caller.get(job).body(), "data-seen=\"([^\"]*)\"");
  }

  /** Before it is encrypted, a device learns whom to trust, and nothing else. */
  @Test
  void aDeviceThatComesInPlainTextLearnsWhomToTrustAndGoesOnEncrypted() {
    String plain = "http://" + OneAuthority.HOST + ":" + caller.port();
    browser.openAnew(plain + "/");
    assertThat(browser.address()).isEqualTo(plain + "/trust");
    assertThat((boolean) browser.run("return isSecureContext")).isFalse();
    assertThat(browser.text("#fingerprint")).isEqualTo(OneAuthority.get().fingerprint());
    assertThat(Axe.violations(browser)).isEmpty();
    browser.press("Go on, encrypted");
    browser.awaitText("h1", "Pair this device");
    assertThat(browser.address()).startsWith("https://" + OneAuthority.HOST);
    assertThat((boolean) browser.run("return isSecureContext")).isTrue();
    browser.openAnew(plain + job);
    assertThat(browser.address())
        .startsWith("https://" + OneAuthority.HOST)
        .endsWith("/pair?to=" + job);
  }

  private String held() {
    String plan = Caller.first(caller.get(job + "/bench").body(), "data-plan=\"([^\"]*)\"");
    return caller.get(job + "/ticks?plan=" + plan).body();
  }
}
