package fourpin.shop.store.sql;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.StoreException;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import javax.sql.DataSource;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.postgresql.ds.PGSimpleDataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * Where connections come from: all that differs between the two databases.
 *
 * @param connections how many at once; one for SQLite, which knows one writer only
 * @param snapshot the level at which one transaction sees one state
 * @param alone what keeps others from writing what a backup holds till the transaction ends;
 *     nothing for SQLite, where a transaction that writes is alone from its start
 */
record Source(
    DataSource forWriting,
    DataSource forReading,
    int connections,
    TransactionIsolationLevel snapshot,
    Optional<String> alone) {

  private static final int SERVER_CONNECTIONS = 8;
  private static final int BUSY_MS = 30_000;
  private static final int LOGIN_SECONDS = 30;
  private static final String LOCK =
      "lock table document, revision, tick, layout, piece in exclusive mode nowait";
  private static final String OWNER_ONLY = "rwx------";

  static Source of(DataPlace place) {
    return switch (place) {
      case DataPlace.InFile(Path file) -> inFile(file);
      case DataPlace.OnServer server -> onServer(server);
    };
  }

  private static Source inFile(Path file) {
    makeFolder(file);
    return new Source(
        sqlite(file, SQLiteConfig.TransactionMode.IMMEDIATE),
        sqlite(file, SQLiteConfig.TransactionMode.DEFERRED),
        1,
        TransactionIsolationLevel.SERIALIZABLE,
        Optional.empty());
  }

  /** Commits are on the disk when they return: write-ahead log, synchronised fully. */
  private static DataSource sqlite(Path file, SQLiteConfig.TransactionMode mode) {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.setTransactionMode(mode);
    config.setBusyTimeout(BUSY_MS);
    config.enforceForeignKeys(true);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl("jdbc:sqlite:" + file);
    return source;
  }

  private static void makeFolder(Path file) {
    try {
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null && !Files.isDirectory(folder)) {
        Files.createDirectories(folder, ownerOnly());
      }
    } catch (IOException e) {
      throw new StoreException("the folder of " + file + " cannot be made", e);
    }
  }

  private static FileAttribute<?>[] ownerOnly() {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(OWNER_ONLY))
        }
        : new FileAttribute<?>[0];
  }

  /** Commits wait for the server's disk, whatever the server's own setting says. */
  private static Source onServer(DataPlace.OnServer server) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl(server.url());
    server.password().ifPresent(source::setPassword);
    source.setOptions("-c synchronous_commit=on");
    source.setLoginTimeout(LOGIN_SECONDS);
    source.setApplicationName("fourpin");
    return new Source(
        source,
        source,
        SERVER_CONNECTIONS,
        TransactionIsolationLevel.REPEATABLE_READ,
        Optional.of(LOCK));
  }
}
