package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Edging.Edge;
import fourpin.job.SampleJobs;
import fourpin.job.Shelves;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gluing a strip over the end of a shelf, where the step alone is at hand. */
class EndStripStepsTest {

  private static List<PlannedStep> steps(String material, Edging.Kind kind, Edge edge) {
    Edging edging = new Edging(kind, "oak", in("1/4"), in("3/4"), List.of(edge));
    Shelves shelves =
        new Shelves(new Shelves.Placing.Evenly(1), material, List.of(edging), in("0"));
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(SampleJobs.bay(shelves));
    return Planner.plan(SampleJobs.job(draft.order())).steps().stream()
        .filter(step -> step.words().contains("Glue on the edging"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "oak, STRIP, LEFT, true",
    "oak, STRIP, FRONT, false",
    "oak, BANDING, LEFT, false",
    "ply, STRIP, LEFT, false"
  })
  void aStripAcrossSolidWoodIsGluedInFrontAlone(
      String material, Edging.Kind kind, Edge edge, boolean slots) {
    List<PlannedStep> steps = steps(material, kind, edge);
    assertThat(steps).hasSize(1);
    assertThat(steps.getFirst().words().contains("Over the ends of 1-S1")).isEqualTo(slots);
    assertThat(steps.getFirst().words().contains("screws in slots")).isEqualTo(slots);
  }
}
