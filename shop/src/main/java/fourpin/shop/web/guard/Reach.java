package fourpin.shop.web.guard;

import fourpin.shop.web.trust.Authority;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What this machine may be called by those who ask. A browser names what stands in its address bar,
 * so that a name of the internet that was made to lead here is told from ours.
 *
 * @param bind address that the server listens at
 * @param names in small letters; addresses of version 6 in brackets
 * @param devices how they come; nothing of theirs is taken otherwise
 */
public record Reach(String bind, Set<String> names, Asked.Line devices) {

  private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

  private static final Pattern IPV4 = Pattern.compile("(?!127\\.)[\\d.]+");

  /** RFC 4193. Addresses of one link need a zone, which browsers take none of. */
  private static final Pattern UNIQUE_LOCAL = Pattern.compile("\\[f[cd].*");

  /** Without a zone, which means something on one machine only. */
  private static final Pattern IPV6 = Pattern.compile("\\[[0-9a-f:.]+]");

  private static final Pattern PORT = Pattern.compile(":\\d{1,5}$");

  public Reach {
    names = names.stream().map(Reach::plain).collect(Collectors.toUnmodifiableSet());
  }

  /** For browsers on this machine only. */
  public static Reach loopback() {
    return new Reach("127.0.0.1", LOOPBACK, Asked.Line.PLAIN);
  }

  /** For the network that this machine is on: by its addresses and its name as well. */
  public static Reach network() {
    Set<String> names = new HashSet<>(LOOPBACK);
    interfaces().flatMap(NetworkInterface::inetAddresses).map(Reach::written).forEach(names::add);
    ownNames().forEach(names::add);
    return new Reach("0.0.0.0", names, Asked.Line.ENCRYPTED);
  }

  /** Where devices of the network find this machine and can be sure that it is this machine. */
  public Stream<String> addresses() {
    return Stream.of(IPV4, UNIQUE_LOCAL)
        .flatMap(kind -> names.stream().filter(kind.asMatchPredicate()).sorted())
        .filter(Authority::speaksFor);
  }

  /**
   * Where devices of the network find what is asked for: by the name that it was asked by, unless
   * that is good on this machine only or no certificate can bear it. Nothing where no other device
   * finds this machine.
   *
   * @param host as the request names it, with its port
   */
  public Optional<String> origin(String host) {
    String name = bare(host);
    boolean good = includes(host) && !isHere(host) && Authority.speaksFor(name);
    String port = host.substring(name.length());
    return (good ? Optional.of(name) : addresses().findFirst()).map(n -> "https://" + n + port);
  }

  /** Whether it is asked for by a name that every machine calls itself. */
  static boolean isHere(String host) {
    return LOOPBACK.stream().map(Reach::plain).anyMatch(plain(bare(host))::equals);
  }

  private static String bare(String host) {
    return PORT.matcher(host.toLowerCase(Locale.ROOT)).replaceFirst("");
  }

  /** An address of version 6 has many spellings (RFC 5952, 2); all of one are made the same. */
  private static String plain(String name) {
    if (!IPV6.matcher(name).matches()) {
      return name;
    }
    try {
      return written(InetAddress.ofLiteral(name.substring(1, name.length() - 1)));
    } catch (IllegalArgumentException e) {
      return name;
    }
  }

  private static Stream<NetworkInterface> interfaces() {
    try {
      return NetworkInterface.networkInterfaces();
    } catch (SocketException e) {
      // As where there is no network.
      return Stream.of();
    }
  }

  /** Without the zone that a link-local address may have. */
  private static String written(InetAddress address) {
    String text = address.getHostAddress().replaceFirst("%.*", "");
    return text.contains(":") ? "[" + text + "]" : text;
  }

  /** Also as multicast DNS has it (RFC 6762). */
  private static Stream<String> ownNames() {
    try {
      String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
      return Stream.of(name, name + ".local");
    } catch (UnknownHostException e) {
      return Stream.of();
    }
  }

  /**
   * @param host as a request names it, with or without a port
   */
  boolean includes(String host) {
    return names.contains(plain(bare(host)));
  }
}
