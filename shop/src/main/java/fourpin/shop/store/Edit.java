package fourpin.shop.store;

import java.util.Optional;

/**
 * What is to become a revision.
 *
 * @param name of the job
 * @param text the whole file
 * @param by the name of the device
 * @param why what was changed, in a few words
 * @param variant the name under which it is kept as a variant, if it is
 */
public record Edit(String name, String text, String by, String why, Optional<String> variant) {

  /** One that is no variant. */
  public Edit(String name, String text, String by, String why) {
    this(name, text, by, why, Optional.empty());
  }

  /**
   * @throws IllegalArgumentException if a text holds what is no character
   */
  public Edit {
    Letters.require(name, text, by, why, variant.orElse(""));
  }
}
