package fourpin.shop.web.guard;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.net.InetAddress;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jetty.server.handler.MinimumDataRateHandler;

/** Asks the guard before each request, and answers what it refuses. */
public final class GuardHandler implements Handler {

  private static final String VISITOR = "fourpin.visitor";
  static final String PLAIN = "text/plain; charset=utf-8";

  /** Far more than a browser sends; each holds a buffer of this size. */
  private static final int MOST_HEADER_BYTES = 8 << 10;

  private static final Duration LONGEST_SILENCE = Duration.ofSeconds(30);

  /** A body that trickles more slowly than this is an attack or a dead line. */
  private static final long LEAST_BYTES_PER_SECOND = 500;

  /** Of a file that is too large, from this machine; larger ones are cut off. */
  private static final long MOST_PASSED_OVER_BYTES = 64 << 20;

  /** Of every answer, refusals included. */
  static final List<Map.Entry<String, String>> HEADERS =
      List.of(
          Map.entry(
              "Content-Security-Policy",
              "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
                  + " font-src 'self'; connect-src 'self'; worker-src 'self';"
                  + " manifest-src 'self'; form-action 'self'; base-uri 'none';"
                  + " frame-ancestors 'none'"),
          Map.entry("X-Content-Type-Options", "nosniff"),
          Map.entry("Referrer-Policy", "same-origin"),
          Map.entry("Cross-Origin-Opener-Policy", "same-origin"),
          Map.entry("Cross-Origin-Resource-Policy", "same-origin"),
          Map.entry("Permissions-Policy", "camera=(), microphone=(), geolocation=()"),
          Map.entry("Cache-Control", "no-store"));

  /** Stands with what came encrypted (Servlet 6.0, section 3.9), whatever a request claims. */
  private static final String ENCRYPTION = "jakarta.servlet.request.cipher_suite";

  private final Guard guard;

  public GuardHandler(Guard guard) {
    this.guard = guard;
  }

  /** Sets what the server itself takes before any handler runs. */
  public void limit(JavalinConfig config) {
    config.http.maxRequestSize = guard.limits().fileBytes();
    config.http.prefer405over404 = true;
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.setRequestHeaderSize(MOST_HEADER_BYTES);
          http.setIdleTimeout(LONGEST_SILENCE.toMillis());
        });
    config.jetty.modifyServer(
        server -> {
          server.setHandler(new MinimumDataRateHandler(LEAST_BYTES_PER_SECOND, 0));
          server.setErrorHandler(new PlainErrors());
        });
    config.jetty.modifyServletContextHandler(pages -> pages.setErrorHandler(new PlainErrors()));
  }

  /** Who asks; a stranger as long as the guard has not decided. */
  public static Visitor visitor(Context http) {
    Visitor known = http.attribute(VISITOR);
    return Objects.requireNonNullElseGet(known, Visitor.Stranger::new);
  }

  @Override
  public void handle(Context http) {
    HEADERS.forEach(header -> http.header(header.getKey(), header.getValue()));
    switch (guard.rule(asked(http), () -> token(http))) {
      case Ruling.Admitted(Visitor visitor) -> http.attribute(VISITOR, visitor);
      case Ruling.Led(String to) -> {
        http.redirect(to, HttpStatus.SEE_OTHER);
        http.skipRemainingHandlers();
      }
      case Ruling.Refused(int status, String words, Optional<Duration> again) -> {
        again.ifPresent(wait -> http.header("Retry-After", Long.toString(wait.toSeconds() + 1)));
        http.status(status).contentType(PLAIN).result(words + "\n").skipRemainingHandlers();
        if (status == HttpStatus.CONTENT_TOO_LARGE.getCode()) {
          passOver(http);
        }
      }
    }
  }

  /**
   * Browsers look for the answer only when they have sent everything: a line that is cut before
   * leaves their user with none.
   */
  private static void passOver(Context http) {
    if (InetAddress.ofLiteral(http.req().getRemoteAddr()).isLoopbackAddress()) {
      try {
        http.req().getInputStream().skip(MOST_PASSED_OVER_BYTES);
      } catch (IOException hungUp) {
        http.header("Connection", "close");
      }
    }
  }

  private static Asked asked(Context http) {
    return new Asked(
        http.req().getAttribute(ENCRYPTION) == null ? Asked.Line.PLAIN : Asked.Line.ENCRYPTED,
        http.req().getMethod(),
        http.req().getRequestURI(),
        Objects.requireNonNullElse(http.queryString(), ""),
        InetAddress.ofLiteral(http.req().getRemoteAddr()),
        Collections.list(http.req().getHeaderNames()).stream()
            .map(name -> name.toLowerCase(Locale.ROOT))
            .distinct()
            .collect(
                Collectors.toMap(
                    name -> name, name -> Collections.list(http.req().getHeaders(name)))));
  }

  private static String token(Context http) {
    return Optional.ofNullable(http.header(Guard.TOKEN_HEADER))
        .or(() -> Optional.ofNullable(http.formParam(Guard.TOKEN_FIELD)))
        .orElse("");
  }
}
