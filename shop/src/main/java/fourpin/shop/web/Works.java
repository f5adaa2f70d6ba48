package fourpin.shop.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Changes under way, by the words that the page which waits for each calls it by. */
final class Works {

  private static final String NAME = "[0-9a-f]{32}";

  private final Map<String, Work> all = new ConcurrentHashMap<>();

  void add(RoutesConfig routes) {
    routes.get("/jobs/{id}/work", http -> http.result(of(http, http.queryParam("of")).words()));
    routes.post("/jobs/{id}/stop", this::stop);
  }

  private void stop(Context http) {
    http.status(
        of(http, http.formParam("work")).stop() ? HttpStatus.NO_CONTENT : HttpStatus.CONFLICT);
  }

  private Work of(Context http, String name) {
    return Optional.ofNullable(all.get(key(http, name))).orElseThrow(NotFoundResponse::new);
  }

  private static String key(Context http, String name) {
    return http.pathParam("id") + " " + Objects.requireNonNullElse(name, "");
  }

  /** Does something that can be looked at and stopped meanwhile, if the page has named it. */
  void run(Context http, Runnable change) {
    String name = Objects.requireNonNullElse(http.formParam("work"), "");
    Work work = new Work();
    if (!name.matches(NAME) || all.putIfAbsent(key(http, name), work) != null) {
      change.run();
      return;
    }
    try {
      ScopedValue.where(Work.NOW, work).run(change);
    } finally {
      all.remove(key(http, name));
    }
  }
}
