package fourpin.shop.line;

/** How a word stands out on a terminal; nothing of it where the output is not one. */
enum Ink {
  PLAIN(""),
  STRONG("1"),
  ERROR("1;31"),
  DOUBT("33"),
  FAINT("2");

  private final String code;

  Ink(String code) {
    this.code = code;
  }

  /** Whether the output takes colours. */
  enum Terminal {
    COLOURS,
    NONE
  }

  String on(Terminal terminal, String text) {
    boolean plain = terminal == Terminal.NONE || code.isEmpty();
    return plain ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
  }
}
