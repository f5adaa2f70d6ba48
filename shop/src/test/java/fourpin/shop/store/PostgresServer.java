package fourpin.shop.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * A PostgreSQL server of our own, which the script beside the tests runs. It stops when this is
 * closed, and also when this process dies.
 */
public final class PostgresServer implements AutoCloseable {

  private static final String READY = "ready ";
  private static final long LONGEST_STOP_S = 60;

  private final Process script;
  private final BufferedReader said;
  private final Writer orders;
  private final String port;
  private final String password;
  private int databases;

  private PostgresServer(Process script) throws IOException {
    this.script = script;
    this.said = script.inputReader();
    this.orders = script.outputWriter();
    String[] ready = awaitReady().split(" ");
    this.port = ready[1];
    this.password = ready[2];
  }

  /**
   * Starts a server.
   *
   * @param root the checkout
   * @throws IllegalStateException with what is missing on this machine
   */
  public static PostgresServer start(Path root) {
    try {
      return new PostgresServer(
          new ProcessBuilder("sh", root.resolve("shop/src/test/sh/postgres-server.sh").toString())
              .redirectErrorStream(true)
              .start());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String awaitReady() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      if (line.startsWith(READY)) {
        return line;
      }
      all.append(line).append('\n');
    }
    throw new IllegalStateException(all.toString());
  }

  /** A new, empty database. */
  public synchronized DataPlace.OnServer database() {
    String name = "shop" + ++databases;
    try (Connection server = DriverManager.getConnection(url("postgres"), "fourpin", password);
        Statement statement = server.createStatement()) {
      statement.execute("create database " + name);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return new DataPlace.OnServer(url(name) + "?user=fourpin", Optional.of(password));
  }

  private String url(String database) {
    return DataPlace.SERVER + "//127.0.0.1:" + port + "/" + database;
  }

  /** Kills every process of the server at once, and starts it again. */
  public void crash() {
    try {
      orders.write("crash\n");
      orders.flush();
      awaitReady();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    try {
      orders.close();
      if (!script.waitFor(LONGEST_STOP_S, TimeUnit.SECONDS)) {
        throw new IllegalStateException("the PostgreSQL server of the tests does not stop");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
