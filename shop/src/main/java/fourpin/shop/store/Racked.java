package fourpin.shop.store;

/**
 * A piece as it stands in the rack.
 *
 * @param version 1 at first; one more with each change
 */
public record Racked(String id, long version, Piece piece) {}
