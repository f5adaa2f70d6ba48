package fourpin.shop.web;

import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.guard.Guard;
import fourpin.shop.web.guard.GuardHandler;
import fourpin.shop.web.guard.Limits;
import fourpin.shop.web.guard.PairingCodes;
import fourpin.shop.web.guard.Reach;
import fourpin.shop.web.trust.Authority;
import fourpin.shop.web.trust.EncryptedLine;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** Answers browsers on this machine, and paired devices of its network if it is told to. */
public final class WebServer implements AutoCloseable {

  /**
   * So many that every request of a shop is read at once, even while plans wait their turn: a line
   * whose request waits unread for as long as the longest silence is shut without an answer.
   */
  private static final int MOST_THREADS = 200;

  private final PairingCodes codes;
  private final Searches searches;
  private final Optional<EncryptedLine> line;
  private final Javalin javalin;

  private WebServer(
      PairingCodes codes, Searches searches, Optional<EncryptedLine> line, Javalin javalin) {
    this.codes = codes;
    this.searches = searches;
    this.line = line;
    this.javalin = javalin;
  }

  /**
   * Starts it for this machine; it stops when closed.
   *
   * @param details who hears of requests at which the program itself failed; by many threads
   * @param port 0 for any that is free
   * @throws io.javalin.util.JavalinBindException if the port is taken
   */
  public static WebServer start(SqlStore store, Consumer<Throwable> details, int port) {
    return start(store, details, Reach::loopback, Optional.empty(), port, Limits.STANDARD);
  }

  /**
   * Starts it for devices of the network too, encrypted.
   *
   * @param authority whom they trust
   */
  public static WebServer start(
      SqlStore store, Consumer<Throwable> details, Authority authority, int port) {
    return start(store, details, Reach::network, Optional.of(authority), port, Limits.STANDARD);
  }

  /**
   * @param reach whom it serves, at the moment
   * @param authority of encrypted lines; nothing if there are none
   */
  static WebServer start(
      SqlStore store,
      Consumer<Throwable> details,
      Supplier<Reach> reach,
      Optional<Authority> authority,
      int port,
      Limits limits) {
    InstantSource clock = InstantSource.system();
    Optional<EncryptedLine> line =
        authority.map(a -> new EncryptedLine(a, () -> reach.get().names(), clock));
    Guard guard = new Guard(reach, limits, store.devices(), clock);
    Pages pages = new Pages(guard);
    Desk desk = new Desk(store.documents(), store.layouts());
    Assets assets = new Assets();
    Searches searches = new Searches(store.layouts());
    return new WebServer(
        guard.codes(),
        searches,
        line,
        Javalin.create(
                config -> {
                  limit(config, guard);
                  line.ifPresent(
                      l ->
                          config.jetty.addConnector(
                              (server, http) ->
                                  l.connector(server, http, reach.get().bind(), port)));
                  config.routes.before(new GuardHandler(guard));
                  ServerTiming.add(config.routes);
                  config.routes.get(Guard.ASSETS + "{name}", assets::serve);
                  new JobRoutes(desk, pages).add(config.routes);
                  new ChangeRoutes(desk, pages).add(config.routes);
                  ShopDesk shop = new ShopDesk(store.documents());
                  new ShopRoutes(shop, store.rack(), pages).add(config.routes);
                  new ShopFileRoutes(shop, pages).add(config.routes);
                  new ShopHistoryRoutes(shop, store.documents(), pages).add(config.routes);
                  new LayoutRoutes(desk, searches, pages).add(config.routes);
                  new JobRackRoutes(desk, store.rack(), pages).add(config.routes);
                  new BackupRoutes(store, pages).add(config.routes);
                  new PacketRoutes(desk, pages, reach).add(config.routes);
                  new HistoryRoutes(desk, store.documents(), pages).add(config.routes);
                  new BenchRoutes(desk, store.ticks(), pages, clock).add(config.routes);
                  new DeviceRoutes(
                          store.devices(),
                          guard,
                          pages,
                          clock,
                          authority.map(Authority::fingerprint).orElse(""))
                      .add(config.routes);
                  authority.ifPresent(a -> new TrustRoutes(a, reach, pages).add(config.routes));
                  config.routes.exception(
                      ForbiddenResponse.class, (answer, http) -> elsewhere(answer, http, pages));
                  new Failures(details, pages).add(config);
                  config.routes.error(HttpStatus.NOT_FOUND.getCode(), http -> missing(http, pages));
                })
            .start(reach.get().bind(), port));
  }

  private static void limit(JavalinConfig config, Guard guard) {
    long file = guard.limits().fileBytes();
    config.startup.showJavalinBanner = false;
    long largest = guard.limits().backupBytes();
    config.jetty.multipartConfig.maxTotalRequestSize(largest, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxFileSize(largest, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxInMemoryFileSize((int) file, SizeUnit.BYTES);
    config.jetty.threadPool = new QueuedThreadPool(MOST_THREADS);
    new GuardHandler(guard).limit(config);
  }

  private static void missing(Context http, Pages pages) {
    if (!http.path().startsWith(Guard.ASSETS)) {
      pages.show(
          http,
          "trouble",
          Map.of(
              "title",
              "There is nothing here",
              "lines",
              List.of("The address leads to no job and no page of Fourpin.")));
    }
  }

  private static void elsewhere(ForbiddenResponse answer, Context http, Pages pages) {
    http.status(HttpStatus.FORBIDDEN);
    pages.show(
        http,
        "trouble",
        Map.of(
            "title",
            "Not from this device",
            "lines",
            List.of(Objects.requireNonNullElse(answer.getMessage(), ""))));
  }

  /** The codes that let devices of the network in. */
  public PairingCodes codes() {
    return codes;
  }

  public int port() {
    return javalin.port();
  }

  @Override
  public void close() {
    searches.close();
    line.ifPresent(EncryptedLine::close);
    javalin.stop();
  }
}
