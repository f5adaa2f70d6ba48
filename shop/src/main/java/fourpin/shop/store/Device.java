package fourpin.shop.store;

import java.time.Instant;

/**
 * A device that was paired with this shop.
 *
 * @param name as its owner calls it; each device has another
 */
public record Device(String id, String name, Instant paired, Instant expires) {}
