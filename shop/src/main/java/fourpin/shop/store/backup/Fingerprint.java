package fourpin.shop.store.backup;

import fourpin.shop.store.StoreException;
import fourpin.shop.store.sql.Snapshot;
import fourpin.shop.store.sql.SqlStore;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.stream.Stream;

/**
 * Of all that a backup of a store would hold, so that who looked at what would be replaced does not
 * replace what came after.
 *
 * @param sum SHA-256 of all rows, in hexadecimal digits
 */
public record Fingerprint(String sum) {

  /** Of a store as it stands at one moment. */
  static Fingerprint of(Snapshot now) {
    MessageDigest digest = Sums.digest();
    add(digest, now.documents());
    add(digest, now.revisions());
    add(digest, now.ticks());
    add(digest, now.layouts());
    add(digest, now.pieces());
    return new Fingerprint(Sums.hex(digest));
  }

  private static void add(MessageDigest digest, Stream<? extends Record> rows) {
    try (rows) {
      rows.map(Record::toString)
          .forEach(row -> digest.update(row.getBytes(StandardCharsets.UTF_8)));
    }
  }

  /** That the store is still as it was. */
  public SqlStore.Before unchanged() {
    return now -> {
      if (!of(now).equals(this)) {
        throw new StoreException("the shop keeps other things now than when you looked");
      }
    };
  }
}
