package fourpin.trials;

import fourpin.job.Job;
import fourpin.plan.Planner;
import fourpin.shop.file.JobReader;
import fourpin.shop.file.Opened;
import fourpin.shop.file.ShopFiles;
import fourpin.shop.yaml.Problem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Throws spoilt job files at the reader, now and then a good one in a spoilt shop, and what it
 * takes at the planner.
 */
final class JobFuzz {

  /** What came of a run. */
  record Tally(long good, long refused, long messages) {}

  /** One in so many inputs spoils the shop file. */
  private static final int SHOP_EVERY = 4;

  private final List<byte[]> jobs;
  private final List<byte[]> shops;

  JobFuzz(List<byte[]> jobs, List<byte[]> shops) {
    this.jobs = jobs;
    this.shops = shops;
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
      int found = complaints(seed, number);
      good += found == 0 ? 1 : 0;
      messages += found;
    }
    return new Tally(good, count - good, messages);
  }

  private int complaints(long seed, long number) {
    Random random = new Random(seed * 31 + number);
    boolean shop = number % SHOP_EVERY == 0;
    byte[] spoilt = new Mutator(random, shop ? shops : jobs).next();
    byte[] job = shop ? jobs.get(random.nextInt(jobs.size())) : spoilt;
    ShopFiles beside = shop ? new Given(spoilt) : ShopFiles.NONE;
    try {
      return switch (JobReader.read(job, beside)) {
        case JobReader.Outcome.Good(Job good) -> planned(good);
        case JobReader.Outcome.Refused(List<Problem> ofJob, JobReader.ShopProblems ofShop) ->
            checked(shop ? ofShop.problems() : ofJob, spoilt);
      };
    } catch (RuntimeException | StackOverflowError e) {
      String text = new String(spoilt, StandardCharsets.UTF_8);
      throw new IllegalStateException("seed " + seed + ", number " + number + ":\n" + text, e);
    }
  }

  /** A shop file that is handed in. */
  private record Given(Opened.Bytes file) implements ShopFiles {

    Given(byte[] text) {
      this(new Opened.Bytes(STANDARD, text));
    }

    @Override
    public Optional<Opened> standard() {
      return Optional.of(file);
    }

    @Override
    public Opened named(String name) {
      return file;
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
