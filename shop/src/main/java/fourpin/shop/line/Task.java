package fourpin.shop.line;

import fourpin.job.Job;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** What all commands on a job share: they read it first. */
abstract class Task extends Errand {

  @Parameters(index = "0", paramLabel = "JOB", description = "The job file.")
  private Path job;

  /** picocli sets the field before the command runs. */
  @SuppressWarnings("NullAway.Init")
  Task() {}

  abstract int work(Job job) throws IOException;

  @Override
  final int run() throws IOException {
    return switch (new JobSource(job).read()) {
      case JobSource.Outcome.Good(Job good) -> work(good);
      case JobSource.Outcome.Refused(var messages) -> {
        messages.forEach(err()::println);
        yield INPUT_WRONG;
      }
    };
  }

  Path job() {
    return job;
  }
}
