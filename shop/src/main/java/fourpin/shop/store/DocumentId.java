package fourpin.shop.store;

/**
 * Which job file; or the shop file, of which there is one. Jobs that were made later sort later.
 */
public record DocumentId(String value) {

  /** The shop file: tools, and settings that hold for all jobs. */
  public static final DocumentId SHOP = new DocumentId("shop");

  /**
   * @throws IllegalArgumentException if it holds what is no character
   */
  public DocumentId {
    Letters.require(value);
  }
}
