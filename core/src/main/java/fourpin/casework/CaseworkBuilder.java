package fourpin.casework;

import fourpin.job.CaseOrder;
import fourpin.job.Job;
import java.util.ArrayList;
import java.util.List;

/** From the job as stated to every part in space. */
public final class CaseworkBuilder {

  private CaseworkBuilder() {}

  /**
   * Builds every case of a job; what can't be built is left out, with the reason among the
   * findings.
   */
  public static Casework build(Job job) {
    List<BuiltCase> cases = new ArrayList<>();
    List<Finding> all = new ArrayList<>();
    for (CaseOrder order : job.cases()) {
      Findings findings = new Findings(order.name());
      new CaseBuilder(Carcass.of(job, order), findings).build().ifPresent(cases::add);
      all.addAll(findings.list());
    }
    all.addAll(RoomChecks.of(job, cases));
    return new Casework(cases, all);
  }
}
