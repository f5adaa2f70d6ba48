package fourpin.shop.web.trust;

import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.stream.Stream;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * Makes certificates (X.509, RFC 5280) with keys on the curve P-256, as every phone takes them:
 * names as alternative names, made for servers, good for less than 825 days (Apple, “Requirements
 * for trusted certificates in iOS 13 and macOS 10.15”).
 */
final class Issuing {

  /** Short enough that no clock is needed to be exact, and renewed long before. */
  static final Duration SERVER_LIFE = Duration.ofDays(90);

  static final Duration AUTHORITY_LIFE = Duration.ofDays(3_650);

  /** Clocks of phones that lag behind this machine's. */
  private static final Duration BEFORE = Duration.ofDays(1);

  /** No common name, which some take for a name of the internet that the authority must permit. */
  private static final X500Principal SERVER = new X500Principal("O=Fourpin");

  private static final int SERIAL_BITS = 127;
  private static final String CURVE = "secp256r1";
  private static final String SIGNED = "SHA256withECDSA";

  /** Networks that are nobody's on the internet: RFC 1918, 3927, 4193, 4291, 1122. */
  private static final List<String> NETWORKS =
      List.of(
          "10.0.0.0/8",
          "172.16.0.0/12",
          "192.168.0.0/16",
          "169.254.0.0/16",
          "127.0.0.0/8",
          "fc00::/7",
          "fe80::/10",
          "::1/128");

  /** Names that are nobody's on the internet: RFC 6762, 6761. */
  private static final List<String> DOMAINS = List.of("local", "localhost");

  private Issuing() {}

  static KeyPair keys() throws GeneralSecurityException {
    KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
    generator.initialize(new ECGenParameterSpec(CURVE));
    return generator.generateKeyPair();
  }

  /** An authority's, which speaks for names and addresses of private networks and nothing else. */
  static X509Certificate authority(X500Principal name, KeyPair keys, Instant now)
      throws GeneralSecurityException {
    X509v3CertificateBuilder builder =
        new JcaX509v3CertificateBuilder(
            name, serial(), from(now), until(now, AUTHORITY_LIFE), name, keys.getPublic());
    try {
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
      builder.addExtension(
          Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
      builder.addExtension(
          Extension.subjectKeyIdentifier,
          false,
          new JcaX509ExtensionUtils().createSubjectKeyIdentifier(keys.getPublic()));
      builder.addExtension(Extension.nameConstraints, true, new NameConstraints(speaksFor(), null));
      return signed(builder, keys.getPrivate());
    } catch (CertIOException e) {
      throw new GeneralSecurityException(e);
    }
  }

  private static GeneralSubtree[] speaksFor() {
    return Stream.concat(
            DOMAINS.stream().map(domain -> new GeneralName(GeneralName.dNSName, domain)),
            NETWORKS.stream().map(network -> new GeneralName(GeneralName.iPAddress, network)))
        .map(GeneralSubtree::new)
        .toArray(GeneralSubtree[]::new);
  }

  /** A server's. */
  static X509Certificate server(
      X509Certificate authority, PrivateKey signing, KeyPair keys, List<Name> names, Instant now)
      throws GeneralSecurityException {
    X509v3CertificateBuilder builder =
        new JcaX509v3CertificateBuilder(
            authority, serial(), from(now), until(now, SERVER_LIFE), SERVER, keys.getPublic());
    JcaX509ExtensionUtils ids = new JcaX509ExtensionUtils();
    try {
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
      builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
      builder.addExtension(
          Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
      builder.addExtension(Extension.subjectAlternativeName, false, alternatives(names));
      builder.addExtension(
          Extension.authorityKeyIdentifier, false, ids.createAuthorityKeyIdentifier(authority));
      builder.addExtension(
          Extension.subjectKeyIdentifier, false, ids.createSubjectKeyIdentifier(keys.getPublic()));
      return signed(builder, signing);
    } catch (CertIOException e) {
      throw new GeneralSecurityException(e);
    }
  }

  private static GeneralNames alternatives(List<Name> names) {
    return new GeneralNames(
        names.stream()
            .map(
                name ->
                    switch (name) {
                      case Name.Domain(String domain) ->
                          new GeneralName(GeneralName.dNSName, domain);
                      case Name.Address(String address) ->
                          new GeneralName(GeneralName.iPAddress, address);
                    })
            .toArray(GeneralName[]::new));
  }

  private static X509Certificate signed(X509v3CertificateBuilder builder, PrivateKey by)
      throws GeneralSecurityException {
    try {
      return new JcaX509CertificateConverter()
          .getCertificate(builder.build(new JcaContentSignerBuilder(SIGNED).build(by)));
    } catch (OperatorCreationException e) {
      throw new GeneralSecurityException(e);
    }
  }

  private static BigInteger serial() {
    return new BigInteger(SERIAL_BITS, new SecureRandom()).add(BigInteger.ONE);
  }

  private static Date from(Instant now) {
    return Date.from(now.minus(BEFORE));
  }

  private static Date until(Instant now, Duration life) {
    return Date.from(now.plus(life));
  }
}
