package fourpin.cutting;

import fourpin.cutting.Inflated.Kind;
import fourpin.cutting.Inflated.Panel;
import fourpin.cutting.Unplaced.Reason;
import java.util.List;

/** Says why a kind was left out. */
final class Misfits {
  private final Inflated problem;

  Misfits(Inflated problem) {
    this.problem = problem;
  }

  Reason reason(int kind) {
    Kind k = problem.kinds.get(kind);
    List<Panel> large = problem.panels.stream().filter(p -> p.takes(kind)).toList();
    if (problem.panels.isEmpty() || large.stream().anyMatch(p -> hasPlace(p, kind))) {
      return Reason.NO_SHEETS_LEFT;
    }
    if (!large.isEmpty()) {
      return Reason.DEFECTS;
    }
    if (problem.panels.stream().anyMatch(p -> isLargeEnough(p, k))) {
      return Reason.SAW_LIMITS;
    }
    return k.grain() == Grain.FREE ? turnable(k) : fixed(k);
  }

  private boolean hasPlace(Panel panel, int kind) {
    return ClearPlace.of(problem, panel, kind).isPresent();
  }

  /** Whether the kind fits within the panel, whatever the saw can do. */
  static boolean isLargeEnough(Panel panel, Kind k) {
    return Inflated.lays(k, panel.sheet().grain()).stream().anyMatch(lay -> holds(panel, k, lay));
  }

  private static boolean holds(Panel panel, Kind k, Lay lay) {
    boolean narrow = panel.canBeRipped() && k.across(lay) <= panel.width();
    return k.along(lay) <= panel.length() && (narrow || panel.keepsEdges(k, lay));
  }

  private Reason turnable(Kind k) {
    long longer = Math.max(k.length(), k.width());
    long shorter = Math.min(k.length(), k.width());
    if (problem.panels.stream().noneMatch(p -> longer <= Math.max(p.length(), p.width()))) {
      return Reason.TOO_LONG;
    }
    return problem.panels.stream().noneMatch(p -> shorter <= Math.min(p.length(), p.width()))
        ? Reason.TOO_WIDE
        : Reason.NO_SHEET_BOTH_WAYS;
  }

  private Reason fixed(Kind k) {
    if (problem.panels.stream()
        .anyMatch(p -> k.length() <= acrossGrain(p) && k.width() <= alongGrain(p))) {
      return Reason.GRAIN_FORBIDS_TURNING;
    }
    if (problem.panels.stream().noneMatch(p -> k.length() <= alongGrain(p))) {
      return Reason.TOO_LONG;
    }
    return problem.panels.stream().noneMatch(p -> k.width() <= acrossGrain(p))
        ? Reason.TOO_WIDE
        : Reason.NO_SHEET_BOTH_WAYS;
  }

  private static long alongGrain(Panel panel) {
    return panel.sheet().grain() == SheetGrain.ALONG_WIDTH ? panel.width() : panel.length();
  }

  private static long acrossGrain(Panel panel) {
    return panel.sheet().grain() == SheetGrain.ALONG_WIDTH ? panel.length() : panel.width();
  }
}
