package fourpin.shop.web.guard;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Locale;
import java.util.Optional;

/** Codes that pair a device: one at a time, for one device, for a short while and few tries. */
public final class PairingCodes {

  private static final int CODES = 100_000_000;

  private final SecureRandom random = new SecureRandom();
  private final Limits limits;
  private final InstantSource clock;
  private Optional<Offer> open = Optional.empty();
  private int wrong;

  public PairingCodes(Limits limits, InstantSource clock) {
    this.limits = limits;
    this.clock = clock;
  }

  /**
   * A code to be typed on the device.
   *
   * @param digits eight
   */
  public record Offer(String digits, Instant expires) {
    /** In two groups, for people. */
    public String shown() {
      int half = digits.length() / 2;
      return digits.substring(0, half) + " " + digits.substring(half);
    }
  }

  /** A new code; the one before is void. To be shown on the machine that serves, nowhere else. */
  public synchronized Offer offer() {
    Offer offer =
        new Offer(
            String.format(Locale.ROOT, "%08d", random.nextInt(CODES)),
            clock.instant().plus(limits.codeLife()));
    open = Optional.of(offer);
    wrong = 0;
    return offer;
  }

  /**
   * Uses the code up if it is the one.
   *
   * @param typed blanks and dashes do not count
   */
  synchronized boolean redeem(String typed) {
    Optional<Offer> valid = open.filter(o -> clock.instant().isBefore(o.expires()));
    boolean right = valid.isPresent() && same(typed.replaceAll("[\\s-]", ""), valid.get().digits());
    wrong += right ? 0 : 1;
    open = right || wrong >= limits.codeTries() ? Optional.empty() : valid;
    return right;
  }

  /** Takes as long for every code of the same length. */
  private static boolean same(String a, String b) {
    return MessageDigest.isEqual(
        a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
  }
}
