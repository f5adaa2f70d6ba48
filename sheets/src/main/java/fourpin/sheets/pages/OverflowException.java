package fourpin.sheets.pages;

/** Something does not fit on a page: a fault of the pages' makers, never cut off silently. */
public final class OverflowException extends IllegalStateException {

  private static final long serialVersionUID = 1;

  OverflowException(String message) {
    super(message);
  }
}
