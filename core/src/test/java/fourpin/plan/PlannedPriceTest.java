package fourpin.plan;

import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.job.BoardStock;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.SheetStock;
import fourpin.measure.Figure;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the bookcase of {@link PlannerTest} costs, and what is said of stock without a price. */
class PlannedPriceTest {

  @Test
  void should_price_stock_and_boring_as_the_settings_say() {
    Plan plan = Planner.plan(job(PlannerTest.divided().order()));
    double stock = PlannerTest.figure(plan, "job/stock-used").value().value();
    double holes = PlannerTest.figure(plan, "job/holes").value().value();
    // Defaults: 10 min for the stick, 5 for one set-up, 16 s a hole. Uprights are marked in pairs:
    // 1 1/2 min to lay them for each bay, 10 s a line, and 5 s less for each of four holes on it.
    double pairs = plan.grids().size() * 1.5;
    double minutes = 10 + 5 + pairs + (holes * (16 - 5) + holes / 4 * 10) / 60;
    assertThat(PlannerTest.figure(plan, "job/boring-time").value().value())
        .isCloseTo(minutes, within(1e-9));
    // Defaults: no waste, 25 % mark-up, 60 an hour, 15 % contingency, 8 for the bit that no file
    // states; the hand drill has no price.
    double expected = (stock * 1.25 + minutes / 60 * 60 + 8) * 1.15;
    assertThat(PlannerTest.figure(plan, "job/price").value().value())
        .isCloseTo(expected, within(1e-9));
    assertThat(holes)
        .isEqualTo(plan.grids().stream().mapToDouble(g -> g.levels().size() * 4).sum());
  }

  @Test
  void should_name_stock_without_a_price_and_count_the_rest() {
    Job priced = job(PlannerTest.divided().order());
    Job some = without(priced, "back");
    Plan plan = Planner.plan(some);
    assertThat(PlannerTest.figure(plan, "job/price").title())
        .isEqualTo(
            "price of the priced stock, tools to buy and boring; hardware and other work not"
                + " counted");
    assertThat(PlannerTest.figure(plan, "job/stock-used").title()).startsWith("priced stock used");
    assertThat(PlannerTest.figure(plan, "job/stock-used").value().value())
        .isLessThan(PlannerTest.figure(Planner.plan(priced), "job/stock-used").value().value());
    assertThat(plan.findings())
        .filteredOn(f -> f.kind().equals("no-price"))
        .extracting(Finding::what)
        .containsExactly(
            "No price is stated for back 1: 96 x 48 in: the totals count the priced stock only.");
    assertThat(Planner.plan(priced).findings()).noneMatch(f -> f.kind().equals("no-price"));
  }

  @Test
  void should_work_out_no_price_when_no_stock_has_one() {
    Job none = without(without(without(job(PlannerTest.divided().order()), "back"), "ply"), "oak");
    Plan plan = Planner.plan(none);
    assertThat(plan.figures()).extracting(Figure::id).doesNotContain("job/price", "job/stock-used");
    assertThat(plan.findings())
        .filteredOn(f -> f.kind().equals("no-price"))
        .singleElement()
        .satisfies(f -> assertThat(f.what()).endsWith(": no price is worked out for this job."));
  }

  /** The job with no price on one material's stock. */
  private static Job without(Job job, String material) {
    return JobDraft.changed(
        job,
        d -> {
          d.sheets =
              job.sheets().stream()
                  .map(
                      s ->
                          s.material().equals(material)
                              ? new SheetStock(
                                  s.material(),
                                  s.length(),
                                  s.width(),
                                  s.count(),
                                  Optional.empty(),
                                  s.supply())
                              : s)
                  .toList();
          d.boards =
              job.boards().stream()
                  .map(
                      b ->
                          b.material().equals(material)
                              ? new BoardStock(
                                  b.material(),
                                  b.length(),
                                  b.width(),
                                  b.count(),
                                  Optional.empty(),
                                  b.supply())
                              : b)
                  .toList();
        });
  }
}
