package fourpin.shop.web;

import fourpin.job.CaseOrder;
import java.util.List;
import java.util.Objects;

/** Which part of a job somebody looks at. @param caseName the first if there is no such case */
record View(String caseName, Drawer open) {

  /** As a form of the page says it. */
  static View of(Asked asked) {
    return new View(asked.form("case"), Drawer.named(asked.form("open")));
  }

  /** The same case of a later state, where it is called something else by now. */
  View in(State seen, State now) {
    List<String> before = seen.job().cases().stream().map(CaseOrder::name).toList();
    List<String> after = now.job().cases().stream().map(CaseOrder::name).toList();
    boolean renamed =
        before.contains(caseName) && !after.contains(caseName) && before.size() == after.size();
    return renamed ? new View(after.get(before.indexOf(caseName)), open) : this;
  }

  /** As an address says it. */
  static View of(io.javalin.http.Context http) {
    return new View(
        Objects.requireNonNullElse(http.queryParam("case"), ""),
        Drawer.named(Objects.requireNonNullElse(http.queryParam("open"), "")));
  }
}
