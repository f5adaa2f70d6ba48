package fourpin.cutting;

/** How many pieces of one kind of stock there are. */
public sealed interface Supply {

  /** As many as needed. */
  record Unlimited() implements Supply {}

  /** At most this many, at least zero. */
  record Limited(int count) implements Supply {
    public Limited {
      Require.notNegative(count, "count of stock");
    }
  }

  static Supply unlimited() {
    return new Unlimited();
  }

  static Supply of(int count) {
    return new Limited(count);
  }

  /** The most that may be used. */
  default int most() {
    return switch (this) {
      case Unlimited u -> Integer.MAX_VALUE;
      case Limited(int count) -> count;
    };
  }
}
