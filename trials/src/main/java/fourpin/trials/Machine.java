package fourpin.trials;

import java.lang.management.ManagementFactory;
import java.util.Locale;

/** What the figures were measured on. */
final class Machine {

  private Machine() {}

  static String inWords() {
    return String.format(
        Locale.ROOT,
        "%d processors, %s %s, Java %s, load before %.2f",
        Runtime.getRuntime().availableProcessors(),
        System.getProperty("os.name"),
        System.getProperty("os.arch"),
        Runtime.version(),
        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
  }
}
