package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A device on its way in and out. It looks like one of the network by the header Via. */
class DevicesTest {

  private static final String TOKEN = "name=\"token\" value=\"([^\"]*)\"";

  private static final String TICK =
      """
      {"plan": "0123456789abcdef0123456789abcdef", "sent": 2,
       "ticks": [{"step": "1", "state": "done", "counted": 0, "said": 1}]}
      """;

  @TempDir private Path folder;
  private Caller caller;

  @BeforeEach
  void start() {
    caller = Caller.at(folder);
  }

  @AfterEach
  void stop() {
    caller.close();
  }

  private HttpRequest.Builder fromPhone(String path, String cookie) {
    HttpRequest.Builder request = caller.request(path).header("Via", "1.1 network");
    return cookie.isEmpty() ? request : request.header("Cookie", cookie);
  }

  private HttpResponse<String> phone(String path, String cookie) {
    return caller.send(fromPhone(path, cookie));
  }

  private HttpResponse<String> phoneSends(String path, String cookie, String form) {
    String token = Caller.first(phone("/pair", cookie).body(), TOKEN);
    return caller.send(
        fromPhone(path, cookie)
            .header("Origin", caller.origin())
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString("token=" + token + "&" + form)));
  }

  private String code() {
    return Caller.first(caller.submit("/devices/code").body(), "<output>([\\d ]*)</output>");
  }

  private String paired(String name) {
    HttpResponse<String> answer =
        phoneSends("/pair", "", "name=" + name + "&code=" + code().replace(" ", "+"));
    assertThat(answer.statusCode()).isEqualTo(303);
    return answer.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
  }

  @Test
  void aDeviceIsLetInByACodeAndOutAgain() {
    assertThat(phone("/", "").headers().firstValue("Location")).contains("/pair");
    String cookie = paired("Bench+phone");
    assertThat(phone("/", cookie).statusCode()).isEqualTo(200);
    String devices = caller.get("/devices").body();
    assertThat(devices).contains("Bench phone");
    String end = Caller.first(devices, "action=\"(/devices/[^\"]*/end)\"");
    assertThat(caller.submit(end).statusCode()).isEqualTo(303);
    assertThat(caller.get("/devices").body()).contains("No device is paired");
    assertThat(phone("/", cookie).headers().firstValue("Location")).contains("/pair");
  }

  @Test
  void whatADeviceChangesBearsItsName() {
    String cookie = paired("Tablet");
    HttpResponse<String> begun = phoneSends("/new", cookie, "title=Box");
    assertThat(begun.statusCode()).isEqualTo(303);
    String job = begun.headers().firstValue("Location").orElseThrow();
    String token = Caller.first(phone("/pair", cookie).body(), TOKEN);
    HttpResponse<String> ticked =
        caller.send(
            fromPhone(job + "/ticks", cookie)
                .header("Origin", caller.origin())
                .header("Content-Type", "application/json")
                .header("Fourpin-Token", token)
                .POST(BodyPublishers.ofString(TICK)));
    assertThat(ticked.body()).contains("\"device\":\"Tablet\"");
  }

  @Test
  void aWrongCodeIsSaidSo() {
    code();
    HttpResponse<String> answer = phoneSends("/pair", "", "name=x&code=1");
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("That code is not right");
    assertThat(answer.headers().firstValue("Set-Cookie")).isEmpty();
  }

  @Test
  void aDeviceIsToldWhereBackupsAreMade() {
    String cookie = paired("phone");
    for (String path : List.of("/backup", "/backup.zip")) {
      HttpResponse<String> answer = phone(path, cookie);
      assertThat(answer.statusCode()).isEqualTo(403);
      assertThat(answer.body())
          .contains("<h1>Not from this device</h1>", "at the machine that runs Fourpin only");
    }
    assertThat(phoneSends("/backup/restore", cookie, "upload=x").statusCode()).isEqualTo(403);
  }

  @Test
  void noDeviceLetsAnotherIn() {
    String cookie = paired("phone");
    assertThat(phone("/devices", cookie).statusCode()).isEqualTo(403);
    assertThat(phoneSends("/devices/code", cookie, "").statusCode()).isEqualTo(403);
    assertThat(phoneSends("/devices/any/end", cookie, "").statusCode()).isEqualTo(403);
    assertThat(phone("/devices", "").headers().firstValue("Location"))
        .contains("/pair?to=/devices");
  }

  /** What refuses a visitor does not stand at the top of pages. */
  @Test
  void pagesLeadADeviceWhereItMayGo() {
    String cookie = paired("phone");
    assertThat(ways(phone("/shop", cookie))).containsExactly("/", "/new", "/shop");
    ways(phone("/", cookie)).forEach(w -> assertThat(phone(w, cookie).statusCode()).isEqualTo(200));
    assertThat(ways(phone("/pair", ""))).isEmpty();
    assertThat(ways(caller.get("/shop")))
        .containsExactly("/", "/new", "/shop", "/devices", "/backup")
        .allMatch(w -> caller.get(w).statusCode() == 200);
  }

  private static List<String> ways(HttpResponse<String> page) {
    return page.body().contains("<nav aria-label=\"Fourpin\">")
        ? Caller.all(
            page.body().split("<nav aria-label=\"Fourpin\">")[1].split("</nav>")[0],
            "href=\"([^\"]*)\"")
        : List.of();
  }

  /** As a phone that looks at a code on a sheet, and whose owner mistypes the first time. */
  @Test
  void aDeviceGoesOnToWhereItWanted() {
    String pairing = phone("/jobs/a-1/bench", "").headers().firstValue("Location").orElseThrow();
    assertThat(pairing).isEqualTo("/pair?to=/jobs/a-1/bench");
    assertThat(kept(phone(pairing, "").body())).isEqualTo("/jobs/a-1/bench");
    String again = phoneSends("/pair", "", "to=/jobs/a-1/bench&name=Big+phone&code=1").body();
    assertThat(kept(again)).isEqualTo("/jobs/a-1/bench");
    assertThat(Caller.first(again, "name=\"name\"[^>]* value=\"([^\"]*)\"")).isEqualTo("Big phone");
    assertThat(goesOnTo("/jobs/a-1/bench")).isEqualTo("/jobs/a-1/bench");
  }

  private static String kept(String page) {
    return Caller.first(page, "name=\"to\" value=\"([^\"]*)\"");
  }

  /** The server writes its own origin before a path. */
  private String goesOnTo(String to) {
    String form = "to=" + to + "&name=x&code=" + code().replace(" ", "+");
    return phoneSends("/pair", "", form)
        .headers()
        .firstValue("Location")
        .orElseThrow()
        .replace(caller.origin(), "");
  }

  /**
   * Each is what a form sends, in its own code (URL Standard, application/x-www-form-urlencoded).
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "//evil",
        "///evil",
        "/%5Cevil",
        "%5C%5Cevil",
        "/%2Fevil",
        "%2F%2Fevil",
        "/%252Fevil",
        "/%09/evil",
        "/%0D%0ALocation:evil",
        "https:evil",
        "https://evil/",
        "http:%5C%5Cevil",
        "javascript:alert(1)",
        "evil",
        "@evil",
        "/jobs/../..//evil",
        "/jobs?to=//evil",
        "/jobs%23//evil"
      })
  void aDeviceIsLedNowhereElse(String to) {
    assertThat(goesOnTo(to)).isEqualTo("/");
    assertThat(kept(phone("/pair?to=" + to, "").body())).isEqualTo("/");
    assertThat(kept(phoneSends("/pair", "", "to=" + to + "&code=1").body())).isEqualTo("/");
  }
}
