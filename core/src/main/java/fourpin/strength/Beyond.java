package fourpin.strength;

import fourpin.measure.Unit;
import fourpin.strength.Use.Limit;
import java.util.List;
import java.util.stream.Stream;

/** Which limits a shelf passes, and how its load then lies, in words. */
final class Beyond {

  private final Verdict verdict;
  private final Unit unit;

  Beyond(Verdict verdict, Unit unit) {
    this.verdict = verdict;
    this.unit = unit;
  }

  /** One for each limit that it passes. */
  List<String> words() {
    return Stream.of(Limit.values())
        .filter(limit -> !lying(limit).isEmpty())
        .map(limit -> what(limit) + String.join(", and with ", lying(limit)))
        .toList();
  }

  private List<String> lying(Limit limit) {
    return verdict.uses().stream()
        .filter(use -> use.isBy(limit) && !use.holds())
        .map(use -> use.of().words(unit))
        .distinct()
        .toList();
  }

  private static String what(Limit limit) {
    return switch (limit) {
      case SAG -> "sags more than is allowed with ";
      case STRESS -> "is stressed more than is allowed with ";
      case SUPPORTS -> "presses more on a support than is allowed with ";
      case TIPPING -> "tips off its supports under ";
    };
  }
}
