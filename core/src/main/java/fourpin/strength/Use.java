package fourpin.strength;

/**
 * How much of what is allowed a shelf uses.
 *
 * @param of the way in which it is loaded
 * @param by which limit
 * @param share over 1 it fails; without end where it tips
 */
record Use(LoadCase of, Limit by, double share) {

  /** What may not be passed. */
  enum Limit {
    SAG("sag"),
    STRESS("stress"),
    SUPPORTS("load on a support"),
    JOINTS("load on a joint"),
    TIPPING("tipping");

    private final String words;

    Limit(String words) {
      this.words = words;
    }
  }

  /** What is more by less than this share is so by an error of the sums. */
  private static final double CLEARLY = 1 + 1e-9;

  static boolean isMore(double one, double other) {
    return one > CLEARLY * other;
  }

  boolean holds() {
    return share <= 1;
  }

  boolean isBy(Limit limit) {
    return by == limit;
  }

  /** What sets an end to more: "sag, load in a row along the front edge". */
  String words() {
    return by.words + ", load " + of.place();
  }
}
