package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.bit;
import static fourpin.boring.way.ToolKit.boring;
import static fourpin.boring.way.ToolKit.bushing;
import static fourpin.boring.way.ToolKit.centring;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.routing;
import static fourpin.boring.way.ToolKit.strap;
import static fourpin.boring.way.ToolKit.strip;
import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.BayGrid;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Use;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.job.CaseDraft;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Set-ups against what shops commonly do: each expected figure is common practice. */
class CommonPracticeTest {

  private static Method.Guided guided(WayAnswer answer) {
    assertThat(answer.verdict()).as("%s", answer.reasons()).isEqualTo(Verdict.POSSIBLE);
    return (Method.Guided) answer.method().orElseThrow();
  }

  private static Set<Length> gaps(Guide guide, Use use) {
    List<Length> along =
        guide.holes().stream().filter(h -> h.use() == use).map(GuideHole::along).toList();
    Set<Length> gaps = new TreeSet<>();
    for (int i = 1; i < along.size(); i++) {
      gaps.add(along.get(i).minus(along.get(i - 1)));
    }
    return gaps;
  }

  /** Common practice: 1/64 in of slip over a bushing of 3/8 in; hole 3/8 + guide 1/4 = stop 5/8. */
  @Test
  void should_bore_the_guide_a_slip_wider_than_the_bushing_and_plunge_through_hole_and_guide() {
    Method.Guided guided =
        guided(answer(Way.ROUTER_GUIDE, draft().order(), routing(bushing("3/8", "5/16", "3/16"))));
    assertThat(guided.how()).isEqualTo(Method.How.BY_HAND);
    assertThat(guided.guide().holes()).extracting(GuideHole::diameter).containsOnly(in("25/64"));
    assertThat(guided.bit().runs()).isEqualTo(in("3/8"));
    assertThat(guided.bit().depth()).isEqualTo(in("3/8"));
    assertThat(guided.bit().over()).isEqualTo(in("1/4"));
    assertThat(guided.bit().stop()).isEqualTo(in("5/8"));
  }

  /** Common practice: perforated hardboard has holes of 1/4 in, 1 in apart. */
  @Test
  void should_use_every_hole_of_perforated_hardboard() {
    Guide guide =
        guided(
                answer(
                    Way.HARDBOARD_STRIP,
                    draft().order(),
                    List.of(drill(), bit(), strip("1/4", "1"))))
            .guide();
    assertThat(guide.holes()).extracting(GuideHole::diameter).containsOnly(in("1/4"));
    assertThat(gaps(guide, Use.BORED)).containsExactly(in("1"));
    assertThat(guide.holes().stream().filter(h -> h.use() == Use.BORED)).hasSize(68);
  }

  /** Common practice: straps with holes of 5/16 in 3/4 in apart; every second gives 1 1/2 in. */
  @ParameterizedTest
  @CsvSource({"3/4, 1", "1 1/2, 2", "2 1/4, 3"})
  void should_mask_the_holes_of_a_strap_that_the_pitch_leaves_out(String pitch, int every) {
    CaseDraft draft = draft();
    draft.settings = draft.settings.with(Setting.PITCH, new SettingValue.OfLength(in(pitch)));
    List<Tool> tools = List.of(drill(), centring("3/8", "9/32", "1"), strap("3/4"));
    Guide guide = guided(answer(Way.STEEL_STRAP, draft.order(), tools)).guide();
    assertThat(guide.holes()).extracting(GuideHole::diameter).containsOnly(in("5/16"));
    assertThat(gaps(guide, Use.BORED)).containsExactly(in(pitch));
    List<Integer> bored =
        guide.holes().stream().filter(h -> h.use() == Use.BORED).map(GuideHole::number).toList();
    for (int i = 1; i < bored.size(); i++) {
      assertThat(bored.get(i) - bored.get(i - 1)).isEqualTo(every);
    }
  }

  /** Common practice: a strap serves by hand as well as under a drill press. */
  @Test
  void should_say_what_holds_the_drill_over_a_strap() {
    Tool press = ToolKit.press("6", "10", "2");
    Tool bit = centring("3/8", "9/32", "1");
    Method.Guided hand =
        guided(answer(Way.STEEL_STRAP, draft().order(), List.of(drill(), bit, strap("1"))));
    Method.Guided under =
        guided(answer(Way.STEEL_STRAP, draft().order(), List.of(press, bit, strap("1"))));
    assertThat(hand.how()).isEqualTo(Method.How.BY_HAND);
    assertThat(under.how()).isEqualTo(Method.How.DRILL_PRESS);
  }

  /** Common practice: pins of 1/4 in and of 5 mm go into holes of their own size. */
  @ParameterizedTest
  @CsvSource({"1/4 in", "5 mm"})
  void should_bore_for_the_usual_pins(String pin) {
    CaseDraft draft = draft();
    draft.bays = List.of(ToolKit.on(new Support.Pins(in(pin), in("3/8"), in("3/8"), in("1/8"))));
    CaseBoring boring = boring(draft.order(), List.of(drill(), bit(pin, "3")));
    Method.Marked marked = (Method.Marked) boring.answer(Way.STORY_STICK).method().orElseThrow();
    assertThat(marked.bit().diameter()).isEqualTo(in(pin));
    assertThat(marked.bit().tool()).isEqualTo("bit");
  }

  /** Common practice: standards go into grooves of 5/8 x 3/16 in and hold shelves 1/2 in apart. */
  @Test
  void should_groove_for_standards_of_five_eighths() {
    Support standards =
        new Support.Standards(
            Support.Mounting.LET_IN,
            in("5/8"),
            in("3/16"),
            in("1/2"),
            in("1/4"),
            in("1/16"),
            in("1/8"),
            in("96"));
    CaseDraft draft = draft();
    draft.bays = List.of(ToolKit.on(standards));
    draft.settings =
        draft.settings.with(Setting.GROOVE_PLAY, new SettingValue.OfLength(Length.ZERO));
    Tool whole = new Tool.RouterBit("straight bit", in("5/8"), in("1"), Optional.empty());
    CaseBoring boring = boring(draft.order(), List.of(ToolKit.router("2"), whole));
    BayGrid grid = boring.grids().getFirst();
    Method.Grooved grooved =
        (Method.Grooved) boring.answer(Way.GROOVED_STANDARDS).method().orElseThrow();
    assertThat(grooved.cut()).isEqualTo(in("5/8"));
    assertThat(grooved.passes()).isEqualTo(1);
    assertThat(grooved.depths().getLast()).isEqualTo(in("3/16"));
    assertThat(steps(grid)).containsExactly(in("1/2"));
  }

  private static Set<Length> steps(BayGrid grid) {
    Set<Length> steps = new TreeSet<>();
    List<BayGrid.Level> levels = new ArrayList<>(grid.levels());
    for (int i = 1; i < levels.size(); i++) {
      steps.add(levels.get(i).height().minus(levels.get(i - 1).height()));
    }
    return steps;
  }

  /**
   * Articles on 32 mm cabinetmaking ("All About Shelf Supports"; "Methods of 32 mm System Layout"):
   * holes of 5 mm, 32 mm apart, the front row 37 mm from the panel's front edge.
   */
  @Test
  void should_keep_the_thirty_two_millimetre_convention_on_a_machine() {
    CaseDraft draft = draft();
    draft.settings = Settings.standard(Unit.MILLIMETRE);
    draft.bays =
        List.of(ToolKit.on(new Support.Pins(in("5 mm"), in("8 mm"), in("8 mm"), in("2 mm"))));
    Tool machine = ToolKit.borer("3000 mm", "1300 mm", "5 mm", "32 mm");
    CaseBoring boring = boring(draft.order(), List.of(machine));
    assertThat(boring.answer(Way.MACHINE).verdict()).isEqualTo(Verdict.POSSIBLE);
    Method.Programmed programmed =
        (Method.Programmed) boring.answer(Way.MACHINE).method().orElseThrow();
    assertThat(programmed.bit().diameter()).isEqualTo(Length.mm(5));
    BayGrid grid = boring.grids().getFirst();
    assertThat(steps(grid)).containsExactly(Length.mm(32));
    assertThat(grid.rows().getFirst().y()).isEqualTo(Length.mm(37));
  }
}
