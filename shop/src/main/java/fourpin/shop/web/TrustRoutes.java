package fourpin.shop.web;

import fourpin.shop.web.guard.Guard;
import fourpin.shop.web.guard.Reach;
import fourpin.shop.web.trust.Authority;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;

/** Whom a device of the network is to trust, before it can be encrypted with. */
final class TrustRoutes {

  private static final String CERTIFICATE = Guard.TRUST + "/fourpin-authority.crt";

  private final Authority authority;
  private final Supplier<Reach> reach;
  private final Pages pages;

  TrustRoutes(Authority authority, Supplier<Reach> reach, Pages pages) {
    this.authority = authority;
    this.reach = reach;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get(Guard.TRUST, this::show);
    routes.get(CERTIFICATE, this::certificate);
  }

  private void show(Context http) {
    String host = Objects.requireNonNullElse(http.header("Host"), "");
    pages.show(
        http,
        "trust",
        Map.of(
            "certificate",
            CERTIFICATE,
            "fingerprint",
            authority.fingerprint(),
            "origin",
            reach.get().origin(host).orElse("")));
  }

  private void certificate(Context http) {
    http.contentType("application/x-x509-ca-cert")
        .header("Content-Disposition", "attachment; filename=\"fourpin-authority.crt\"")
        .result(authority.encoded());
  }
}
