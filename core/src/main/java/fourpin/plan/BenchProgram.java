package fourpin.plan;

import fourpin.bench.Step;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.job.Job;
import fourpin.job.Setting;
import java.util.List;

/**
 * The work at the bench, typed and printed.
 *
 * @param cases the typed steps of one copy of each case, in the order of work
 * @param printed the same as instructions, with all that has no effect on the shape of a piece:
 *     measuring, fitting, finishing, assembling, standing up
 */
public record BenchProgram(List<CaseSteps> cases, List<PlannedStep> printed) {

  /** Steps of one copy of a case. */
  public record CaseSteps(String caseName, List<Step> steps) {
    public CaseSteps {
      steps = List.copyOf(steps);
    }
  }

  public BenchProgram {
    cases = List.copyOf(cases);
    printed = List.copyOf(printed);
  }

  /**
   * @param borings how bays are bored; those that it does not name from the marks of story sticks
   */
  public static BenchProgram of(Job job, Boring boring, List<CaseBoring> borings) {
    return new ProgramWriter(job, borings).write(boring);
  }

  static boolean boresAfterAssembly(BuiltCase built) {
    return built.order().settings().choice(Setting.DRILL).equals("after-assembly");
  }
}
