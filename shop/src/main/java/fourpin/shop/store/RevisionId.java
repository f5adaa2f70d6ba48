package fourpin.shop.store;

/** Which revision. */
public record RevisionId(String value) {

  /**
   * @throws IllegalArgumentException if it holds what is no character
   */
  public RevisionId {
    Letters.require(value);
  }
}
