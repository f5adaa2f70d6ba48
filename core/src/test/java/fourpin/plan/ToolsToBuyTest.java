package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.way.Purchase.Need;
import fourpin.casework.Finding;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.measure.Figure;
import fourpin.measure.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two cases of one bay on pins of 1/4 in. */
class ToolsToBuyTest {

  private static final Tool DRILL = new Tool.HandDrill("drill", in("10"), Optional.empty());

  private static Tool bit(Optional<BigDecimal> price) {
    return new Tool.PlainBit("brad", in("1/4"), in("3/32"), in("3"), price);
  }

  private static Job shop(Tool... tools) {
    CaseDraft north = new CaseDraft();
    north.bays = List.of(SampleJobs.bay(2));
    CaseDraft south = new CaseDraft();
    south.name = "south";
    south.bays = List.of(SampleJobs.bay(2));
    return job(north.order(), south.order()).with(new Shop("shop", List.of(tools)));
  }

  private static double value(Plan plan, String id) {
    return plan.figures().stream()
        .filter(f -> f.id().equals(id))
        .mapToDouble(f -> f.value().value())
        .findFirst()
        .orElseThrow();
  }

  private static List<String> said(Plan plan) {
    return plan.findings().stream()
        .filter(f -> f.kind().equals("tool-not-stated"))
        .map(Finding::what)
        .toList();
  }

  /** 6.40 once, though both cases need it, and 15 % contingency on it as on all else. */
  @Test
  void isBoughtOnceAndPricedInFull() {
    Plan plan = Planner.plan(shop(DRILL, bit(Optional.of(new BigDecimal("6.40")))));
    Plan without = Planner.plan(shop(DRILL, bit(Optional.empty())));
    assertThat(plan.tools())
        .singleElement()
        .satisfies(
            item -> {
              assertThat(item.tool().name()).isEqualTo("brad");
              assertThat(item.tool().size()).isEqualTo("plain bit of 1/4 in, reach 3 in");
              assertThat(item.tool().need()).isEqualTo(Need.STATED);
              assertThat(item.tool().price().orElseThrow().source()).isEqualTo(Source.SHOP_FILE);
              assertThat(item.where()).contains("south").contains(", ");
            });
    assertThat(value(plan, "job/tools-to-buy")).isEqualTo(6.4);
    assertThat(value(plan, "job/price") - value(without, "job/price"))
        .isCloseTo(6.4 * 1.15, within(1e-9));
    assertThat(without.tools()).isEmpty();
    assertThat(without.figures()).extracting(Figure::id).doesNotContain("job/tools-to-buy");
    assertThat(said(plan)).isEmpty();
  }

  @Test
  void isBorneAsFarAsTheJobSays() {
    Job full = shop(DRILL, bit(Optional.of(new BigDecimal("6.40"))));
    SettingValue part = new SettingValue.OfNumber(25);
    Plan quarter =
        Planner.plan(
            JobDraft.changed(full, d -> d.settings = d.settings.with(Setting.TOOLS_BORNE, part)));
    Plan none = Planner.plan(shop(DRILL, bit(Optional.empty())));
    assertThat(value(quarter, "job/tools-to-buy")).isEqualTo(6.4);
    assertThat(value(quarter, "job/tools-borne")).isCloseTo(1.6, within(1e-9));
    assertThat(value(quarter, "job/price") - value(none, "job/price"))
        .isCloseTo(1.6 * 1.15, within(1e-9));
  }

  /** The first price that nobody has stated is the weakest; stated ones are told by their file. */
  @Test
  void aSumIsAsGoodAsItsWeakestPrice() {
    Plan stated = Planner.plan(shop(DRILL, bit(Optional.of(new BigDecimal("6.40")))));
    assertThat(figure(stated, "job/tools-to-buy").source()).isEqualTo(Source.SHOP_FILE);
    assertThat(figure(stated, "north/boring/story-stick/to-buy"))
        .satisfies(f -> assertThat(f.source()).isEqualTo(Source.SHOP_FILE))
        .satisfies(f -> assertThat(f.inputs().getFirst().source()).isEqualTo(Source.SHOP_FILE));

    Tool large = new Tool.PlainBit("large", in("1"), in("1/8"), in("3"), Optional.empty());
    assertThat(figure(Planner.plan(shop(DRILL, large)), "job/tools-to-buy").source())
        .isEqualTo(Setting.BIT_PRICE.origin());
    CaseDraft north = new CaseDraft();
    north.bays = List.of(SampleJobs.bay(2));
    north.settings = north.settings.with(Setting.BIT_PRICE, new SettingValue.OfNumber(5));
    Job set = job(north.order()).with(new Shop("shop", List.of(large)));
    assertThat(figure(Planner.plan(set), "job/tools-to-buy").source()).isEqualTo(Source.STATED);
  }

  private static Figure figure(Plan plan, String id) {
    return plan.figures().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  /** A large bit alone bores no hole of 1/4 in, so bit and drill are taken for granted. */
  @Test
  void saysWhatNoFileStatesAndWhatIsCountedForIt() {
    Tool large = new Tool.PlainBit("large", in("1"), in("1/8"), in("3"), Optional.empty());
    Plan plan = Planner.plan(shop(large));
    assertThat(plan.tools())
        .extracting(item -> item.tool().need())
        .containsExactly(Need.TAKEN_FOR_GRANTED, Need.TAKEN_FOR_GRANTED);
    assertThat(value(plan, "job/tools-to-buy")).isEqualTo(8);
    assertThat(said(plan))
        .containsExactly(
            "The ways taken need what no file states: plain bit of 1/4 in (assumed), counted at"
                + " $8.00 by bit-price; hand drill, whose price is not stated and not counted.");
  }
}
