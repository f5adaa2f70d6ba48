package fourpin.shop.web.trust;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * Keeps an authority in one file (PKCS #12, RFC 7292). It has no password, which would stand beside
 * it: what guards it is that only its owner may read it.
 */
final class AuthorityFile {

  static final char[] OPEN = {};
  private static final String NAME = "authority";
  private static final String OWNER_ONLY = "rw-------";
  private static final Set<PosixFilePermission> OWNERS =
      EnumSet.of(
          PosixFilePermission.OWNER_READ,
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.OWNER_EXECUTE);

  private AuthorityFile() {}

  static Authority read(Path file) throws GeneralSecurityException {
    requirePrivate(file);
    try (InputStream in = Files.newInputStream(file)) {
      KeyStore store = KeyStore.getInstance("PKCS12");
      store.load(in, OPEN);
      if (store.getKey(NAME, OPEN) instanceof PrivateKey key
          && store.getCertificate(NAME) instanceof X509Certificate certificate) {
        return new Authority(key, certificate);
      }
      throw unreadable(file);
    } catch (IOException e) {
      throw unreadable(file);
    }
  }

  private static TrustException unreadable(Path file) {
    return new TrustException(
        file
            + " holds no certificate authority that can be read; put a copy of it back, or delete it"
            + " and tell each device anew whom to trust");
  }

  private static void requirePrivate(Path file) {
    try {
      if (posix(file) && !OWNERS.containsAll(Files.getPosixFilePermissions(file))) {
        throw new TrustException(
            "others can read the key in "
                + file
                + "; if nobody has, take that right away: chmod 600");
      }
    } catch (IOException e) {
      throw unreadable(file);
    }
  }

  private static boolean posix(Path file) {
    return file.getFileSystem().supportedFileAttributeViews().contains("posix");
  }

  /** Whole or not at all. */
  static void write(Path file, Authority authority) throws IOException, GeneralSecurityException {
    KeyStore store = KeyStore.getInstance("PKCS12");
    store.load(null, OPEN);
    Certificate[] chain = {authority.certificate()};
    store.setKeyEntry(NAME, authority.key(), OPEN, chain);
    Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent());
    Files.createDirectories(folder);
    Path aside = Files.createTempFile(folder, "authority", ".new", ownerOnly(file));
    try (OutputStream out = Files.newOutputStream(aside)) {
      store.store(out, OPEN);
    }
    Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private static FileAttribute<?>[] ownerOnly(Path file) {
    return posix(file)
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(OWNER_ONLY))
        }
        : new FileAttribute<?>[0];
  }
}
