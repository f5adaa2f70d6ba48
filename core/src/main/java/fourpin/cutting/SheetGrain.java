package fourpin.cutting;

/** Which way the grain of a sheet runs. */
public enum SheetGrain {
  ALONG_LENGTH,
  ALONG_WIDTH,
  /** No direction (fibreboard, hardboard): every part may be turned. */
  NONE
}
