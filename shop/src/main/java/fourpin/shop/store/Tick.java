package fourpin.shop.store;

import java.time.Instant;

/**
 * What a device at the bench says about a step.
 *
 * @param step the step's key in its plan
 * @param counted holes bored so far, 0 or more
 * @param said when, by the device's own clock, to the millisecond
 */
public record Tick(String step, State state, int counted, Instant said) {

  /**
   * @throws IllegalArgumentException if the step holds what is no character, or for a count below 0
   */
  public Tick {
    Letters.require(step);
    if (counted < 0) {
      throw new IllegalArgumentException("holes are counted from 0, not " + counted);
    }
  }

  /** How far the step is. */
  public enum State {
    OPEN,
    DONE
  }
}
