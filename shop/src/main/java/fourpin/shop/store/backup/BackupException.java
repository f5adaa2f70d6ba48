package fourpin.shop.store.backup;

/** A backup cannot be made or cannot be used; nothing was changed. */
public final class BackupException extends RuntimeException {

  private static final long serialVersionUID = 1;

  /**
   * @param message the rule and the remedy, for the maker
   */
  BackupException(String message) {
    super(message);
  }

  BackupException(String message, Throwable cause) {
    super(message, cause);
  }
}
