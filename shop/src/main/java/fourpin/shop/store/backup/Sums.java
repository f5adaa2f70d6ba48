package fourpin.shop.store.backup;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/** Checksums as {@code sha256sum} writes and checks them. */
final class Sums {

  private static final int HEX_DIGITS = 64;
  private static final String GAP = "  ";

  private Sums() {}

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  static String hex(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest());
  }

  static String line(String name, MessageDigest digest) {
    return hex(digest) + GAP + name + "\n";
  }

  /** Sums by name. @throws BackupException for a line that is none */
  static Map<String, String> read(String text) {
    Map<String, String> sums = new LinkedHashMap<>();
    text.lines()
        .forEach(
            line -> {
              if (!line.startsWith(GAP, HEX_DIGITS)) {
                throw new BackupException("its list of checksums is damaged");
              }
              sums.put(line.substring(HEX_DIGITS + GAP.length()), line.substring(0, HEX_DIGITS));
            });
    return sums;
  }
}
