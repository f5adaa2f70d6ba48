package fourpin.shop.web;

import fourpin.shop.web.guard.Asked;
import fourpin.shop.web.guard.Reach;
import fourpin.shop.web.trust.Authority;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Base64;
import java.util.Set;

/** The authority that the browser of the tests trusts, and a network on this machine alone. */
final class OneAuthority {

  /** A machine of the network: the browser is told that this name leads to loopback. */
  static final String HOST = "bench.local";

  static final Reach REACH =
      new Reach("127.0.0.1", Set.of("localhost", "127.0.0.1", "[::1]", HOST), Asked.Line.ENCRYPTED);

  private static final Authority ONE = make();

  private OneAuthority() {}

  /**
   * Where devices find a server: by a name that no browser trusts without a certificate.
   *
   * @param port that leads to it
   */
  static String origin(int port) {
    return "https://" + HOST + ":" + port;
  }

  private static Authority make() {
    try {
      return Authority.make(Instant.now());
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  static Authority get() {
    return ONE;
  }

  /** Of its key, as Chromium is told whom else to trust. */
  static String keysDigest() {
    try {
      byte[] key = ONE.certificate().getPublicKey().getEncoded();
      return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(key));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
