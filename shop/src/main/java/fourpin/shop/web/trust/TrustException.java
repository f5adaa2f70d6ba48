package fourpin.shop.web.trust;

/** The shop's authority cannot be used; says what to do, for people. */
public final class TrustException extends RuntimeException {

  private static final long serialVersionUID = 1;

  TrustException(String message) {
    super(message);
  }

  TrustException(String message, Exception cause) {
    super(message, cause);
  }
}
