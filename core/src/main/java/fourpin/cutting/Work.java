package fourpin.cutting;

import fourpin.cutting.Attempt.Outcome;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How much may still be done: so many steps, and no longer than a caller allows; and who hears of
 * better answers. Steps alone give the same answer on every machine; a caller that stops by a clock
 * gives that up.
 */
final class Work {
  private final long most;
  private final BooleanSupplier stop;
  private final Consumer<Outcome> better;
  private long done;

  Work(long most, BooleanSupplier stop, Consumer<Outcome> better) {
    this.most = most;
    this.stop = stop;
    this.better = better;
  }

  static Work of(long most) {
    return new Work(most, () -> false, outcome -> {});
  }

  /** Tells of an answer that is better than all before. */
  void better(Outcome outcome) {
    better.accept(outcome);
  }

  void spend(long steps) {
    done += steps;
  }

  /** Steps done up to now. */
  long done() {
    return done;
  }

  /** Steps that may still be done. */
  long left() {
    return Math.max(most - done, 0);
  }

  boolean spent() {
    return done >= most || stop.getAsBoolean();
  }
}
