package fourpin.shop.web;

import fourpin.casework.BuiltCase;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import fourpin.sheets.solid.Solid;
import fourpin.shop.packet.Glb;
import fourpin.shop.store.Written;
import fourpin.shop.web.guard.GuardHandler;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What browsers can ask about jobs. */
final class JobRoutes {

  private final Desk desk;
  private final Pages pages;

  JobRoutes(Desk desk, Pages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get("/", this::jobs);
    routes.get("/token", this::token);
    routes.get(
        "/new", http -> survey(http, Survey.blank(http.header("Accept-Language")), Map.of()));
    routes.post("/new", this::start);
    routes.post("/jobs", this::bring);
    routes.get("/jobs/{id}", this::design);
    routes.get("/jobs/{id}/working", this::working);
    routes.get("/jobs/{id}/job.yaml", this::file);
    routes.post("/jobs/{id}/file", this::replace);
    routes.get("/jobs/{id}/solid.glb", this::solid);
  }

  /** For pages that were open before the server was started anew; other sites cannot read it. */
  private void token(Context http) {
    http.contentType("text/plain; charset=utf-8").result(pages.token(http));
  }

  // Jobs

  private void jobs(Context http) {
    pages.show(http, "jobs", Map.of("token", pages.token(http), "jobs", desk.jobs()));
    // Not before the list is made: it is waited for, and both want the processor.
    Thread.ofPlatform().daemon().name("look ahead").start(desk::lookAhead);
  }

  private void survey(
      Context http, Survey survey, Map<String, ? extends fourpin.measure.Reading.Bad<?>> troubles) {
    Map<String, String> said = new LinkedHashMap<>();
    troubles.forEach((q, bad) -> said.put(q, bad.rule() + "; " + bad.remedy()));
    pages.show(
        http,
        "survey",
        Map.of(
            "token", pages.token(http),
            "answers", survey.answers(),
            "troubles", said,
            "woods", Survey.WOODS,
            "things", Reference.things().rows().stream().map(HeldThing::name).toList()));
  }

  private void start(Context http) {
    Map<String, String> answers = new LinkedHashMap<>();
    http.formParamMap().forEach((key, values) -> answers.put(key, values.getFirst()));
    Survey survey = new Survey(answers);
    switch (survey.job()) {
      case Survey.Outcome.Wrong(var troubles) -> {
        http.status(HttpStatus.UNPROCESSABLE_CONTENT);
        survey(http, survey, troubles);
      }
      case Survey.Outcome.Drafts(var texts) ->
          created(
              http,
              desk.createBest(
                  texts, GuardHandler.visitor(http).name(), "begun from the questions"));
    }
  }

  private void bring(Context http) {
    Optional<Leaf> leaf = Leaf.uploaded(http);
    if (leaf.isEmpty()) {
      pages.noFile(http);
      return;
    }
    created(
        http,
        desk.create(leaf.get().text(), GuardHandler.visitor(http).name(), "brought in as a file"));
  }

  private void created(Context http, Desk.Taking taking) {
    switch (taking) {
      case Desk.Taking.Taken(var revision) ->
          http.redirect("/jobs/" + revision.document().value(), HttpStatus.SEE_OTHER);
      case Desk.Taking.Wrong(var problems) -> pages.wrongFile(http, "job file", problems);
    }
  }

  // The page of a job

  private void design(Context http) {
    Asked asked = new Asked(http, desk);
    DesignPage page =
        new DesignPage(asked.newest(), pages.token(http), View.of(http), "", Typing.NOTHING);
    if (Asked.isScripted(asked.http())) {
      pages.show(http, "update", Map.of("page", page, "parts", Parts.ALL));
    } else {
      pages.show(http, "design", Map.of("page", page));
    }
  }

  // Looking closer, and files

  private void working(Context http) {
    String id = Objects.requireNonNullElse(http.queryParam("figure"), "");
    DesignPage.Working working =
        DesignPage.working(new Asked(http, desk).newest(), id).orElseThrow(NotFoundResponse::new);
    String page = http.header("HX-Request") != null ? "working" : "workingpage";
    pages.show(http, page, Map.of("working", working));
  }

  private void file(Context http) {
    Written kept = desk.kept(new Asked(http, desk).id()).orElseThrow(NotFoundResponse::new);
    http.contentType("application/yaml; charset=utf-8")
        .header("Content-Disposition", "attachment; filename=\"job.yaml\"")
        .result(Leaf.out(kept.text(), kept.revision()));
  }

  private void replace(Context http) {
    Asked asked = new Asked(http, desk);
    Optional<Leaf> leaf = Leaf.uploaded(http);
    if (leaf.isEmpty()) {
      pages.noFile(http);
      return;
    }
    Optional<State> edited = edited(asked, leaf.get());
    if (edited.isEmpty()) {
      refused(
          http,
          "This file left another job, as its last line says. Bring it in as a job of its own; or"
              + " take that line out, if it is to replace this one.");
      return;
    }
    switch (desk.replace(edited.get(), leaf.get().text(), asked.by())) {
      case Answer.Wrong(_, var problems) -> pages.wrongFile(http, "job file", problems);
      case Answer.Refused(_, String reason) -> refused(http, reason);
      case Answer other -> http.redirect("/jobs/" + asked.id().value(), HttpStatus.SEE_OTHER);
    }
  }

  private void refused(Context http, String reason) {
    pages.trouble(http, HttpStatus.CONFLICT, "Nothing was changed", List.of(reason));
  }

  /**
   * The state that was edited in a file: the one it says, else the one that the page shows; nothing
   * if it says one of another job.
   */
  private Optional<State> edited(Asked asked, Leaf leaf) {
    return leaf.left().isPresent()
        ? desk.at(asked.id(), leaf.left().get())
        : Optional.of(asked.seen());
  }

  private void solid(Context http) {
    Asked asked = new Asked(http, desk);
    State job = asked.newest();
    BuiltCase built = job.built(job.order(asked.query("case"))).orElseThrow(NotFoundResponse::new);
    http.contentType(Glb.TYPE).result(Glb.write(Solid.of(job.plan(), built)));
  }
}
