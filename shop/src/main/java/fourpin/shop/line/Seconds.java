package fourpin.shop.line;

import fourpin.shop.yaml.Problem;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads for how long to search, so that what is no number is told with all else that is wrong. */
final class Seconds {

  /** A day. */
  private static final int MOST = 86_400;

  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,9}");

  private Seconds() {}

  /**
   * Empty where it can't be taken.
   *
   * @param wrong gets why
   */
  static Optional<Integer> read(String text, List<String> wrong) {
    Optional<Integer> read =
        Optional.of(text)
            .filter(t -> WHOLE.matcher(t).matches())
            .map(Integer::valueOf)
            .filter(seconds -> seconds >= 1 && seconds <= MOST);
    if (read.isEmpty()) {
      wrong.add(
          Problem.ofFile(
              "--seconds " + text,
              "it is a whole number from 1 to " + MOST,
              "write how many seconds to search for"));
    }
    return read;
  }
}
