package fourpin.shop.store;

/** A revision with its text: the whole job file or shop file, comments and all. */
public record Written(Revision revision, String text) {}
