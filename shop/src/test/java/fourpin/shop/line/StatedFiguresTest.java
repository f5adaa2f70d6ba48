package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Step;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.plan.MistakeReport;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.PlannedStep.Stage;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a sentence or a step on boring states in numbers can be asked for. */
class StatedFiguresTest {

  private static final Set<QuantityUnit> LENGTHS_OF_ANY_KIND =
      Set.of(QuantityUnit.LENGTH, QuantityUnit.DIAMETER);

  private static final Pattern LENGTHS =
      Pattern.compile("(?<!bay )(≈ )?((\\d+ )?\\d+/\\d+|\\d+\\.\\d+|\\d+) (in|mm)(?! all|[a-z])");
  private static final Pattern REST = Pattern.compile("\\d+(\\.\\d+)? (%|min)(?![a-z])");

  private static Set<String> said(String words) {
    return Stream.of(LENGTHS, REST)
        .flatMap(p -> p.matcher(words).results())
        .map(r -> r.group())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> printed(List<Figure> figures, LengthStyle style) {
    Set<String> printed = new TreeSet<>();
    for (Quantity quantity : PlannedExamples.quantities(figures)) {
      printed.add(quantity.text(style.unit()));
      if (quantity.unit() == QuantityUnit.LENGTH) {
        printed.add(style.text(Length.nearestMm(Math.abs(quantity.value()))));
      }
      if (quantity.unit() == QuantityUnit.DIAMETER) {
        printed.add(style.diameter(quantity.length()));
      }
    }
    return printed;
  }

  private static Set<String> unknown(String words, List<Figure> figures, LengthStyle style) {
    Set<String> said = said(words);
    said.removeAll(printed(figures, style));
    return said;
  }

  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyFigureThatReasonsStateCanBeAskedFor(Path example) {
    Plan plan = PlannedExamples.plan(example);
    LengthStyle style = plan.job().style();
    plan.borings()
        .forEach(
            boring -> {
              List<Figure> all = new ArrayList<>(boring.figures());
              boring.answers().forEach(a -> all.addAll(a.figures()));
              assertThat(unknown(boring.because(), all, style)).isEmpty();
              boring
                  .answers()
                  .forEach(
                      answer -> {
                        String words =
                            Stream.concat(answer.reasons().stream(), answer.together().stream())
                                .map(r -> r.what() + " " + r.remedy())
                                .collect(Collectors.joining(" "));
                        List<Figure> own =
                            Stream.concat(
                                    answer.figures().stream(),
                                    about(plan, boring.caseName(), "bay-"))
                                .toList();
                        assertThat(unknown(words, own, style)).as(words).isEmpty();
                      });
            });
  }

  private static Stream<Figure> about(Plan plan, String caseName, String what) {
    return plan.figures().stream().filter(f -> f.id().startsWith(Figure.id(caseName) + "/" + what));
  }

  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyFigureThatMistakesStateCanBeAskedFor(Path example) {
    Plan plan = PlannedExamples.plan(example);
    for (MistakeReport report : plan.mistakes()) {
      String words = String.join(" ", report.what(), report.shows(), report.test(), report.how());
      assertThat(unknown(words, report.figures(), plan.job().style())).as(words).isEmpty();
      Map<String, Figure> all = PlannedExamples.figures(plan);
      report.figures().forEach(f -> assertThat(f.equals(all.get(f.id()))).as(f.id()).isTrue());
    }
  }

  /** Lengths of a typed step, whatever its kind. */
  private static Stream<Length> lengths(Object value) {
    return switch (value) {
      case Length length -> Stream.of(length);
      case Optional<?> optional -> optional.stream().flatMap(StatedFiguresTest::lengths);
      case List<?> list -> list.stream().flatMap(StatedFiguresTest::lengths);
      case Record parts ->
          Stream.of(parts.getClass().getRecordComponents())
              .flatMap(component -> lengths(component(parts, component)));
      default -> Stream.empty();
    };
  }

  private static Object component(Record of, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * The steps that stand on drilling sheets, on pages of guides and before the first panel. Joints
   * that wait until the rows are bored are steps like those of other joints.
   */
  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyLengthOfTheStepsIsAFigure(Path example) {
    Plan plan = PlannedExamples.plan(example);
    LengthStyle style = plan.job().style();
    Set<String> unknown = new TreeSet<>();
    for (PlannedStep step : plan.steps()) {
      if (step.stage() == Stage.BORE) {
        Set<String> known =
            Stream.of("bay-", "boring/")
                .flatMap(what -> about(plan, step.caseName(), what))
                .map(Figure::value)
                .filter(v -> LENGTHS_OF_ANY_KIND.contains(v.unit()))
                .map(v -> style.text(Length.nearestMm(Math.abs(v.value()))))
                .collect(Collectors.toSet());
        for (Step typed : step.typed()) {
          Stream.of(typed)
              .filter(t -> !(t instanceof Step.Channel))
              .flatMap(StatedFiguresTest::lengths)
              .filter(l -> !l.isZero())
              .map(l -> style.text(l.abs()))
              .filter(Predicate.not(known::contains))
              .forEach(text -> unknown.add(typed.getClass().getSimpleName() + ": " + text));
        }
      }
    }
    assertThat(unknown).isEmpty();
  }
}
