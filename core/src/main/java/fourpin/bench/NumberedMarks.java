package fourpin.bench;

import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Numbered places along something; those at equal distances are told by the first and last. */
final class NumberedMarks {

  /** Fewer are told one by one. */
  private static final int LEAST_RUN = 3;

  private final LengthStyle style;
  private final List<Integer> numbers;
  private final List<Length> places;

  private NumberedMarks(LengthStyle style, List<Integer> numbers, List<Length> places) {
    this.style = style;
    this.numbers = numbers;
    this.places = places;
  }

  /** Numbered from 1. */
  static String words(LengthStyle style, List<Length> places) {
    return words(style, IntStream.rangeClosed(1, places.size()).boxed().toList(), places);
  }

  static String words(LengthStyle style, List<Integer> numbers, List<Length> places) {
    return new NumberedMarks(style, numbers, places).words();
  }

  private String words() {
    List<String> all = new ArrayList<>();
    int start = 0;
    while (start < places.size()) {
      int end = endOfRun(start);
      all.add(run(start, end));
      start = end + 1;
    }
    return String.join(", ", all);
  }

  private int endOfRun(int start) {
    int end = start;
    while (end + 1 < places.size()
        && numbers.get(end + 1) == numbers.get(end) + 1
        && (end == start || step(end).equals(step(start)))) {
      end++;
    }
    return end - start + 1 < LEAST_RUN ? start : end;
  }

  private Length step(int at) {
    return places.get(at + 1).minus(places.get(at));
  }

  private String run(int start, int end) {
    String first = one(start);
    return start == end ? first : first + " to " + one(end) + ", every " + style.text(step(start));
  }

  private String one(int at) {
    return String.format(Locale.ROOT, "(%d) %s", numbers.get(at), style.text(places.get(at)));
  }
}
