package fourpin.shop.web;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.RevisionId;
import fourpin.shop.web.guard.GuardHandler;
import io.javalin.http.Context;
import io.javalin.http.GoneResponse;
import io.javalin.http.NotFoundResponse;
import java.util.Objects;

/** What a browser asks of a job. */
record Asked(Context http, Desk desk) {

  State newest() {
    return desk.newest(id()).orElseThrow(NotFoundResponse::new);
  }

  /** The shop is kept like a job, and is none. */
  DocumentId id() {
    DocumentId id = new DocumentId(http.pathParam("id"));
    if (id.equals(DocumentId.SHOP)) {
      throw new NotFoundResponse();
    }
    return id;
  }

  static final String UNKNOWN =
      "Nothing was changed: what this page shows is no longer kept, as after a backup was put back."
          + " Load the page anew, look, and do it again.";

  /**
   * What the maker looked at when they did what they ask for. A change to what nobody keeps would
   * undo what others did since, so none is made.
   */
  State seen() {
    newest();
    return desk.at(id(), new RevisionId(form("seen"))).orElseThrow(() -> new GoneResponse(UNKNOWN));
  }

  /** The device's name. */
  String by() {
    return GuardHandler.visitor(http).name();
  }

  String form(String name) {
    return Objects.requireNonNullElse(http.formParam(name), "");
  }

  String query(String name) {
    return Objects.requireNonNullElse(http.queryParam(name), "");
  }

  /** A number of a bay and the like; 0 for what is none. */
  int number(String name) {
    String text = form(name);
    return text.matches("\\d{1,6}") ? Integer.parseInt(text) : 0;
  }

  /** Whether a script of ours asks, and so takes parts of a page. */
  static boolean isScripted(Context http) {
    return http.header("HX-Request") != null;
  }
}
