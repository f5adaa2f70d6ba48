package fourpin.shop.store;

/** What came of saving a text. */
public sealed interface Saving permits Saving.Saved, Saving.Overtaken {

  /** It is the newest now. */
  record Saved(Revision revision) implements Saving, Stepping {}

  /**
   * Nothing was written: somebody else has saved since the revision that the change was made on.
   *
   * @param newest what to bring the change onto
   */
  record Overtaken(Written newest) implements Saving, Stepping {}
}
