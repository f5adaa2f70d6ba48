package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.measure.Figure;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import fourpin.plan.Plan;
import fourpin.shop.web.Presses.Pressed;
import fourpin.strength.ShelfAnswer;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every cure that has a press keeps its word on cases that fail in many ways: its finding is gone,
 * and what it promises is what the plan of the case so changed comes to.
 */
class PromisedCuresTest {

  private static final int JOBS = 18;

  /** Others whose cures once came to something else than they told. */
  private static final long[] TOLD_TOO_LITTLE = {28, 41, 96, 167, 182};

  @TempDir static Path folder;

  private static final Map<Long, State> SEEN = new ConcurrentHashMap<>();

  private static Presses presses;

  @BeforeAll
  static void open() {
    presses = new Presses(folder.resolve("shop.db"));
  }

  @AfterAll
  static void close() {
    presses.close();
  }

  /** A figure in a cure's words, and where the plan then has it. */
  private record Promise(Pattern words, BiFunction<Plan, Finding, List<Figure>> then) {
    Promise(String words, BiFunction<Plan, Finding, List<Figure>> then) {
      this(Pattern.compile(words), then);
    }

    /** As it comes out. */
    List<String> text(Pressed pressed, Finding of) {
      Unit unit = pressed.would().then().job().unit();
      return then.apply(pressed.then(), of).stream().map(f -> f.value().text(unit)).toList();
    }
  }

  /**
   * Of holes, which are bored whatever stands on them: what they spoil the maker is asked about.
   */
  private static final Set<String> OF_HOLES =
      Set.of("rows-meet", "points-meet", "hole-floor", "balance", "engagement");

  private static final String AMOUNT = "(-?[\\d.,]+ [A-Za-z]+)";

  private static final List<Promise> PROMISES =
      List.of(
          new Promise(
              "sag %1$s now, %1$s after years".formatted(AMOUNT),
              (plan, of) ->
                  shelf(plan, of)
                      .map(s -> List.of(s.most().now(), s.most().years()))
                      .orElseThrow()),
          new Promise(
              "a support (?:then |then still )?carries %s at the most".formatted(AMOUNT),
              (plan, of) -> List.of(push(plan, of))),
          new Promise(
              "%s of the pins lie under it after years".formatted(AMOUNT),
              (plan, of) -> List.of(ofShelf(plan, of, "/engagement-years"))),
          new Promise(
              "it then bends by %1$s now and %1$s after years".formatted(AMOUNT),
              (plan, _) -> both(plan, "/bottom-sag")),
          new Promise(
              "it then sags by %1$s now and %1$s after years".formatted(AMOUNT),
              (plan, of) -> isOfTop(of) ? top(plan) : both(plan, "/bottom-" + bay(of) + "-sag")),
          new Promise(
              "the bottom then sags by %1$s now and %1$s after years".formatted(AMOUNT),
              (plan, _) -> both(plan, "/bottom-" + worst(plan) + "-sag")),
          new Promise(": sway %s".formatted(AMOUNT), (plan, of) -> List.of(ofCase(plan, "/sway"))));

  private static Optional<ShelfAnswer> shelf(Plan plan, Finding of) {
    return plan.shelves().stream()
        .filter(s -> of.place().part().equals(Optional.of(s.mark())))
        .findFirst();
  }

  private static Figure ofShelf(Plan plan, Finding of, String end) {
    return shelf(plan, of).orElseThrow().figures().stream()
        .filter(f -> f.id().endsWith(end))
        .findFirst()
        .orElseThrow();
  }

  /** The most of all ways in which it is loaded. */
  private static Figure push(Plan plan, Finding of) {
    return shelf(plan, of).orElseThrow().figures().stream()
        .filter(f -> f.id().endsWith("push") && !f.id().endsWith("/hand-push"))
        .filter(f -> f.value().unit() == QuantityUnit.FORCE)
        .max(Comparator.comparingDouble(f -> f.value().value()))
        .orElseThrow();
  }

  private static Figure ofCase(Plan plan, String end) {
    return plan.standing().stream()
        .flatMap(c -> c.figures().stream())
        .filter(f -> f.id().endsWith(end))
        .findFirst()
        .orElseThrow();
  }

  private static List<Figure> both(Plan plan, String now) {
    return List.of(ofCase(plan, now), ofCase(plan, now + "-years"));
  }

  private static boolean isOfTop(Finding of) {
    return of.place().part().equals(Optional.of("T"));
  }

  /** The most of all ways in which it is loaded; a hand does not make it sag for years. */
  private static List<Figure> top(Plan plan) {
    return List.of(
        ofTop(plan, "sag-now|plate-(front-row|back-row|standing|half)"),
        ofTop(plan, "sag-years|plate-(front-row|back-row|standing|half)-years"));
  }

  private static Figure ofTop(Plan plan, String ids) {
    return plan.standing().getFirst().top().stream()
        .filter(f -> f.id().matches(".*/top/(" + ids + ")"))
        .max(Comparator.comparingDouble(f -> f.value().value()))
        .orElseThrow();
  }

  private static String bay(Finding of) {
    return of.what().replaceAll("(?s).*the bottom of bay (\\d+) .*", "$1");
  }

  /** The bay whose bottom sags most for its width. */
  private static int worst(Plan plan) {
    return plan.cases().getFirst().bays().stream()
        .max(
            Comparator.comparingDouble(
                bay ->
                    ofCase(plan, "/bottom-" + bay.number() + "-sag").value().value()
                        / bay.clear().size(Axis.X).mm()))
        .map(BaySpace::number)
        .orElseThrow();
  }

  static LongStream seeds() {
    return LongStream.concat(LongStream.range(0, JOBS), LongStream.of(TOLD_TOO_LITTLE));
  }

  private static State seen(long seed) {
    return SEEN.computeIfAbsent(seed, s -> presses.brought(List.of(FailingJobs.text(s))));
  }

  /** Else nothing would be held against what comes of it. */
  @Test
  void allThatMayBePromisedIsPromised() {
    List<String> cures =
        seeds()
            .mapToObj(PromisedCuresTest::seen)
            .flatMap(seen -> seen.plan().findings().stream())
            .flatMap(finding -> finding.remedies().stream())
            .filter(remedy -> remedy.stated().isPresent())
            .map(Remedy::what)
            .toList();
    assertThat(PROMISES)
        .allSatisfy(p -> assertThat(cures).anyMatch(words -> p.words().matcher(words).find()));
    assertThat(cures).hasSizeGreaterThan(100);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void curesKeepTheirWord(long seed) {
    State seen = seen(seed);
    SoftAssertions all = new SoftAssertions();
    for (Finding finding : seen.plan().findings()) {
      for (Remedy remedy : finding.remedies()) {
        if (remedy.stated().isPresent()) {
          all.check(() -> keepsItsWord(seed, seen, finding, remedy));
        }
      }
    }
    all.assertAll();
  }

  private static void keepsItsWord(long seed, State seen, Finding finding, Remedy remedy) {
    String what = "%s: %s: %s".formatted(seed, finding.what(), remedy.what());
    Pressed pressed = presses.pressed(what, seen, finding, remedy);
    if (!OF_HOLES.contains(finding.kind()) && !pressed.would().spoilt().isEmpty()) {
      assertThat(remedy.what())
          .as("%s spoils %s", what, pressed.would().spoilt())
          .contains("cure that too");
    }
    for (Promise promise : PROMISES) {
      Matcher words = promise.words().matcher(remedy.what());
      if (words.find() && isAlone(pressed)) {
        assertThat(promise.text(pressed, finding)).as(what).isEqualTo(told(words));
      }
    }
  }

  /** What is done besides, for what the cure would spoil, alters its figures too. */
  private static boolean isAlone(Pressed pressed) {
    return pressed.would().besides().stream()
        .allMatch("the same in another bay that it names"::equals);
  }

  private static List<String> told(Matcher words) {
    return IntStream.rangeClosed(1, words.groupCount()).mapToObj(words::group).toList();
  }
}
