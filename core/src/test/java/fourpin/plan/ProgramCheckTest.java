package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Spacing;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.Ways;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.plan.BenchProgram.CaseSteps;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The steps are run on virtual wood and must give the parts; a wrong step must be noticed. */
class ProgramCheckTest {

  private static final int JOBS = 400;

  private static Boring bore(Job job) {
    return Borer.bore(job, CaseworkBuilder.build(job));
  }

  static LongStream batches() {
    return LongStream.range(0, 10);
  }

  @ParameterizedTest
  @MethodSource("batches")
  void should_make_exactly_the_parts_of_random_jobs(long batch) {
    int made = 0;
    for (long seed = batch * JOBS / 10; seed < (batch + 1) * JOBS / 10; seed++) {
      Job job = RandomJobs.of(seed);
      Boring boring = bore(job);
      assertThat(ProgramCheck.of(boring.cases(), BenchProgram.of(job, boring, List.of())))
          .as("job of seed %d", seed)
          .isEmpty();
      made += boring.cases().size();
    }
    assertThat(made).isGreaterThan(JOBS / 20);
  }

  /** The same through guides, long and stepped, on the drill press and by coordinates. */
  @ParameterizedTest
  @MethodSource("batches")
  void should_make_exactly_the_parts_of_random_jobs_in_other_ways(long batch) {
    int guided = 0;
    int stepped = 0;
    for (long seed = batch * JOBS / 10; seed < (batch + 1) * JOBS / 10; seed++) {
      Job job = RandomJobs.of(seed);
      Boring boring = bore(job);
      BenchProgram program = BenchProgram.of(job, boring, HandMadeWays.of(boring, seed));
      assertThat(ProgramCheck.of(boring.cases(), program)).as("job of seed %d", seed).isEmpty();
      guided += has(program, Step.ClampGuide.class);
      stepped += has(program, Step.ShiftGuide.class);
    }
    assertThat(guided).isGreaterThan(JOBS / 100);
    assertThat(stepped).isPositive();
  }

  private static int has(BenchProgram program, Class<? extends Step> kind) {
    return program.cases().stream().flatMap(c -> c.steps().stream()).anyMatch(kind::isInstance)
        ? 1
        : 0;
  }

  /** As the ways are chosen for the tools of random shops. */
  @ParameterizedTest
  @MethodSource("batches")
  void should_make_exactly_the_parts_in_the_ways_that_are_chosen(long batch) {
    for (long seed = batch * JOBS / 10; seed < (batch + 1) * JOBS / 10; seed++) {
      Job job = RandomJobs.of(seed);
      Boring boring = bore(job);
      BenchProgram program = BenchProgram.of(job, boring, Ways.of(job, boring).borings());
      assertThat(ProgramCheck.of(boring.cases(), program)).as("job of seed %d", seed).isEmpty();
    }
  }

  @Test
  void should_make_exactly_the_parts_of_a_bookcase() {
    assertThat(checked(s -> s)).isEmpty();
  }

  @Test
  void should_notice_a_panel_marked_for_the_wrong_side() {
    List<Finding> found =
        checked(s -> s instanceof Step.MarkSurfaces m && m.piece().equals("L") ? turned(m) : s);
    assertThat(found).extracting(f -> f.place().part().orElseThrow()).containsOnly("L");
    assertThat(found.getFirst().what()).startsWith("The steps give L other cuts than planned.");
  }

  private static Step turned(Step.MarkSurfaces marks) {
    Map<Surface, String> labels = new LinkedHashMap<>(marks.labels());
    labels.put(Surface.INDEX_END, "top");
    return new Step.MarkSurfaces(marks.piece(), labels);
  }

  @Test
  void should_notice_a_stick_with_one_mark_off() {
    List<Finding> found = checked(s -> s instanceof Step.MarkStick m ? oneMarkOff(m) : s);
    assertThat(found)
        .extracting(f -> f.place().part().orElseThrow())
        .containsExactly("L", "R", "P1");
  }

  private static Step oneMarkOff(Step.MarkStick stick) {
    var marks = new ArrayList<>(stick.marks());
    marks.set(3, marks.get(3).plus(in("1/256")));
    return new Step.MarkStick(stick.stick(), marks, stick.ends());
  }

  @Test
  void should_notice_a_hole_that_was_left_out() {
    List<Finding> found =
        checked(s -> s instanceof Step.BoreRow r && r.piece().equals("P1") ? oneLess(r) : s);
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().what()).contains("Missing: [hole", "instead: []");
  }

  private static Step oneLess(Step.BoreRow row) {
    Spacing.FromStick all = (Spacing.FromStick) row.spacing();
    Spacing less =
        new Spacing.FromStick(
            all.stick(), all.numbers().subList(1, all.numbers().size()), all.datum());
    return new Step.BoreRow(
        row.piece(),
        row.surface(),
        row.line(),
        row.offset(),
        less,
        row.diameter(),
        row.depth(),
        row.purpose());
  }

  @Test
  void should_notice_a_part_that_was_never_cut_and_one_cut_too_long() {
    List<Finding> never =
        checked(
            s ->
                s instanceof Step.CutToSize c && c.piece().equals("T")
                    ? new Step.CutToSize("X", c.stock(), c.length(), c.width(), c.thickness())
                    : s);
    assertThat(never).extracting(Finding::what).contains("The steps never cut T.");
    assertThat(never)
        .extracting(Finding::what)
        .anyMatch(w -> w.contains("there is no piece marked T"));
    List<Finding> longer =
        checked(
            s ->
                s instanceof Step.CutToSize c && c.piece().equals("R")
                    ? new Step.CutToSize(
                        "R", c.stock(), c.length().plus(in("1/64")), c.width(), c.thickness())
                    : s);
    assertThat(longer.getFirst().what()).startsWith("The steps give R other size than planned.");
  }

  /** The findings for a bookcase with one kind of step changed. */
  private static List<Finding> checked(UnaryOperator<Step> change) {
    Job job = job(bookcase(bay(3), bay(3)));
    Boring boring = bore(job);
    BenchProgram program = BenchProgram.of(job, boring, List.of());
    List<CaseSteps> changed =
        program.cases().stream()
            .map(c -> new CaseSteps(c.caseName(), c.steps().stream().map(change).toList()))
            .toList();
    return ProgramCheck.of(boring.cases(), new BenchProgram(changed, program.printed()));
  }
}
