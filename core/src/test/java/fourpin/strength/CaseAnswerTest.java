package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.strength.Section.Layer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What whole cases do: over the year, between their fixed panels, and on the floor. */
@ExtendWith(CommaDecimals.class)
class CaseAnswerTest {

  private static final Bay OAK =
      Shelving.bay(Shelving.shelves("oak", List.of()), SampleJobs.pins());

  private static double value(CaseAnswer answer, String last) {
    return find(answer, last).value().value();
  }

  private static Figure find(CaseAnswer answer, String last) {
    return answer.figures().stream()
        .filter(f -> f.id().endsWith("/" + last))
        .findFirst()
        .orElseThrow();
  }

  private static CaseAnswer of(Bay... bays) {
    return check(bays).cases().getFirst();
  }

  private static Strength withSetting(Setting setting, SettingValue value, Bay... bays) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bays);
    draft.settings = draft.settings.with(setting, value);
    return check(SampleJobs.job(draft.order()));
  }

  /** Wood Handbook (2010), Table 4-2: 70 °F and 30 %, 6.2 %; 60 %, 11.0 %. */
  @Test
  void moistureIsTheHandbooks() {
    CaseAnswer answer = of(OAK);
    assertThat(value(answer, "moisture-dry")).isCloseTo(6.2, within(0.1));
    assertThat(value(answer, "moisture-damp")).isCloseTo(11.0, within(0.1));
  }

  /** White oak, flat-sawn, 0.00365 for each per cent (Table 13-5). */
  @Test
  void solidShelvesMoveAcrossTheirGrain() {
    Figure swells = find(of(OAK), "1-s1/swells");
    assertThat(input(swells, "C")).isEqualTo(0.00365);
    assertThat(swells.value().value())
        .isCloseTo(
            input(swells, "W") * 0.00365 * (input(swells, "m") - input(swells, "m₀")),
            within(1e-9));
    Strength quarter = withSetting(Setting.BOARDS_SAWN, new SettingValue.OfChoice("quarter"), OAK);
    assertThat(value(quarter.cases().getFirst(), "1-s1/swells"))
        .isCloseTo(swells.value().value() * 0.0018 / 0.00365, within(1e-9));
  }

  @Test
  void plywoodStaysAsItIs() {
    assertThat(of(SampleJobs.bay(1)).climate()).isEmpty();
  }

  /** 11 in of oak swell by more than 1/32 in from 45 to 60 % humidity; half an inch is enough. */
  @Test
  void shelvesWithoutRoomAtTheBackJam() {
    Strength tight = withSetting(Setting.BACK_PLAY, new SettingValue.OfLength(in("1/32")), OAK);
    assertThat(ofKind(tight, "shelf-swells").getFirst().severity()).isEqualTo(Severity.DOUBT);
    Strength wide = withSetting(Setting.BACK_PLAY, new SettingValue.OfLength(in("1/2")), OAK);
    assertThat(ofKind(wide, "shelf-swells")).isEmpty();
  }

  /** EN 1995-1-1, Table 3.2: plywood 1 + 0.80, solid wood 1 + 0.60. */
  @ParameterizedTest
  @CsvSource({"ply, 1.8", "oak, 1.6"})
  void creepByEurocode(String material, double factor) {
    Bay bay = Shelving.bay(Shelving.shelves(material, List.of()), SampleJobs.pins());
    ShelfAnswer shelf =
        withSetting(Setting.CREEP_RULE, new SettingValue.OfChoice("eurocode"), bay)
            .shelves()
            .getFirst();
    assertThat(shelf.sagYears().value().value() / shelf.sagNow().value().value())
        .isCloseTo(factor, within(1e-9));
  }

  /**
   * A moment in the middle of a simple beam bends it by M L² / (72 √3 E I) at most, L / (2 √3) from
   * its ends (any table of beams, by integration).
   */
  @Test
  void oneShelfHalfWayUpBowsTheSideAsTheTableSays() {
    Section side =
        new Section(List.of(new Layer("side", SectionTest.matter(8000, 600), 280, 18, 0, 0)));
    double expected = 5000 * 1500.0 * 1500.0 / (72 * Math.sqrt(3) * side.bendingStiffness());
    assertThat(SideBow.bow(1500, side, List.of(new SideBow.Turn(750, 5000))))
        .isCloseTo(expected, withPercentage(0.5));
  }

  /** The case's own figures balance: push times height is weight times its lever. */
  @ParameterizedTest
  @CsvSource({"empty", "top-heavy", "loaded"})
  void thePushThatTipsItBalancesItsWeight(String when) {
    CaseAnswer answer = of(SampleJobs.bay(4), SampleJobs.bay(4));
    Figure tips = find(answer, "tips-at-" + when);
    assertThat(tips.value().value() * input(tips, "H"))
        .isCloseTo(input(tips, "F") * behind(tips), within(1e-6));
    assertThat(value(answer, "tips-lean-" + when) * input(tips, "z"))
        .isCloseTo(input(tips, "H") * behind(tips), within(1e-6));
  }

  /** Of the middle of the weight, on a floor that falls. */
  private static double behind(Figure tips) {
    return input(tips, "y") - input(tips, "n") * input(tips, "z") / 1000;
  }

  /** Things high up leave less room to lean than things all over. */
  @Test
  void topHeavyCasesFallSooner() {
    CaseAnswer answer = of(SampleJobs.bay(4), SampleJobs.bay(4));
    assertThat(value(answer, "tips-lean-top-heavy")).isLessThan(value(answer, "tips-lean-loaded"));
    assertThat(value(answer, "weight-up-top-heavy"))
        .isGreaterThan(value(answer, "weight-up-loaded"));
  }

  /** NDS Eq. 12.2-1: 1800 × 0.42^1.5 × 0.25^0.75 = 173.2 lb for each inch, 1 1/4 in: 216.5 lb. */
  @Test
  void anchorsHoldWhatTheFormulaSays() {
    CaseAnswer answer = of(SampleJobs.bay(1));
    assertThat(value(answer, "anchor-screw") / 4.4482216).isCloseTo(216.5, within(0.5));
    Strength pushed =
        withSetting(Setting.TIP_PUSH, new SettingValue.OfNumber(2000), SampleJobs.bay(1));
    CaseAnswer hard = pushed.cases().getFirst();
    assertThat(value(hard, "anchor-count"))
        .isEqualTo(Math.ceil(value(hard, "anchor-pull") / value(hard, "anchor-screw")));
    assertThat(value(hard, "anchor-each"))
        .isEqualTo(Math.ceil(value(hard, "anchor-count") / value(hard, "anchor-studs")));
  }

  /**
   * Moments about the front foot: a push of 222 N at 84 in against the weight and the anchors,
   * which stand 1 1/2 in under a top of 23/32 in: 84 - 0.71875 - 1.5 = 81.781 in.
   */
  @Test
  void anchorsUnderTheTopBalanceThePush() {
    Figure pull = find(of(SampleJobs.bay(1)), "anchor-pull");
    Figure tips = find(of(SampleJobs.bay(1)), "tips-at-empty");
    assertThat(input(pull, "h")).isCloseTo(81.78125 * 25.4, within(0.01));
    assertThat(pull.value().value() * 81.78125 * 25.4)
        .isCloseTo(222 * 84 * 25.4 - input(tips, "F") * behind(tips), within(10.0));
  }

  @Test
  void theFloorCarriesItsWeight() {
    Figure floor = find(of(SampleJobs.bay(3), SampleJobs.bay(3)), "floor-load");
    assertThat(floor.value().value())
        .isCloseTo(
            (input(floor, "F") + input(floor, "F₂") + input(floor, "F₃"))
                / (input(floor, "W") * input(floor, "D"))
                * 1000,
            within(1e-9));
  }

  /**
   * A shelf pushed to one side leaves all the room at the other: the play, the bow of both sides,
   * and all that its chord is shorter, 8 s² / (3 L) for a parabola (any strength of materials). The
   * load stays for years, so the sides creep as the shelf does: panels to twice (K_cr of NDS 2018,
   * 3.5.2; from memory).
   */
  @Test
  void engagementIsWhatIsLeftAfterYears() {
    Figure left =
        engagement(SampleJobs.job(SampleJobs.bookcase(SampleJobs.bay(2), SampleJobs.bay(2))));
    double drawn = 8 * Math.pow(input(left, "s"), 2) / (3 * input(left, "L"));
    assertThat(input(left, "b")).isPositive();
    assertThat(input(left, "k")).isEqualTo(2);
    assertThat(left.value().value())
        .isCloseTo(
            input(left, "r") - input(left, "g") - 2 * 2 * input(left, "b") - drawn, within(1e-9));
  }

  private static Figure engagement(Job job) {
    return check(job).shelves().getFirst().inSides().stream()
        .filter(f -> f.id().endsWith("/engagement-years"))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Along the grain wood shrinks by 0.1 to 0.2 % from green to ovendry (Wood Handbook FPL-GTR-190,
   * p. 4-5): a case of oak 1000 mm wide grows by 1000 × 0.002 / 30 for each per cent, which is
   * 0.0667 mm. A shelf of plywood does not grow with it, one of oak does.
   */
  @ParameterizedTest
  @CsvSource({
    "'oak, white', 'plywood, veneer core', 1",
    "'oak, white', 'oak, white', 0",
    "'plywood, veneer core', 'plywood, veneer core', 0"
  })
  void aSolidCaseBreathes(String caseOf, String shelfOf, int times) {
    Bay bay = Shelving.bay(Shelving.shelves("shelf", List.of()), SampleJobs.pins());
    Job job = Shelving.withMaterial(SampleJobs.board("shelf", shelfOf, "3/4"), bay);
    Material panels = SampleJobs.board("ply", caseOf, "3/4");
    List<Material> materials =
        job.materials().stream().map(m -> m.name().equals("ply") ? panels : m).toList();
    job = JobDraft.changed(job, d -> d.materials = materials);
    Figure left = engagement(job);
    double moister = 0;
    if (times > 0) {
      Figure breathes = find(check(job).cases().getFirst(), "width-breathes");
      moister = input(breathes, "m") - input(breathes, "m₀");
      assertThat(breathes.value().value())
          .isCloseTo(input(breathes, "W") / 1000 * 0.2 / 3 * moister, within(1e-9))
          .isPositive();
    }
    assertThat(input(left, "w"))
        .isCloseTo(times * input(left, "L") / 1000 * 0.2 / 3 * moister, within(1e-9));
  }
}
