package fourpin.boring;

import fourpin.casework.BuiltCase;
import fourpin.casework.Casework;
import fourpin.casework.Finding;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import java.util.ArrayList;
import java.util.List;

/** Gives every bay of a job its pattern, and the panels round it their view of it. */
public final class Borer {

  private Borer() {}

  /**
   * The cases with the supports of their adjustable shelves worked into them.
   *
   * @param casework the cases as they stand without supports, adjustable shelves at their planned
   *     heights
   * @return findings of this work only, those of {@code casework} not among them
   */
  public static Boring bore(Job job, Casework casework) {
    return bore(job, casework, Points.UNKNOWN);
  }

  /**
   * The same, with cures that leave room for the points of the bits.
   *
   * @param points of the ways that are taken
   */
  public static Boring bore(Job job, Casework casework, Points points) {
    List<BuiltCase> cases = new ArrayList<>();
    List<BayGrid> grids = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (BuiltCase built : casework.cases()) {
      Trials trials = Trials.of(job, built.order(), points);
      Reporter reporter = new Reporter(built.order().name(), job.style(), trials);
      CaseBorer borer = new CaseBorer(built, reporter);
      cases.add(borer.bored());
      grids.addAll(borer.grids());
      findings.addAll(borer.findings());
    }
    return new Boring(cases, grids, findings);
  }

  /**
   * The patterns that one case of a job would have if it were changed so; no cure is tried. None if
   * it can't be built.
   */
  public static List<BayGrid> grids(Job job, CaseOrder changed) {
    return Trials.grids(job, changed);
  }
}
