package fourpin.shop.line;

import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Spelling;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the working of a figure. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description = "Shows where a figure of the plan comes from; without FIGURE, lists them.")
public final class ExplainCommand extends Task {

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "FIGURE",
      description = "The id of a figure, as it is printed beside it.")
  private Optional<String> figure = Optional.empty();

  @Override
  int work(Job job) {
    Plan plan = Planner.plan(job);
    return figure.map(id -> explain(plan, id)).orElseGet(() -> list(plan));
  }

  private int list(Plan plan) {
    Working working = new Working(plan.job().style());
    plan.figures().forEach(f -> out().println(working.line(f)));
    return GOOD;
  }

  private int explain(Plan plan, String id) {
    Optional<Figure> found = plan.figures().stream().filter(f -> f.id().equals(id)).findFirst();
    if (found.isEmpty()) {
      err().println("fourpin: the plan has no figure '" + id + "'. " + remedy(plan, id));
      return INPUT_WRONG;
    }
    new Working(plan.job().style()).lines(found.get()).forEach(out()::println);
    return GOOD;
  }

  private String remedy(Plan plan, String id) {
    List<String> ids = plan.figures().stream().map(Figure::id).toList();
    return Spelling.nearest(id, ids)
        .map(near -> "Did you mean '" + near + "'?")
        .orElse("'fourpin explain " + job() + "' lists them.");
  }
}
