package fourpin.shop.web;

import fourpin.sheets.packet.Codes;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.HeldTick;
import fourpin.shop.store.Ticks;
import fourpin.shop.web.guard.GuardHandler;
import fourpin.shop.web.guard.Visitor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The bench page of a job, and its ticks. */
final class BenchRoutes {

  private final Desk desk;
  private final Ticks ticks;
  private final Pages pages;
  private final InstantSource clock;

  BenchRoutes(Desk desk, Ticks ticks, Pages pages, InstantSource clock) {
    this.desk = desk;
    this.ticks = ticks;
    this.pages = pages;
    this.clock = clock;
  }

  void add(RoutesConfig routes) {
    routes.get("/jobs/{id}/bench", this::bench);
    routes.get("/jobs/{id}/ticks", this::held);
    routes.post("/jobs/{id}/ticks", this::said);
  }

  private void bench(Context http) {
    State job = job(http);
    BenchPage page = BenchPage.of(job.plan(), "/jobs/" + job.revision().document().value());
    pages.show(http, "bench", Map.of("page", page));
  }

  private State job(Context http) {
    return desk.newest(new DocumentId(http.pathParam("id"))).orElseThrow(NotFoundResponse::new);
  }

  private void held(Context http) {
    String plan =
        Optional.ofNullable(http.queryParam("plan"))
            .filter(TickMessages::isPlan)
            .orElseThrow(() -> new BadRequestResponse("Which plan?"));
    State job = job(http);
    answer(http, job, ticks.of(job.revision().document(), plan));
  }

  private void said(Context http) {
    TickMessages.Said said =
        TickMessages.read(Objects.requireNonNull(http.body()))
            .orElseThrow(() -> new BadRequestResponse("These are no ticks."));
    Visitor visitor = GuardHandler.visitor(http);
    State job = job(http);
    answer(
        http,
        job,
        ticks.merge(
            job.revision().document(), said.plan(), visitor.name(), said.sentAt(), said.all()));
  }

  /** Also which steps the job has by now: a page that shows others must say so. */
  private void answer(Context http, State job, List<HeldTick> held) {
    String newest = Codes.digest(job.plan().steps());
    http.contentType("application/json")
        .result(TickMessages.write(pages.token(http), newest, clock.instant(), held));
  }
}
