package fourpin.shop.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.file.Documents;
import fourpin.shop.store.DataPlace;
import fourpin.shop.store.Store;
import fourpin.shop.store.TestClock;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HostileRequestsTest {

  private static final TestClock CLOCK = new TestClock(Instant.parse("2026-03-04T12:00:00Z"));

  @TempDir private static Path folder;
  private static Store store;
  private static Store networks;
  private static RawServer alone;
  private static RawServer onNetwork;

  @BeforeAll
  static void start() throws GeneralSecurityException {
    store = SqlStore.open(new DataPlace.InFile(folder.resolve("shop.db")), CLOCK);
    networks = SqlStore.open(new DataPlace.InFile(folder.resolve("network.db")), CLOCK);
    alone = RawServer.alone(store, CLOCK);
    onNetwork = RawServer.onNetwork(networks, CLOCK);
  }

  @AfterAll
  static void stop() {
    alone.close();
    onNetwork.close();
    store.close();
    networks.close();
  }

  static List<HostileRequest> all() {
    return HostileRequest.all();
  }

  @ParameterizedTest
  @MethodSource("all")
  void isAnsweredAsTheTableSays(HostileRequest request) throws IOException {
    RawServer server = RawServer.isOnNetwork(request) ? onNetwork : alone;
    String answer = server.answer(request);
    assertThat(answer).startsWith("HTTP/1.1 " + request.status() + " ");
    if (request.status() == 303) {
      assertThat(answer.toLowerCase(Locale.ROOT))
          .contains("location: " + server.named(request.said()));
    } else {
      assertThat(answer).contains(request.said());
    }
    assertThat(answer.toLowerCase(Locale.ROOT))
        .doesNotContain("jetty", "javalin", "exception", "server:", "<");
    assertThat(answer)
        .contains(
            "Content-Security-Policy: default-src 'none'",
            "X-Content-Type-Options: nosniff",
            "Cache-Control: no-store");
  }

  @Test
  void theDocumentListsThem() {
    StringBuilder text =
        new StringBuilder(
            """
            # Requests that the server meets, and its answers

            Written from `hostile-requests.txt` beside the tests, which sends each of them to a server and holds its answer to this.
            Where no words stand, the web server refuses the request before Fourpin sees it. “Network” is a server that was started for
            devices: “network plain” comes from a device that is not encrypted, “network stranger” and “network paired” by TLS, “network host”
            from the machine itself. What is wrong below HTTP (an authority that is not trusted, another machine's name, TLS 1.1 and
            older) ends in the handshake, which `EncryptedLineTest` tries.
            """);
    String chapter = "";
    for (HostileRequest request : HostileRequest.all()) {
      if (!request.chapter().equals(chapter)) {
        chapter = request.chapter();
        text.append("\n## ")
            .append(chapter)
            .append("\n\n| request | from | answer |\n|---|---|---|\n");
      }
      text.append(row(request));
    }
    Documents.hold("docs/hostile-requests.md", text.toString());
  }

  private static String row(HostileRequest request) {
    return "| "
        + request.what()
        + ": `"
        + String.join("`<br>`", request.lines())
        + "`"
        + (request.body().isEmpty() ? "" : "<br>`" + request.body() + "`")
        + " | "
        + request.who()
        + " | "
        + request.status()
        + (request.said().isEmpty() ? "" : " " + request.said())
        + " |\n";
  }
}
