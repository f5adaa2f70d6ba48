package fourpin.shop.line;

import fourpin.job.Job;
import fourpin.measure.Spelling;
import fourpin.shop.file.JobReader;
import fourpin.shop.file.Opened;
import fourpin.shop.yaml.Problem;
import java.io.IOException;
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
    String ifMissing = neighbour().orElse("check its name and folder");
    return switch (Opened.open(path, ifMissing, "name the job file itself")) {
      case Opened.Bytes file -> read(file.bytes());
      case Opened.Refused(String name, String rule, String remedy) ->
          new Outcome.Refused(List.of(Problem.ofFile(name, rule, remedy)));
    };
  }

  private Outcome read(byte[] bytes) {
    return switch (JobReader.read(bytes, new ShopFolder(path))) {
      case JobReader.Outcome.Good(Job job) -> new Outcome.Good(job);
      case JobReader.Outcome.Refused(List<Problem> problems, JobReader.ShopProblems shop) ->
          new Outcome.Refused(said(problems, shop));
    };
  }

  private List<String> said(List<Problem> problems, JobReader.ShopProblems shop) {
    List<String> all =
        Stream.concat(
                problems.stream().map(p -> p.text(path.toString())),
                shop.problems().stream().map(p -> p.text(shop.path())))
            .toList();
    int more = all.size() - MOST_MESSAGES;
    return more > 0
        ? Stream.concat(
                all.stream().limit(MOST_MESSAGES),
                Stream.of(path + ": and " + more + " more errors"))
            .toList()
        : all;
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
