package fourpin.trials;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Ways;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Finding;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.job.Way;
import fourpin.plan.BenchProgram;
import fourpin.plan.ProgramCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Whether the steps of every way of boring make exactly the case, for jobs drawn at random. */
@Command(
    name = "bench",
    mixinStandardHelpOptions = true,
    description =
        "Runs the steps of random jobs on the virtual bench, by every way that their shops allow, and"
            + " compares what is made with what was wanted.")
final class BenchTrial implements Callable<Integer> {

  private static final int FAULTS_TOLD = 20;
  private static final double NANOS = 1e9;

  @Option(
      names = "--jobs",
      defaultValue = "10000",
      description = "Jobs (default: ${DEFAULT-VALUE}).")
  private long jobs;

  @Option(
      names = "--seed",
      defaultValue = "1",
      description = "Seed of the first job; the next has the next (default: ${DEFAULT-VALUE}).")
  private long seed;

  /**
   * What was run.
   *
   * @param refused jobs whose case can't be built
   * @param programs one for each way that is possible for some bays of a job
   * @param holes bored for supports in all programs
   */
  record Tally(long jobs, long refused, long programs, long holes, List<String> faults) {

    static final Tally NONE = new Tally(0, 0, 0, 0, List.of());

    Tally {
      faults = List.copyOf(faults);
    }

    Tally plus(Tally other) {
      return new Tally(
          jobs + other.jobs,
          refused + other.refused,
          programs + other.programs,
          holes + other.holes,
          Stream.concat(faults.stream(), other.faults.stream()).toList());
    }
  }

  @Override
  public Integer call() {
    long start = System.nanoTime();
    Tally tally = run(seed, jobs);
    System.out.println(Machine.inWords());
    tally.faults().stream().limit(FAULTS_TOLD).forEach(System.out::println);
    System.out.printf(
        Locale.ROOT,
        "%,d jobs from seed %d, %,d of them refused; %,d programs, %,d holes bored for supports, %,d"
            + " faults; %.0f s%n",
        tally.jobs(),
        seed,
        tally.refused(),
        tally.programs(),
        tally.holes(),
        tally.faults().size(),
        (System.nanoTime() - start) / NANOS);
    return tally.faults().isEmpty() ? 0 : 1;
  }

  /** Jobs of one seed after the other. */
  static Tally run(long seed, long jobs) {
    return LongStream.range(seed, seed + jobs)
        .parallel()
        .mapToObj(BenchTrial::survived)
        .reduce(Tally.NONE, Tally::plus);
  }

  /** A job that breaks the program is a fault among others. */
  private static Tally survived(long seed) {
    try {
      return of(seed);
    } catch (RuntimeException | StackOverflowError broken) {
      return new Tally(1, 0, 0, 0, List.of("job " + seed + ": " + broken));
    }
  }

  private static Tally of(long seed) {
    Job job = RandomJobs.of(seed);
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> borings = Ways.of(job, boring).borings();
    Tally tally = new Tally(1, boring.cases().isEmpty() ? 1 : 0, 0, 0, List.of());
    for (Way way : Way.values()) {
      if (borings.stream().anyMatch(b -> isPossible(way, b))) {
        List<CaseBoring> taken = borings.stream().map(b -> by(way, b)).toList();
        tally = tally.plus(program("job " + seed + ", " + way.key() + ": ", job, boring, taken));
      }
    }
    return tally;
  }

  private static Tally program(String what, Job job, Boring boring, List<CaseBoring> taken) {
    List<Finding> wrong = ProgramCheck.of(boring.cases(), BenchProgram.of(job, boring, taken));
    List<String> faults = new ArrayList<>();
    wrong.forEach(f -> faults.add(what + f.what()));
    return new Tally(0, 0, 1, holes(boring), faults);
  }

  private static long holes(Boring boring) {
    return boring.cases().stream()
        .flatMap(c -> c.parts().stream())
        .flatMap(p -> p.features().stream())
        .filter(f -> f instanceof Hole hole && hole.use() == Hole.Use.SUPPORT)
        .count();
  }

  private static boolean isPossible(Way way, CaseBoring boring) {
    return boring.answer(way).method().isPresent();
  }

  private static CaseBoring by(Way way, CaseBoring boring) {
    return isPossible(way, boring) ? boring.by(way, "this trial asks for it") : boring;
  }
}
