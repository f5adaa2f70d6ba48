package fourpin.boring.way;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.tolerance.Tolerances;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Uprights marked side by side: one bay between sides of 84 x 12 in, 68 levels, so that 272 holes
 * lie on 68 lines. Times are the defaults: a mark 5 s, a line 10 s, clamping 1 1/2 min.
 */
class GangsTest {

  private static WayAnswer answer(Way way, CaseDraft draft, Tool... tools) {
    Job job = SampleJobs.job(draft.order()).with(new Shop("shop", List.of(tools)));
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    return Ways.of(job, boring, new Tolerances("$").precision()).borings().getFirst().answer(way);
  }

  private static CaseDraft with(Setting setting, SettingValue value) {
    CaseDraft draft = ToolKit.draft();
    draft.settings = draft.settings.with(setting, value);
    return draft;
  }

  private static CaseDraft single() {
    return with(Setting.GANG, new SettingValue.OfChoice("single"));
  }

  private static double figure(WayAnswer answer, String what) {
    return answer.figures().stream()
        .filter(f -> f.id().endsWith("/" + what))
        .map(Figure::value)
        .findFirst()
        .orElseThrow()
        .value();
  }

  private static List<Gang> gangs(WayAnswer answer) {
    return ((Method.Marked) answer.method().orElseThrow()).gangs();
  }

  @Test
  void should_lay_the_uprights_of_a_bay_side_by_side() {
    assertThat(gangs(answer(Way.STORY_STICK, ToolKit.draft())))
        .containsExactly(
            new Gang(
                1,
                in("0"),
                List.of(
                    new Gang.Laid("L", Face.RIGHT, in("0")),
                    new Gang.Laid("R", Face.LEFT, in("0")))));
  }

  /** 68 lines of 10 s and one clamping against 272 marks of 5 s: 680 + 90 - 1360 s. */
  @Test
  void should_reckon_lines_in_place_of_marks() {
    WayAnswer pairs = answer(Way.STORY_STICK, ToolKit.draft());
    WayAnswer single = answer(Way.STORY_STICK, single());
    assertThat(figure(pairs, "lines")).isEqualTo(68);
    assertThat(figure(pairs, "holes-on-lines")).isEqualTo(272);
    assertThat(figure(pairs, "clampings")).isEqualTo(1);
    assertThat(figure(single, "clampings")).isZero();
    double saved = figure(single, "minutes") - figure(pairs, "minutes");
    assertThat(saved).isCloseTo((1360 - 680 - 90) / 60.0, within(1e-9));
    assertThat(figure(pairs, "time-saved-together")).isCloseTo(saved, within(1e-9));
  }

  /** What pairs bring is what the same shop gets panel by panel, less what it gets in pairs. */
  @ParameterizedTest
  @EnumSource(
      value = Way.class,
      names = {"STORY_STICK", "DRILL_PRESS"})
  void should_hold_heights_better_and_say_so(Way way) {
    Tool press =
        new Tool.DrillPress("press", in("6"), in("16"), in("3"), in("12"), Optional.empty());
    WayAnswer pairs = answer(way, ToolKit.draft(), press, ToolKit.bit());
    WayAnswer single = answer(way, single(), press, ToolKit.bit());
    assertThat(figure(pairs, "odds")).isLessThan(figure(single, "odds"));
    assertThat(figure(pairs, "odds-panel-by-panel"))
        .isCloseTo(figure(single, "odds"), within(1e-9));
    assertThat(pairs.together().getFirst().what())
        .startsWith("the uprights of bay 1 are marked in pairs, side by side with front edges");
    assertThat(pairs.together().getLast().what())
        .matches(
            "together saves [0-9.]+ min; the worst placed shelf rocks in [0-9.]+ % of"
                + " cases, panel by panel in [0-9.]+ %");
  }

  /** Two sides of 12 in take 24 in. */
  @Test
  void should_mark_panel_by_panel_where_the_bench_is_narrow() {
    WayAnswer enough =
        answer(Way.STORY_STICK, with(Setting.GANG_WIDTH, new SettingValue.OfLength(in("24"))));
    assertThat(gangs(enough)).hasSize(1);
    WayAnswer narrow =
        answer(
            Way.STORY_STICK, with(Setting.GANG_WIDTH, new SettingValue.OfLength(in("23 15/16"))));
    assertThat(gangs(narrow)).isEmpty();
    assertThat(narrow.together())
        .extracting(Reason::what, Reason::remedy)
        .containsExactly(
            tuple(
                "marked panel by panel: the uprights of bay 1 take 24 in side by side, and the"
                    + " bench has 23 15/16 in",
                "set gang-width to what the bench holds"));
  }

  @Test
  void should_say_why_panels_are_marked_one_by_one() {
    assertThat(answer(Way.STORY_STICK, single()).together())
        .containsExactly(
            new Reason("marked panel by panel: the settings ask for it", "set gang to pairs"));
    CaseDraft standing = with(Setting.DRILL, new SettingValue.OfChoice("after-assembly"));
    assertThat(answer(Way.STORY_STICK, standing).together())
        .containsExactly(
            new Reason(
                "marked panel by panel: the case stands when it is bored", "bore before assembly"));
  }

  @Test
  void should_say_of_every_possible_way_whether_panels_are_worked_on_together() {
    Tool[] tools = {
      ToolKit.drill(), ToolKit.bit(), ToolKit.centring("3/8", "1/8", "2"), ToolKit.sheet()
    };
    WayAnswer guided = answer(Way.CENTRING_GUIDE, ToolKit.draft(), tools);
    assertThat(guided.method()).isPresent();
    assertThat(guided.together()).hasSize(1);
    assertThat(guided.together().getFirst().what())
        .startsWith("panel by panel: the guide's column of holes lies on one panel at a time.");
    for (Way way : Way.values()) {
      WayAnswer answer = answer(way, ToolKit.draft(), tools);
      assertThat(answer.together().isEmpty())
          .as(way.title().toLowerCase(Locale.ROOT))
          .isEqualTo(answer.method().isEmpty());
    }
  }
}
