package fourpin.shop.web;

import fourpin.plan.CutPlan;
import fourpin.shop.packet.CutFiles;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** The longer search for layouts: begun, looked at, ended, and what came of it. */
final class LayoutRoutes {

  private final Desk desk;
  private final Searches searches;
  private final Pages pages;

  LayoutRoutes(Desk desk, Searches searches, Pages pages) {
    this.desk = desk;
    this.searches = searches;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get("/jobs/{id}/layouts", http -> show(http, ""));
    routes.get("/jobs/{id}/layouts.zip", this::files);
    routes.post("/jobs/{id}/layouts", this::begin);
    routes.post("/jobs/{id}/layouts/enough", this::enough);
  }

  private void show(Context http, String notice) {
    Asked asked = new Asked(http, desk);
    pages.show(
        http,
        "layouts",
        Map.of(
            "page",
            LayoutsPage.of(asked.newest(), searches.of(asked.id()), pages.token(http), notice)));
  }

  private void begin(Context http) {
    Asked asked = new Asked(http, desk);
    int seconds = asked.number("seconds");
    if (!LayoutsPage.TIMES.contains(seconds)) {
      throw new NotFoundResponse();
    }
    Optional<Search> begun = searches.begin(asked.newest(), Duration.ofSeconds(seconds));
    if (begun.isPresent()) {
      http.redirect("/jobs/" + asked.id().value() + "/layouts", HttpStatus.SEE_OTHER);
    } else {
      http.status(HttpStatus.CONFLICT);
      show(http, "A search for this job is under way already; end it, or wait for it.");
    }
  }

  private void enough(Context http) {
    Asked asked = new Asked(http, desk);
    searches.of(asked.id()).orElseThrow(NotFoundResponse::new).enough();
    http.redirect("/jobs/" + asked.id().value() + "/layouts", HttpStatus.SEE_OTHER);
  }

  private void files(Context http) {
    Asked asked = new Asked(http, desk);
    CutPlan plan =
        searches
            .of(asked.id())
            .map(Search::progress)
            .flatMap(
                p ->
                    p instanceof Search.Progress.Done(_, CutPlan done, _, _)
                        ? Optional.of(done)
                        : Optional.empty())
            .orElseThrow(NotFoundResponse::new);
    http.contentType("application/zip")
        .header("Content-Disposition", "attachment; filename=\"layouts.zip\"")
        .result(Zip.of(CutFiles.of(plan)));
  }
}
