package fourpin.shop.yaml;

/** The way from the top of a file to a value: {@code cases.bookcase.bays.2.width}. */
public record Path(String text) {

  /** The whole file. */
  public static final Path TOP = new Path("");

  private static final int LONGEST_STEP = 40;

  public Path to(String key) {
    String step =
        key.isEmpty() || key.length() > LONGEST_STEP || !isPlain(key) ? Problem.quoted(key) : key;
    return new Path(text.isEmpty() ? step : text + "." + step);
  }

  /** An item of a list, counted from 1. */
  public Path item(int number) {
    return to(Integer.toString(number));
  }

  /** What messages call this place. */
  public String name() {
    return text.isEmpty() ? "the job" : text;
  }

  private static boolean isPlain(String key) {
    return key.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || c == '-' || c == ' ');
  }
}
