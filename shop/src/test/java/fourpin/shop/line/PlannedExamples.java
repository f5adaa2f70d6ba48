package fourpin.shop.line;

import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The jobs of the examples, each planned once. */
final class PlannedExamples {

  private static final Path EXAMPLES = Path.of("..", "examples");

  private static final Map<Path, Plan> PLANS = new HashMap<>();

  private PlannedExamples() {}

  static List<Path> files() throws IOException {
    try (Stream<Path> all =
        Stream.concat(Files.list(EXAMPLES), Files.list(EXAMPLES.resolve("ways")))) {
      return all.filter(f -> f.toString().endsWith(".yaml"))
          .filter(f -> !f.toString().endsWith("shop.yaml"))
          .sorted()
          .toList();
    }
  }

  static Plan plan(Path example) {
    return PLANS.computeIfAbsent(
        example,
        path ->
            switch (new JobSource(path).read()) {
              case JobSource.Outcome.Good(Job job) -> Planner.plan(job);
              case JobSource.Outcome.Refused(List<String> messages) ->
                  throw new AssertionError(messages);
            });
  }

  static Map<String, Figure> figures(Plan plan) {
    return plan.figures().stream().collect(Collectors.toMap(Figure::id, f -> f));
  }

  /** Values of figures and of what they are worked out from. */
  static List<Quantity> quantities(List<Figure> figures) {
    return figures.stream()
        .flatMap(
            f -> Stream.concat(Stream.of(f.value()), f.inputs().stream().map(Figure.Input::value)))
        .toList();
  }
}
