package fourpin.shop.store;

import java.time.Instant;

/**
 * What holds of a step.
 *
 * @param at when it was ticked, by the server's clock
 * @param device which said so
 */
public record HeldTick(String step, Tick.State state, int counted, Instant at, String device) {}
