package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Job;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.pages.Block.SetUp.Line;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The numbers that stand large at a step. */
class BenchNumbersTest {

  /** "35 9/32", "12.5". */
  private static final Pattern NUMBER = Pattern.compile("\\d+( \\d+)?(/\\d+)?(\\.\\d+)?");

  static Stream<Job> jobs() {
    return Stream.of(SampleJobs.readingRoom(), SampleJobs.musicLibrary(), SampleJobs.framed());
  }

  /** They are those of its sentence: what stands large never says otherwise. */
  @ParameterizedTest
  @MethodSource("jobs")
  void everyNumberStandsInTheStepToo(Job job) {
    Plan plan = Planner.plan(job);
    BenchNumbers numbers = new BenchNumbers(plan);
    assertThat(plan.steps()).anyMatch(step -> !numbers.of(step).isEmpty());
    for (PlannedStep step : plan.steps()) {
      String told = step.words() + " " + String.join(" ", step.items());
      for (Line line : numbers.of(step)) {
        assertThat(NUMBER.matcher(line.what() + " " + line.to()).results().map(MatchResult::group))
            .as("%s %s of step %s: %s", line.what(), line.to(), step.number(), told)
            .allMatch(told::contains);
      }
    }
  }

  /** What is bored is set by something: a hole without a number would be bored anywhere. */
  @ParameterizedTest
  @MethodSource("jobs")
  void everyStepThatBoresOrCutsHasNumbers(Job job) {
    Plan plan = Planner.plan(job);
    BenchNumbers numbers = new BenchNumbers(plan);
    List<PlannedStep> shaping = plan.steps().stream().filter(s -> s.holes() > 0).toList();
    assertThat(shaping).isNotEmpty().noneMatch(step -> numbers.of(step).isEmpty());
  }
}
