package fourpin.shop.store;

/** Which revision. */
public record RevisionId(String value) {}
