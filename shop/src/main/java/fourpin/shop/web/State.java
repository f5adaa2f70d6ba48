package fourpin.shop.web;

import fourpin.casework.BuiltCase;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.plan.Plan;
import fourpin.shop.edit.JobText;
import fourpin.shop.store.Revision;
import java.util.List;
import java.util.Optional;

/**
 * A job as one revision has it, read and planned.
 *
 * @param text that the reader takes without a complaint
 * @param found layouts that were found for the job before; the plan has those that fit
 */
record State(Revision revision, JobText text, Job job, Plan plan, FoundBefore found) {

  /** Says that layouts which were found fit no more; empty where they do. */
  String outgrown() {
    List<String> materials = found.outgrown(plan);
    return materials.isEmpty()
        ? ""
        : "The layouts of "
            + String.join(", ", materials)
            + " that a longer search found were for other parts or stock: the packet has its own"
            + " again. Search anew, or take the change back.";
  }

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
