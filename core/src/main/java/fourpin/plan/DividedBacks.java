package fourpin.plan;

import fourpin.boring.Borer;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.job.Back;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A back for each bay where one back for all is more than the stock gives. */
record DividedBacks(Job job) {

  /** Proved by trial. */
  private static Remedy byBay(String material) {
    return new Remedy(
        "set pieces: by-bay for the back of " + material + ": it is then cut for each bay",
        "a joint on each partition");
  }

  /**
   * The same findings, with this cure first where it helps.
   *
   * @param material that parts find no room on
   * @param trial what can't be laid out of this material in another job
   */
  List<Finding> cured(List<Finding> findings, String material, Function<Job, List<Finding>> trial) {
    boolean unlaid = findings.stream().anyMatch(DividedBacks::isUnlaid);
    Optional<Job> divided = unlaid ? divided(material) : Optional.empty();
    boolean helps =
        divided.filter(d -> trial.apply(d).stream().noneMatch(DividedBacks::isUnlaid)).isPresent();
    return helps
        ? findings.stream().map(f -> isUnlaid(f) ? cured(f, material) : f).toList()
        : findings;
  }

  private static boolean isUnlaid(Finding finding) {
    return finding.kind().equals(NotLaidOut.KIND);
  }

  private static Finding cured(Finding finding, String material) {
    List<Remedy> remedies = new ArrayList<>();
    remedies.add(byBay(material));
    remedies.addAll(finding.remedies());
    return new Finding(
        finding.severity(),
        finding.kind(),
        finding.what(),
        finding.figures(),
        finding.place(),
        remedies);
  }

  private Optional<Job> divided(String material) {
    List<CaseOrder> orders = job.cases().stream().map(c -> divided(c, material)).toList();
    return orders.equals(job.cases()) ? Optional.empty() : Optional.of(job.with(orders));
  }

  private static CaseOrder divided(CaseOrder order, String material) {
    return order
        .back()
        .filter(b -> b.material().equals(material) && order.bays().size() > 1)
        .map(b -> order.with(new Back(b.kind(), b.material(), b.depth(), Back.Pieces.BY_BAY)))
        .orElse(order);
  }

  static List<CutItem> cutList(Job job) {
    return CutListBuilder.of(job, Borer.bore(job, CaseworkBuilder.build(job)).cases());
  }
}
