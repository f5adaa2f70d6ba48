package fourpin.strength;

/** Where over its depth a shelf goes down. */
public enum Spot {
  FRONT("front edge", "at the front edge"),
  MIDDLE("middle of the depth", "in the middle"),
  BACK("back edge", "at the back edge");

  private final String words;
  private final String there;

  Spot(String words, String there) {
    this.words = words;
    this.there = there;
  }

  public String words() {
    return words;
  }

  /** With its preposition: "at the front edge". */
  public String there() {
    return there;
  }
}
