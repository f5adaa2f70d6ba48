package fourpin.shop.file;

/** What may stand in words of the maker's own. */
public final class Signs {

  private Signs() {}

  /**
   * Whether all of a text stands on one line and is printed as it is kept: no tabs, no ends of
   * lines, nothing that turns the way of writing round (Unicode Standard Annex 9, explicit
   * directional formatting characters), which would show another text than is there.
   */
  public static boolean arePrinted(String text) {
    return text.codePoints().noneMatch(c -> Character.isISOControl(c) || turns(c));
  }

  private static boolean turns(int sign) {
    return switch (Character.getDirectionality(sign)) {
      case Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_EMBEDDING,
          Character.DIRECTIONALITY_LEFT_TO_RIGHT_OVERRIDE,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_OVERRIDE,
          Character.DIRECTIONALITY_POP_DIRECTIONAL_FORMAT,
          Character.DIRECTIONALITY_LEFT_TO_RIGHT_ISOLATE,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_ISOLATE,
          Character.DIRECTIONALITY_FIRST_STRONG_ISOLATE,
          Character.DIRECTIONALITY_POP_DIRECTIONAL_ISOLATE ->
          true;
      default -> false;
    };
  }
}
