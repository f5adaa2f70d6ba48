package fourpin.shop.web.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyStore;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.PKIXReason;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What certificates say, judged by Java's own reader and validator. */
class AuthorityTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  /** Its number in RFC 5280, section 4.2.1.12. */
  private static final String FOR_SERVERS = "1.3.6.1.5.5.7.3.1";

  @TempDir private Path folder;

  private Path file() {
    return folder.resolve("new").resolve("shop.db-authority.p12");
  }

  private static X509Certificate server(KeyStore store) throws GeneralSecurityException {
    return (X509Certificate) store.getCertificate(store.aliases().nextElement());
  }

  /**
   * RFC 5280, section 6, by the Java that runs this. The authority stands in the path as well,
   * below its own key, since Java does not look at what names an anchor says it speaks for.
   */
  private static void validate(X509Certificate server, X509Certificate authority, Instant when)
      throws GeneralSecurityException {
    TrustAnchor key =
        new TrustAnchor(authority.getSubjectX500Principal(), authority.getPublicKey(), null);
    PKIXParameters trust = new PKIXParameters(Set.of(key));
    trust.setRevocationEnabled(false);
    trust.setDate(Date.from(when));
    CertPathValidator.getInstance("PKIX")
        .validate(
            CertificateFactory.getInstance("X.509").generateCertPath(List.of(server, authority)),
            trust);
  }

  @Test
  void aServersCertificateBearsTheNamesOfPrivateNetworksAndIsValid()
      throws GeneralSecurityException {
    Authority authority = Authority.make(NOON);
    X509Certificate server =
        server(
            authority.issue(
                Set.of("localhost", "192.168.1.20", "[fd00::1]", "bench.local", "bench", "8.8.8.8"),
                NOON));
    assertThat(Objects.requireNonNull(server.getSubjectAlternativeNames()))
        .extracting(name -> String.valueOf(name.get(1)))
        .containsExactlyInAnyOrder(
            "localhost", "192.168.1.20", "fd00:0:0:0:0:0:0:1", "bench.local");
    assertThat(server.getExtendedKeyUsage()).containsExactly(FOR_SERVERS);
    assertThat(server.getBasicConstraints()).as("is no authority itself").isEqualTo(-1);
    assertThat(Duration.between(NOON, server.getNotAfter().toInstant()))
        .as("phones take no longer life")
        .isLessThan(Duration.ofDays(825));
    validate(server, authority.certificate(), NOON);
    validate(server, authority.certificate(), NOON.plus(Duration.ofDays(89)));
  }

  @Test
  void nobodyTakesItForAnotherAuthoritysOrAfterItsEnd() throws GeneralSecurityException {
    Authority authority = Authority.make(NOON);
    X509Certificate server = server(authority.issue(Set.of("localhost"), NOON));
    X509Certificate other = Authority.make(NOON).certificate();
    assertThatExceptionOfType(CertPathValidatorException.class)
        .isThrownBy(() -> validate(server, other, NOON));
    assertThatExceptionOfType(CertPathValidatorException.class)
        .isThrownBy(
            () -> validate(server, authority.certificate(), NOON.plus(Duration.ofDays(91))));
  }

  /** Whoever stole the key could not pose as a site of the internet where devices heed this. */
  @ParameterizedTest
  @ValueSource(strings = {"bank.example", "local.example", "8.8.8.8", "2001:db8::1"})
  void theAuthorityIsTakenForPrivateNetworksOnly(String site) throws GeneralSecurityException {
    Authority authority = Authority.make(NOON);
    KeyPair keys = Issuing.keys();
    Name name = site.contains("example") ? new Name.Domain(site) : new Name.Address(site);
    X509Certificate forged =
        Issuing.server(authority.certificate(), authority.key(), keys, List.of(name), NOON);
    assertThatExceptionOfType(CertPathValidatorException.class)
        .isThrownBy(() -> validate(forged, authority.certificate(), NOON))
        .satisfies(e -> assertThat(e.getReason()).isEqualTo(PKIXReason.INVALID_NAME));
  }

  @ParameterizedTest
  @CsvSource({
    "10.1.2.3, true",
    "172.31.0.1, true",
    "172.32.0.1, false",
    "192.168.1.20, true",
    "169.254.3.4, true",
    "127.0.0.1, true",
    "192.0.2.2, false",
    "999.1.1.1, false",
    "[::1], true",
    "[fd12:3456::1], true",
    "[fe80::1], true",
    "[2001:db8::1], false",
    "localhost, true",
    "bench.local, true",
    "a.bench.local, false",
    "-bench.local, false",
    "bench, false",
    "bench.example, false",
    "'', false"
  })
  void itSpeaksForNamesThatAreNobodysOnTheInternet(String name, boolean does)
      throws GeneralSecurityException {
    assertThat(Authority.speaksFor(name)).isEqualTo(does);
    if (does) {
      Authority authority = Authority.make(NOON);
      validate(server(authority.issue(Set.of(name), NOON)), authority.certificate(), NOON);
    }
  }

  @Test
  void itIsMadeOnceAndOnlyItsOwnerReadsItsKey() throws IOException {
    Authority first = Authority.keptIn(file(), NOON);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
        .isEqualTo("rw-------");
    try (var files = Files.list(folder.resolve("new"))) {
      assertThat(files).as("nothing else is left").containsExactly(file());
    }
    Authority again = Authority.keptIn(file(), NOON.plus(Duration.ofDays(3_000)));
    assertThat(again.certificate()).isEqualTo(first.certificate());
    assertThat(again.key()).isEqualTo(first.key());
  }

  @Test
  void beforeItEndsItIsMadeAnew() {
    Authority first = Authority.keptIn(file(), NOON);
    Authority next = Authority.keptIn(file(), NOON.plus(Duration.ofDays(3_650 - 60)));
    assertThat(next.certificate()).isNotEqualTo(first.certificate());
  }

  @Test
  void aKeyThatOthersCanReadIsNotUsed() throws IOException {
    Authority.keptIn(file(), NOON);
    Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-r-----"));
    assertThatThrownBy(() -> Authority.keptIn(file(), NOON))
        .isInstanceOf(TrustException.class)
        .hasMessageContaining(file().toString())
        .hasMessageContaining("chmod 600");
  }

  @Test
  void aSpoiltFileIsNotReplacedSilently() throws IOException {
    Authority.keptIn(file(), NOON);
    Files.writeString(file(), "spoilt");
    assertThatThrownBy(() -> Authority.keptIn(file(), NOON))
        .isInstanceOf(TrustException.class)
        .hasMessageContaining("put a copy of it back, or delete it");
    assertThat(Files.readString(file())).isEqualTo("spoilt");
  }

  /** Against OpenSSL 3: {@code openssl x509 -fingerprint -sha256} writes it the same way. */
  @Test
  void theFingerprintIsThatOfWhatDevicesGet() throws GeneralSecurityException {
    Authority authority = Authority.make(NOON);
    assertThat(authority.fingerprint()).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
    assertThat(
            CertificateFactory.getInstance("X.509")
                .generateCertificate(new ByteArrayInputStream(authority.encoded())))
        .isEqualTo(authority.certificate());
  }
}
