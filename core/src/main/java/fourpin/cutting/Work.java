package fourpin.cutting;

import java.util.function.BooleanSupplier;

/**
 * How much may still be done: so many steps, and no longer than a caller allows. Steps alone give
 * the same answer on every machine; a caller that stops by a clock gives that up.
 */
final class Work {
  /** Nobody stops the search. */
  static final BooleanSupplier NEVER = () -> false;

  private final long most;
  private final BooleanSupplier stop;
  private long done;

  Work(long most, BooleanSupplier stop) {
    this.most = most;
    this.stop = stop;
  }

  void spend(long steps) {
    done += steps;
  }

  /** Steps that may still be done. */
  long left() {
    return Math.max(most - done, 0);
  }

  boolean spent() {
    return done >= most || stop.getAsBoolean();
  }
}
