package fourpin.shop.web;

import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.LengthStyle;
import fourpin.measure.Reading;
import fourpin.measure.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * From a few answers to a whole job: a case that can be built, to be changed afterwards.
 *
 * @param answers by the names of the questions; what is missing or blank is not answered
 */
record Survey(Map<String, String> answers) {

  static final String TITLE = "title";
  static final String UNIT = "unit";
  static final String WIDTH = "width";
  static final String CEILING = "ceiling";
  static final String DEPTH = "depth";
  static final String HOLDS = "holds";
  static final String WOOD = "wood";
  static final String BACK = "back";
  static final String BAYS = "bays";

  /** Where sheet goods and tools are sold by the inch (common practice); Canada has both. */
  private static final Set<String> INCHES = Set.of("US", "CA", "LR");

  private static final int LONGEST_TITLE = 80;
  static final int MOST_BAYS = 12;

  /** What a case is made of, as it is sold nearly everywhere. */
  static final List<String> WOODS =
      List.of(
          "plywood, birch throughout",
          "plywood, veneer core",
          "plywood, MDF core",
          "MDF",
          "particleboard");

  /**
   * Nothing answered yet, in the unit that is usual where somebody reads.
   *
   * @param languages as browsers name them, the best first (RFC 9110, 12.5.4); may be missing
   */
  static Survey blank(@Nullable String languages) {
    String first = Objects.requireNonNullElse(languages, "").split("[,;]")[0].strip();
    String region = Locale.forLanguageTag(first).getCountry();
    return new Survey(Map.of(UNIT, region.isEmpty() || INCHES.contains(region) ? "inch" : "mm"));
  }

  Survey {
    answers = Map.copyOf(answers);
  }

  /** Texts of jobs, or what is wrong at which question. */
  sealed interface Outcome {
    /** The plainest first; where its case does not hold up, one of the others may. */
    record Drafts(List<String> texts) implements Outcome {}

    record Wrong(Map<String, Reading.Bad<Length>> troubles) implements Outcome {}
  }

  String answer(String question) {
    return answers.getOrDefault(question, "").strip();
  }

  boolean inches() {
    return !answer(UNIT).equals("mm");
  }

  Unit unit() {
    return inches() ? Unit.INCH : Unit.MILLIMETRE;
  }

  Outcome job() {
    Map<String, Reading.Bad<Length>> troubles = new LinkedHashMap<>();
    if (answer(TITLE).codePointCount(0, answer(TITLE).length()) > LONGEST_TITLE) {
      troubles.put(TITLE, bad("it has more than 80 characters", "shorten it"));
    }
    Optional<Length> width = length(WIDTH, "least-width", "most-width", troubles);
    Optional<Length> ceiling = length(CEILING, "least-ceiling", "most-ceiling", troubles);
    Optional<Length> depth = length(DEPTH, "least-depth", "most-depth", troubles);
    if (!answer(BAYS).isEmpty() && !answer(BAYS).matches("[1-9]|1[0-2]")) {
      troubles.put(
          BAYS, bad("it is a whole number from 1 to 12 here", "leave it empty if you don't mind"));
    }
    return troubles.isEmpty()
        ? new Outcome.Drafts(new Start(this, width, ceiling, depth).drafts())
        : new Outcome.Wrong(troubles);
  }

  private static Reading.Bad<Length> bad(String rule, String remedy) {
    return new Reading.Bad<>(rule, remedy);
  }

  private Optional<Length> length(
      String question, String least, String most, Map<String, Reading.Bad<Length>> troubles) {
    if (answer(question).isEmpty()) {
      return Optional.empty();
    }
    return switch (new LengthReader(unit()).read(answer(question))) {
      case Reading.Bad<Length> bad -> {
        troubles.put(question, bad);
        yield Optional.empty();
      }
      case Reading.Good<Length>(Length l)
          when l.isLessThan(start(least)) || l.isMoreThan(start(most)) -> {
        troubles.put(
            question,
            bad(
                "it is from "
                    + style().text(start(least))
                    + " to "
                    + style().text(start(most))
                    + " here",
                "check the number and its unit"));
        yield Optional.empty();
      }
      case Reading.Good<Length>(Length l) -> Optional.of(l);
    };
  }

  /** A size that makers start from. */
  Length start(String name) {
    return new LengthReader(unit()).read(startText(name)).orThrow();
  }

  String startText(String name) {
    return Starts.of(inches()).get(name);
  }

  LengthStyle style() {
    return inches() ? new LengthStyle(Unit.INCH, 16) : new LengthStyle(Unit.MILLIMETRE, 1);
  }
}
