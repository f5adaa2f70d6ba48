package fourpin.plan;

import fourpin.casework.Part;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts the caution for small pieces at the steps that cut a material of which some pieces are too
 * small to be held. Layouts are known only after the steps are written.
 */
final class SmallCautions {

  private final List<CutItem> cutList;
  private final Set<String> materials;

  SmallCautions(List<CutItem> cutList, List<MaterialPlan> plans) {
    this.cutList = cutList;
    this.materials =
        plans.stream()
            .filter(m -> m.layouts().stream().anyMatch(l -> !l.small().isEmpty()))
            .map(m -> m.material().name())
            .collect(Collectors.toSet());
  }

  List<PlannedStep> at(List<PlannedStep> steps) {
    return steps.stream()
        .map(step -> cutsSmall(step) ? step.cautioned(Cautions.SMALL) : step)
        .toList();
  }

  private boolean cutsSmall(PlannedStep step) {
    return !step.cautions().contains(Cautions.SMALL)
        && cutList.stream()
            .anyMatch(item -> materials.contains(item.material()) && cuts(step, item));
  }

  /** Whether a step saws a line of the cut list. */
  static boolean cuts(PlannedStep step, CutItem item) {
    boolean cuts = step.stage() == Stage.CUT || step.stage() == Stage.SHELVES;
    return cuts && step.cautions().contains(Cautions.SAW) && of(item, step);
  }

  /** The step for strips names the parts that they go on. */
  private static boolean of(CutItem item, PlannedStep step) {
    boolean strips = step.cautions().contains(Cautions.NARROW_RIP);
    return item.caseName().equals(step.caseName())
        && strips == (item.role() == Part.Role.STRIP)
        && step.parts().stream()
            .anyMatch(
                part ->
                    item.marks().stream()
                        .anyMatch(m -> m.equals(part) || (strips && m.startsWith(part + " "))));
  }
}
