package fourpin.shop.web;

import fourpin.shop.file.Signs;
import fourpin.shop.store.Documents;
import fourpin.shop.store.RevisionId;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The history of a job, its variants, and any of its states beside each other. */
final class HistoryRoutes {

  private static final int LONGEST_NAME = 40;

  private final Desk desk;
  private final Documents documents;
  private final Pages pages;

  HistoryRoutes(Desk desk, Documents documents, Pages pages) {
    this.desk = desk;
    this.documents = documents;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get("/jobs/{id}/history", this::history);
    routes.get("/jobs/{id}/beside", this::beside);
    routes.post("/jobs/{id}/back", this::back);
    routes.post("/jobs/{id}/variant", this::variant);
  }

  private void history(Context http) {
    Asked asked = new Asked(http, desk);
    pages.show(
        http,
        "history",
        Map.of(
            "page",
            HistoryPage.of(
                "/jobs/" + asked.id().value(),
                pages.token(http),
                asked.newest().revision(),
                documents.history(asked.id(), HistoryPage.below(http), HistoryPage.MOST + 1),
                documents.variants(asked.id()))));
  }

  /** Those asked for, in that order; alone, a state stands beside the newest. */
  private void beside(Context http) {
    Asked asked = new Asked(http, desk);
    State newest = asked.newest();
    List<State> states = new ArrayList<>();
    http.queryParams("with").stream()
        .distinct()
        .limit(BesidePage.MOST)
        .forEach(r -> states.add(at(asked, r)));
    if (states.size() < 2) {
      states.addFirst(newest);
    }
    pages.show(http, "beside", Map.of("page", BesidePage.of(newest, states, pages.token(http))));
  }

  private State at(Asked asked, String revision) {
    return desk.at(asked.id(), new RevisionId(revision)).orElseThrow(NotFoundResponse::new);
  }

  private void back(Context http) {
    Asked asked = new Asked(http, desk);
    State wanted = at(asked, asked.form("revision"));
    answer(
        http,
        asked,
        desk.goBack(
            asked.seen(),
            wanted,
            asked.by(),
            "back to change " + wanted.revision().number() + ": " + wanted.revision().why()));
  }

  private void variant(Context http) {
    Asked asked = new Asked(http, desk);
    String name = asked.form("name").strip();
    boolean fits =
        !name.isEmpty()
            && name.codePointCount(0, name.length()) <= LONGEST_NAME
            && Signs.arePrinted(name);
    answer(
        http,
        asked,
        fits
            ? desk.keepAs(asked.seen(), asked.by(), name)
            : new Answer.Refused(
                asked.newest(), "A variant has a name of 1 to " + LONGEST_NAME + " characters."));
  }

  private void answer(Context http, Asked asked, Answer answer) {
    if (answer instanceof Answer.Saved) {
      http.redirect("/jobs/" + asked.id().value() + "/history", HttpStatus.SEE_OTHER);
      return;
    }
    String reason =
        answer instanceof Answer.Refused(_, String words)
            ? words
            : "That state cannot be read any more: the shop's tools have changed since.";
    http.status(HttpStatus.CONFLICT);
    pages.show(http, "trouble", Map.of("title", "Nothing was changed", "lines", List.of(reason)));
  }
}
