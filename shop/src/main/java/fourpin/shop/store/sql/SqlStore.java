package fourpin.shop.store.sql;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.Devices;
import fourpin.shop.store.Documents;
import fourpin.shop.store.Layouts;
import fourpin.shop.store.Rack;
import fourpin.shop.store.Store;
import fourpin.shop.store.StoreException;
import fourpin.shop.store.Ticks;
import java.time.InstantSource;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** The store in a database. */
public final class SqlStore implements Store {

  private final Database database;
  private final InstantSource clock;
  private final Ids ids;

  private SqlStore(Database database, InstantSource clock) {
    this.database = database;
    this.clock = clock;
    this.ids = new Ids(clock);
  }

  /**
   * Opens a store; makes it where there is none, and brings an older one to the present form.
   *
   * @param clock of the moments that are kept
   * @throws fourpin.shop.store.StoreException if it cannot be opened, or a newer version made it
   */
  public static SqlStore open(DataPlace place, InstantSource clock) {
    return new SqlStore(Database.open(place), clock);
  }

  @Override
  public Documents documents() {
    return new SqlDocuments(database, ids, clock);
  }

  @Override
  public Ticks ticks() {
    return new SqlTicks(database, clock);
  }

  @Override
  public Rack rack() {
    return new SqlRack(database, ids);
  }

  @Override
  public Layouts layouts() {
    return new SqlLayouts(database);
  }

  @Override
  public Devices devices() {
    return new SqlDevices(database, ids);
  }

  /** Reads everything as it stands at one moment, while others write. */
  public <T> T snapshot(Function<Snapshot, T> work) {
    return database.inSnapshot(db -> work.apply(new Snapshot(db)));
  }

  /** What a store has to be like before all that it holds is replaced. */
  @FunctionalInterface
  public interface Before {

    /** What it holds is dropped. */
    Before ANYTHING = _ -> {};

    Before NOTHING =
        now -> {
          if (!now.isEmpty()) {
            throw new StoreException(
                "the shop keeps something already; name another place for its data, or add"
                    + " --replace");
          }
        };

    /**
     * @throws StoreException if it is not so
     */
    void require(Snapshot now);
  }

  /**
   * Takes everything in, whole or not at all, while nobody else writes.
   *
   * @throws StoreException if the store is not as it has to be before, or rows are missing
   */
  public void takeIn(Before before, Consumer<Intake> work) {
    database.inTransactionAlone(
        db -> {
          before.require(new Snapshot(db));
          Intake intake = new Intake(db);
          intake.clear();
          work.accept(intake);
          requireComplete(intake);
          return before;
        });
  }

  private static void requireComplete(Intake intake) {
    List<String> incomplete = intake.incomplete();
    if (!incomplete.isEmpty()) {
      throw new StoreException("revisions are missing of " + String.join(", ", incomplete));
    }
  }

  @Override
  public void close() {
    database.close();
  }
}
