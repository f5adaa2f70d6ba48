package fourpin.shop.web;

import fourpin.casework.BuiltCase;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.plan.Plan;
import fourpin.shop.edit.JobText;
import fourpin.shop.store.Revision;
import java.util.Optional;

/**
 * A job as one revision has it, read and planned.
 *
 * @param text that the reader takes without a complaint
 */
record State(Revision revision, JobText text, Job job, Plan plan) {

  /** The case of that name, else the first. */
  CaseOrder order(String name) {
    return job.cases().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElse(job.cases().getFirst());
  }

  /** The case in space; nothing if it cannot be built. */
  Optional<BuiltCase> built(CaseOrder order) {
    return plan.cases().stream().filter(c -> c.order().name().equals(order.name())).findFirst();
  }
}
