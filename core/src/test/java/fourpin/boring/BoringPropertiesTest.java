package fourpin.boring;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.BayGrid.Level;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.RandomJobs;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every job, on seeded random ones. */
class BoringPropertiesTest {

  private static final int JOBS = 300;

  static LongStream seeds() {
    return LongStream.range(0, JOBS);
  }

  private static Boring bore(Job job) {
    return Borer.bore(job, CaseworkBuilder.build(job));
  }

  /** A height and a depth from the front, as bored in one face. */
  private record Spot(Length y, Length z) {}

  private static List<Spot> spots(BuiltCase built, String mark, Face face) {
    return built.part(mark).features().stream()
        .filter(f -> f.face() == face)
        .filter(f -> f instanceof Feature.Hole h && h.use() == Feature.Hole.Use.SUPPORT)
        .map(f -> new Spot(((Feature.Hole) f).centre().y(), ((Feature.Hole) f).centre().z()))
        .toList();
  }

  private static List<Length> heights(BayGrid grid) {
    return grid.levels().stream().map(Level::height).toList();
  }

  private static boolean followsLattice(BayGrid grid) {
    return !(grid.support() instanceof Support.Standards);
  }

  @Test
  void should_mostly_be_jobs_that_can_be_built() {
    long built = seeds().filter(s -> !bore(RandomJobs.of(s)).cases().isEmpty()).count();
    assertThat(built).isGreaterThan(JOBS / 2);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_bore_the_same_in_both_uprights_of_a_bay(long seed) {
    Boring boring = bore(RandomJobs.of(seed));
    for (BayGrid grid : boring.grids()) {
      BuiltCase built = boring.cases().getFirst();
      BaySpace bay = built.bays().get(grid.bay() - 1);
      List<Spot> left = spots(built, bay.left(), Face.RIGHT);
      assertThat(left).isEqualTo(spots(built, bay.right(), Face.LEFT));
      boolean pinned =
          grid.support() instanceof Support.Pins || grid.support() instanceof Support.Sleeved;
      assertThat(left).hasSize(pinned ? grid.rows().size() * grid.levels().size() : 0);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_keep_all_bays_of_a_case_on_one_lattice(long seed) {
    List<BayGrid> grids =
        bore(RandomJobs.of(seed)).grids().stream()
            .filter(BoringPropertiesTest::followsLattice)
            .toList();
    List<Length> all = grids.stream().flatMap(g -> heights(g).stream()).toList();
    assertThat(all)
        .allSatisfy(
            h ->
                assertThat(h.minus(all.getFirst()).remainder(grids.getFirst().pitch()))
                    .isEqualTo(Length.ZERO));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_rest_every_seated_shelf_on_its_level_clear_of_the_others(long seed) {
    Boring boring = bore(RandomJobs.of(seed));
    for (BayGrid grid : boring.grids()) {
      BuiltCase built = boring.cases().getFirst();
      List<Part> shelves = grid.seats().stream().map(s -> built.part(s.shelf())).toList();
      for (int i = 0; i < shelves.size(); i++) {
        Level level = grid.levels().get(grid.seats().get(i).level() - 1);
        assertThat(shelves.get(i).box().low().z()).isEqualTo(level.underside());
        if (i > 0) {
          assertThat(shelves.get(i).box().low().z())
              .isGreaterThanOrEqualTo(shelves.get(i - 1).box().high().z());
        }
      }
      BaySpace bay = built.bays().get(grid.bay() - 1);
      assertThat(shelves)
          .allMatch(s -> bay.openings().stream().anyMatch(o -> o.clear().contains(s.box())));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_mirror_the_holes_of_a_mirrored_case(long seed) {
    Job job = RandomJobs.of(seed);
    CaseDraft draft = CaseDraft.of(job.cases().getFirst());
    Boring boring = bore(job);
    draft.bays = draft.bays.reversed();
    Boring mirrored = bore(with(job, draft.order()));
    List<BayGrid> turned = new ArrayList<>(mirrored.grids().reversed());
    assertThat(turned).hasSameSizeAs(boring.grids());
    for (int i = 0; i < turned.size(); i++) {
      assertThat(turned.get(i).levels()).isEqualTo(boring.grids().get(i).levels());
      assertThat(turned.get(i).rows()).isEqualTo(boring.grids().get(i).rows());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_never_have_fewer_levels_at_half_the_pitch(long seed) {
    Job job = set(RandomJobs.of(seed), Setting.ROWS, new SettingValue.OfChoice("full"));
    Job free = set(job, Setting.BALANCE, new SettingValue.OfChoice("free"));
    Length half = free.cases().getFirst().settings().length(Setting.PITCH).over(2);
    List<BayGrid> coarse = bore(free).grids();
    List<BayGrid> fine = bore(set(free, Setting.PITCH, new SettingValue.OfLength(half))).grids();
    for (int i = 0; i < coarse.size(); i++) {
      assertThat(heights(fine.get(i))).containsAll(heights(coarse.get(i)));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_keep_balanced_rows_when_a_side_is_turned(long seed) {
    Job job = set(RandomJobs.of(seed), Setting.BALANCE, new SettingValue.OfChoice("balanced"));
    Boring boring = bore(job);
    for (BayGrid grid : boring.grids()) {
      Part side = boring.cases().getFirst().part("L");
      Length ends = side.box().low().z().plus(side.box().high().z());
      if (followsLattice(grid)) {
        List<Length> turned = heights(grid).reversed().stream().map(ends::minus).toList();
        assertThat(turned).isEqualTo(heights(grid));
      }
    }
  }

  /** Cures that do not work are not named, so that one may be all there is. */
  @ParameterizedTest
  @MethodSource("seeds")
  void should_give_every_finding_a_place_and_cures(long seed) {
    for (Finding finding : bore(RandomJobs.of(seed)).findings()) {
      assertThat(finding.place().caseName()).isEqualTo("Case");
      if (finding.severity() != Severity.NOTE) {
        assertThat(finding.remedies()).as(finding.what()).isNotEmpty();
      }
    }
  }

  @Test
  void should_stay_within_a_case_of_twelve_bays() {
    Job job = job(12);
    Boring boring = bore(job);
    assertThat(boring.grids()).hasSize(12);
    BuiltCase built = boring.cases().getFirst();
    for (int i = 1; i < 12; i++) {
      assertThat(spots(built, "P" + i, Face.LEFT)).isEqualTo(spots(built, "P" + i, Face.RIGHT));
    }
  }

  /** A doll's case: 100 mm wide outside, a bay of about 60 mm. */
  @Test
  void should_bore_a_case_for_dolls() {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.INSIDE, Length.mm(60), Length.mm(180), Length.mm(60));
    draft.bays = List.of(SampleJobs.bay(2));
    draft.kick = Optional.empty();
    draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    draft.settings =
        draft
            .settings
            .with(Setting.CLEAR_BELOW, new SettingValue.OfLength(Length.mm(30)))
            .with(Setting.CLEAR_ABOVE, new SettingValue.OfLength(Length.mm(30)))
            .with(Setting.PITCH, new SettingValue.OfLength(Length.mm(8)))
            .with(Setting.FRONT_ROW, new SettingValue.OfLength(Length.mm(12)))
            .with(Setting.BACK_ROW, new SettingValue.OfLength(Length.mm(12)));
    BayGrid grid = bore(SampleJobs.job(draft.order())).grids().getFirst();
    // 180 - 2 x 30 = 120 = 15 x 8: 16 levels.
    assertThat(grid.levels()).hasSize(16);
    assertThat(grid.seats()).hasSize(2);
  }

  private static Job job(int bays) {
    List<Bay> all = new ArrayList<>();
    for (int i = 0; i < bays; i++) {
      all.add(SampleJobs.bay(3));
    }
    return SampleJobs.job(SampleJobs.bookcase(all.toArray(Bay[]::new)));
  }

  private static Job with(Job job, CaseOrder order) {
    return job.with(List.of(order));
  }

  private static Job set(Job job, Setting setting, SettingValue value) {
    CaseDraft draft = CaseDraft.of(job.cases().getFirst());
    draft.settings = draft.settings.with(setting, value);
    return with(job, draft.order());
  }
}
