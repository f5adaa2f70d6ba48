package fourpin.shop.web.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fourpin.shop.store.TestClock;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Handshakes with Java's own client, over loopback. */
class EncryptedLineTest {

  /** The client's own clock judges; what is made lately and what is made later is good by it. */
  private final TestClock clock = new TestClock(Instant.now().minus(Duration.ofDays(40)));

  private final Set<String> names = new HashSet<>(Set.of("127.0.0.1", "bench.local"));
  private final Server server = new Server();
  private Authority authority;
  private EncryptedLine line;

  @BeforeEach
  void start() throws Exception {
    authority = Authority.make(clock.instant());
    line = new EncryptedLine(authority, () -> names, clock);
    server.addConnector(line.connector(server, new HttpConfiguration(), "127.0.0.1", 0));
    server.setHandler(
        new Handler.Abstract() {
          @Override
          public boolean handle(Request request, Response response, Callback callback) {
            Content.Sink.write(response, true, "secure " + request.isSecure(), callback);
            return true;
          }
        });
    server.start();
  }

  @AfterEach
  void stop() throws Exception {
    server.stop();
    line.close();
  }

  private int port() {
    return ((ServerConnector) server.getConnectors()[0]).getLocalPort();
  }

  /**
   * @param asked for whom the client takes the server
   */
  private SSLSocket shaken(Authority trusted, String asked, String... protocols)
      throws IOException, GeneralSecurityException {
    Socket plain = new Socket(InetAddress.getLoopbackAddress(), port());
    SSLSocket socket =
        (SSLSocket)
            Trusting.only(trusted).getSocketFactory().createSocket(plain, asked, port(), true);
    SSLParameters parameters = socket.getSSLParameters();
    parameters.setEndpointIdentificationAlgorithm("HTTPS");
    socket.setSSLParameters(parameters);
    socket.setEnabledProtocols(protocols);
    socket.startHandshake();
    return socket;
  }

  private static String answer(Socket socket) throws IOException {
    OutputStream out = socket.getOutputStream();
    out.write(
        "GET / HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n"
            .getBytes(StandardCharsets.US_ASCII));
    out.flush();
    return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"TLSv1.3", "TLSv1.2"})
  void whoTrustsTheShopIsServed(String protocol) throws Exception {
    for (String name : names) {
      try (SSLSocket socket = shaken(authority, name, protocol)) {
        assertThat(socket.getSession().getProtocol()).isEqualTo(protocol);
        assertThat(answer(socket)).startsWith("HTTP/1.1 200").endsWith("secure true");
      }
    }
  }

  @Test
  void whoDoesNotTrustTheShopGoesNoFurther() {
    assertThatExceptionOfType(SSLHandshakeException.class)
        .isThrownBy(() -> shaken(Authority.make(clock.instant()), "127.0.0.1", "TLSv1.3"))
        .withMessageContaining("PKIX");
  }

  @Test
  void anotherMachinesNameIsNotTaken() {
    assertThatExceptionOfType(SSLHandshakeException.class)
        .isThrownBy(() -> shaken(authority, "other.local", "TLSv1.3"))
        .withMessageContaining("other.local");
  }

  /** A first message of TLS 1.1 (RFC 4346, 7.4.1.2) is answered by an alert, never by its hello. */
  @Test
  void oldProtocolsAreRefused() throws IOException {
    byte[] hello = new byte[52];
    byte[] head = {0x16, 3, 1, 0, 47, 1, 0, 0, 43, 3, 2};
    System.arraycopy(head, 0, hello, 0, head.length);
    byte[] suite = {0, 0, 2, (byte) 0xc0, 0x09, 1, 0, 0, 0};
    System.arraycopy(suite, 0, hello, hello.length - suite.length, suite.length);
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port())) {
      socket.getOutputStream().write(hello);
      socket.getOutputStream().flush();
      byte[] answer = socket.getInputStream().readAllBytes();
      assertThat(answer[0]).as("an alert").isEqualTo((byte) 0x15);
      assertThat(answer[5]).as("a fatal one").isEqualTo((byte) 2);
      assertThat(answer[6]).as("protocol_version").isEqualTo((byte) 70);
    }
  }

  @Test
  void plainTextIsTakenAtTheSamePortAndKnownAsSuch() throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port())) {
      assertThat(answer(socket)).startsWith("HTTP/1.1 200").endsWith("secure false");
    }
  }

  private X509Certificate shown(String name) throws Exception {
    try (SSLSocket socket = shaken(authority, name, "TLSv1.3")) {
      return (X509Certificate) socket.getSession().getPeerCertificates()[0];
    }
  }

  @Test
  void theCertificateIsMadeAnewWhenTheMachineGetsAnotherAddress() throws Exception {
    X509Certificate first = shown("127.0.0.1");
    line.renewInTime();
    assertThat(shown("127.0.0.1")).as("nothing has changed").isEqualTo(first);
    names.add("192.168.1.77");
    line.renewInTime();
    assertThat(Objects.requireNonNull(shown("192.168.1.77").getSubjectAlternativeNames()))
        .hasSize(3);
  }

  @Test
  void theCertificateIsMadeAnewAfterAThirdOfItsLife() throws Exception {
    X509Certificate first = shown("127.0.0.1");
    clock.pass(Duration.ofDays(29).toMillis());
    line.renewInTime();
    assertThat(shown("127.0.0.1")).isEqualTo(first);
    clock.pass(Duration.ofDays(2).toMillis());
    line.renewInTime();
    X509Certificate next = shown("127.0.0.1");
    assertThat(next.getNotAfter()).isAfter(first.getNotAfter());
    assertThat(next.getPublicKey()).isNotEqualTo(first.getPublicKey());
  }
}
