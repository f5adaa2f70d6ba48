package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.casework.Part.CutWhen;
import fourpin.cutting.Node;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.plan.CutItem;
import fourpin.plan.LayoutCautions;
import fourpin.plan.MaterialPlan;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LayoutPagesTest {

  private final Plan plan = Planner.plan(SampleJobs.readingRoom());

  /** Strips are ripped out of boards, and planed elsewhere. */
  @Test
  void cautionsStandAtTheSheetsThatNeedThem() {
    for (MaterialPlan material : plan.materials()) {
      boolean boards = material.material().name().equals("oak");
      for (List<Caution> cautions : cautions(material)) {
        List<String> hazards = cautions.stream().map(Caution::hazard).toList();
        assertThat(hazards).contains("saw", "dust").doesNotContain("planer", "router");
        assertThat(hazards.contains("narrow rips"))
            .as(material.material().name())
            .isEqualTo(boards);
        assertThat(cautions)
            .filteredOn(c -> c.hazard().equals("lifting"))
            .allMatch(c -> c.text().contains(material.material().name()));
      }
    }
  }

  private List<List<Caution>> cautions(MaterialPlan material) {
    return material.layouts().stream()
        .flatMap(
            layout ->
                IntStream.rangeClosed(1, layout.layout().patterns().size())
                    .mapToObj(number -> LayoutCautions.of(plan, layout, number)))
        .toList();
  }

  /** Common practice: what is trimmed when the case stands is cut about half an inch longer. */
  @Test
  void whatWaitsIsOverSizeInTheLayouts() {
    Length over = plan.cases().getFirst().order().settings().length(Setting.OVER_SIZE);
    assertThat(over).isEqualTo(Length.inches(1, 2));
    CutItem shelf =
        plan.cutList().stream()
            .filter(i -> i.when() == CutWhen.AFTER_ASSEMBLY && i.name().equals("shelf"))
            .findFirst()
            .orElseThrow();
    assertThat(shelf.cutLength().total()).isEqualTo(shelf.length().total().plus(over));
    assertThat(plan.materials())
        .flatExtracting(MaterialPlan::layouts)
        .flatExtracting((StockLayout layout) -> layout.layout().patterns())
        .flatExtracting(pattern -> pattern.parts())
        .filteredOn(p -> ((Node.Finished) p.node()).mark().equals(shelf.label()))
        .isNotEmpty()
        .allMatch(
            p ->
                Length.min(p.length(), shelf.cutLength().total())
                    .equals(shelf.cutLength().total()));
  }
}
