package fourpin.shop.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Locale;

/**
 * Says with each answer how long it took here, in the header of the W3C's Server Timing, where the
 * tools of browsers show it. Strangers are not told.
 */
final class ServerTiming {

  private static final String BEGUN = "fourpin.begun";
  private static final double NANOS_PER_MS = 1e6;

  private ServerTiming() {}

  /** To be called after the guard's handler is set, so that what it refuses has no time. */
  static void add(RoutesConfig routes) {
    routes.before(http -> http.attribute(BEGUN, System.nanoTime()));
    routes.after(ServerTiming::tell);
  }

  private static void tell(Context http) {
    Long begun = http.attribute(BEGUN);
    if (begun != null) {
      double taken = (System.nanoTime() - begun) / NANOS_PER_MS;
      http.header("Server-Timing", String.format(Locale.ROOT, "answer;dur=%.2f", taken));
    }
  }
}
