package fourpin.measure;

/** Things with their number, in words: {@code 1 shelf}, {@code 3 shelves}. */
public final class Counted {

  private Counted() {}

  /**
   * @param count zero or more
   * @param one what one of them is called, where more are called the same with an s
   */
  public static String of(long count, String one) {
    return of(count, one, one + "s");
  }

  /**
   * @param count zero or more
   * @param one what one of them is called
   * @param more what several or none are called
   */
  public static String of(long count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }
}
