package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.casework.Finding;
import fourpin.job.Job;
import fourpin.measure.Figure;
import java.util.ArrayList;
import java.util.List;

/** Lays parts out on stock, without a case that they belong to. */
public final class CutPlanner {

  private CutPlanner() {}

  /**
   * Plans the cutting of every material. The same input gives the same plan.
   *
   * @param frame whose settings, unit and style of printing hold; its own cases and stock are not
   *     looked at
   * @param wanted each material once
   */
  public static CutPlan plan(Job frame, List<Wanted> wanted) {
    List<CutMaterial> materials = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (Wanted each : wanted) {
      StockCutter.Cut cut = StockCutter.cut(frame.settings(), frame.style(), each);
      materials.add(new CutMaterial(each.material(), cut.layouts(), cut.stock()));
      findings.addAll(cut.findings());
    }
    return new CutPlan(frame, wanted, materials, cautions(materials), findings, figures(materials));
  }

  private static List<Figure> figures(List<CutMaterial> materials) {
    return materials.stream()
        .flatMap(m -> m.layouts().stream())
        .flatMap(l -> l.figures().stream())
        .toList();
  }

  private static List<Caution> cautions(List<CutMaterial> materials) {
    boolean small =
        materials.stream().flatMap(m -> m.layouts().stream()).anyMatch(l -> !l.small().isEmpty());
    List<Caution> cautions = new ArrayList<>(List.of(Cautions.SAW, Cautions.DUST));
    if (small) {
      cautions.add(Cautions.SMALL);
    }
    return cautions;
  }
}
