package fourpin.shop.store.sql;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.Devices;
import fourpin.shop.store.Documents;
import fourpin.shop.store.Rack;
import fourpin.shop.store.Store;
import fourpin.shop.store.Ticks;
import java.time.InstantSource;

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
  public Devices devices() {
    return new SqlDevices(database, ids);
  }

  @Override
  public void close() {
    database.close();
  }
}
