package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * No tick is lost in silence, whatever becomes of the job, the pairing or the network meanwhile.
 */
@ExtendWith(OneBrowser.class)
class BenchTicksInBrowserTest {

  /** Names under which the device keeps ticks of a job. */
  private static final String KEPT =
      """
      return Object.keys(localStorage).filter((name) => name.startsWith("fourpin-bench:" + arguments[0] + ":"));
      """;

  /** Remembers the locks that keep the screen on, and how many were asked for. */
  private static final String LOCKS =
      """
      window.locks = [];
      const request = WakeLock.prototype.request;
      WakeLock.prototype.request = async function (kind) {
        const lock = await request.call(this, kind);
        window.locks.push(lock);
        return lock;
      };
      """;

  /** A battery that runs low lets no page keep the screen on. */
  private static final String NO_MORE_LOCKS =
      """
      WakeLock.prototype.request = () => Promise.reject(new DOMException("no", "NotAllowedError"));
      return window.locks.pop().release().then(() => 1);
      """;

  @TempDir static Path folder;

  private static Caller caller;
  private static Relay relay;

  private final Browser browser;

  BenchTicksInBrowserTest(Browser browser) {
    this.browser = browser;
  }

  @BeforeAll
  static void start() {
    caller = Caller.onNetwork(folder);
    relay = Relay.to(caller.port());
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

  private static String atRelay(String path) {
    return OneAuthority.origin(relay.port()) + path;
  }

  private static String code() {
    return Caller.first(caller.submit("/devices/code").body(), "<p class=\"code\"><output>([^<]*)");
  }

  /** A phone with the bench page of a job, and what keeps it for when there is no network. */
  private void openOnPhone(String job) {
    browser.openAnew(atRelay("/pair?to=" + job + "/bench"));
    browser.on(Screen.PHONE, Screen.Scheme.LIGHT);
    pair("bench phone");
    browser.awaitText("#done", "0 of ");
    browser.await(
        "the worker",
        () -> (boolean) browser.run("return navigator.serviceWorker.controller !== null"));
  }

  private void pair(String name) {
    browser.type("#code", code());
    browser.type("#name", name);
    browser.press("Pair");
  }

  private static void narrow(String job) {
    String seen = caller.seen(job);
    caller.submit(job + "/put", "seen", seen, "field", "outside_width", "value", "78");
  }

  private static List<String> cards(String job) {
    return Caller.all(caller.get(job + "/bench").body(), "data-like=\"([^\"]*)\"");
  }

  private static String plan(String job) {
    return Caller.first(caller.get(job + "/bench").body(), "data-plan=\"([^\"]*)\"");
  }

  private static String held(String job, String plan) {
    return caller.get(job + "/ticks?plan=" + plan).body();
  }

  private static String done(int step) {
    return "{\"step\":\"" + step + "\",\"state\":\"done\"";
  }

  private void tick(int step) {
    browser.run("location.hash = 'step-' + arguments[0]; return 1", step);
    browser.await(
        "step " + step, () -> browser.attribute(".step.now", "data-step").equals("" + step));
    browser.press("Done");
  }

  /**
   * A job that a phone without network has ticked two steps of.
   *
   * @param plan the digest of its steps before it was changed
   * @param stays a step that reads the very same afterwards
   * @param staysAs its number then
   * @param changes a step that does not
   */
  private record Away(String job, String plan, int stays, int staysAs, int changes) {}

  private static Away changedMeanwhile(String job) {
    List<String> before = cards(job);
    String plan = plan(job);
    narrow(job);
    List<String> after = cards(job);
    assertThat(plan(job)).isNotEqualTo(plan);
    String stays = before.stream().filter(after::contains).findFirst().orElseThrow();
    String changes = before.stream().filter(c -> !after.contains(c)).findFirst().orElseThrow();
    return new Away(
        job,
        plan,
        before.indexOf(stays) + 1,
        after.indexOf(stays) + 1,
        before.indexOf(changes) + 1);
  }

  private Away comeBack() {
    String job = caller.bring(Caller.readingRoom());
    openOnPhone(job);
    relay.is(Relay.Line.AWAY);
    Away away = changedMeanwhile(job);
    tick(away.stays());
    tick(away.changes());
    browser.awaitText("#net", "No network: 2 kept here until there is");
    assertThat(held(job, away.plan())).contains("\"ticks\":[]");
    relay.is(Relay.Line.UP);
    browser.open(atRelay(job + "/bench"));
    browser.await("the ticks at the server", () -> held(job, away.plan()).contains("bench phone"));
    assertThat(held(job, away.plan())).contains(done(away.stays()), done(away.changes()));
    return away;
  }

  @Test
  void ticksOfTheStepsBeforeAChangeAreBroughtAndThoseThatReadTheSameAreOffered() {
    Away away = comeBack();
    assertThat(browser.text("#before")).contains("Ticked off before the job was changed");
    assertThat(browser.text("#same")).contains("Step " + away.staysAs() + ", done: ");
    assertThat(browser.text("#other-part summary"))
        .contains("Not among the steps as they read now");
    browser.click("#other-part summary");
    assertThat(browser.text("#other")).contains("It was step " + away.changes() + ", done: ");
    assertThat(Axe.violations(browser)).isEmpty();
    assertThat(browser.text("#done")).as("nothing is taken along unasked").startsWith("0 of ");

    browser.press("Take these ticks along");
    browser.awaitText("#done", "1 of ");
    String now = plan(away.job());
    browser.await("it at the server", () -> held(away.job(), now).contains(done(away.staysAs())));
    assertThat(held(away.job(), now)).doesNotContain(done(away.changes()));
    browser.open(atRelay(away.job() + "/bench"));
    browser.awaitText("#done", "1 of ");
    assertThat(browser.element("#before").isDisplayed()).isFalse();
    assertThat(browser.words(KEPT, away.job())).hasSize(1);
  }

  /** A change is taken back, and with it come the former steps and what was said of them last. */
  @Test
  void whatWasSaidNotToBeDoneSinceIsNotOfferedAgain() {
    String job = caller.bring(Caller.readingRoom());
    List<String> first = cards(job);
    narrow(job);
    List<String> then = cards(job);
    String stays = then.stream().filter(first::contains).findFirst().orElseThrow();
    browser.openAnew(caller.origin() + job + "/bench");
    browser.awaitText("#done", "0 of ");
    tick(then.indexOf(stays) + 1);
    browser.awaitText("#done", "1 of ");
    caller.submit(job + "/undo", "seen", caller.seen(job));
    browser.open(caller.origin() + job + "/bench");
    browser.awaitText("#same", "Step " + (first.indexOf(stays) + 1) + ", done: ");
    tick(first.indexOf(stays) + 1);
    browser.awaitText("#done", "1 of ");
    browser.press("Back");
    browser.press("Not done");
    browser.awaitText("#done", "0 of ");
    browser.open(caller.origin() + job + "/bench");
    browser.awaitText("#done", "0 of ");
    assertThat(browser.element("#before").isDisplayed()).isFalse();
  }

  /** What the other said comes with the first answer of the server, after the page is shown. */
  @Test
  void whatAnotherDeviceSaidNotToBeDoneSinceIsNotOffered() {
    String job = caller.bring(Caller.readingRoom());
    List<String> first = cards(job);
    browser.openAnew(caller.origin() + job + "/bench");
    browser.awaitText("#done", "0 of ");
    narrow(job);
    List<String> then = cards(job);
    String stays = first.stream().filter(then::contains).findFirst().orElseThrow();
    tick(first.indexOf(stays) + 1);
    browser.awaitText("#done", "1 of ");
    int staysAs = then.indexOf(stays) + 1;
    otherDeviceSays(job, staysAs, "done");
    otherDeviceSays(job, staysAs, "open");
    browser.open(caller.origin() + job + "/bench");
    browser.await("no offer", () -> !browser.element("#before").isDisplayed());
    assertThat(browser.text("#done")).startsWith("0 of ");
  }

  private static void otherDeviceSays(String job, int step, String state) {
    long now = System.currentTimeMillis();
    String tick =
        "{\"step\":\""
            + step
            + "\",\"state\":\""
            + state
            + "\",\"counted\":0,\"said\":"
            + now
            + "}";
    String said = "{\"plan\":\"" + plan(job) + "\",\"sent\":" + now + ",\"ticks\":[" + tick + "]}";
    HttpRequest.Builder request =
        caller
            .request(job + "/ticks")
            .header("Origin", caller.origin())
            .header("Content-Type", "application/json")
            .header("Fourpin-Token", caller.token());
    assertThat(caller.send(request.POST(HttpRequest.BodyPublishers.ofString(said))).statusCode())
        .isEqualTo(200);
  }

  @Test
  void ticksBeforeAChangeAreLeftWhenTheMakerSaysSo() {
    Away away = comeBack();
    browser.press("Leave them open");
    browser.await("the question gone", () -> !browser.element("#before").isDisplayed());
    browser.open(atRelay(away.job() + "/bench"));
    browser.awaitText("#done", "0 of ");
    assertThat(browser.element("#before").isDisplayed()).isFalse();
    assertThat(held(away.job(), plan(away.job()))).contains("\"ticks\":[]");
  }

  @Test
  void anOpenPageSaysThatTheJobWasChangedAndLoadsAnew() {
    String job = caller.bring(Caller.readingRoom());
    browser.openAnew(caller.origin() + job + "/bench");
    browser.awaitText("#done", "0 of ");
    assertThat(browser.element("#changed").isDisplayed()).isFalse();
    narrow(job);
    tick(1);
    browser.awaitText("#changed", "Stop: the job was changed");
    assertThat(Axe.violations(browser)).isEmpty();
    browser.press("Load it anew");
    browser.awaitText("#before", "before the job was changed");
  }

  @Test
  void aDeviceThatIsNotPairedAnyMoreSaysSoAndIsPairedAgainWithItsTicks() {
    String job = caller.bring(Caller.readingRoom());
    openOnPhone(job);
    String devices = caller.get("/devices").body();
    Caller.all(devices, "/devices/([^/\"]*)/end")
        .forEach(d -> caller.submit("/devices/" + d + "/end"));
    tick(3);
    browser.awaitText("#net", "This device is not paired any more: 1 kept here.");
    assertThat(held(job, plan(job))).contains("\"ticks\":[]");
    browser.press("#net", "Pair this device again");
    browser.awaitText("h1", "Pair this device");
    browser.type("#code", "0000 0000");
    browser.press("Pair");
    browser.awaitText("#trouble", "not right");
    pair("phone again");
    browser.awaitText("#done", "1 of ");
    browser.await("the tick at the server", () -> held(job, plan(job)).contains("phone again"));
    assertThat(browser.text("#net")).isEmpty();
  }

  @Test
  void aJobThatIsGoneIsSaidToBeGone() {
    byte[] backup = caller.bytes("/backup.zip");
    String job = caller.bring(Caller.readingRoom());
    browser.openAnew(caller.origin() + job + "/bench");
    browser.awaitText("#done", "0 of ");
    String preview = caller.upload("/backup/look", backup).body();
    caller.submit(
        "/backup/restore", "upload", Caller.first(preview, "name=\"upload\" value=\"([^\"]*)\""));
    assertThat(caller.get(job).statusCode()).isEqualTo(404);
    tick(3);
    browser.awaitText("#net", "This job is no longer here: 1 kept on this device.");
    assertThat(browser.words(KEPT, job)).hasSize(1);
    browser.press("#net", "To the jobs");
    browser.awaitText("h1", "Jobs");
  }

  /** Locks go when a page is hidden, and at the system's will. */
  @Test
  void theScreenIsKeptOnAgainWhenTheLockIsLostAndTheMakerIsToldWhereItCannot() {
    browser.openAnew(caller.origin() + "/new");
    browser.eachPage(LOCKS);
    browser.open(caller.origin() + caller.bring(Caller.readingRoom()) + "/bench");
    browser.await("a lock", () -> browser.run("return window.locks.length").equals(1L));
    browser.run("return window.locks[0].release().then(() => 1)");
    browser.await("another lock", () -> browser.run("return window.locks.length").equals(2L));
    assertThat(browser.element("#sleeps").isDisplayed()).isFalse();
    browser.run(NO_MORE_LOCKS);
    browser.awaitText("#sleeps", "The screen may go dark here");
    assertThat(Axe.violations(browser)).isEmpty();
  }
}
