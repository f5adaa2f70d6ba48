package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Stated;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Shelves;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is ordered is what the material says it is: by what strength and cautions are told. */
class GlassKindsTest {

  private static Material glass(String of) {
    return new Material(
        "pane",
        Material.Kind.GLASS,
        of,
        in("1/4"),
        Optional.empty(),
        Material.Grain.NONE,
        Optional.empty(),
        Optional.empty());
  }

  private static Plan plan(String of, Settings settings) {
    Shelves panes = new Shelves(new Shelves.Placing.Evenly(2), "pane", List.of(), in("0"));
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(SampleJobs.bay(panes));
    draft.settings = settings;
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(glass(of));
    return Planner.plan(JobDraft.changed(job, d -> d.materials = materials));
  }

  private static Settings set(String kind) {
    return Settings.standard(Unit.INCH).with(Setting.GLASS, new SettingValue.OfChoice(kind));
  }

  private static List<Finding> told(Plan plan) {
    return plan.findings().stream().filter(f -> f.kind().equals("glass-kind")).toList();
  }

  private static List<String> ordered(Plan plan) {
    return plan.hardware().stream()
        .map(HardwareItem::name)
        .filter(name -> name.startsWith("glass shelf"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          glass, annealed | annealed | annealed | 0
          glass, annealed | tempered | annealed | 1
          glass, tempered | annealed | tempered | 1
          glass, tempered | tempered | tempered | 0
          glass           | annealed | annealed | 0
          glass           | tempered | tempered | 0
          """)
  void should_order_what_the_material_says_and_tell_what_is_set_otherwise(
      String of, String setting, String kind, int told) {
    Plan plan = plan(of, set(setting));
    assertThat(ordered(plan)).containsExactly("glass shelf, " + kind);
    assertThat(told(plan)).hasSize(told);
  }

  /** The default is tempered, and nobody has asked for that. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = "glass, annealed|annealed\nglass, tempered|tempered")
  void should_tell_nothing_of_a_default(String of, String kind) {
    Plan plan = plan(of, Settings.standard(Unit.INCH));
    assertThat(ordered(plan)).containsExactly("glass shelf, " + kind);
    assertThat(told(plan)).isEmpty();
  }

  @Test
  void should_be_cured_by_the_setting_that_it_offers() {
    Finding finding = told(plan("glass, annealed", set("tempered"))).getFirst();
    Stated stated = finding.remedies().getFirst().stated().orElseThrow();
    assertThat(stated).isEqualTo(new Stated.OfSetting(Setting.GLASS, "annealed"));
    assertThat(told(plan("glass, annealed", set("annealed")))).isEmpty();
  }
}
