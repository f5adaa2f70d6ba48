package fourpin.shop.line;

import fourpin.casework.Finding;
import fourpin.job.Job;
import fourpin.measure.Reading;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.packet.Codes;
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

  @Option(
      names = "--bench",
      paramLabel = "ADDRESS",
      description =
          "Where phones find this very job at a server, as https://192.168.7.2:7404/jobs/NUMBER:"
              + " the sheets get codes that open their steps and parts there.")
  private Optional<String> bench = Optional.empty();

  @Override
  int work(Job job) {
    Reading<Codes> codes = bench.map(BenchAddress::read).orElse(Reading.good(Codes.NONE));
    return switch (codes) {
      case Reading.Good<Codes>(Codes good) -> work(job, good);
      case Reading.Bad<Codes>(String rule, String remedy) -> {
        err().println("fourpin: --bench " + bench.orElse("") + ": " + rule + "; " + remedy + ".");
        yield INPUT_WRONG;
      }
    };
  }

  private int work(Job job, Codes codes) {
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
        PlanFiles.of(plan, codes),
        plan.readyForTheBench() ? GOOD : PLAN_HAS_ERRORS);
  }
}
