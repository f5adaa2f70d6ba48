package fourpin.sheets.drawings;

import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Reach;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Numbers of a guide's holes as they are called at the bench: "4 to 22". */
public final class HoleNumbers {

  private static final int PAIR = 2;

  private HoleNumbers() {}

  /** All that is bored from one clamping: "holes 4 to 22, then 3 to 18". */
  public static String of(Clamping clamping) {
    return clamping.reaches().stream()
        .map(Reach::holes)
        .map(HoleNumbers::of)
        .collect(Collectors.joining(", then ", "holes ", ""));
  }

  /** Runs of equal steps by their ends; a step of more than one is said. @param numbers rising */
  public static String of(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    int start = 0;
    while (start < numbers.size()) {
      int end = end(numbers, start);
      runs.add(run(numbers, start, end));
      start = end + 1;
    }
    return String.join(", ", runs);
  }

  private static int end(List<Integer> numbers, int start) {
    int end = start;
    while (end + 1 < numbers.size() && step(numbers, end) == step(numbers, start)) {
      end++;
    }
    boolean pair = end + 1 - start == PAIR && step(numbers, start) > 1;
    return pair ? start : end;
  }

  private static int step(List<Integer> numbers, int at) {
    return numbers.get(at + 1) - numbers.get(at);
  }

  private static String run(List<Integer> numbers, int start, int end) {
    if (start == end) {
      return Integer.toString(numbers.get(start));
    }
    int step = step(numbers, start);
    return numbers.get(start)
        + (step == 1 ? "" : ", " + numbers.get(start + 1) + " ...")
        + " to "
        + numbers.get(end)
        + (step == 1 ? "" : ", every " + ordinal(step));
  }

  private static String ordinal(int step) {
    return switch (step) {
      case 2 -> "second";
      case 3 -> "third";
      default -> step + "th";
    };
  }
}
