package fourpin.boring;

import fourpin.casework.Casework;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Shop;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Tries cures by building and boring one case again with the cure in it. What it can't see is what
 * comes later: sag, contents, stock.
 */
final class Trials {

  /** Findings of a case; empty if it was refused. */
  private final Map<CaseOrder, Optional<List<Finding>>> tried = new HashMap<>();

  private final Job job;
  private final CaseOrder order;
  private final Depth depth;
  private final Points points;

  /** Whether cures are tried. */
  private enum Depth {
    TRIED,
    /** A trial itself proposes nothing. */
    WITHIN_TRIAL
  }

  private Trials(Job job, CaseOrder order, Depth depth, Points points) {
    this.job = job;
    this.order = order;
    this.depth = depth;
    this.points = points;
  }

  /**
   * @param points of the bits that the holes are bored with, as far as that is known
   */
  static Trials of(Job job, CaseOrder order, Points points) {
    return new Trials(job, order, Depth.TRIED, points);
  }

  private static Trials within(Job job, CaseOrder order) {
    return new Trials(job, order, Depth.WITHIN_TRIAL, Points.UNKNOWN);
  }

  /** The point to be reckoned with: of the way that is taken, else of the first bit that fits. */
  Length point(BayGrid grid) {
    return points.of(grid).orElseGet(() -> PlainBits.point(job.shop(), order.settings(), grid));
  }

  /** What the cases are bored with. */
  Shop shop() {
    return job.shop();
  }

  /** How much of a kind of finding a cure must remove. */
  enum Reach {
    /** At least one of those on the part. */
    ONE,
    /** All in the case, so that cures of neighbours do not go in a circle. */
    ALL
  }

  /**
   * Whether a change removes a finding and brings no error that was not there.
   *
   * @param kind of the finding, {@code part} the mark of the part that it is on, if it is on one
   */
  boolean cures(String kind, Optional<String> part, Reach reach, UnaryOperator<CaseOrder> change) {
    if (depth == Depth.WITHIN_TRIAL) {
      return false;
    }
    Optional<List<Finding>> before = findings(order);
    Optional<List<Finding>> after = findings(change.apply(order));
    return before.isPresent()
        && after.isPresent()
        && isGone(kind, part, reach, before.get(), after.get())
        && addsNoError(before.get(), after.get());
  }

  private static boolean isGone(
      String kind, Optional<String> part, Reach reach, List<Finding> before, List<Finding> after) {
    return switch (reach) {
      case ALL -> count(after, kind, Optional.empty()) == 0;
      case ONE -> count(after, kind, part) < count(before, kind, part);
    };
  }

  private static long count(List<Finding> findings, String kind, Optional<String> part) {
    return findings.stream()
        .filter(f -> f.kind().equals(kind))
        .filter(f -> part.isEmpty() || f.place().part().equals(part))
        .count();
  }

  private static boolean addsNoError(List<Finding> before, List<Finding> after) {
    List<Finding> old = errors(before);
    List<Finding> now = errors(after);
    return now.stream().allMatch(f -> alike(now, f) <= alike(old, f));
  }

  private static List<Finding> errors(List<Finding> findings) {
    return findings.stream().filter(f -> f.severity() == Severity.ERROR).toList();
  }

  private static long alike(List<Finding> findings, Finding one) {
    return findings.stream()
        .filter(f -> f.kind().equals(one.kind()))
        .filter(f -> f.place().part().equals(one.place().part()))
        .count();
  }

  private Optional<List<Finding>> findings(CaseOrder changed) {
    return tried.computeIfAbsent(changed, this::work);
  }

  private Optional<List<Finding>> work(CaseOrder changed) {
    Casework casework = CaseworkBuilder.build(alone(job, changed));
    if (casework.cases().isEmpty()) {
      return Optional.empty();
    }
    List<Finding> all = new ArrayList<>(casework.findings());
    all.addAll(borer(job, changed, casework).findings());
    return Optional.of(all);
  }

  /** The patterns that one case would have; none if it can't be built. */
  static List<BayGrid> grids(Job job, CaseOrder changed) {
    Casework casework = CaseworkBuilder.build(alone(job, changed));
    return casework.cases().isEmpty() ? List.of() : borer(job, changed, casework).grids();
  }

  private static CaseBorer borer(Job job, CaseOrder changed, Casework casework) {
    Trials none = within(alone(job, changed), changed);
    Reporter reporter = new Reporter(changed.name(), job.style(), none);
    return new CaseBorer(casework.cases().getFirst(), reporter);
  }

  private static Job alone(Job job, CaseOrder changed) {
    return new Job(
        job.title(),
        job.revision(),
        job.unit(),
        job.style(),
        job.paper(),
        job.currency(),
        Optional.empty(),
        job.materials(),
        job.sheets(),
        job.boards(),
        List.of(changed),
        job.settings(),
        job.shop());
  }
}
