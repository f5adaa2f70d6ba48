package fourpin.boring.tolerance;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.BayGrid;
import fourpin.boring.tolerance.Change.Effect;
import fourpin.boring.tolerance.Change.Outcome;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.boring.way.Precision.Rocking;
import fourpin.boring.way.WayAnswer;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TolerancesTest {

  /** Nothing wears, so that a guide without play has normal errors alone. */
  private final Workshop shop =
      Workshop.with(
          Workshop.defaults()
              .with(Setting.WEAR_STEEL, new SettingValue.OfNumber(0))
              .with(Setting.WEAR_NOSE, new SettingValue.OfNumber(0)));

  private static CaseBoring boring(Workshop shop, Way chosen, Map<Way, Method> methods) {
    List<WayAnswer> answers = new ArrayList<>();
    for (Way way : Way.values()) {
      Optional<Method> method = Optional.ofNullable(methods.get(way));
      Verdict verdict = method.isPresent() ? Verdict.POSSIBLE : Verdict.NOT_POSSIBLE;
      answers.add(new WayAnswer(way, verdict, List.of(), List.of(), method, List.of(), List.of()));
    }
    return new CaseBoring("North", shop.grids(), answers, chosen, "tested", List.of());
  }

  private static Levelness level(Workshop shop, Way chosen, Map<Way, Method> methods) {
    return new Tolerances("$").of(boring(shop, chosen, methods), shop.built()).orElseThrow();
  }

  private Levelness stepped() {
    return level(
        shop,
        Way.CENTRING_GUIDE,
        Map.of(Way.CENTRING_GUIDE, shop.stepped("0"), Way.ROUTER_GUIDE, shop.guided("1/64")));
  }

  private static Figure figure(List<Figure> figures, String what) {
    return figures.stream().filter(f -> f.id().endsWith("/" + what)).findFirst().orElseThrow();
  }

  private static Change change(Levelness level, String what) {
    return Stream.of(level.gains(), level.mixed(), level.harms())
        .flatMap(List::stream)
        .filter(c -> c.what().contains(what))
        .findFirst()
        .orElseThrow();
  }

  /** Wander 0.2 mm and seat 0.1 mm in four holes: 2 √0.05 = 0.447; in inches 1/64 and 1/128. */
  @Test
  void theWaysOwnOddsFollowFromItsErrors() {
    Rocking rocking = rocking(shop, shop.grids());
    double sigma = Math.sqrt(4 * (square(25.4 / 128) + square(25.4 / 256)));
    assertThat(figure(rocking.figures(), "gap").value().value())
        .isCloseTo(1.95996 * sigma, within(1e-4));
    assertThat(rocking.odds())
        .isCloseTo(100 * new Spread(sigma, List.of()).oddsBeyond(25.4 / 32), within(1e-9));
  }

  private static double square(double x) {
    return x * x;
  }

  private static Rocking rocking(Workshop shop, List<BayGrid> grids) {
    return new Tolerances("$")
        .precision()
        .of(shop.built(), grids, Way.STEEL_STRAP, shop.guided("0"))
        .orElseThrow();
  }

  @Test
  void figuresCanBeWorkedOutAnewFromTheirInputs() {
    List<Figure> figures = rocking(shop, shop.grids()).figures();
    Figure gap = figure(figures, "gap");
    assertThat(gap.id()).isEqualTo("north/boring/steel-strap/gap");
    assertThat(gap.formula()).startsWith("1.96 s");
    double variance = 0;
    for (Input input : gap.inputs()) {
      variance += square(input.value().value());
    }
    assertThat(gap.value().value()).isCloseTo(1.95996 * Math.sqrt(variance), within(1e-4));
    Figure odds = figure(figures, "odds");
    double again = 100 * new Spread(input(odds, "s"), List.of()).oddsBeyond(input(odds, "L"));
    assertThat(odds.value().value()).isCloseTo(again, within(1e-9));
  }

  /** What cancels is shown as nothing, with the reason. */
  @Test
  void figuresTellWhatCancels() {
    Figure gap = figure(rocking(shop, shop.grids()).figures(), "gap");
    assertThat(gap.inputs())
        .filteredOn(i -> i.meaning().startsWith("place of the guide's holes"))
        .singleElement()
        .satisfies(i -> assertThat(i.value().value()).isZero())
        .satisfies(i -> assertThat(i.meaning()).endsWith("cancels"));
  }

  @Test
  void baysThatAreBoredApartHaveFiguresOfTheirOwn() {
    List<Figure> second = rocking(shop, shop.grids().subList(1, 2)).figures();
    assertThat(second.getFirst().id()).isEqualTo("north/boring/bay-2/steel-strap/gap");
  }

  @Test
  void everyPlaceIsThereAndSomeAreWorse() {
    Levelness level = stepped();
    assertThat(level.places()).hasSize(136);
    assertThat(level.worst().level()).as("after the last step").isGreaterThan(58);
    assertThat(level.expected())
        .isCloseTo(level.places().stream().mapToDouble(PositionGap::odds).sum(), within(1e-9));
    assertThat(level.anyPlace().share()).isGreaterThan(level.anyShelf().share());
    assertThat(level.anyShelf().share()).isGreaterThan(0);
    long kinds = level.places().stream().map(PositionGap::gap).distinct().count();
    assertThat(kinds).as("one for each place of the guide").isGreaterThan(1);
    int changes = level.gains().size() + level.mixed().size() + level.harms().size();
    assertThat(level.figures())
        .extracting(Figure::id)
        .doesNotHaveDuplicates()
        .hasSize(11 + 2 * (int) kinds + 3 * changes)
        .contains("north/boring/centring-guide/gain-1/gap");
    assertThat(figure(level.figures(), "odds-any-shelf").value().value())
        .isCloseTo(100 * level.anyShelf().share(), within(1e-9));
  }

  private Optional<Finding> rockingFound(String limit) {
    Settings settings =
        shop.built()
            .order()
            .settings()
            .with(Setting.ODDS_LIMIT, new SettingValue.OfNumber(Double.parseDouble(limit)));
    Workshop other = Workshop.with(settings);
    Map<Way, Method> methods =
        Map.of(Way.CENTRING_GUIDE, other.stepped("0"), Way.ROUTER_GUIDE, other.guided("1/64"));
    return new Tolerances("$").rocking(boring(other, Way.CENTRING_GUIDE, methods), other.built());
  }

  @Test
  void shelvesThatRockMoreOftenThanTheSettingAllowsAreFound() {
    Levelness level = stepped();
    Finding finding = rockingFound("5").orElseThrow();
    assertThat(finding.severity()).isEqualTo(Severity.DOUBT);
    assertThat(finding.what())
        .contains("rock more often than odds-limit allows (5 %)")
        .endsWith("on level " + level.worst().level() + " of bay " + level.worst().bay() + ".");
    Figure figure = finding.figures().getFirst();
    assertThat(figure.value().value()).isCloseTo(100 * level.worst().odds(), within(1e-9));
    assertThat(input(figure, "l")).isEqualTo(5);
    List<Double> then =
        figure.inputs().stream()
            .filter(i -> i.symbol().startsWith("o"))
            .map(i -> i.value().value())
            .toList();
    assertThat(then).isSorted().hasSizeGreaterThan(2).allMatch(o -> o < figure.value().value());
    assertThat(finding.remedies()).hasSize(then.size() + 1);
  }

  /** At the bench nothing can be done otherwise, and shims wait until the case stands. */
  @Test
  void shimsAloneAreNoReasonToThinkAgain() {
    Method marked = new Method.Marked(Method.How.BY_HAND, shop.guided("0").bit(), List.of());
    Finding finding =
        new Tolerances("$")
            .rocking(boring(shop, Way.STORY_STICK, Map.of(Way.STORY_STICK, marked)), shop.built())
            .orElseThrow();
    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
    assertThat(finding.remedies()).hasSize(2);
    assertThat(finding.remedies().getFirst().what()).startsWith("shims on the low pin: then 0 %");
  }

  /** As the plan would take it if the job asked for it. */
  @Test
  void anotherWayThatRocksSeldomEnoughCanBeAskedFor() {
    double other = 100 * change(stepped(), "plunge router").after().odds();
    Stated asked = new Stated.OfSetting(Setting.WAY, Way.ROUTER_GUIDE.key());
    assertThat(remedies(Double.toString(other + 0.1))).contains(Optional.of(asked));
    assertThat(remedies(Double.toString(other - 0.1))).containsOnly(Optional.empty());
  }

  private List<Optional<Stated>> remedies(String limit) {
    return rockingFound(limit).orElseThrow().remedies().stream().map(Remedy::stated).toList();
  }

  @Test
  void shelvesThatRockNoMoreOftenAreNotFound() {
    assertThat(rockingFound("100")).isEmpty();
    double odds = 100 * stepped().worst().odds();
    assertThat(rockingFound(Double.toString(odds + 0.001))).isEmpty();
    assertThat(rockingFound(Double.toString(odds - 0.001))).isPresent();
  }

  @Test
  void changesSayWhatEachBrings() {
    Levelness level = stepped();
    assertThat(change(level, "not moved along").after().gap())
        .isLessThan(change(level, "not moved along").before().gap());
    assertThat(change(level, "one clamping").after().odds()).isLessThan(level.worst().odds());
    assertThat(change(level, "plunge router").after().odds()).isLessThan(level.worst().odds());
    Change turned = change(level, "right-hand panels bored from their upper ends");
    assertThat(level.harms()).as("slopes, though it does not rock").contains(turned);
    assertThat(turned.after().gap()).isCloseTo(turned.before().gap(), within(1e-9));
    assertThat(turned.after().slope()).isGreaterThan(turned.before().slope());
    Change oneRow = change(level, "the last row of each bay bored from the upper end");
    assertThat(oneRow.after().gap()).isGreaterThan(oneRow.before().gap());
  }

  /** Half a shim is left at most; one too thick to help is not told. */
  @Test
  void shimsLeaveHalfTheirThickness() {
    Change shims = change(stepped(), "shims");
    assertThat(shims.after().gap()).isCloseTo(25.4 / 128, within(1e-9));
    assertThat(shims.after().odds()).isZero();
    Settings coarse = Workshop.defaults().with(Setting.SHIM, new SettingValue.OfLength(in("1/10")));
    Workshop other = Workshop.with(coarse);
    Levelness thick = level(other, Way.STEEL_STRAP, Map.of(Way.STEEL_STRAP, other.guided("0")));
    assertThat(thick.gains()).noneMatch(c -> c.what().contains("shims"));
    assertThat(thick.harms()).noneMatch(c -> c.what().contains("shims"));
  }

  /** Sleeves in a guide that does not wear bring nothing, and are not told. */
  @Test
  void onlyWhatBringsSomethingIsAGain() {
    Levelness level = stepped();
    assertThat(level.gains())
        .isNotEmpty()
        .noneMatch(c -> c.what().contains("steel sleeves"))
        .allSatisfy(
            c ->
                assertThat(c)
                    .matches(
                        b ->
                            b.before().odds() - b.after().odds() > level.leastOdds()
                                || b.before().gap() - b.after().gap() > level.resolution()
                                || b.before().slope() - b.after().slope() > level.resolution()));
    assertThat(level.harms())
        .allSatisfy(
            c ->
                assertThat(c.after().gap() + c.after().slope())
                    .isGreaterThan(c.before().gap() + c.before().slope()));
  }

  /** No gain costs what counts, no harm brings it, and what does both is told apart. */
  @Test
  void nothingThatRocksLessIsAHarm() {
    Levelness level = stepped();
    assertThat(level.gains()).allMatch(c -> worse(level, c) == 0);
    assertThat(level.harms()).allMatch(c -> better(level, c) == 0);
    assertThat(level.mixed()).isNotEmpty().allMatch(c -> better(level, c) * worse(level, c) == 1);
  }

  private static int better(Levelness level, Change change) {
    return worse(level, new Change("", change.after(), change.before(), ""));
  }

  /** How many of the two get worse: rocking that is felt, and the slope. */
  private static int worse(Levelness level, Change change) {
    double odds = change.after().odds() - change.before().odds();
    double slope = change.after().slope() - change.before().slope();
    return (odds > level.leastOdds() ? 1 : 0) + (slope > level.resolution() ? 1 : 0);
  }

  @ParameterizedTest
  @CsvSource({
    // odds, gap and slope before and after, effect
    "0.5, 1, 1, 0.5, 0.9, 1, GAIN",
    "0.5, 1, 1, 0.5, 0.98, 1, NONE",
    "0.5, 1, 1, 0.5, 1.04, 0.5, GAIN",
    "0.5, 1, 1, 0.5, 1.1, 0.5, MIXED",
    "0.5, 1, 1, 0.5, 1, 1.1, HARM",
    "0.5, 1, 1, 0.5, 1, 1, NONE",
    "0.0736, 0.87, 1, 0.0588, 0.82, 1.5, MIXED",
    "0.0736, 0.87, 1, 0.0588, 0.86, 1, GAIN",
    "0.0588, 0.82, 1, 0.0736, 0.81, 1, HARM",
    "0.0588, 0.82, 1, 0.0736, 0.7, 0.9, MIXED",
    "0.0588, 0.82, 1, 0.0598, 0.7, 1, GAIN",
    "0.0736, 0.87, 1, 0.0588, 0.82, 1.04, GAIN"
  })
  void feltRockingCountsBeforeTheGapAndTheSlopeBesideIt(
      double odds,
      double gap,
      double slope,
      double oddsThen,
      double gapThen,
      double slopeThen,
      Effect effect) {
    Change change =
        new Change(
            "", new Outcome(odds, gap, slope), new Outcome(oddsThen, gapThen, slopeThen), "");
    assertThat(change.effect(new Change.Least(0.005, 0.05))).isEqualTo(effect);
  }

  /** What rocks less and leans more is neither a gain nor a harm, and says which is which. */
  @Test
  void mixedChangesSayWhichIsBetter() {
    Change drill = new Change("", new Outcome(0.07, 1, 1), new Outcome(0.05, 0.9, 2), "");
    assertThat(drill.mixed()).isEqualTo("rocks less, and lies less level from left to right");
    Change other = new Change("", new Outcome(0.05, 0.9, 2), new Outcome(0.07, 1, 1), "");
    assertThat(other.mixed()).isEqualTo("lies more level from left to right, and rocks more");
  }

  @Test
  void noPlaceIsTheWorstWhereAllAreAlike() {
    Levelness even = level(shop, Way.STEEL_STRAP, Map.of(Way.STEEL_STRAP, shop.guided("0")));
    assertThat(even.isEven()).isTrue();
    assertThat(figure(even.figures(), "gap").title()).endsWith(", at every place");
    assertThat(stepped().isEven()).isFalse();
    assertThat(figure(stepped().figures(), "gap").title()).contains("bay 1 level ");
  }

  @Test
  void aGuideAsLongAsTheRowNeedsNoLongerOne() {
    Levelness level = level(shop, Way.STEEL_STRAP, Map.of(Way.STEEL_STRAP, shop.guided("0")));
    assertThat(level.gains()).noneMatch(c -> c.what().contains("not moved along"));
  }

  @Test
  void theSameCaseGivesTheSameAnswer() {
    assertThat(stepped()).isEqualTo(stepped());
  }

  @Test
  void noPlacesNoAnswer() {
    Workshop empty = new Workshop(shop.built(), List.of());
    CaseBoring boring = boring(empty, Way.STEEL_STRAP, Map.of(Way.STEEL_STRAP, shop.guided("0")));
    assertThat(new Tolerances("$").of(boring, shop.built())).isEmpty();
  }
}
