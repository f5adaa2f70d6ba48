package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.bench.Removal;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.bench.WorkedPiece;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.RandomJobs;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Rescue;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whether a panel that was bored from its wrong end does if all others are bored so: bookcases 84
 * in high and 12 in deep of 23/32 in plywood, 68 holes of 1/4 in a row, 1 in apart.
 */
class AllSpoiltTest {

  private static final Function<Blunder, List<Step>> TURNED = Blunder::panelTurned;

  private static Boring boring(Job job) {
    return Borer.bore(job, CaseworkBuilder.build(job));
  }

  private static AllSpoilt turned(CaseDraft draft) {
    Job job = job(draft.order());
    Boring boring = boring(job);
    return new AllSpoilt(
        boring.cases().getFirst(),
        boring.grids(),
        BenchProgram.of(job, boring, List.of()).cases().getFirst().steps(),
        TURNED);
  }

  private static MistakeReport report(CaseDraft draft) {
    return report(draft, Mistake.PANEL_TURNED);
  }

  private static MistakeReport report(CaseDraft draft, Mistake mistake) {
    Job job = job(draft.order());
    Boring boring = boring(job);
    return Mistakes.of(job, boring, BenchProgram.of(job, boring, List.of()), List.of()).stream()
        .filter(r -> r.mistake() == mistake)
        .findFirst()
        .orElseThrow();
  }

  private static CaseDraft draft(Bay... bays) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bays);
    return draft;
  }

  /** Top and bottom in the same rabbets, no kick: partitions end as far from both. */
  private static CaseDraft alikeAtBothEnds(Bay... bays) {
    CaseDraft draft = draft(bays);
    draft.kick = Optional.empty();
    draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    draft.topJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    return draft;
  }

  private static Bay withFixedShelf(String at) {
    return new Bay(
        Optional.empty(),
        List.of(in(at)),
        Optional.of(SampleJobs.shelves(2)),
        Optional.of(SampleJobs.pins()),
        Optional.empty());
  }

  private static void set(CaseDraft draft, Setting setting, Length length) {
    draft.settings = draft.settings.with(setting, new SettingValue.OfLength(length));
  }

  /** Front holes keep 1 1/2 - 1/8 = 1 3/8 in to the front edge, which is the least. */
  @Test
  void shouldMatchTwoSides() {
    AllSpoilt all = turned(draft(bay(2)));
    assertThat(all.doRowsMeet()).isTrue();
    assertThat(all.leastWood()).isEqualTo(in("1 3/8").mm(), within(1e-6));
    assertThat(report(draft(bay(2))).rescue()).isEqualTo(Rescue.OTHERS_ALIKE);
  }

  /**
   * The partition reaches from 4 - 7/32 = 3 25/32 to, the dado in the top as deep, 83 1/2 in, the
   * sides from 0 to 84: from their other ends a hole at h comes to 84 - h in sides, to 87 9/32 - h
   * in the partition. 77 7/32 is then 7/16 in from the nearest wrong hole, 3/16 between rims.
   */
  @ParameterizedTest
  @CsvSource({"PANEL_TURNED", "END_FOR_END"})
  void shouldNotMatchPartitionsThatEndElsewhere(Mistake mistake) {
    CaseDraft draft = draft(bay(2), bay(2));
    assertThat(turned(draft).doRowsMeet()).isFalse();
    assertThat(report(draft, mistake).rescue()).isEqualTo(Rescue.PLUG);
    assertThat(report(draft, mistake).how()).contains("only 3/16 in of wood lies between rims");
  }

  /** It ends elsewhere than the sides too, but as far from both of their ends. */
  @Test
  void shouldMatchPartitionsInTheMiddle() {
    CaseDraft draft = alikeAtBothEnds(bay(2), bay(2));
    assertThat(turned(draft).doRowsMeet()).isTrue();
    assertThat(report(draft).rescue()).isEqualTo(Rescue.OTHERS_ALIKE);
    assertThat(report(draft).how())
        .startsWith(
            "Bore every other panel of the case the same way: tried so on the virtual bench")
        .contains("at least 1 3/8 in clear of ends, edges, joints and other holes");
  }

  /**
   * The left side knows nothing of the shelf that is dadoed into the other two panels 24 in up:
   * there they have no holes, but bored from their other ends at 60 - 24 they do.
   */
  @Test
  void shouldSeeADadoInAnotherPanel() {
    CaseDraft draft = alikeAtBothEnds(bay(2), withFixedShelf("24"));
    AllSpoilt all = turned(draft);
    assertThat(all.doRowsMeet()).isTrue();
    assertThat(all.leastWood()).isNegative();
    MistakeReport report = report(draft);
    assertThat(report.part()).isEqualTo("L");
    assertThat(report.rescue()).isNotEqualTo(Rescue.OTHERS_ALIKE);
  }

  /**
   * Sides notched for a kick 3 1/2 in high and 2 in back: rows that end 2 in below the top panel
   * begin there when they are bored from the top.
   */
  @Test
  void shouldSeeTheNotchForAKick() {
    CaseDraft draft = draft(bay(2));
    draft.kick = Optional.of(new Kick(in("3 1/2"), in("2"), "ply"));
    assertThat(turned(draft).leastWood()).isPositive();
    set(draft, Setting.CLEAR_ABOVE, in("1"));
    assertThat(turned(draft).leastWood()).isNotPositive();
    assertThat(report(draft).rescue()).isNotEqualTo(Rescue.OTHERS_ALIKE);
  }

  /** 3/8 in from both faces of 23/32 in meet anyway; 1/4 in leave 7/32 whichever end is first. */
  @Test
  void shouldAskForNoMoreWoodBetweenFacesThanPlanned() {
    CaseDraft draft = alikeAtBothEnds(bay(2), bay(2));
    assertThat(turned(draft).doWebsStay(in("1/4"))).isTrue();
    set(draft, Setting.HOLE_DEPTH, in("1/4"));
    assertThat(turned(draft).doWebsStay(in("1/4"))).isTrue();
  }

  /**
   * From its other end an upright has a hole at h where h comes to bottom + top - h: those of a bay
   * meet only if these sums are the same.
   */
  @Test
  void shouldMatchRandomPanelsThatTurnAlike() {
    int matched = 0;
    int refused = 0;
    for (long seed = 0; seed < 200; seed++) {
      Job job = RandomJobs.of(seed);
      Boring boring = boring(job);
      for (MistakeReport report :
          Mistakes.of(job, boring, BenchProgram.of(job, boring, List.of()), List.of())) {
        if (report.mistake() == Mistake.PANEL_TURNED) {
          boolean alike = report.rescue() == Rescue.OTHERS_ALIKE;
          assertThat(alike && !doTurnAlike(boring)).as("seed %d", seed).isFalse();
          matched += alike ? 1 : 0;
          refused += alike ? 0 : 1;
        }
      }
    }
    assertThat(matched).isPositive();
    assertThat(refused).isPositive();
  }

  private static boolean doTurnAlike(Boring boring) {
    BuiltCase built = boring.cases().getFirst();
    return boring.grids().stream()
        .filter(g -> !g.levels().isEmpty() && !(g.support() instanceof Support.Standards))
        .filter(g -> !(g.support() instanceof Support.Cleats))
        .map(g -> built.bays().get(g.bay() - 1))
        .allMatch(b -> ends(built, b.left()).equals(ends(built, b.right())));
  }

  private static Length ends(BuiltCase built, String mark) {
    Box box = built.part(mark).box();
    return box.at(Face.BOTTOM).plus(box.at(Face.TOP));
  }

  private static Removal.Bore hole(Surface surface, long length, String purpose) {
    return new Removal.Bore(
        surface, Length.mm(length), Length.mm(37), Length.mm(5), Length.mm(8), purpose);
  }

  /** In 18 mm, holes 8 mm deep leave 2 mm between faces where they come to lie over each other. */
  @ParameterizedTest
  @CsvSource({"132, 1, true", "132, 3, true", "100, 1, true", "100, 2, true", "100, 3, false"})
  void shouldMeasureWoodBetweenFaces(long reverse, long least, boolean stays) {
    List<Removal.Bore> wanted =
        List.of(hole(Surface.FACE, 100, "one"), hole(Surface.REVERSE, 132, "two"));
    List<Removal.Bore> made =
        List.of(hole(Surface.FACE, 100, "one"), hole(Surface.REVERSE, reverse, "two"));
    assertThat(new SpoiltRows(piece(List.of()), wanted, made).doWebsStay(Length.mm(least)))
        .isEqualTo(stays);
  }

  /**
   * From centre to centre 9 mm, half of each hole less: 4 mm; what is in the other face counts not.
   */
  @Test
  void shouldMeasureWoodToHolesOfOtherPurposes() {
    List<Removal.Bore> wanted = List.of(hole(Surface.FACE, 200, "row"));
    List<Removal.Bore> made = List.of(hole(Surface.FACE, 100, "row"));
    WorkedPiece piece =
        piece(
            List.of(
                wanted.getFirst(),
                hole(Surface.FACE, 109, "hinge"),
                hole(Surface.REVERSE, 101, "hinge")));
    assertThat(new SpoiltRows(piece, wanted, made).leastToOtherHoles()).isEqualTo(4, within(1e-9));
  }

  private static WorkedPiece piece(List<Removal> removals) {
    return new WorkedPiece(
        "P1", "ply", Length.mm(2000), Length.mm(300), Length.mm(18), Map.of(), List.of(), removals);
  }
}
