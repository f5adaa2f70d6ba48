package fourpin.shop.web.trust;

import java.security.KeyStore;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Collection;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.DetectorConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/**
 * A port that takes HTTP over TLS (1.2 or 1.3) and plain HTTP, told apart by the first bytes. The
 * server's certificate is made at the start, and anew when its names change or a third of its life
 * is over.
 */
public final class EncryptedLine implements AutoCloseable {

  private static final Duration BETWEEN_LOOKS = Duration.ofMinutes(10);
  private static final String HTTP = "http/1.1";

  private final Authority authority;
  private final Supplier<? extends Collection<String>> names;
  private final InstantSource clock;
  private final SslContextFactory.Server tls = new SslContextFactory.Server();
  private final Thread looking = Thread.ofVirtual().unstarted(this::look);
  private Set<String> certified = Set.of();
  private Instant renewed = Instant.MIN;

  /**
   * @param names by which the machine is asked for at the moment
   */
  public EncryptedLine(
      Authority authority, Supplier<? extends Collection<String>> names, InstantSource clock) {
    this.authority = authority;
    this.names = names;
    this.clock = clock;
    tls.setIncludeProtocols("TLSv1.3", "TLSv1.2");
    tls.setKeyStorePassword("");
    renew();
    looking.start();
  }

  private void look() {
    try {
      while (true) {
        Thread.sleep(BETWEEN_LOOKS);
        renewInTime();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Who is asked for by which name is for the guard to say. */
  public Connector connector(Server server, HttpConfiguration http, String host, int port) {
    HttpConfiguration both = new HttpConfiguration(http);
    both.addCustomizer(new SecureRequestCustomizer(false));
    ServerConnector connector =
        new ServerConnector(
            server,
            new DetectorConnectionFactory(new SslConnectionFactory(tls, HTTP)),
            new HttpConnectionFactory(both));
    connector.setHost(host);
    connector.setPort(port);
    connector.setIdleTimeout(http.getIdleTimeout());
    return connector;
  }

  /** Makes a new certificate if it is time. */
  void renewInTime() {
    boolean old = clock.instant().isAfter(renewed.plus(Authority.renewal()));
    if (old || !certified.equals(Set.copyOf(names.get()))) {
      renew();
    }
  }

  private void renew() {
    certified = Set.copyOf(names.get());
    renewed = clock.instant();
    KeyStore fresh = authority.issue(certified, renewed);
    try {
      if (tls.isStarted()) {
        tls.reload(t -> t.setKeyStore(fresh));
      } else {
        tls.setKeyStore(fresh);
      }
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    looking.interrupt();
  }
}
