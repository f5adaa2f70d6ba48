package fourpin.shop.store;

/** What came of undo or redo. */
public sealed interface Stepping permits Saving.Saved, Saving.Overtaken, Stepping.NoFurther {

  /** Nothing was written: there is no change to undo, or none that was undone. */
  record NoFurther() implements Stepping {}
}
