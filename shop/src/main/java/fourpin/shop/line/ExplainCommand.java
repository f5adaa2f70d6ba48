package fourpin.shop.line;

import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.FigureText;
import fourpin.measure.Spelling;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the working of a figure. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description = "Shows where a figure of the plan comes from; without FIGURE, lists them.")
public final class ExplainCommand extends Task {

  /** More would hide what was asked for. */
  private static final int MOST_LISTED = 12;

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
    Working working = working(plan);
    plan.figures().forEach(f -> out().println(working.line(f)));
    return GOOD;
  }

  private static Working working(Plan plan) {
    return new Working(new FigureText(plan.job().style(), plan.job().currency()));
  }

  private int explain(Plan plan, String id) {
    List<String> lines = answer(plan, id);
    if (lines.isEmpty()) {
      err().println("fourpin: the plan has no figure '" + id + "'. " + remedy(plan, id));
      return INPUT_WRONG;
    }
    lines.forEach(out()::println);
    return GOOD;
  }

  /** The working of a figure, line by line; none where the plan has no such figure. */
  static List<String> answer(Plan plan, String id) {
    return plan.figures().stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .map(working(plan)::lines)
        .orElse(List.of());
  }

  /** Ids that hold the word, else the one that is written alike, else where all are listed. */
  private String remedy(Plan plan, String id) {
    List<String> ids = plan.figures().stream().map(Figure::id).toList();
    String word = id.strip().toLowerCase(Locale.ROOT);
    List<String> holding = ids.stream().filter(i -> !word.isEmpty() && i.contains(word)).toList();
    return holding.isEmpty()
        ? Spelling.nearest(id, ids)
            .map(near -> "Did you mean '" + near + "'?")
            .orElse("'fourpin explain " + job() + "' lists them.")
        : "Figures with that word: " + listed(holding);
  }

  private static String listed(List<String> ids) {
    String first = String.join(", ", ids.subList(0, Math.min(MOST_LISTED, ids.size())));
    int more = ids.size() - MOST_LISTED;
    return more > 0 ? first + " and " + more + " more" : first;
  }
}
