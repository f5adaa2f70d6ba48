package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.casework.Finding;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.job.Material.Turn;
import fourpin.job.SampleJobs;
import fourpin.job.Shelves;
import fourpin.job.Sizes;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Panels of layers in cut list, layouts and steps. */
class LayerItemsTest {

  private static final String PLY = "plywood, veneer core";
  private static final String PINE = "pine, eastern white";

  private static Layer layer(String of, String thickness, double share, Turn turn, String from) {
    return new Layer(of, in(thickness), share, turn, Optional.of(from));
  }

  private static Plan plan(Layer... layers) {
    Material box =
        new Material(
            "box",
            Material.Kind.SHEET,
            PLY,
            in("1 1/2"),
            Optional.empty(),
            Material.Grain.LENGTHWISE,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(layers));
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("40"), in("12"));
    Bay bay = SampleJobs.bay(2);
    Shelves shelves = bay.shelves().orElseThrow();
    draft.bays =
        List.of(
            bay.with(
                new Shelves(shelves.placing(), "box", shelves.edging(), shelves.frontSetback())));
    Job job = JobDraft.changed(SampleJobs.job(draft.order()), d -> add(d, box));
    return Planner.plan(job);
  }

  private static void add(JobDraft draft, Material box) {
    List<Material> all = new ArrayList<>(draft.materials);
    all.add(SampleJobs.sheet("skin", PLY, "1/4", "1/4"));
    all.add(SampleJobs.board("rib", PINE, "3/4"));
    all.add(box);
    draft.materials = all;
  }

  private static Plan torsionBox() {
    return plan(
        layer(PLY, "1/4", 1, Turn.ALONG, "skin"),
        layer(PINE, "1", 0.13, Turn.ALONG, "rib"),
        layer(PLY, "1/4", 1, Turn.ACROSS, "skin"));
  }

  private static List<CutItem> of(Plan plan, String material) {
    return plan.cutList().stream().filter(i -> i.material().equals(material)).toList();
  }

  @Test
  void skinsAreCutOverSizeAndTurnedByTheirGrain() {
    Plan plan = torsionBox();
    CutItem panel = of(plan, "box").getFirst();
    Length trim = in("1");
    List<CutItem> skins = of(plan, "skin");
    assertThat(skins).hasSize(2);
    assertThat(skins.getFirst().quantity()).isEqualTo(panel.quantity()).isEqualTo(2);
    assertThat(skins.getFirst().cutLength().total())
        .isEqualTo(panel.cutLength().total().plus(trim));
    assertThat(skins.getFirst().cutWidth().total()).isEqualTo(panel.cutWidth().total().plus(trim));
    assertThat(skins.getLast().cutLength().total()).isEqualTo(panel.cutWidth().total().plus(trim));
  }

  /** One along each edge, and none farther from the next than 3/4 in over 13 % is: 5.8 in. */
  @Test
  void ribsStandNoFartherApartThanStated() {
    Plan plan = torsionBox();
    CutItem panel = of(plan, "box").getFirst();
    CutItem ribs = of(plan, "rib").getFirst();
    long count = ribs.quantity() / panel.quantity();
    double width = panel.cutWidth().total().inches() - 0.75;
    assertThat(width / (count - 1)).isLessThanOrEqualTo(0.75 / 0.13);
    assertThat(width / (count - 2)).isGreaterThan(0.75 / 0.13);
    assertThat(ribs.cutWidth().total()).isEqualTo(in("1"));
    assertThat(ribs.thickness()).isEqualTo(in("3/4"));
  }

  /** What is glued up needs no stock of its own; lines of the list stay numbered. */
  @Test
  void thePanelItselfComesFromNoStock() {
    Plan plan = torsionBox();
    assertThat(plan.materials()).noneMatch(m -> m.material().name().equals("box"));
    assertThat(plan.materials()).anyMatch(m -> m.material().name().equals("skin"));
    assertThat(plan.cutList()).extracting(CutItem::line).doesNotHaveDuplicates().isSorted();
    assertThat(plan.findings())
        .filteredOn(f -> f.kind().equals("glued-up"))
        .extracting(Finding::what)
        .singleElement()
        .asString()
        .contains("pressed all over");
  }

  @Test
  void layersAreCutThenGluedThenTrimmed() {
    List<PlannedStep> steps =
        torsionBox().steps().stream()
            .filter(
                s ->
                    s.words().startsWith("Cut the layers of box")
                        || s.words().startsWith("Glue up box")
                        || s.words().startsWith("Straighten one long edge"))
            .toList();
    assertThat(steps)
        .extracting(s -> s.words().substring(0, 7))
        .containsExactly("Cut the", "Glue up", "Straigh");
    assertThat(steps.get(1).cautions()).extracting(Caution::hazard).contains("glue");
    assertThat(steps.get(1).items()).hasSize(3);
  }

  /** As before: panels are then stock, and the plan says so. */
  @Test
  void withoutWhatTheyAreCutFromLayersStayOutOfTheList() {
    Plan plan =
        plan(new Layer(PLY, in("3/4"), 1, Turn.ALONG), new Layer(PLY, in("3/4"), 1, Turn.ALONG));
    assertThat(of(plan, "skin")).isEmpty();
    assertThat(plan.findings())
        .filteredOn(f -> f.kind().equals("glued-up"))
        .extracting(Finding::what)
        .singleElement()
        .asString()
        .contains("its layers are not");
  }
}
