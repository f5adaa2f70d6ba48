package fourpin.shop.web.guard;

import fourpin.shop.yaml.TreeReader;
import java.time.Duration;

/**
 * How much the server takes. None of it says anything about furniture, and a shop never meets most
 * of it; all of it is common practice.
 *
 * @param formBytes of a form without a file
 * @param fileBytes of a form with a job file
 * @param backupBytes of a form with a backup, from the machine that serves
 * @param addressChars of a path, and of what follows the question mark
 * @param requestsPerMinute from one address, over time
 * @param requestsAtOnce from one address, after a pause
 * @param codeLife how long a pairing code can be used
 * @param codeTries wrong codes until it is void
 * @param pairingLife until a device has to be paired anew
 */
public record Limits(
    long formBytes,
    long fileBytes,
    long backupBytes,
    int addressChars,
    int requestsPerMinute,
    int requestsAtOnce,
    Duration codeLife,
    int codeTries,
    Duration pairingLife) {

  /** A file is what a job file may have, and the form around it. */
  public static final Limits STANDARD =
      new Limits(
          1 << 16,
          TreeReader.MOST_BYTES + (1 << 16),
          1L << 30,
          2_000,
          600,
          300,
          Duration.ofMinutes(5),
          5,
          Duration.ofDays(30));
}
