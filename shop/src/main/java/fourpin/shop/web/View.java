package fourpin.shop.web;

import java.util.Objects;

/** Which part of a job somebody looks at. @param caseName the first if there is no such case */
record View(String caseName, Drawer open) {

  /** As a form of the page says it. */
  static View of(Asked asked) {
    return new View(asked.form("case"), Drawer.named(asked.form("open")));
  }

  /** As an address says it. */
  static View of(io.javalin.http.Context http) {
    return new View(
        Objects.requireNonNullElse(http.queryParam("case"), ""),
        Drawer.named(Objects.requireNonNullElse(http.queryParam("open"), "")));
  }
}
