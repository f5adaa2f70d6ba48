package fourpin.bench;

import java.util.ArrayList;
import java.util.List;

/** Rising numbers as people say them: 1 to 14, 20 to 22; 4 to 22, every second hole. */
public final class Numbers {

  private static final List<String> ORDINALS =
      List.of("second", "third", "fourth", "fifth", "sixth", "seventh", "eighth");

  /** Fewer than these with a step between them are told one by one. */
  private static final int LEAST_STEPPED = 3;

  private Numbers() {}

  /**
   * @param numbers at least one
   * @param what one of them is called: "hole"
   */
  public static String words(List<Integer> numbers, String what) {
    List<String> runs = new ArrayList<>();
    boolean stepped = false;
    for (int start = 0; start < numbers.size(); ) {
      int end = end(numbers, start);
      runs.add(run(numbers, start, end, what));
      stepped |= end > start && step(numbers, start) > 1;
      start = end + 1;
    }
    return String.join(stepped ? "; " : ", ", runs);
  }

  /** Index of the last of the run that begins at {@code start}. */
  private static int end(List<Integer> numbers, int start) {
    int end = start;
    while (end + 1 < numbers.size() && step(numbers, end) == step(numbers, start)) {
      end++;
    }
    boolean told = end > start && (step(numbers, start) == 1 || end - start + 1 >= LEAST_STEPPED);
    return told && sayable(step(numbers, start)) ? end : start;
  }

  private static boolean sayable(int step) {
    return step >= 1 && step <= ORDINALS.size() + 1;
  }

  private static int step(List<Integer> numbers, int at) {
    return numbers.get(at + 1) - numbers.get(at);
  }

  private static String run(List<Integer> numbers, int start, int end, String what) {
    if (start == end) {
      return numbers.get(start).toString();
    }
    int step = step(numbers, start);
    String run = numbers.get(start) + " to " + numbers.get(end);
    return step == 1 ? run : run + ", every " + ORDINALS.get(step - 2) + " " + what;
  }
}
