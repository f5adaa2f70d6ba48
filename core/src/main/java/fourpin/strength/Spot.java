package fourpin.strength;

/** Where over its depth a shelf goes down. */
public enum Spot {
  FRONT("front edge", "at the front edge", 0),
  MIDDLE("middle of the depth", "in the middle", 0.5),
  BACK("back edge", "at the back edge", 1);

  private final String words;
  private final String there;
  private final double share;

  Spot(String words, String there, double share) {
    this.words = words;
    this.there = there;
    this.share = share;
  }

  public String words() {
    return words;
  }

  /** With its preposition: "at the front edge". */
  public String there() {
    return there;
  }

  /** How far behind the front edge, as a share of the depth. */
  double share() {
    return share;
  }
}
