package fourpin.shop.web.guard;

import fourpin.shop.store.Device;
import fourpin.shop.store.Store;
import fourpin.shop.web.trust.Authority;
import fourpin.shop.web.trust.EncryptedLine;
import fourpin.shop.web.trust.Trusting;
import io.javalin.Javalin;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A server behind the guard, with few pages, to which anything can be sent. */
final class RawServer implements AutoCloseable {

  private static final Pattern LONG = Pattern.compile("LONG\\((\\d+)\\)");
  private static final Pattern BYTE = Pattern.compile("\\\\x([0-9a-f]{2})");

  /** How a request of the table says that it goes to a server that devices find. */
  private static final String ON_NETWORK = "network ";

  private final Guard guard;
  private final Optional<Authority> authority;
  private final Optional<EncryptedLine> line;
  private final String host;
  private final Javalin javalin;
  private final String cookie;
  private final Visitor paired;

  /** For this machine only. */
  static RawServer alone(Store store, InstantSource clock) {
    return new RawServer(store, clock, Reach.loopback(), Optional.empty(), "127.0.0.1");
  }

  /** For devices too, which are on this machine as well, and call it otherwise. */
  static RawServer onNetwork(Store store, InstantSource clock) throws GeneralSecurityException {
    String name = "bench.local";
    return new RawServer(
        store,
        clock,
        new Reach("127.0.0.1", Set.of("127.0.0.1", name), Asked.Line.ENCRYPTED),
        Optional.of(Authority.make(Instant.now())),
        name);
  }

  private RawServer(
      Store store, InstantSource clock, Reach reach, Optional<Authority> authority, String host) {
    this.authority = authority;
    this.host = host;
    line = authority.map(a -> new EncryptedLine(a, reach::names, InstantSource.system()));
    guard = new Guard(() -> reach, Limits.STANDARD, store.devices(), clock);
    cookie = guard.pair(guard.codes().offer().digits(), "phone").orElseThrow().split(";")[0];
    Device device = store.devices().all(clock.instant()).getFirst();
    paired = new Visitor.Paired(device);
    GuardHandler handler = new GuardHandler(guard);
    javalin =
        Javalin.create(
                config -> {
                  config.startup.showJavalinBanner = false;
                  handler.limit(config);
                  line.ifPresent(
                      l ->
                          config.jetty.addConnector(
                              (server, http) -> l.connector(server, http, reach.bind(), 0)));
                  config.routes.get("/trust", http -> http.result("whom to trust"));
                  config.routes.before(handler);
                  config.routes.get(
                      "/", http -> http.result("a page for " + GuardHandler.visitor(http).name()));
                  config.routes.get("/pair", http -> http.result("pair"));
                  config.routes.get("/packet.pdf", http -> http.result("a packet"));
                  config.routes.post("/jobs", http -> http.result("changed"));
                  config.routes.post(
                      "/pair",
                      http ->
                          guard
                              .pair(http.formParam("code"), http.formParam("name"))
                              .ifPresentOrElse(
                                  set -> http.header("Set-Cookie", set),
                                  () -> http.status(403).result("wrong code")));
                })
            .start("127.0.0.1", 0);
  }

  Guard guard() {
    return guard;
  }

  /** Sends a request. @return all that comes back */
  String answer(HostileRequest request) throws IOException {
    Visitor visitor =
        switch (request.who()) {
          case "host", "network host" -> new Visitor.Host();
          case "paired", "network paired" -> paired;
          default -> new Visitor.Stranger();
        };
    try (Socket socket = socket(request.who())) {
      OutputStream out = socket.getOutputStream();
      out.write(filled(text(request), visitor).getBytes(StandardCharsets.ISO_8859_1));
      out.flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  static boolean isOnNetwork(HostileRequest request) {
    return request.who().startsWith(ON_NETWORK);
  }

  /** What comes from paired devices and strangers of a network is encrypted, unless it says so. */
  private Socket socket(String who) throws IOException {
    Socket plain = new Socket(InetAddress.getLoopbackAddress(), javalin.port());
    if (!who.equals("network paired") && !who.equals("network stranger")) {
      return plain;
    }
    try {
      return Trusting.only(authority.orElseThrow())
          .getSocketFactory()
          .createSocket(plain, host, javalin.port(), true);
    } catch (GeneralSecurityException e) {
      throw new IOException(e);
    }
  }

  /** As it goes over the line: with its length, and to be the only one on it. */
  private static String text(HostileRequest request) {
    StringBuilder text = new StringBuilder(String.join("\r\n", request.lines())).append("\r\n");
    List<String> small = request.lines().stream().map(l -> l.toLowerCase(Locale.ROOT)).toList();
    if (!request.body().isEmpty()) {
      text.append("Content-Length: LENGTH\r\n");
    }
    if (!request.who().endsWith("host") && small.stream().noneMatch(l -> l.contains("forwarded"))) {
      text.append("Via: 1.1 another\r\n");
    }
    return text.append("Connection: close\r\n\r\n").append(request.body()).toString();
  }

  /** Words of the table with this server's name in them. */
  String named(String words) {
    return words.replace("HERE", host + ":" + javalin.port());
  }

  private String filled(String text, Visitor visitor) {
    String full =
        text.replace("HERE", host + ":" + javalin.port())
            .replace("STRANGERS-TOKEN", guard.formToken(new Visitor.Stranger()))
            .replace("TOKEN: TOKEN", "TOKEN: " + guard.formToken(visitor))
            .replace("Token: TOKEN", "Token: " + guard.formToken(visitor))
            .replace("token=TOKEN", "token=" + guard.formToken(visitor))
            .replace("COOKIE", cookie);
    String wide = LONG.matcher(full).replaceAll(m -> "a".repeat(Integer.parseInt(m.group(1))));
    String bytes =
        BYTE.matcher(wide)
            .replaceAll(
                m ->
                    Matcher.quoteReplacement(
                        String.valueOf((char) Integer.parseInt(m.group(1), 16))));
    int body = bytes.length() - bytes.indexOf("\r\n\r\n") - 4;
    return bytes.replace("LENGTH", Integer.toString(body));
  }

  @Override
  public void close() {
    line.ifPresent(EncryptedLine::close);
    javalin.stop();
  }
}
