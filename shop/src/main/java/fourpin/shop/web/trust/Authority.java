package fourpin.shop.web.trust;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import javax.security.auth.x500.X500Principal;

/**
 * The shop's own certificate authority. Devices that trust it take this machine for what it says it
 * is. It is made once and kept, since each device is told by hand to trust it.
 */
public final class Authority {

  /** Of the store of its server's key, which is never written to a disk. */
  private static final String SERVER = "server";

  private static final X500Principal NAME = new X500Principal("CN=Fourpin in this shop");

  private final PrivateKey key;
  private final X509Certificate certificate;

  Authority(PrivateKey key, X509Certificate certificate) {
    this.key = key;
    this.certificate = certificate;
  }

  /**
   * The one that is kept; a new one where there is none, or where it would not outlive a server's
   * certificate.
   *
   * @param file private to its owner
   * @throws TrustException if what is there cannot be used
   */
  public static Authority keptIn(Path file, Instant now) {
    try {
      if (Files.exists(file)) {
        Authority kept = AuthorityFile.read(file);
        if (kept.outlives(now.plus(Issuing.SERVER_LIFE))) {
          return kept;
        }
      }
      Authority made = make(now);
      AuthorityFile.write(file, made);
      return made;
    } catch (IOException e) {
      throw new TrustException(file + " cannot be written; choose another place for the data", e);
    } catch (GeneralSecurityException e) {
      throw new TrustException("this Java makes no keys: " + e.getMessage(), e);
    }
  }

  /** A new one, kept nowhere. */
  public static Authority make(Instant now) throws GeneralSecurityException {
    KeyPair keys = Issuing.keys();
    return new Authority(keys.getPrivate(), Issuing.authority(NAME, keys, now));
  }

  private boolean outlives(Instant moment) {
    return certificate.getNotAfter().toInstant().isAfter(moment);
  }

  PrivateKey key() {
    return key;
  }

  public X509Certificate certificate() {
    return certificate;
  }

  /** As devices take it (DER). */
  public byte[] encoded() {
    try {
      return certificate.getEncoded();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("it was encoded when it was made", e);
    }
  }

  /** By which people tell it from another: SHA-256 in pairs of digits, as devices show it. */
  public String fingerprint() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(encoded());
      return HexFormat.ofDelimiter(":").formatHex(digest).toUpperCase(Locale.ROOT);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /**
   * Whether there can be a certificate for this; not for what may be somebody's on the internet.
   */
  public static boolean speaksFor(String name) {
    return Name.of(name).isPresent();
  }

  /** Life of a server's certificate; after a third of it the next is made. */
  static Duration renewal() {
    return Issuing.SERVER_LIFE.dividedBy(3);
  }

  /**
   * A new key and certificate for a server.
   *
   * @param names of which those are taken that the authority speaks for
   * @return a store without password that holds nothing else
   */
  public KeyStore issue(Collection<String> names, Instant now) {
    List<Name> certified =
        names.stream().sorted().flatMap(name -> Name.of(name).stream()).distinct().toList();
    try {
      KeyPair keys = Issuing.keys();
      X509Certificate server = Issuing.server(certificate, key, keys, certified, now);
      KeyStore store = KeyStore.getInstance("PKCS12");
      store.load(null, AuthorityFile.OPEN);
      Certificate[] chain = {server, certificate};
      store.setKeyEntry(SERVER, keys.getPrivate(), AuthorityFile.OPEN, chain);
      return store;
    } catch (GeneralSecurityException | IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
