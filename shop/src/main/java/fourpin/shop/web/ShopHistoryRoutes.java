package fourpin.shop.web;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents;
import fourpin.shop.web.guard.GuardHandler;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What was done to the tools and settings of the shop, and the way back. */
final class ShopHistoryRoutes {

  private final ShopDesk desk;
  private final Documents documents;
  private final Pages pages;

  ShopHistoryRoutes(ShopDesk desk, Documents documents, Pages pages) {
    this.desk = desk;
    this.documents = documents;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get("/shop/history", this::history);
    routes.get("/shop/beside", this::beside);
    routes.post("/shop/back", this::back);
  }

  private ShopDesk.Kept newest() {
    return desk.newest().orElseThrow(NotFoundResponse::new);
  }

  private void history(Context http) {
    HistoryPage page =
        HistoryPage.of(
            "/shop",
            pages.token(http),
            newest().revision(),
            documents.history(DocumentId.SHOP, HistoryPage.below(http), HistoryPage.MOST + 1),
            List.of());
    pages.show(http, "shophistory", Map.of("page", page));
  }

  private ShopDesk.Kept at(String revision) {
    return desk.at(revision).orElseThrow(NotFoundResponse::new);
  }

  /** Two of them; one alone stands beside the newest. */
  private void beside(Context http) {
    ShopDesk.Kept newest = newest();
    List<ShopDesk.Kept> states = new ArrayList<>();
    http.queryParams("with").stream().limit(2).forEach(r -> states.add(at(r)));
    if (states.size() < 2) {
      states.addFirst(newest);
    }
    pages.show(
        http, "shopbeside", Map.of("page", ShopBesidePage.of(newest, states, pages.token(http))));
  }

  private void back(Context http) {
    String seen = Objects.requireNonNullElse(http.formParam("seen"), "");
    ShopDesk.Kept wanted = at(Objects.requireNonNullElse(http.formParam("revision"), ""));
    String why = "back to change " + wanted.revision().number() + ": " + wanted.revision().why();
    String by = GuardHandler.visitor(http).name();
    ShopFileRoutes.answer(
        http, pages, desk.put(wanted.text().text(), seen, by, why), "/shop/history");
  }
}
