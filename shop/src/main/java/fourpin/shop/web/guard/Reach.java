package fourpin.shop.web.guard;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What this machine may be called by those who ask. A browser names what stands in its address bar,
 * so that a name of the internet that was made to lead here is told from ours.
 *
 * @param bind address that the server listens at
 * @param names in small letters; addresses of version 6 in brackets
 */
public record Reach(String bind, Set<String> names) {

  private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

  private static final Pattern IPV4 = Pattern.compile("(?!127\\.)[\\d.]+");
  private static final Pattern PORT = Pattern.compile(":\\d{1,5}$");

  public Reach {
    names = Set.copyOf(names);
  }

  /** For browsers on this machine only. */
  public static Reach loopback() {
    return new Reach("127.0.0.1", LOOPBACK);
  }

  /** For the network that this machine is on: by its addresses and its name as well. */
  public static Reach network() throws SocketException {
    Set<String> names = new HashSet<>(LOOPBACK);
    NetworkInterface.networkInterfaces()
        .flatMap(NetworkInterface::inetAddresses)
        .map(Reach::written)
        .forEach(names::add);
    ownNames().forEach(names::add);
    return new Reach("0.0.0.0", names);
  }

  /** Where devices of the network find this machine. */
  public Stream<String> addresses() {
    return names.stream()
        .filter(name -> !LOOPBACK.contains(name))
        .filter(IPV4.asMatchPredicate())
        .sorted();
  }

  /**
   * Where devices of the network find what is asked for: by the name that it was asked by, unless
   * that is good on this machine only. Nothing where no other device finds this machine.
   *
   * @param host as the request names it, with its port
   * @param port that the server listens at
   */
  public Optional<String> origin(String host, int port) {
    boolean here = LOOPBACK.contains(PORT.matcher(host.toLowerCase(Locale.ROOT)).replaceFirst(""));
    Optional<String> found = addresses().findFirst().map(address -> address + ":" + port);
    return found.map(address -> "http://" + (here ? address : host));
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
    return names.contains(PORT.matcher(host.toLowerCase(Locale.ROOT)).replaceFirst(""));
  }
}
