package fourpin.plan;

import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.job.SampleJobs.shelves;
import static fourpin.job.SampleJobs.strip;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.bench.Step;
import fourpin.boring.BayGrid;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.Ways;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.job.Support;
import fourpin.job.Tool;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Standards let in and cleat strips, from the steps to the cut list. */
class StandardAndCleatStepsTest {

  private static Support standards(Support.Mounting mounting, String soldIn) {
    return new Support.Standards(
        mounting, in("5/8"), in("3/16"), in("1/2"), in("3/8"), in("1/16"), in("1/8"), in(soldIn));
  }

  private static Support cleats() {
    return new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1 1/2"), in("1 1/4"), in("5/8"));
  }

  private static CaseOrder order(Support support) {
    CaseOrder order =
        bookcase(
            new Bay(
                Optional.empty(),
                List.of(),
                Optional.of(shelves(2)),
                Optional.of(support),
                Optional.empty()));
    return order.with(
        order
            .settings()
            .with(Setting.GROOVE_PLAY, new SettingValue.OfLength(Length.ZERO))
            .with(Setting.PITCH, new SettingValue.OfLength(in("2"))));
  }

  private static BenchProgram program(Job job) {
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    BenchProgram program = BenchProgram.of(job, boring, Ways.of(job, boring).borings());
    assertThat(ProgramCheck.of(boring.cases(), program)).isEmpty();
    return program;
  }

  private static List<PlannedStep> starting(BenchProgram program, String words) {
    return program.printed().stream().filter(s -> s.words().startsWith(words)).toList();
  }

  private static List<String> hazards(PlannedStep step) {
    return step.cautions().stream().map(Caution::hazard).toList();
  }

  /**
   * Rows 1 1/2 in from the shelf's edges, grooves of 5/8: the far wall of the front groove lies 1
   * 13/16 from the front edge, so that a bit of 1/4 starts at 1 9/16, 1 5/16, and at the near wall.
   */
  @Test
  void should_rout_grooves_pass_by_pass() {
    BenchProgram program = program(job(order(standards(Support.Mounting.LET_IN, "96"))));
    PlannedStep left = starting(program, "Rout the grooves for standards").getFirst();
    assertThat(left.parts()).containsExactly("L");
    assertThat(left.words()).contains("straight bit of 1/4 in (assumed)", "from left to right");
    assertThat(left.items().getFirst())
        .isEqualTo(
            "L: groove for standard, front row, bay 1, on the face, 4 7/32 to 83 9/32 in from the"
                + " index end, cut of 1/4 in; index edge to near side of the cut, one after the"
                + " other: (1) 1 9/16 in; (2) 1 5/16 in; (3) 1 3/16 in; at each 1/8 in, then 3/16"
                + " in deep.");
    assertThat(left.check()).contains("scrap of the same stock", "offcut of the standard");
    assertThat(hazards(left)).containsExactly("router", "dust");
    assertThat(program.cases().getFirst().steps())
        .filteredOn(s -> s instanceof Step.Passes)
        .hasSize(4)
        .allMatch(s -> ((Step.Passes) s).passes().size() == 6);
  }

  @Test
  void should_tell_how_far_a_straightedge_lies_from_the_fence() {
    Tool router = new Tool.Router("r", in("2"), in("6"), in("9"), Optional.empty());
    Tool bit = new Tool.RouterBit("wide bit", in("1/2"), in("1"), Optional.empty());
    Job job = job(order(standards(Support.Mounting.LET_IN, "96")));
    BenchProgram program = program(job.with(new Shop("s", List.of(router, bit))));
    assertThat(starting(program, "Rout the grooves").getFirst().words())
        .contains("with wide bit", "2 3/4 in nearer to that edge than told below");
  }

  /**
   * Slots every 1/2 in: pieces of 72 in are whole pitches, of 70 1/4 in only 70; a rest no longer
   * than the 3/8 in to its first slot carries nothing.
   */
  @ParameterizedTest
  @CsvSource({
    "79, 96, '79'",
    "79, 72, '72 + 7'",
    "79, 70 1/4, '70 + 9'",
    "145, 72, '72 + 72 + 1'",
    "72, 72, '72'",
    "72 3/8, 72, '72'",
    "72 25/64, 72, '72 + 25/64'"
  })
  void should_join_standards_at_whole_slots(String long_, String sold, String pieces) {
    Settings settings =
        Settings.standard(Unit.INCH)
            .with(Setting.STANDARD_PLAY, new SettingValue.OfLength(Length.ZERO));
    LengthStyle style = LengthStyle.FRACTIONS;
    List<Length> cut =
        new StandardCut(settings, style)
            .pieces(
                new BayGrid.Run(in("4"), in("4").plus(in(long_))),
                (Support.Standards) standards(Support.Mounting.SURFACE, sold));
    assertThat(String.join(" + ", cut.stream().map(style::number).toList())).isEqualTo(pieces);
  }

  @Test
  void should_say_how_to_join_standards_and_buy_the_pieces() {
    Plan plan = Planner.plan(job(order(standards(Support.Mounting.SURFACE, "72"))));
    String words =
        plan.steps().stream()
            .map(PlannedStep::words)
            .filter(w -> w.startsWith("Bay 1: cut the standards"))
            .findFirst()
            .orElseThrow();
    assertThat(words)
        .contains("4 of 79 in, each of 72 in and 7 in", "keep their pitch of 1/2 in across");
    assertThat(plan.hardware())
        .extracting(HardwareItem::size)
        .contains("5/8 in, cut to 72 in", "5/8 in, cut to 7 in");
    // Ten rests of 7 in come out of one more standard.
    assertThat(plan.hardware().stream().filter(h -> h.name().endsWith("as sold")))
        .extracting(h -> ((HardwareItem.Amount.Pieces) h.amount()).needed())
        .containsExactly(5L);
  }

  /** One blank of 2 x 1 1/2 and a kerf of 1/8 for the two strips of each upright. */
  @Test
  void should_cut_bore_and_rip_blanks() {
    BenchProgram program = program(job(order(cleats())));
    assertThat(program.printed().stream().filter(s -> s.stage() == Stage.CUT))
        .flatExtracting(PlannedStep::items)
        .contains("1-LF+1-LB, 1-RF+1-RB: 79 1/16 in long, 3 1/8 in wide, from oak.");
    PlannedStep bore = starting(program, "Bore before").getFirst();
    assertThat(bore.parts()).containsExactly("1-LF+1-LB", "1-RF+1-RB");
    assertThat(bore.items().getFirst())
        .contains("notch for cleats, bay 1", "1 9/16 in from the index edge", "3/4 in deep");
    assertThat(bore.words())
        .contains("Lay 1-LF+1-LB with the face up", "index edge (FRONT) is then on your left")
        .contains("Lay 1-RF+1-RB with the face up", "index edge (FRONT) is then on your right");
    assertThat(bore.sheet())
        .containsExactly(
            new PlannedStep.FaceUp("1-LF+1-LB", Face.RIGHT),
            new PlannedStep.FaceUp("1-RF+1-RB", Face.LEFT));
    assertThat(hazards(bore)).containsExactly("large bits", "drill", "dust");
    PlannedStep rip = starting(program, "Rip each blank").getFirst();
    assertThat(rip.parts()).containsExactly("1-LF", "1-LB", "1-RF", "1-RB");
    assertThat(rip.sheet()).as("bored and ripped from one sheet").isEqualTo(bore.sheet());
    assertThat(hazards(rip)).containsExactly("saw", "narrow rips", "dust");
    PlannedStep round = starting(program, "Round both ends").getFirst();
    assertThat(round.words()).contains("to a radius of 5/8 in");
    assertThat(round.parts()).containsExactly("1-C1L", "1-C2L", "1-C1R", "1-C2R");
  }

  @Test
  void should_list_blanks_in_the_place_of_strips() {
    Plan plan = Planner.plan(job(order(cleats())));
    CutItem blank =
        plan.cutList().stream()
            .filter(i -> i.name().equals("cleat blank"))
            .findFirst()
            .orElseThrow();
    assertThat(blank.marks()).containsExactly("1-LF+1-LB", "1-RF+1-RB");
    assertThat(blank.quantity()).isEqualTo(2);
    assertThat(blank.cutWidth().text(LengthStyle.FRACTIONS))
        .isEqualTo("2 x 1 1/2 strip + 1/8 kerf = 3 1/8");
    assertThat(plan.cutList()).noneMatch(i -> i.name().equals("cleat strip"));
    long notches =
        plan.cases().getFirst().parts().stream()
            .filter(CleatBlank::isStrip)
            .mapToLong(p -> p.features().size())
            .sum();
    assertThat(plan.totals().stream().filter(f -> f.id().equals("job/holes")))
        .extracting(f -> f.value().value())
        .containsExactly(notches / 2.0);
  }

  @ParameterizedTest
  @CsvSource({"true", "false"})
  void should_say_where_a_dado_runs_out_through_the_edging(boolean edged) {
    CaseDraft draft = new CaseDraft();
    draft.edging = edged ? List.of(strip("1/4", "23/32")) : List.of();
    List<PlannedStep> cuts = starting(program(job(draft.order())), "Set fence and depth");
    assertThat(cuts.getFirst().parts()).containsExactly("L");
    assertThat(cuts.getFirst().words().contains("runs out through the front edging"))
        .isEqualTo(edged);
  }

  /** A notch that waits for the rows is cut by a step of its own. */
  @Test
  void should_name_only_cuts_that_are_made_now() {
    CaseDraft draft = new CaseDraft();
    draft.edging = List.of(strip("1/4", "23/32"));
    PlannedStep step = starting(program(job(draft.order())), "Set fence and depth").getFirst();
    Part side = Planner.plan(job(draft.order())).cases().getFirst().part("L");
    List<Step.Channel> bottom =
        step.typed().stream()
            .filter(Step.Channel.class::isInstance)
            .map(Step.Channel.class::cast)
            .filter(c -> c.purpose().equals("bottom"))
            .toList();
    assertThat(step.words()).contains("The cut for top, bottom");
    assertThat(EdgingCuts.words(side, bottom)).startsWith(" The cut for bottom runs out");
    assertThat(EdgingCuts.words(side, List.of())).isEmpty();
  }
}
