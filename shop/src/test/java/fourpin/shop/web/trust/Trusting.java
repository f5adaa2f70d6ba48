package fourpin.shop.web.trust;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A client that trusts an authority, and nobody else. */
public final class Trusting {

  private Trusting() {}

  public static SSLContext only(Authority authority) throws IOException, GeneralSecurityException {
    KeyStore anchors = KeyStore.getInstance("PKCS12");
    anchors.load(null, null);
    anchors.setCertificateEntry("shop", authority.certificate());
    TrustManagerFactory managers =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    managers.init(anchors);
    SSLContext tls = SSLContext.getInstance("TLS");
    tls.init(null, managers.getTrustManagers(), null);
    return tls;
  }
}
