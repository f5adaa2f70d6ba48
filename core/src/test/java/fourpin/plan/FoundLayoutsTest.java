package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Layout;
import fourpin.cutting.SheetPattern;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.plan.MaterialPlan.StockLayout;
import java.lang.ref.WeakReference;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Layouts that were found before, in a plan. */
class FoundLayoutsTest {

  private static final Job JOB = job(three().order());

  private static final List<StockLayout> OWN = layouts(Planner.plan(JOB));

  /** Enough parts for sheets that are cut in several ways. */
  private static CaseDraft three() {
    CaseDraft three = new CaseDraft();
    three.quantity = 3;
    return three;
  }

  private static List<StockLayout> layouts(Plan plan) {
    return plan.materials().stream().flatMap(m -> m.layouts().stream()).toList();
  }

  /** What the planner finds, with something done to its sheets. */
  private static FoundLayouts found(UnaryOperator<List<SheetPattern>> done) {
    return problem ->
        OWN.stream()
            .filter(own -> own.problem().equals(problem))
            .findFirst()
            .map(StockLayout::layout)
            .filter(l -> !l.patterns().isEmpty())
            .map(l -> new Layout(done.apply(l.patterns()), l.unplaced(), l.bound()))
            .map(l -> new FoundLayouts.Found(l, Optional.of("found before")));
  }

  @Test
  void one_that_can_be_sawn_stands_in_the_plan_with_its_origin() {
    assertThat(OWN).anyMatch(own -> own.layout().patterns().size() > 1);
    List<StockLayout> planned = layouts(Planner.plan(JOB, found(List::reversed)));
    assertThat(planned)
        .hasSameSizeAs(OWN)
        .filteredOn(l -> !l.layout().patterns().isEmpty())
        .allSatisfy(l -> assertThat(l.origin()).contains("found before"));
    for (int i = 0; i < OWN.size(); i++) {
      assertThat(planned.get(i).layout().patterns())
          .isEqualTo(OWN.get(i).layout().patterns().reversed());
    }
  }

  @Test
  void one_that_cannot_be_sawn_is_none() {
    List<StockLayout> planned = layouts(Planner.plan(JOB, found(p -> p.subList(1, p.size()))));
    assertThat(planned).isEqualTo(OWN).allMatch(l -> l.origin().equals(Optional.empty()));
  }

  /** Wider by an inch, its sides are the same, but not what lies between them. */
  @Test
  void a_former_plan_spares_searches_and_changes_nothing() {
    Plan former = Planner.plan(JOB);
    CaseDraft wider = three();
    wider.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("73"), in("84"), in("12"));
    Job otherOffcuts =
        JobDraft.changed(
            JOB,
            d ->
                d.settings =
                    d.settings.with(Setting.OFFCUT_WIDTH, new SettingValue.OfLength(in("20"))));
    for (Job job : List.of(JOB, job(wider.order()), otherOffcuts)) {
      Plan plan = Planner.plan(job, FoundLayouts.NONE.andOf(former, job));
      assertThat(layouts(plan)).isEqualTo(layouts(Planner.plan(job)));
    }
    Plan kept = Planner.plan(JOB, found(List::reversed));
    assertThat(layouts(Planner.plan(JOB, FoundLayouts.NONE.andOf(kept, JOB)))).isEqualTo(OWN);
  }

  /** Else a page on which much is changed fills the memory with what the job was before. */
  @Test
  void a_plan_does_not_hold_the_one_before_it() {
    Plan first = Planner.plan(JOB);
    WeakReference<Plan> before = new WeakReference<>(first);
    Plan next = Planner.plan(JOB, FoundLayouts.NONE.andOf(first, JOB));
    first = next;
    System.gc();
    assertThat(before.refersTo(null)).isTrue();
    assertThat(layouts(first)).isEqualTo(OWN);
  }

  @Test
  void the_better_one_costs_less_or_has_more_merit() {
    StockLayout own = OWN.getFirst();
    SheetPattern first = own.layout().patterns().getFirst();
    Layout more =
        new Layout(
            List.of(new SheetPattern(first.sheet(), first.quantity() + 1, first.root())),
            List.of(),
            own.layout().bound());
    StockLayout dear =
        new StockLayout(
            own.title(),
            own.problem(),
            more,
            own.holds(),
            0,
            own.near(),
            List.of(),
            List.of(),
            Optional.empty());
    StockLayout one =
        new StockLayout(
            own.title(),
            own.problem(),
            new Layout(List.of(first), List.of(), own.layout().bound()),
            own.holds(),
            0,
            own.near(),
            List.of(),
            List.of(),
            Optional.empty());
    assertThat(CutPlanner.isBetter(JOB, List.of(one), List.of(dear))).isTrue();
    assertThat(CutPlanner.isBetter(JOB, List.of(dear), List.of(one))).isFalse();
    assertThat(CutPlanner.isBetter(JOB, List.of(one), List.of(one))).isFalse();
  }
}
