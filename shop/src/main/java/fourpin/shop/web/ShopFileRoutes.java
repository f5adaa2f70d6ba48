package fourpin.shop.web;

import fourpin.shop.web.guard.GuardHandler;
import fourpin.shop.yaml.Problem;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/**
 * The shop file goes out whole and comes back. One that lacks what the shop keeps lies aside until
 * it is put in place by a second press, after its maker saw what would be gone.
 */
final class ShopFileRoutes {

  /**
   * A file that lies aside.
   *
   * @param shown the revision that the page showed
   */
  private record Brought(String id, Leaf leaf, String shown) {}

  private final ShopDesk desk;
  private final Pages pages;
  private Optional<Brought> brought = Optional.empty();

  ShopFileRoutes(ShopDesk desk, Pages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get("/shop/shop.yaml", this::file);
    routes.post("/shop/bring", this::bring);
    routes.post("/shop/bring/nonetheless", this::nonetheless);
  }

  private void file(Context http) {
    ShopDesk.Kept shop = desk.newest().orElseThrow(NotFoundResponse::new);
    http.contentType("application/yaml; charset=utf-8")
        .header("Content-Disposition", "attachment; filename=\"shop.yaml\"")
        .result(Leaf.out(shop.text().text(), shop.revision()));
  }

  private static String form(Context http, String name) {
    return Objects.requireNonNullElse(http.formParam(name), "");
  }

  private void bring(Context http) {
    Leaf.uploaded(http).ifPresentOrElse(leaf -> bring(http, leaf), () -> pages.noFile(http));
  }

  private void bring(Context http, Leaf leaf) {
    String shown = form(http, "seen");
    switch (desk.bring(leaf, shown, GuardHandler.visitor(http).name())) {
      case ShopDesk.Bringing.Heard(var outcome) -> answer(http, pages, outcome, "/shop?open=TOOLS");
      case ShopDesk.Bringing.Lacking(List<String> what) -> ask(http, aside(leaf, shown), what);
    }
  }

  private synchronized String aside(Leaf leaf, String shown) {
    Brought fresh = new Brought(UUID.randomUUID().toString(), leaf, shown);
    brought = Optional.of(fresh);
    return fresh.id();
  }

  private synchronized Optional<Brought> take(String id) {
    Optional<Brought> taken = brought.filter(b -> b.id().equals(id));
    brought = brought.filter(b -> taken.isEmpty());
    return taken;
  }

  private void ask(Context http, String aside, List<String> lacks) {
    http.status(HttpStatus.CONFLICT);
    pages.show(
        http,
        "shoplacks",
        Map.of(
            "lacks",
            lacks.stream().map(BesidePage::way).toList(),
            "token",
            pages.token(http),
            "brought",
            aside));
  }

  private void nonetheless(Context http) {
    String by = GuardHandler.visitor(http).name();
    take(form(http, "brought"))
        .map(b -> desk.bringNonetheless(b.leaf(), b.shown(), by))
        .ifPresentOrElse(
            outcome -> answer(http, pages, outcome, "/shop?open=TOOLS"),
            () -> refused(http, pages, "That file is no longer at hand: choose it again."));
  }

  /** Answers on a page of its own, or leads back. */
  static void answer(Context http, Pages pages, ShopDesk.Outcome.OfFile outcome, String back) {
    switch (outcome) {
      case ShopDesk.Outcome.Done() -> http.redirect(back, HttpStatus.SEE_OTHER);
      case ShopDesk.Outcome.Wrong(List<Problem> problems) ->
          pages.wrongFile(http, "shop file", problems);
      case ShopDesk.Outcome.Refused(String reason) -> refused(http, pages, reason);
    }
  }

  private static void refused(Context http, Pages pages, String reason) {
    pages.trouble(http, HttpStatus.CONFLICT, "Nothing was changed", List.of(reason));
  }
}
