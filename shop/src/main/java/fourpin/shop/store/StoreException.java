package fourpin.shop.store;

/** The disk or the database server failed; what was asked for was done whole or not at all. */
public final class StoreException extends RuntimeException {

  private static final long serialVersionUID = 1;

  /**
   * @param message what is wrong and what to do, for the maker
   */
  public StoreException(String message) {
    super(message);
  }

  /**
   * @param message what failed and what to do, for the maker
   */
  public StoreException(String message, Throwable cause) {
    super(message, cause);
  }
}
