package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.FigureText;
import fourpin.measure.QuantityUnit;
import fourpin.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure is what its printed formula gives with its printed inputs; where the formula is no
 * arithmetic, its source names how it was worked out. Over the examples and odd jobs: a torsion
 * box, doubled shelves, glass, solid wood in very dry and damp air, inches, floors that fall,
 * stacks, kicks, partitions.
 */
class FormulasTest {

  private static final Path ODD = Path.of("src/test/resources/fourpin/shop/line/working");

  /** Rounding of sums, and 1.96 for 1.95996. */
  private static final double SAME = 2e-5;

  /** Mm, N or whatever else it counts in. */
  private static final double NOTHING = 1e-9;

  /** What rounding of inputs does to a formula is not quite in proportion. */
  private static final double CURVED = 1.2;

  /** Where in a shelf it is greatest stands behind the formula. */
  private static final Pattern PLACE = Pattern.compile(", over all (of it|its length).*");

  /** What no formula gives, each by what makes it plain; the rest has to be arithmetic. */
  private static final Pattern NO_ARITHMETIC =
      Pattern.compile(
          String.join(
              "|",
              // bent plates and beams, and what is sought with them
              ".* w,(xx|zz)+.*",
              "max (w\\(x, y\\)|r), p = .*",
              "\\|w\\(0, 0\\).*",
              "r with Σ r = .*",
              "number of supports with r = 0.*",
              "(greatest [qL]|no L found) with .*",
              // odds and spreads of several errors
              ".*P\\(.*",
              "mean of .*",
              "as (gap|odds|slope) is worked out, with the change",
              "sum of the odds of all places",
              // choices and places that others tell
              "(c of the least o|the least c with o not above l)",
              "held against l; .*",
              "l and w, held against L and W",
              "k s, the whole k that comes nearest to p",
              "the next .*",
              // seen on the virtual bench
              ".*measured on .*",
              "counted",
              "wanted holes that no hole has .*"));

  /** What of that is bent, or sought by bending. */
  private static final Pattern SOUGHT =
      Pattern.compile(
          ".* w,(xx|zz)+.*|max (w|r).*|\\|w\\(.*|r with .*|number of supp.*|greatest .*|no L .*");

  private static final Pattern METHOD =
      Pattern.compile(
          ".*Bogner, Fox and Schmit, at least 10 spaces along and 6 over the depth.*"
              + "|.*singularity functions, at 39 places along it.*");

  static Stream<Path> jobs() throws IOException {
    try (Stream<Path> odd = Files.list(ODD)) {
      return Stream.concat(PlannedExamples.files().stream(), odd.sorted().toList().stream());
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyFormulaGivesItsValue(Path job) {
    List<String> wrong = new ArrayList<>();
    for (Figure figure : worked(PlannedExamples.plan(job))) {
      double value = value(figure, FormulasTest::exactly);
      Formula.twice(plain(figure), symbols(figure, FormulasTest::exactly), SAME)
          .forEach(what -> wrong.add(figure.id() + ": " + what));
      double stated = base(figure.value().unit()) * figure.value().value();
      check(figure, value, stated, SAME * Math.abs(stated)).ifPresent(wrong::add);
    }
    assertThat(wrong).isEmpty();
  }

  private static Optional<String> check(Figure figure, double found, double stated, double off) {
    return Math.abs(found - stated) <= off + NOTHING
        ? Optional.empty()
        : Optional.of(
            "%s = %s, but by %s it is %s".formatted(figure.id(), stated, figure.formula(), found));
  }

  /** As a reader with a calculator would find, within what rounding may have taken. */
  @ParameterizedTest
  @MethodSource("jobs")
  void everyPrintedFormulaGivesThePrintedValueWithThePrintedInputs(Path job) {
    Plan plan = PlannedExamples.plan(job);
    FigureText text = new FigureText(plan.job().style(), plan.job().currency());
    List<String> wrong = new ArrayList<>();
    for (Figure figure : worked(plan)) {
      double unit = base(figure.value().unit());
      PrintedNumber stated = PrintedNumber.ofValue(text, figure.value());
      double value = value(figure, i -> printed(text, i).value());
      double rounded =
          unit * stated.half() + CURVED * spread(figure, text, value) + SAME * Math.abs(value);
      check(figure, value, unit * stated.value(), rounded).ifPresent(wrong::add);
    }
    assertThat(wrong).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void whatIsNoArithmeticIsKnownAsSuch(Path job) {
    assertThat(
            PlannedExamples.plan(job).figures().stream()
                .filter(figure -> !isArithmetic(figure) && !figure.inputs().isEmpty())
                .filter(figure -> !NO_ARITHMETIC.matcher(figure.formula()).matches())
                .map(figure -> figure.id() + ": " + figure.formula()))
        .isEmpty();
  }

  /** The method, and how finely it looked. */
  @ParameterizedTest
  @MethodSource("jobs")
  void whatIsBentOrSoughtNamesMethodAndMesh(Path job) {
    assertThat(
            PlannedExamples.plan(job).figures().stream()
                .filter(figure -> !isArithmetic(figure))
                .filter(figure -> SOUGHT.matcher(figure.formula()).matches())
                .filter(figure -> !METHOD.matcher(figure.source().text()).matches())
                .map(figure -> figure.id() + ": " + figure.source().text()))
        .isEmpty();
  }

  private static List<Figure> worked(Plan plan) {
    List<Figure> worked = plan.figures().stream().filter(FormulasTest::isArithmetic).toList();
    assertThat(worked).hasSizeGreaterThan(60);
    return worked;
  }

  private static boolean isArithmetic(Figure figure) {
    try {
      value(figure, FormulasTest::exactly);
      return true;
    } catch (Formula.Unreadable e) {
      return false;
    }
  }

  private static double exactly(Input input) {
    return base(input.value().unit()) * input.value().value();
  }

  private static PrintedNumber printed(FigureText text, Input input) {
    PrintedNumber printed = PrintedNumber.ofInput(text, input.value());
    double unit = base(input.value().unit());
    return new PrintedNumber(unit * printed.value(), unit * printed.half());
  }

  /** By how much all inputs together may move it within their printed digits. */
  private static double spread(Figure figure, FigureText text, double value) {
    double spread = 0;
    for (Input moved : figure.inputs()) {
      double half = printed(text, moved).half();
      DoubleUnaryOperator by =
          off ->
              Math.abs(
                  value(figure, i -> printed(text, i).value() + (i.equals(moved) ? off : 0))
                      - value);
      spread += half == 0 ? 0 : Math.max(by.applyAsDouble(half), by.applyAsDouble(-half));
    }
    return spread;
  }

  private static double value(Figure figure, ToDoubleFunction<Input> of) {
    return Formula.value(plain(figure), symbols(figure, of));
  }

  private static String plain(Figure figure) {
    return PLACE.matcher(figure.formula()).replaceAll("");
  }

  private static Map<String, List<Double>> symbols(Figure figure, ToDoubleFunction<Input> of) {
    Map<String, List<Double>> symbols = new LinkedHashMap<>();
    for (Input input : figure.inputs()) {
      symbols.computeIfAbsent(input.symbol(), _ -> new ArrayList<>()).add(of.applyAsDouble(input));
    }
    return symbols;
  }

  /** N, mm and kg: how many of these one unit of a figure is. */
  private static double base(QuantityUnit unit) {
    return switch (unit) {
      case AREA -> 1e6;
      case VOLUME, LUMBER -> 1e9;
      case DENSITY -> 1e-9;
      case AREA_LOAD -> 1e-3;
      default -> 1;
    };
  }
}
