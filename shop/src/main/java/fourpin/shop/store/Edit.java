package fourpin.shop.store;

/**
 * What is to become a revision.
 *
 * @param name of the job
 * @param text the whole file
 * @param by the name of the device
 * @param why what was changed, in a few words
 */
public record Edit(String name, String text, String by, String why) {

  /**
   * @throws IllegalArgumentException if a text holds what is no character
   */
  public Edit {
    Letters.require(name, text, by, why);
  }
}
