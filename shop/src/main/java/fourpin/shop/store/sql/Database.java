package fourpin.shop.store.sql;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import fourpin.shop.store.DataPlace;
import fourpin.shop.store.StoreException;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** An open database with our tables in it. */
final class Database implements AutoCloseable {

  private static final long LONGEST_WAIT_MS = 30_000;

  private final HikariDataSource pool;
  private final Jdbi jdbi;
  private final Jdbi snapshots;
  private final TransactionIsolationLevel snapshot;
  private final Optional<String> alone;

  private Database(Source source) {
    this.pool = new HikariDataSource(config(source));
    this.jdbi = Jdbi.create(pool);
    this.snapshots = Jdbi.create(source.forReading());
    this.snapshot = source.snapshot();
    this.alone = source.alone();
  }

  /**
   * Opens a database and brings its tables to the present form.
   *
   * @throws StoreException if there is no way to it, or a newer version of the program made it
   */
  static Database open(DataPlace place) {
    Source source = Source.of(place);
    try {
      Tables.bringUpToDate(source.forWriting());
      return new Database(source);
    } catch (FlywayException e) {
      throw new StoreException(Faults.ofOpening(place, e), e);
    } catch (SQLException | RuntimeException e) {
      throw new StoreException(Faults.unreachable(place, e), e);
    }
  }

  private static HikariConfig config(Source source) {
    HikariConfig config = new HikariConfig();
    config.setDataSource(source.forWriting());
    config.setMaximumPoolSize(source.connections());
    config.setMinimumIdle(1);
    config.setConnectionTimeout(LONGEST_WAIT_MS);
    return config;
  }

  /** Runs in one transaction, which is on the disk when this returns. */
  <T> T inTransaction(Function<Handle, T> work) {
    return guarded(() -> jdbi.inTransaction(work::apply));
  }

  /**
   * The same, while nobody else writes what a backup holds. Who has begun to write is not waited
   * for, because each might then wait for the other.
   */
  <T> T inTransactionAlone(Function<Handle, T> work) {
    return inTransaction(
        db -> {
          alone.ifPresent(lock -> lock(db, lock));
          return work.apply(db);
        });
  }

  private static void lock(Handle db, String lock) {
    try {
      db.execute(lock);
    } catch (JdbiException e) {
      throw Faults.isLocked(e)
          ? new StoreException("others are saving just now; try again in a moment", e)
          : e;
    }
  }

  /** Runs on one unchanging state of everything, while others write. */
  <T> T inSnapshot(Function<Handle, T> work) {
    return guarded(() -> snapshots.inTransaction(snapshot, work::apply));
  }

  private static <T> T guarded(Supplier<T> work) {
    try {
      return work.get();
    } catch (ConnectionException e) {
      throw new StoreException("the database cannot be reached; nothing was written", e);
    } catch (JdbiException e) {
      throw new StoreException("the database failed: " + Faults.innermost(e), e);
    }
  }

  @Override
  public void close() {
    pool.close();
  }
}
