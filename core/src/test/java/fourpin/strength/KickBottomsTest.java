package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.measure.Inputs.inputs;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Joint;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bottoms that a kick carries in front and nothing at the back. */
@ExtendWith(CommaDecimals.class)
class KickBottomsTest {

  private static CaseDraft low() {
    CaseDraft draft = new CaseDraft();
    draft.name = "Low";
    draft.material = "panel";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("48"), in("40"), in("12"));
    draft.bays = List.of(SampleJobs.bay(1));
    draft.load = Optional.of(new Load.Holds("records, 12 in"));
    return draft;
  }

  private static Strength check(CaseDraft draft, String thickness) {
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(SampleJobs.board("panel", "plywood, veneer core", thickness));
    return Shelving.check(JobDraft.changed(job, d -> d.materials = materials));
  }

  private static double mm(Strength strength, String end) {
    return strength.cases().getFirst().figures().stream()
        .filter(f -> f.id().endsWith(end))
        .map(Figure::value)
        .findFirst()
        .orElseThrow()
        .value();
  }

  /**
   * By a series of Ritz, worked out beside the program: 0.291 in at the middle of the back edge.
   */
  @Test
  void theBackEdgeSagsAsASeriesSays() {
    Strength strength = check(low(), "3/4");
    assertThat(mm(strength, "bottom-1-sag") / 25.4).isCloseTo(0.291, withPercentage(2));
    assertThat(mm(strength, "bottom-1-sag-years"))
        .isCloseTo(2 * mm(strength, "bottom-1-sag"), within(1e-9));
    Finding found = ofKind(strength, "bottom-sags").getFirst();
    assertThat(found.severity()).isEqualTo(Severity.DOUBT);
    assertThat(found.remedies())
        .extracting(Remedy::what)
        .anyMatch(cure -> cure.matches("stand a second kick .*: it then sags by .* after years"))
        .anyMatch(
            cure ->
                cure.startsWith(
                    "make the bottom at least 1 3/8 in thick, of the same material, which the job"));
  }

  /** What the job lists is named: the next that holds, not the next. */
  @Test
  void aThickerPanelOfTheJobIsNamed() {
    Job job = SampleJobs.job(low().order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(SampleJobs.board("panel", "plywood, veneer core", "3/4"));
    materials.add(SampleJobs.board("stout", "plywood, veneer core", "1 1/2"));
    materials.add(SampleJobs.board("thin", "plywood, veneer core", "1"));
    Strength strength = Shelving.check(JobDraft.changed(job, d -> d.materials = materials));
    assertThat(ofKind(strength, "bottom-sags").getFirst().remedies())
        .extracting(Remedy::what)
        .anyMatch(cure -> cure.startsWith("make the bottom as thick as 'stout', 1 1/2 in: it"));
  }

  /** The cure, made: 1 3/8 in; less is too thin. */
  @Test
  void aBottomAsThickAsTheCureSaysHolds() {
    assertThat(ofKind(check(low(), "1 3/8"), "bottom-sags")).isEmpty();
    assertThat(ofKind(check(low(), "1 1/8"), "bottom-sags")).hasSize(1);
  }

  @Test
  void aBottomOnTheFloorIsNotJudged() {
    CaseDraft flat = low();
    flat.kick = Optional.empty();
    flat.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    Strength strength = check(flat, "3/4");
    assertThat(ofKind(strength, "bottom-sags")).isEmpty();
    assertThat(strength.cases().getFirst().feet()).isEmpty();
  }

  /**
   * Average books, less deep than the bottom, may stand against the back, where nothing holds it.
   */
  @Test
  void aRowAgainstTheBackBendsABottomMost() {
    CaseDraft draft = low();
    draft.load = Optional.of(new Load.Holds("books, average"));
    Strength strength = check(draft, "3/4");
    Figure sag = figure(strength, "bottom-1-sag");
    assertThat(sag.title()).endsWith("the load in a row against the back");
    assertThat(sag.value().value()).isCloseTo(ritz(sag, 1), withPercentage(1));
    assertThat(ofKind(strength, "bottom-sags").getFirst().what())
        .contains("with its load in a row 6.5 in deep against the back");
  }

  /** What partitions bring down bends it from side to side; the plate is held against a series. */
  @Test
  void aPartitionOnNothingBendsTheWholeBottom() {
    Strength strength = check(parted(), "3/4");
    Figure sag = figure(strength, "bottom-sag");
    assertThat(sag.value().value()).isCloseTo(ritz(sag, 2), withPercentage(1));
    assertThat(sag.value().value()).isGreaterThan(5 * mm(strength, "bottom-1-sag"));
    Finding found = ofKind(strength, "partition-sinks").getFirst();
    assertThat(found.severity()).isEqualTo(Severity.DOUBT);
    assertThat(found.remedies()).extracting(Remedy::what).anyMatch(c -> c.endsWith("is allowed"));
    assertThat(ofKind(strength, "partition-foot")).isEmpty();
  }

  /** As its cures say: blocks carry partitions, a board carries the back edge as well. */
  @Test
  void whatStandsBehindTheKickCarries() {
    Strength blocks = check(behind("blocks"), "3/4");
    assertThat(ofKind(blocks, "partition-sinks")).isEmpty();
    Strength board = check(behind("board"), "3/4");
    assertThat(ofKind(board, "partition-sinks")).isEmpty();
    assertThat(mm(board, "bottom-1-sag")).isLessThan(mm(blocks, "bottom-1-sag") / 5);
    assertThat(ofKind(board, "bottom-sags")).isEmpty();
  }

  /**
   * Between kick and board a bottom bends under partitions too, and a case that is held to narrow
   * limits gets no board that does not do; blocks tell what the bottom does between them.
   */
  @Test
  void aBoardThatIsTooLittleIsJudgedAndNoCure() {
    CaseDraft board = behind("board");
    board.settings =
        board
            .settings
            .with(Setting.SAG_LIMIT, new SettingValue.OfNumber(2000))
            .with(Setting.SAG_LIMIT_YEARS, new SettingValue.OfNumber(2000));
    board.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("48"), in("40"), in("24"));
    Strength strength = check(board, "1/2");
    Finding found = ofKind(strength, "partition-sinks").getFirst();
    assertThat(found.what()).contains("which kick and second board carry along its edges alone");
    assertThat(found.remedies())
        .extracting(Remedy::what)
        .singleElement()
        .asString()
        .startsWith("stand a block behind the kick below each partition")
        .contains(": between them the bottom then sags by ")
        .endsWith("which is too much: cure that too");
    board.settings = board.settings.with(Setting.BEHIND_KICK, new SettingValue.OfChoice("nothing"));
    assertThat(ofKind(check(board, "1/2"), "partition-sinks").getFirst().remedies())
        .extracting(Remedy::what)
        .hasSize(1)
        .noneMatch(cure -> cure.startsWith("stand a second kick"));
  }

  /** Which is why no bottom is bent by it: what lies on the other half lifts nothing. */
  @ParameterizedTest
  @ValueSource(longs = {2, 23})
  void onOneHalfALoadBendsItNowhereMore(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 10; i++) {
      double length = random.nextDouble(200, 1200);
      double depth = random.nextDouble(100, 500);
      double across = random.nextDouble(500, 9000);
      BottomRitz evenly = loaded(length, depth, across, length);
      BottomRitz half = loaded(length, depth, across, length / 2);
      for (int at = 1; at < 20; at++) {
        double x = length * at / 20;
        assertThat(half.backEdge(x)).isPositive().isLessThan(evenly.backEdge(x));
      }
    }
  }

  private static BottomRitz loaded(double length, double depth, double across, double to) {
    return new BottomRitz(
        BottomRitz.Front.HINGED,
        length,
        depth,
        18,
        9000,
        across,
        600,
        0.1,
        List.of(new BottomRitz.Patch(0.001, 0, to, 0, depth)));
  }

  private static CaseDraft parted() {
    CaseDraft draft = low();
    draft.bays = List.of(SampleJobs.bay(2), SampleJobs.bay(2));
    draft.load = Optional.of(new Load.Holds("books, average"));
    return draft;
  }

  private static CaseDraft behind(String what) {
    CaseDraft draft = parted();
    draft.settings = draft.settings.with(Setting.BEHIND_KICK, new SettingValue.OfChoice(what));
    return draft;
  }

  private static Figure figure(Strength strength, String end) {
    return strength.cases().getFirst().figures().stream()
        .filter(f -> f.id().endsWith("/" + end))
        .findFirst()
        .orElseThrow();
  }

  /** From the inputs that the figure prints; between partitions lie the bays. */
  private static double ritz(Figure sag, int bays) {
    double depth = input(sag, "D");
    double length = input(sag, "L");
    List<BottomRitz.Patch> patches = new ArrayList<>();
    patches.add(new BottomRitz.Patch(input(sag, "g") / depth, 0, length, 0, depth));
    for (int i = 0; i < bays; i++) {
      double from = inputs(sag, "y₁").get(i);
      double to = inputs(sag, "y₂").get(i);
      double cut = to - depth;
      double left = i == 0 ? 0 : inputs(sag, "b").get(i - 1);
      double right = i == bays - 1 ? length : inputs(sag, "a").get(i);
      double line = inputs(sag, "q").get(i);
      patches.add(new BottomRitz.Patch(line / (to - from), left, right, from - cut, to - cut));
      if (i < bays - 1) {
        double wide = inputs(sag, "b").get(i) - right;
        double shelves = inputs(sag, "R").get(i) / wide / (to - from);
        double rest = inputs(sag, "T").get(i) / wide / input(sag, "y₀");
        patches.add(new BottomRitz.Patch(shelves, right, right + wide, from - cut, to - cut));
        patches.add(new BottomRitz.Patch(rest, right, right + wide, 0, depth));
      }
    }
    return new BottomRitz(
            BottomRitz.Front.HINGED,
            length,
            depth,
            input(sag, "t"),
            input(sag, "E₁"),
            input(sag, "E₂"),
            input(sag, "G"),
            input(sag, "ν"),
            patches)
        .backEdge(length / 2);
  }
}
