package fourpin.shop.web.guard;

import fourpin.shop.store.Device;
import fourpin.shop.store.Devices;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Which device shows which secret. Kept is only a digest of it; it is 256 random bits, so that a
 * plain SHA-256 of it cannot be tried out.
 */
final class Sessions {

  private static final int SECRET_BYTES = 32;
  private static final String MAC = "HmacSHA256";

  private final SecureRandom random = new SecureRandom();
  private final byte[] key = bytes();
  private final Devices devices;
  private final Limits limits;
  private final InstantSource clock;

  Sessions(Devices devices, Limits limits, InstantSource clock) {
    this.devices = devices;
    this.limits = limits;
    this.clock = clock;
  }

  private byte[] bytes() {
    byte[] bytes = new byte[SECRET_BYTES];
    random.nextBytes(bytes);
    return bytes;
  }

  /** Pairs a device. @return the secret that it is to show from now on */
  String pair(String name) {
    String secret = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes());
    Instant now = clock.instant();
    devices.pair(name, digest(secret), now, now.plus(limits.pairingLife()));
    return secret;
  }

  Optional<Device> with(String secret) {
    return devices.with(digest(secret), clock.instant());
  }

  private static String digest(String secret) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(secret.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** What a visitor's forms send along, and no other site can know; good until the server stops. */
  String formToken(Visitor visitor) {
    try {
      Mac mac = Mac.getInstance(MAC);
      mac.init(new SecretKeySpec(key, MAC));
      return HexFormat.of().formatHex(mac.doFinal(id(visitor).getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException | InvalidKeyException e) {
      throw new IllegalStateException("every Java has " + MAC, e);
    }
  }

  boolean isTokenOf(Visitor visitor, String token) {
    return MessageDigest.isEqual(
        formToken(visitor).getBytes(StandardCharsets.UTF_8),
        token.getBytes(StandardCharsets.UTF_8));
  }

  private static String id(Visitor visitor) {
    return switch (visitor) {
      case Visitor.Host _ -> "host";
      case Visitor.Paired(Device device) -> "device " + device.id();
      case Visitor.Stranger _ -> "stranger";
    };
  }
}
