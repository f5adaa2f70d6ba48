package fourpin.shop.web.trust;

import java.net.InetAddress;
import java.util.Optional;
import java.util.regex.Pattern;

/** A name or address that a certificate of the shop's own may bear: of private networks only. */
sealed interface Name {

  /** By which multicast DNS finds a machine (RFC 6762), or this machine itself. */
  record Domain(String domain) implements Name {}

  /** Without brackets. */
  record Address(String address) implements Name {}

  Pattern DOMAIN = Pattern.compile("localhost|[a-z0-9]([a-z0-9-]*[a-z0-9])?\\.local");
  Pattern LITERAL = Pattern.compile("[\\d.]+|\\[[0-9a-f:.]+]");

  /** The first seven bits of unique local addresses (RFC 4193). */
  int UNIQUE_LOCAL = 0xfc;

  int UNIQUE_LOCAL_MASK = 0xfe;
  int BYTES_OF_V6 = 16;

  /**
   * Reads one; nothing if it may also be somebody's on the internet.
   *
   * @param written in small letters; an address of version 6 in brackets
   */
  static Optional<Name> of(String written) {
    if (DOMAIN.matcher(written).matches()) {
      return Optional.of(new Domain(written));
    }
    if (!LITERAL.matcher(written).matches()) {
      return Optional.empty();
    }
    return literal(written.replaceAll("[\\[\\]]", ""))
        .filter(Name::isPrivate)
        .map(address -> new Address(address.getHostAddress()));
  }

  private static Optional<InetAddress> literal(String written) {
    try {
      return Optional.of(InetAddress.ofLiteral(written));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static boolean isPrivate(InetAddress address) {
    byte[] bytes = address.getAddress();
    return bytes.length == BYTES_OF_V6
        ? (bytes[0] & UNIQUE_LOCAL_MASK) == UNIQUE_LOCAL
            || address.isLinkLocalAddress()
            || address.isLoopbackAddress()
        : address.isSiteLocalAddress()
            || address.isLinkLocalAddress()
            || address.isLoopbackAddress();
  }
}
