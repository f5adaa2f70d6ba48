package fourpin.shop.line;

import fourpin.job.Job;
import fourpin.measure.Spelling;
import fourpin.shop.file.JobReader;
import fourpin.shop.yaml.Problem;
import fourpin.shop.yaml.TreeReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The job file as it was named on the command line. */
record JobSource(Path path) {

  /** After so many complaints the first ones are enough to go on with. */
  private static final int MOST_MESSAGES = 50;

  /** What came of it: a job, or what to say on the error output. */
  sealed interface Outcome {
    record Good(Job job) implements Outcome {}

    record Refused(List<String> messages) implements Outcome {}
  }

  Outcome read() {
    if (!Files.exists(path)) {
      return refused("there is no such file", neighbour().orElse("check its name and folder"));
    }
    if (!Files.isRegularFile(path)) {
      return refused("it is not a file", "name the job file itself");
    }
    try (InputStream in = Files.newInputStream(path)) {
      return read(in.readNBytes(TreeReader.MOST_BYTES + 1));
    } catch (IOException e) {
      return refused("it cannot be read", "check its permissions");
    }
  }

  private Outcome read(byte[] bytes) {
    return switch (JobReader.read(bytes)) {
      case JobReader.Outcome.Good(Job job) -> new Outcome.Good(job);
      case JobReader.Outcome.Refused(List<Problem> problems) -> new Outcome.Refused(said(problems));
    };
  }

  private List<String> said(List<Problem> problems) {
    Stream<String> first = problems.stream().limit(MOST_MESSAGES).map(p -> p.text(path.toString()));
    int more = problems.size() - MOST_MESSAGES;
    return more > 0
        ? Stream.concat(first, Stream.of(path + ": and " + more + " more errors")).toList()
        : first.toList();
  }

  private Outcome refused(String rule, String remedy) {
    return new Outcome.Refused(List.of(Problem.ofFile(path.toString(), rule, remedy)));
  }

  private Optional<String> neighbour() {
    Path folder = Optional.ofNullable(path.toAbsolutePath().getParent()).orElse(path);
    try (Stream<Path> files = Files.list(folder)) {
      List<String> names =
          files
              .map(f -> f.getFileName().toString())
              .filter(n -> n.endsWith(".yaml"))
              .sorted()
              .toList();
      return Spelling.nearest(path.getFileName().toString(), names)
          .map(n -> "did you mean '" + n + "'?");
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
