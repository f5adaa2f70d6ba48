package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.plan.Planner;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The page "What this rests on". */
class GroundsPagesTest {

  private static final Quantity OWN = Quantity.of(40, QuantityUnit.STRESS);

  /** Every material but glass, by the tables or by the job. */
  @Test
  void strengthsOfMaterialsAreListedWithTheirSources() {
    Job job = SampleJobs.job(SampleJobs.bookcase(SampleJobs.bay(3)));
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(
        SampleJobs.strong(SampleJobs.board("own", "oak, white", "3/4"), Optional.of(OWN)));
    List<String> rows = rows(JobDraft.changed(job, d -> d.materials = materials));
    assertThat(rows).hasSize(materials.size());
    assertThat(rows)
        .anySatisfy(row -> assertThat(row).startsWith("ply | 3597 psi").contains("FPL-GTR-190"))
        .anySatisfy(row -> assertThat(row).startsWith("own | 5802 psi").contains("stated"));
  }

  private static List<String> rows(Job job) {
    return new GroundsPages(Planner.plan(job), new Words(job))
        .section().blocks().stream()
            .filter(Block.Columns.class::isInstance)
            .flatMap(block -> ((Block.Columns) block).blocks().stream())
            .dropWhile(block -> !block.equals(new Block.Heading("Bending strengths")))
            .filter(Table.class::isInstance)
            .map(Table.class::cast)
            .limit(1)
            .flatMap(table -> table.rows().stream())
            .map(GroundsPagesTest::text)
            .toList();
  }

  private static String text(Table.Row row) {
    return String.join(" | ", row.cells().stream().map(Prose::text).toList());
  }
}
