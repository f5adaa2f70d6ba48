package fourpin.shop.yaml;

/**
 * The way from the top of a file to a value: {@code cases.bookcase.bays.2.width}.
 *
 * @param file what kind of file it is
 */
public record Path(FileKind file, String text) {

  private static final int LONGEST_STEP = 40;

  /** The whole file. */
  public static Path top(FileKind file) {
    return new Path(file, "");
  }

  public Path to(String key) {
    String step =
        key.isEmpty() || key.length() > LONGEST_STEP || !isPlain(key) ? Problem.quoted(key) : key;
    return new Path(file, text.isEmpty() ? step : text + "." + step);
  }

  /** An item of a list, counted from 1. */
  public Path item(int number) {
    return to(Integer.toString(number));
  }

  /** What messages call this place. */
  public String name() {
    return text.isEmpty() ? "the " + file.word() : text;
  }

  private static boolean isPlain(String key) {
    return key.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || c == '-' || c == ' ');
  }
}
