package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.cutting.Node;
import fourpin.cutting.SheetPattern;
import fourpin.job.Job;
import fourpin.plan.MaterialPlan.StockLayout;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What can hurt at the saw while one sheet or board is cut, and nothing that happens elsewhere. */
public final class LayoutCautions {

  private LayoutCautions() {}

  /**
   * Of the steps that cut the parts which come out of it.
   *
   * @param number of the pattern in its layout, from 1
   */
  public static List<Caution> of(Plan plan, StockLayout layout, int number) {
    Set<String> marks = marks(layout.layout().patterns().get(number - 1));
    List<CutItem> items = plan.cutList().stream().filter(i -> marks.contains(i.label())).toList();
    Stream<Caution> steps =
        plan.steps().stream()
            .filter(LayoutCautions::isOutOfStock)
            .filter(step -> items.stream().anyMatch(item -> SmallCautions.cuts(step, item)))
            .flatMap(step -> step.cautions().stream());
    return Stream.concat(steps, care(plan.job(), layout, number))
        .filter(caution -> !caution.equals(Cautions.PLANER))
        .filter(caution -> !caution.equals(Cautions.SMALL) || !layout.small(number).isEmpty())
        .distinct()
        .toList();
  }

  /** The same for parts that are cut without a case, by the settings of a job. */
  public static List<Caution> of(Job frame, StockLayout layout, int number) {
    Stream<Caution> small =
        layout.small(number).isEmpty() ? Stream.empty() : Stream.of(Cautions.SMALL);
    return Stream.of(Stream.of(Cautions.SAW, Cautions.DUST), small, care(frame, layout, number))
        .flatMap(cautions -> cautions)
        .toList();
  }

  private static Stream<Caution> care(Job job, StockLayout layout, int number) {
    return new SawCare(job).cautions(layout.setUps(number)).stream();
  }

  /** Joints of parts that are cut to measure are cut in the same stage, out of the parts. */
  private static boolean isOutOfStock(PlannedStep step) {
    return !step.cautions().contains(Cautions.ROUTER);
  }

  private static Set<String> marks(SheetPattern pattern) {
    return pattern.parts().stream()
        .flatMap(p -> p.node() instanceof Node.Finished part ? Stream.of(part.mark()) : Stream.of())
        .collect(Collectors.toSet());
  }
}
