package fourpin.shop.line;

import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.WebServer;
import fourpin.shop.web.guard.Reach;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
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
    Reach reach = network ? Reach.network() : Reach.loopback();
    try (WebServer server = WebServer.start(store, reach, port)) {
      out().println("Fourpin is at http://127.0.0.1:" + server.port() + "/ for this machine.");
      if (network) {
        tellDevices(reach, server);
      }
      out().println("Stop it with Ctrl-C.");
      out().flush();
      untilStopped(server, store);
      return GOOD;
    } catch (JavalinBindException e) {
      return refused(
          "port "
              + port
              + " is taken; is Fourpin running already? Else choose another with --port");
    }
  }

  private void tellDevices(Reach reach, WebServer server) {
    reach
        .addresses()
        .map(address -> "http://" + address + ":" + server.port() + "/")
        .forEach(at -> out().println("Devices of the network find it at " + at));
    out()
        .println(
            "The code that pairs one is "
                + server.codes().offer().shown()
                + ", for five minutes. Others stand at http://127.0.0.1:"
                + server.port()
                + "/devices");
    out().println("What goes over the network is not encrypted: use one that is your own.");
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
