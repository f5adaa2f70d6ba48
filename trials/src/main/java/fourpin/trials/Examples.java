package fourpin.trials;

import fourpin.job.Job;
import fourpin.shop.file.JobReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Jobs of the folder {@code examples}. */
final class Examples {

  private Examples() {}

  static Job job(String name) throws IOException {
    return read(Trials.root().resolve("examples").resolve(name));
  }

  static Job read(Path example) throws IOException {
    return switch (JobReader.read(Files.readAllBytes(example))) {
      case JobReader.Outcome.Good(Job job) -> job;
      case JobReader.Outcome.Refused(var problems, _) ->
          throw new IllegalStateException(example + " is refused: " + problems);
    };
  }
}
