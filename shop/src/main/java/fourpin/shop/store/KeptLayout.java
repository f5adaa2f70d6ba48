package fourpin.shop.store;

/**
 * A layout that a longer search has found.
 *
 * @param problem digest of what it answers: parts, stock and saw
 * @param material that is cut
 * @param change number of the revision that was searched for
 * @param body the layout, as it is written
 */
public record KeptLayout(String problem, String material, long change, String body) {

  /**
   * @throws IllegalArgumentException if a text holds what is no character
   */
  public KeptLayout {
    Letters.require(problem, material, body);
  }
}
