package fourpin.shop.cut;

import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Reading;
import fourpin.measure.Unit;
import fourpin.shop.yaml.Problem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what stands in cells, and notes what is wrong with it. */
final class Cells {

  /** A sign of a unit anywhere in a length. */
  private static final Pattern UNIT = Pattern.compile("[\\p{L}\"'”“″’‘′]");

  private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");
  private static final Pattern MONEY = Pattern.compile("\\d{1,9}(\\.\\d{1,2})?");
  private static final Pattern QUARTERS = Pattern.compile("([2-9]|1\\d|20)/4");
  private static final int QUARTER = 4;
  private static final int MOST_COUNT = 9_999;

  private final Optional<Unit> bare;
  private final List<Problem> problems;

  Cells(Optional<Unit> bare, List<Problem> problems) {
    this.bare = bare;
    this.problems = problems;
  }

  Optional<String> name(String column, Cell cell) {
    if (cell.isEmpty()) {
      wrong(column, cell, "nothing stands there", "write a name");
    }
    return cell.isEmpty() ? Optional.empty() : Optional.of(cell.text());
  }

  /** A length within limits, as a job file writes them. */
  Optional<Length> length(String column, Cell cell, String least, String most) {
    if (bare.isEmpty() && !cell.isEmpty() && !UNIT.matcher(cell.text()).find()) {
      wrong(
          column,
          cell,
          "a length without a unit",
          "write the unit, as in 31 1/2 in or 800 mm, or state it for all with --unit inch or"
              + " --unit mm");
      return Optional.empty();
    }
    Reading<Length> reading =
        new LengthReader(bare.orElse(Unit.MILLIMETRE))
            .read(cell.number())
            .then(length -> within(length, least, most));
    return good(column, cell, reading);
  }

  /** A thickness of sawn wood: a length, or quarters of an inch, as in 5/4. */
  Optional<Length> thickness(String column, Cell cell) {
    Matcher quarters = QUARTERS.matcher(cell.text());
    return quarters.matches()
        ? Optional.of(Length.inches(Integer.parseInt(quarters.group(1)), QUARTER))
        : length(column, cell, "3 mm", "150 mm");
  }

  private static Reading<Length> within(Length length, String least, String most) {
    LengthReader limits = new LengthReader(Unit.MILLIMETRE);
    boolean fits =
        length.isAtLeast(limits.read(least).orThrow())
            && limits.read(most).orThrow().isAtLeast(length);
    return fits
        ? Reading.good(length)
        : Reading.bad("it is from " + least + " to " + most, "check the number and its unit");
  }

  private <T> Optional<T> good(String column, Cell cell, Reading<T> reading) {
    return switch (reading) {
      case Reading.Good<T>(T value) -> Optional.of(value);
      case Reading.Bad<T>(String rule, String remedy) -> {
        wrong(column, cell, rule, remedy);
        yield Optional.empty();
      }
    };
  }

  Optional<Integer> count(String column, Cell cell) {
    return count(column, cell, 1);
  }

  /** None is a number of spares too. */
  Optional<Integer> spares(String column, Cell cell) {
    return count(column, cell, 0);
  }

  private Optional<Integer> count(String column, Cell cell, int least) {
    boolean whole = WHOLE.matcher(cell.text()).matches();
    int count = whole ? Integer.parseInt(cell.text()) : -1;
    if (count < least || count > MOST_COUNT) {
      wrong(
          column,
          cell,
          "it is a whole number from " + least + " to " + MOST_COUNT,
          "write how many");
      return Optional.empty();
    }
    return Optional.of(count);
  }

  Optional<BigDecimal> price(String column, Cell cell) {
    if (!MONEY.matcher(cell.number()).matches()) {
      wrong(
          column,
          cell,
          "it is an amount like 92 or 92.50, below 1000000000",
          "write digits, with a point before cents, and no sign of money");
      return Optional.empty();
    }
    return Optional.of(new BigDecimal(cell.number()));
  }

  /** One of a few words, or the first of them where nothing stands. */
  <T> Optional<T> word(String column, Cell cell, T standard, Map<String, T> words) {
    if (cell.isEmpty()) {
      return Optional.of(standard);
    }
    Optional<T> found = Optional.ofNullable(words.get(cell.text().toLowerCase(Locale.ROOT)));
    if (found.isEmpty()) {
      wrong(
          column,
          cell,
          "it is one of " + String.join(", ", words.keySet()),
          "choose one of them, or leave it empty");
    }
    return found;
  }

  /** How much is wrong up to now. */
  int wrongs() {
    return problems.size();
  }

  void wrong(String column, Cell cell, String rule, String remedy) {
    problems.add(
        new Problem(cell.place(), column + " " + Problem.quoted(cell.text()), rule, remedy));
  }
}
