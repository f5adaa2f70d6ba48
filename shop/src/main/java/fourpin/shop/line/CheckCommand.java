package fourpin.shop.line;

import fourpin.job.Job;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import picocli.CommandLine.Command;

/** Reads and plans a job, says what came of it, and writes nothing. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Reads and plans a job and says what is wrong or doubtful; writes nothing.")
public final class CheckCommand extends Task {

  @Override
  int work(Job job) {
    Plan plan = Planner.plan(job);
    Summary.of(plan, terminal()).forEach(out()::println);
    return plan.readyForTheBench() ? GOOD : PLAN_HAS_ERRORS;
  }
}
