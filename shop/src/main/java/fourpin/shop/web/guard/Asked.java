package fourpin.shop.web.guard;

import java.net.InetAddress;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a request says of itself.
 *
 * @param line that it came by
 * @param path without what follows the question mark
 * @param query what follows it; empty if there is nothing
 * @param from the other end of the connection
 * @param headers by name in small letters
 */
public record Asked(
    Line line,
    String method,
    String path,
    String query,
    InetAddress from,
    Map<String, List<String>> headers) {

  /** How it came. */
  public enum Line {
    PLAIN("http://"),
    ENCRYPTED("https://");

    private final String scheme;

    Line(String scheme) {
      this.scheme = scheme;
    }

    /** Of addresses, up to the host. */
    String scheme() {
      return scheme;
    }
  }

  /** The value of a header that stands there once; nothing otherwise. */
  Optional<String> header(String name) {
    List<String> values = headers.getOrDefault(name, List.of());
    return values.size() == 1 ? Optional.of(values.getFirst()) : Optional.empty();
  }

  boolean has(String name) {
    return headers.containsKey(name);
  }
}
