package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.bit;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.press;
import static fourpin.boring.way.ToolKit.strip;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.Borer;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Figure;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One bay with 4 rows of 68 holes, at 60 an hour. By the settings' defaults:
 *
 * <ul>
 *   <li>story stick: 10 min + 5 for one set-up + 272 holes of 16 s = 87.53 min
 *   <li>strip: 10 + 5 + 4 clampings of 1.5 + 272 of 8 s = 57.27 min
 *   <li>drill press: 10 + 2 fences of 5 + 4 rows of 1.5 + 272 of 10 s = 71.33 min
 * </ul>
 */
class RecommendationTest {

  private static final List<Tool> TOOLS =
      List.of(drill(), bit(), strip("1/4", "1"), press("6", "10", "2"));

  /** Panels are marked one by one. */
  private static CaseBoring boring(CaseDraft draft, List<Tool> tools, Map<Way, Double> odds) {
    draft.settings = draft.settings.with(Setting.GANG, new SettingValue.OfChoice("single"));
    Job job = job(draft.order()).with(new Shop("shop", tools));
    Precision precision =
        (_, _, way, _) ->
            Optional.ofNullable(odds.get(way)).map(o -> new Precision.Rocking(o, List.of()));
    return Ways.of(job, Borer.bore(job, CaseworkBuilder.build(job)), precision)
        .borings()
        .getFirst();
  }

  private static double figure(CaseBoring boring, Way way, String what) {
    return boring.answer(way).figures().stream()
        .filter(f -> f.id().endsWith("/" + what))
        .map(Figure::value)
        .findFirst()
        .orElseThrow()
        .value();
  }

  @Test
  void should_take_what_costs_least_and_say_what_the_next_would_cost() {
    CaseBoring boring = boring(draft(), TOOLS, Map.of());
    assertThat(figure(boring, Way.STORY_STICK, "minutes")).isCloseTo(87.533, within(1e-3));
    assertThat(figure(boring, Way.HARDBOARD_STRIP, "minutes")).isCloseTo(57.267, within(1e-3));
    assertThat(figure(boring, Way.DRILL_PRESS, "minutes")).isCloseTo(71.333, within(1e-3));
    assertThat(boring.chosen()).isEqualTo(Way.HARDBOARD_STRIP);
    assertThat(boring.because())
        .isEqualTo(
            "Costs least of 3 ways with these tools: 57.3 min, $57.27 in all; "
                + Way.DRILL_PRESS.title()
                + " takes 71.3 min, $71.33 in all.");
  }

  @Test
  void should_name_the_only_way() {
    assertThat(boring(draft(), List.of(), Map.of()).because())
        .isEqualTo("The only way with these tools: 87.5 min, $95.53 in all.");
    assertThat(boring(draft(), List.of(strip("1/4", "1")), Map.of()).because())
        .isEqualTo(
            "The only way with these tools: 87.5 min, $95.53 in all, hand drill not counted.");
  }

  /** The limit is 5 per cent; what is at the limit stays. */
  @ParameterizedTest
  @CsvSource({
    "5, 1, 0, HARDBOARD_STRIP",
    "5.01, 1, 0, DRILL_PRESS",
    "6, 7, 0, STORY_STICK",
    "8, 7, 9, DRILL_PRESS",
    "0, 0, 0, HARDBOARD_STRIP"
  })
  void should_leave_ways_whose_shelves_rock_too_often(
      double strip, double press, double stick, Way chosen) {
    Map<Way, Double> odds =
        Map.of(Way.HARDBOARD_STRIP, strip, Way.DRILL_PRESS, press, Way.STORY_STICK, stick);
    assertThat(boring(draft(), TOOLS, odds).chosen()).isEqualTo(chosen);
  }

  @Test
  void should_say_which_cheaper_ways_were_left_and_when_none_is_good() {
    CaseBoring left = boring(draft(), TOOLS, Map.of(Way.HARDBOARD_STRIP, 6.0));
    assertThat(left.because())
        .isEqualTo(
            "Costs least of the 2 ways whose shelves rock in no more than 5 % of cases: 71.3 min,"
                + " $71.33 in all; "
                + Way.STORY_STICK.title()
                + " takes 87.5 min, $87.53 in all. Cheaper, but shelves rock in more cases: "
                + Way.HARDBOARD_STRIP.title()
                + " (6 %, 57.3 min, $57.27 in all).");
    CaseBoring only =
        boring(draft(), TOOLS, Map.of(Way.HARDBOARD_STRIP, 6.0, Way.DRILL_PRESS, 7.25));
    assertThat(only.because())
        .isEqualTo(
            "The only one of 3 ways whose shelves rock in no more than 5 % of cases: 87.5 min,"
                + " $87.53 in all. Cheaper, but shelves rock in more cases: "
                + Way.HARDBOARD_STRIP.title()
                + " (6 %, 57.3 min, $57.27 in all); "
                + Way.DRILL_PRESS.title()
                + " (7.25 %, 71.3 min, $71.33 in all).");
    CaseBoring bad =
        boring(
            draft(),
            TOOLS,
            Map.of(Way.HARDBOARD_STRIP, 60.0, Way.DRILL_PRESS, 30.0, Way.STORY_STICK, 40.0));
    assertThat(bad.chosen()).isEqualTo(Way.DRILL_PRESS);
    assertThat(bad.because())
        .startsWith(
            "No way stays below the limit for rocking shelves; this one rocks least: 71.3 min,"
                + " $71.33 in all; ")
        .doesNotContain("Cheaper");
  }

  private static Tool dear(String price) {
    return new Tool.DrillPress(
        "new press", in("6"), in("20"), in("2"), in("10"), Optional.of(new BigDecimal(price)));
  }

  /** What must be bought is reckoned into its cost, and what is at hand comes before it. */
  @Test
  void should_reckon_purchases_and_take_what_is_at_hand_first() {
    CaseBoring boring = boring(draft(), List.of(drill(), bit(), dear("4.50")), Map.of());
    assertThat(boring.answer(Way.DRILL_PRESS).verdict()).isEqualTo(Verdict.TO_BUY);
    assertThat(figure(boring, Way.DRILL_PRESS, "to-buy")).isEqualTo(4.5);
    assertThat(figure(boring, Way.DRILL_PRESS, "cost")).isCloseTo(71.333 + 4.5, within(1e-3));
    assertThat(boring.chosen()).isEqualTo(Way.STORY_STICK);
  }

  /**
   * 8 for a bit that no file states, and no sum is silent about a drill without a price. A shop
   * that states nothing has a drill.
   */
  @Test
  void should_price_what_is_taken_for_granted() {
    assertThat(boring(draft(), List.of(), Map.of()).purchases())
        .extracting(Purchase::name)
        .containsExactly("plain bit of 1/4 in (assumed)");
    CaseBoring boring = boring(draft(), List.of(strip("1/4", "1")), Map.of());
    assertThat(boring.answer(Way.STORY_STICK).verdict()).isEqualTo(Verdict.POSSIBLE);
    assertThat(boring.purchases())
        .extracting(Purchase::name)
        .containsExactly("plain bit of 1/4 in (assumed)", "hand drill");
    assertThat(boring.purchases().getFirst().price().orElseThrow().source())
        .isEqualTo(Setting.BIT_PRICE.origin());
    assertThat(boring.purchases().getLast().price()).isEmpty();
    assertThat(figure(boring, Way.STORY_STICK, "to-buy")).isEqualTo(8);
  }

  /** A stated part of the price; what is to be bought stays the whole. */
  @Test
  void should_bear_as_much_of_a_tool_as_is_stated() {
    CaseDraft half = draft();
    half.settings = half.settings.with(Setting.TOOLS_BORNE, new SettingValue.OfNumber(50));
    CaseBoring boring = boring(half, List.of(drill(), bit(), dear("4.50")), Map.of());
    assertThat(figure(boring, Way.DRILL_PRESS, "to-buy")).isEqualTo(4.5);
    assertThat(figure(boring, Way.DRILL_PRESS, "cost")).isCloseTo(71.333 + 2.25, within(1e-3));
  }

  /** One set-up and one guide serve all copies; holes, clampings and wear are theirs each. */
  @Test
  void should_multiply_what_every_copy_takes_and_nothing_else() {
    CaseDraft three = draft();
    three.quantity = 3;
    CaseBoring one = boring(draft(), TOOLS, Map.of());
    CaseBoring all = boring(three, TOOLS, Map.of());
    for (String each : List.of("holes", "clampings", "guide-uses")) {
      assertThat(figure(all, Way.HARDBOARD_STRIP, each))
          .as(each)
          .isEqualTo(3 * figure(one, Way.HARDBOARD_STRIP, each));
    }
    for (String once : List.of("set-ups", "making", "to-buy", "guide-life", "stop")) {
      assertThat(figure(all, Way.HARDBOARD_STRIP, once))
          .as(once)
          .isEqualTo(figure(one, Way.HARDBOARD_STRIP, once));
    }
    // 10 + 5 once; 3 x (6 + 272 x 8 / 60).
    assertThat(figure(all, Way.HARDBOARD_STRIP, "minutes")).isCloseTo(141.8, within(1e-3));
    assertThat(figure(all, Way.HARDBOARD_STRIP, "holes")).isEqualTo(816);
    assertThat(figure(all, Way.DRILL_PRESS, "set-ups")).isEqualTo(2);
  }
}
