package fourpin.shop.line;

import fourpin.measure.Reading;
import fourpin.sheets.packet.Codes;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The address of a job at a server, as a maker copies it, for codes on printed sheets. */
final class BenchAddress {

  /** Longer ones make codes that a phone reads badly. */
  private static final int LONGEST = 120;

  private static final String REMEDY =
      "open the job from a phone and copy its address, as https://192.168.7.2:7404/jobs/NUMBER";

  private static final String PATH = "/jobs/[A-Za-z0-9-]+(/|/bench|/bench/)?";

  private BenchAddress() {}

  /** Codes that lead to it. */
  static Reading<Codes> read(String typed) {
    try {
      URI address = new URI(typed.strip());
      return complaint(address)
          .<Reading<Codes>>map(rule -> Reading.bad(rule, REMEDY))
          .orElseGet(() -> Reading.good(Codes.to(bench(address))));
    } catch (URISyntaxException e) {
      return Reading.bad("it is no address", REMEDY);
    }
  }

  private static Optional<String> complaint(URI address) {
    String scheme = Optional.ofNullable(address.getScheme()).orElse("").toLowerCase(Locale.ROOT);
    String host = Optional.ofNullable(address.getHost()).orElse("").toLowerCase(Locale.ROOT);
    if (!List.of("http", "https").contains(scheme) || host.isEmpty()) {
      return Optional.of("it does not begin with http:// or https:// and the name of a machine");
    }
    if (host.equals("localhost") || host.startsWith("127.") || host.equals("[::1]")) {
      return Optional.of("a phone that asks " + host + " asks itself");
    }
    boolean more =
        address.getRawUserInfo() != null
            || address.getRawQuery() != null
            || address.getRawFragment() != null;
    if (more || !Optional.ofNullable(address.getRawPath()).orElse("").matches(PATH)) {
      return Optional.of("it is not that of a job");
    }
    return address.toString().length() > LONGEST
        ? Optional.of("it has more than " + LONGEST + " characters")
        : Optional.empty();
  }

  private static String bench(URI address) {
    return address.toString().replaceFirst("(/bench)?/?$", "") + "/bench";
  }
}
