package fourpin.shop.web.guard;

import fourpin.shop.store.Device;
import fourpin.shop.store.Store;
import io.javalin.Javalin;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A server behind the guard, with few pages, to which anything can be sent. */
final class RawServer implements AutoCloseable {

  private static final Pattern LONG = Pattern.compile("LONG\\((\\d+)\\)");
  private static final Pattern BYTE = Pattern.compile("\\\\x([0-9a-f]{2})");

  private final Guard guard;
  private final Javalin javalin;
  private final String cookie;
  private final Visitor paired;

  RawServer(Store store, Limits limits, InstantSource clock) {
    guard = new Guard(Reach.loopback(), limits, store.devices(), clock);
    cookie = guard.pair(guard.codes().offer().digits(), "phone").orElseThrow().split(";")[0];
    Device device = store.devices().all(clock.instant()).getFirst();
    paired = new Visitor.Paired(device);
    GuardHandler handler = new GuardHandler(guard);
    javalin =
        Javalin.create(
                config -> {
                  config.startup.showJavalinBanner = false;
                  handler.limit(config);
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
          case "host" -> new Visitor.Host();
          case "paired" -> paired;
          default -> new Visitor.Stranger();
        };
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), javalin.port())) {
      OutputStream out = socket.getOutputStream();
      out.write(filled(text(request), visitor).getBytes(StandardCharsets.ISO_8859_1));
      out.flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** As it goes over the line: with its length, and to be the only one on it. */
  private static String text(HostileRequest request) {
    StringBuilder text = new StringBuilder(String.join("\r\n", request.lines())).append("\r\n");
    List<String> small = request.lines().stream().map(l -> l.toLowerCase(Locale.ROOT)).toList();
    if (!request.body().isEmpty()) {
      text.append("Content-Length: LENGTH\r\n");
    }
    if (!request.who().equals("host") && small.stream().noneMatch(l -> l.contains("forwarded"))) {
      text.append("Via: 1.1 another\r\n");
    }
    return text.append("Connection: close\r\n\r\n").append(request.body()).toString();
  }

  private String filled(String text, Visitor visitor) {
    String full =
        text.replace("HERE", "127.0.0.1:" + javalin.port())
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
    javalin.stop();
  }
}
