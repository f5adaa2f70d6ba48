package fourpin.strength;

import fourpin.measure.Unit;
import fourpin.strength.Use.Limit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which limits a shelf passes, and how its load then lies, in words.
 *
 * @param limits one for each limit that it passes
 * @param checked the ways in which it was loaded
 */
record Beyond(List<String> limits, String checked) {

  Beyond {
    limits = List.copyOf(limits);
  }

  static Beyond of(Verdict verdict, Unit unit) {
    return new Beyond(
        Stream.of(Limit.values())
            .filter(limit -> !lying(verdict, limit, unit).isEmpty())
            .map(limit -> what(limit) + String.join(", and with ", lying(verdict, limit, unit)))
            .toList(),
        checked(verdict.shelf(), unit));
  }

  /** Where there is no plate the beam tells of an even load alone. */
  private static String checked(Candidate shelf, Unit unit) {
    if (shelf.plate().isEmpty()) {
      return "with its load spread evenly; a load in a row or on one half was not checked";
    }
    String ways =
        shelf.cases().loaded().stream()
            .map(of -> of.exactly(unit))
            .collect(Collectors.joining(", "));
    return "its load "
        + ways
        + (shelf.cases().fall() ? "; against the back it falls: not checked" : "");
  }

  private static List<String> lying(Verdict verdict, Limit limit, Unit unit) {
    return Stream.concat(verdict.uses().stream(), verdict.ofJoint().stream())
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
      case JOINTS -> "loads its joints more than is allowed with ";
      case TIPPING -> "tips off its supports under ";
    };
  }
}
