package fourpin.shop.store;

/** Which texts both databases hold and give back to the letter. */
public final class Letters {

  private Letters() {}

  /**
   * @throws IllegalArgumentException if a text has half a surrogate pair, which is no character, or
   *     the character 0, which PostgreSQL cannot hold
   */
  public static void require(String... texts) {
    for (String text : texts) {
      if (text.codePoints().anyMatch(Letters::isNone)) {
        throw new IllegalArgumentException("a text to keep holds a character that is none");
      }
    }
  }

  private static boolean isNone(int c) {
    return c == 0 || (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
  }
}
