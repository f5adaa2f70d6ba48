package fourpin.shop.line;

import fourpin.casework.Finding;
import fourpin.job.Job;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.shop.packet.PlanFiles;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Plans a job and writes the packet for the bench. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Plans a job and writes the packet for the bench.")
public final class PlanCommand extends Task {

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the packet goes (default: a folder beside the job, named after it).")
  private Optional<Path> out = Optional.empty();

  @Override
  int work(Job job) {
    Plan plan = Planner.plan(job);
    Summary.of(plan, terminal()).forEach(out()::println);
    out().println();
    if (plan.findings().stream().anyMatch(f -> f.severity() == Finding.Severity.REFUSED)) {
      out().println("No packet was written: not every case can be built as stated.");
      return PLAN_HAS_ERRORS;
    }
    return write(
        "packet",
        out.orElseGet(() -> beside(job(), ".packet")),
        PlanFiles.of(plan),
        plan.readyForTheBench() ? GOOD : PLAN_HAS_ERRORS);
  }
}
