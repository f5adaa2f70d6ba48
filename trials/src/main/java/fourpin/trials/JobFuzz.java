package fourpin.trials;

import fourpin.job.Job;
import fourpin.plan.Planner;
import fourpin.shop.file.JobReader;
import fourpin.shop.yaml.Problem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/** Throws spoilt job files at the reader, and what it takes at the planner. */
final class JobFuzz {

  /** What came of a run. */
  record Tally(long good, long refused, long messages) {}

  private final List<byte[]> samples;

  JobFuzz(List<byte[]> samples) {
    this.samples = samples;
  }

  /**
   * Reads so many spoilt files, each made from the seed and its number alone.
   *
   * @throws IllegalStateException with seed, number and text of the first that the reader neither
   *     takes nor refuses with a place, a rule and a remedy
   */
  Tally run(long seed, long count) {
    long good = 0;
    long messages = 0;
    for (long number = 0; number < count; number++) {
      byte[] spoilt = new Mutator(new Random(seed * 31 + number), samples).next();
      int found = complaints(spoilt, seed, number);
      good += found == 0 ? 1 : 0;
      messages += found;
    }
    return new Tally(good, count - good, messages);
  }

  private static int complaints(byte[] spoilt, long seed, long number) {
    try {
      return switch (JobReader.read(spoilt)) {
        case JobReader.Outcome.Good(Job job) -> planned(job);
        case JobReader.Outcome.Refused(List<Problem> problems) -> checked(problems, spoilt);
      };
    } catch (RuntimeException | StackOverflowError e) {
      String text = new String(spoilt, StandardCharsets.UTF_8);
      throw new IllegalStateException("seed " + seed + ", number " + number + ":\n" + text, e);
    }
  }

  /** A job that is read is planned too, whatever it asks for. */
  private static int planned(Job job) {
    if (!Planner.plan(job).job().equals(job)) {
      throw new IllegalStateException("the plan is of another job");
    }
    return 0;
  }

  private static int checked(List<Problem> problems, byte[] spoilt) {
    long lines =
        2 + new String(spoilt, StandardCharsets.UTF_8).chars().filter(JobFuzz::endsLine).count();
    boolean placed =
        problems.stream()
            .map(Problem::place)
            .allMatch(p -> p.line() >= 1 && p.line() <= lines && p.column() >= 1);
    boolean told =
        problems.stream()
            .allMatch(
                p -> !p.rule().isEmpty() && !p.remedy().isEmpty() && !p.text("job").contains("\n"));
    if (problems.isEmpty() || !placed || !told) {
      throw new IllegalStateException("refused without a place, rule or remedy: " + problems);
    }
    return problems.size();
  }

  /** Line ends of YAML 1.2, and those that it had before. */
  private static boolean endsLine(int c) {
    return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
  }
}
