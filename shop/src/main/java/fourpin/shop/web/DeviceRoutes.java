package fourpin.shop.web;

import fourpin.shop.store.Device;
import fourpin.shop.store.Devices;
import fourpin.shop.web.guard.Guard;
import fourpin.shop.web.guard.GuardHandler;
import fourpin.shop.web.guard.PairingCodes;
import fourpin.shop.web.guard.Visitor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Pairing: its page for the device, and the page of devices for the machine that serves. */
final class DeviceRoutes {

  private static final String WRONG =
      "That code is not right, was used already, or is too old. Ask for a new one at the machine that"
          + " runs Fourpin.";

  private static final String TO = "to";

  private final Devices devices;
  private final Guard guard;
  private final Pages pages;
  private final InstantSource clock;
  private final String fingerprint;

  /**
   * @param fingerprint of whom devices are to trust; empty where there are no devices
   */
  DeviceRoutes(Devices devices, Guard guard, Pages pages, InstantSource clock, String fingerprint) {
    this.fingerprint = fingerprint;
    this.devices = devices;
    this.guard = guard;
    this.pages = pages;
    this.clock = clock;
  }

  void add(RoutesConfig routes) {
    routes.get(Guard.PAIR, http -> ask(http, "", "", query(http, TO)));
    routes.post(Guard.PAIR, this::pair);
    routes.get("/devices", http -> list(http, Optional.empty()));
    routes.post("/devices/code", http -> list(http, Optional.of(offer(http))));
    routes.post("/devices/{id}/end", this::end);
  }

  /**
   * @param name that was typed before
   * @param to where the device wanted to go
   */
  private void ask(Context http, String trouble, String name, String to) {
    pages.show(
        http,
        "pair",
        Map.of("trouble", trouble, "token", pages.token(http), "name", name, "to", ownAddress(to)));
  }

  private void pair(Context http) {
    Optional<String> cookie = guard.pair(form(http, "code"), form(http, "name"));
    if (cookie.isEmpty()) {
      http.status(HttpStatus.FORBIDDEN);
      ask(http, WRONG, form(http, "name"), form(http, TO));
      return;
    }
    http.header("Set-Cookie", cookie.get())
        .redirect(ownAddress(form(http, TO)), HttpStatus.SEE_OTHER);
  }

  /** The page that a device came for, if it is one of ours; else the first. */
  private static String ownAddress(String to) {
    return Guard.isAddress(to) ? to : "/";
  }

  private static String query(Context http, String name) {
    return Objects.requireNonNullElse(http.queryParam(name), "");
  }

  private static String form(Context http, String name) {
    return Objects.requireNonNullElse(http.formParam(name), "");
  }

  private PairingCodes.Offer offer(Context http) {
    requireHost(http);
    return guard.codes().offer();
  }

  private void list(Context http, Optional<PairingCodes.Offer> offer) {
    requireHost(http);
    List<Device> all = devices.all(clock.instant());
    pages.show(
        http,
        "devices",
        Map.of(
            "devices",
            all,
            "code",
            offer.map(PairingCodes.Offer::shown).orElse(""),
            "fingerprint",
            fingerprint,
            "token",
            pages.token(http)));
  }

  private void end(Context http) {
    requireHost(http);
    devices.unpair(http.pathParam("id"));
    http.redirect("/devices", HttpStatus.SEE_OTHER);
  }

  /** No device lets another in. */
  private static void requireHost(Context http) {
    if (!(GuardHandler.visitor(http) instanceof Visitor.Host)) {
      throw new ForbiddenResponse("Devices are paired at the machine that runs Fourpin.");
    }
  }
}
