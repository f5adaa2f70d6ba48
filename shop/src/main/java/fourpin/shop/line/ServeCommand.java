package fourpin.shop.line;

import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.WebServer;
import fourpin.shop.web.guard.Guard;
import fourpin.shop.web.guard.Reach;
import fourpin.shop.web.trust.Authority;
import fourpin.shop.web.trust.TrustException;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows jobs in a browser on this machine, to be designed there, until it is stopped. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description = "Opens Fourpin to browsers on this machine; stop it with Ctrl-C.")
public final class ServeCommand extends DataErrand {

  private static final int MOST_PORT = 65_535;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7404",
      description = "Where browsers find it (default: 7404; 0 for any that is free).")
  private int port;

  @Option(
      names = "--network",
      description = "Lets devices of this machine's network in, each once it is paired by a code.")
  private boolean network;

  /** picocli sets the fields before the command runs. */
  @SuppressWarnings("NullAway.Init")
  ServeCommand() {}

  @Override
  int work(SqlStore store) throws IOException {
    if (port < 0 || port > MOST_PORT) {
      return refused("there is no port " + port + "; choose one from 1024 to 65535");
    }
    Optional<Authority> trusted = trusted();
    try (WebServer server = start(store, trusted)) {
      out().println("Fourpin is at http://127.0.0.1:" + server.port() + "/ for this machine.");
      trusted.ifPresent(authority -> tellDevices(authority, server));
      out().println("Stop it with Ctrl-C.");
      out().flush();
      untilStopped(server, store);
      return GOOD;
    } catch (TrustException e) {
      return refused(String.valueOf(e.getMessage()));
    } catch (JavalinBindException e) {
      return refused(
          "port "
              + port
              + " is taken; is Fourpin running already? Else choose another with --port");
    }
  }

  private Optional<Authority> trusted() {
    return network ? Optional.of(Authority.keptIn(authority(), Instant.now())) : Optional.empty();
  }

  private WebServer start(SqlStore store, Optional<Authority> trusted) {
    return trusted
        .map(authority -> WebServer.start(store, this::requestFailed, authority, port))
        .orElseGet(() -> WebServer.start(store, this::requestFailed, port));
  }

  private void requestFailed(Throwable failure) {
    err()
        .println(
            "fourpin: a request failed by the program's own fault ("
                + failure.getClass().getSimpleName()
                + "). "
                + details(failure));
    err().flush();
  }

  private void tellDevices(Authority authority, WebServer server) {
    List<String> addresses = Reach.network().addresses().toList();
    addresses.forEach(
        address ->
            out()
                .println(
                    "Devices of the network begin at http://"
                        + address
                        + ":"
                        + server.port()
                        + Guard.TRUST));
    if (addresses.isEmpty()) {
      out().println("This machine has no address of a private network that devices could use.");
    }
    out().println("They trust this machine by the certificate with the fingerprint");
    out().println(authority.fingerprint());
    out()
        .println(
            "The code that pairs one is "
                + server.codes().offer().shown()
                + ", for five minutes. Others stand at http://127.0.0.1:"
                + server.port()
                + "/devices");
  }

  /** When the process is told to end, answers under way are finished and the store is closed. */
  private static void untilStopped(WebServer server, SqlStore store) {
    Runnable end =
        () -> {
          server.close();
          store.close();
        };
    Runtime.getRuntime().addShutdownHook(new Thread(end));
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
