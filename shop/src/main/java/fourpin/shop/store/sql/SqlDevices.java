package fourpin.shop.store.sql;

import fourpin.shop.store.Device;
import fourpin.shop.store.Devices;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Paired devices. */
final class SqlDevices implements Devices {

  private final Database database;
  private final Ids ids;

  SqlDevices(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  @Override
  public List<Device> all(Instant now) {
    return database.inTransaction(
        db ->
            db
                .createQuery("select * from device where expires_at > :now")
                .bind("now", now.toEpochMilli())
                .map((row, _) -> device(row))
                .stream()
                .sorted(Comparator.comparing(Device::name))
                .toList());
  }

  @Override
  public Device pair(String name, String tokenDigest, Instant now, Instant expires) {
    return database.inTransaction(
        db -> {
          forgetExpired(db, now);
          return names(name)
              .map(n -> new Device(ids.next(), n, now, expires))
              .filter(device -> inserted(db, device, tokenDigest))
              .findFirst()
              .orElseThrow();
        });
  }

  private static Stream<String> names(String name) {
    return IntStream.iterate(1, n -> n + 1).mapToObj(n -> n == 1 ? name : name + " " + n);
  }

  private static void forgetExpired(Handle db, Instant now) {
    db.createUpdate("delete from device where expires_at <= :now")
        .bind("now", now.toEpochMilli())
        .execute();
  }

  /** Unless another device has the name. */
  private static boolean inserted(Handle db, Device device, String tokenDigest) {
    return db.createUpdate(
                """
                insert into device (id, name, token_digest, paired_at, expires_at)
                values (:id, :name, :digest, :paired, :expires)
                on conflict (name) do nothing
                """)
            .bind("id", device.id())
            .bind("name", device.name())
            .bind("digest", tokenDigest)
            .bind("paired", device.paired().toEpochMilli())
            .bind("expires", device.expires().toEpochMilli())
            .execute()
        > 0;
  }

  @Override
  public Optional<Device> with(String tokenDigest, Instant now) {
    return database.inTransaction(
        db ->
            db.createQuery(
                    "select * from device where token_digest = :digest and expires_at > :now")
                .bind("digest", tokenDigest)
                .bind("now", now.toEpochMilli())
                .map((row, _) -> device(row))
                .findFirst());
  }

  @Override
  public void unpair(String id) {
    database.inTransaction(
        db -> db.createUpdate("delete from device where id = :id").bind("id", id).execute());
  }

  private static Device device(ResultSet row) throws SQLException {
    return new Device(
        row.getString("id"),
        row.getString("name"),
        Instant.ofEpochMilli(row.getLong("paired_at")),
        Instant.ofEpochMilli(row.getLong("expires_at")));
  }
}
