package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Racks.back;
import static fourpin.strength.Racks.find;
import static fourpin.strength.Racks.of;
import static fourpin.strength.Racks.value;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.job.Back;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Joint;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.SheetStock;
import fourpin.job.Supply;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.strength.frame.SwayFrame;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far cases sway sideways, and what is said to hold them. */
@ExtendWith(CommaDecimals.class)
class RackingTest {

  private static void onFloor(CaseDraft draft) {
    draft.kick = Optional.empty();
    draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
  }

  private static void glue(CaseDraft draft) {
    draft.settings = draft.settings.with(Setting.BACK_FIXING, new SettingValue.OfChoice("glued"));
  }

  @Test
  void aBackHoldsTheBetterTheBetterItIsFixed() {
    double loose = value(of(d -> back(d, Back.Kind.GROOVE)), "sway");
    double screwed = value(of(d -> back(d, Back.Kind.RABBET)), "sway");
    double glued =
        value(
            of(
                d -> {
                  back(d, Back.Kind.GROOVE);
                  glue(d);
                }),
            "sway");
    assertThat(glued).isLessThan(screwed);
    assertThat(screwed).isLessThan(loose);
  }

  /** The working of the figure gives its value. */
  @Test
  void aScrewedBackIsWorkedOutAsTheFormulaSays() {
    Strength strength =
        of(
            d -> {
              back(d, Back.Kind.RABBET);
              onFloor(d);
            });
    Figure sway = find(strength, "sway").orElseThrow();
    double stiffness = input(sway, "J") + input(sway, "K") - input(sway, "B");
    assertThat(sway.value().value())
        .isCloseTo(
            input(sway, "P") * input(sway, "h") * input(sway, "h") / stiffness, within(1e-9));
    Figure back = find(strength, "sway-back-stiffness").orElseThrow();
    double b = input(back, "b");
    double h = input(back, "h");
    double lean =
        1 / (input(back, "G") * input(back, "t"))
            + 2 * input(back, "s") / input(back, "k") * (1 / b + 1 / h);
    assertThat(back.value().value()).isCloseTo(b * h / lean, withPercentage(1e-9));
  }

  /** Half as far apart slides half as much; the panel's own shear stays. */
  @Test
  void theLowerSlipOfBothCodesCounts() {
    Strength strength = of(d -> back(d, Back.Kind.RABBET));
    double ec5 = value(strength, "back-slip-ec5");
    double nds = value(strength, "back-slip-nds");
    Figure back = find(strength, "sway-back-stiffness").orElseThrow();
    assertThat(input(back, "k")).isEqualTo(Math.min(ec5, nds));
    Figure lower = find(strength, ec5 <= nds ? "back-slip-ec5" : "back-slip-nds").orElseThrow();
    assertThat(back.inputs())
        .filteredOn(i -> i.symbol().equals("k"))
        .singleElement()
        .satisfies(k -> assertThat(k.source()).isEqualTo(lower.source()));
  }

  @Test
  void aLooseBackLetsTheCaseGoUntilItJams() {
    Strength strength = of(d -> back(d, Back.Kind.GROOVE));
    assertThat(value(strength, "sway")).isGreaterThan(value(strength, "sway-free"));
    assertThat(value(strength, "sway")).isLessThan(1.1 * value(strength, "sway-free"));
  }

  /** What stands in it outweighs the joints: then the back alone holds it, once it has jammed. */
  @Test
  void theFormulaOfALooseBackIsThatOfTheCaseAtHand() {
    Strength strength =
        of(
            d -> {
              back(d, Back.Kind.GROOVE);
              onFloor(d);
            });
    Figure sway = find(strength, "sway").orElseThrow();
    double joints = input(sway, "J") - input(sway, "B");
    double h = input(sway, "h");
    double free = input(sway, "φ");
    double back = input(sway, "K");
    double moment = input(sway, "P") * h;
    double held = (moment + back * free) / (joints + back);
    assertThat(sway.formula().contains("min")).isEqualTo(joints > 0);
    assertThat(sway.value().value())
        .isCloseTo(h * (joints > 0 ? Math.min(moment / joints, held) : held), withPercentage(0.1));
  }

  @Test
  void aLoadedCaseWithoutABackFallsAndTheCuresHoldIt() {
    Strength strength = of(d -> d.back = Optional.empty());
    Finding falls = ofKind(strength, "case-sways").getFirst();
    assertThat(falls.severity()).isEqualTo(Severity.ERROR);
    assertThat(falls.place().part()).contains("L");
    assertThat(find(strength, "sway")).isEmpty();
    assertThat(value(strength, "sway-reserve")).isLessThan(1);
    assertThat(falls.remedies())
        .anySatisfy(r -> assertThat(r.what()).startsWith("put a back of 'back' on"));
    assertThat(ofKind(of(d -> back(d, Back.Kind.APPLIED)), "case-sways")).isEmpty();
  }

  /** Plywood of 1/4 in stands in for it, and holds when the case is built with that. */
  @Test
  void aBackIsOfferedWhereTheJobHasNoThinSheet() {
    CaseDraft draft = new CaseDraft();
    draft.back = Optional.empty();
    Job job = SampleJobs.job(draft.order());
    List<Material> thick = job.materials().stream().filter(m -> !m.name().equals("back")).toList();
    Strength strength = check(JobDraft.changed(job, d -> d.materials = thick));
    assertThat(ofKind(strength, "case-sways").getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .anyMatch(
            what ->
                what.startsWith(
                        "put a back of 'plywood, veneer core, 1/4 in' (the job states no thin sheet"
                            + " yet) on, screwed all round")
                    && !what.contains("still"));
    back(draft, Back.Kind.APPLIED);
    Material plywood = SampleJobs.sheet("back", "plywood, veneer core", "1/4", "1/4");
    List<Material> bought = Stream.concat(thick.stream(), Stream.of(plywood)).toList();
    Job backed = SampleJobs.job(draft.order());
    assertThat(ofKind(check(JobDraft.changed(backed, d -> d.materials = bought)), "case-sways"))
        .isEmpty();
  }

  /** Of 72 in, one sheet is 48 wide: a piece for each of two bays is 36 wide and 1/2 over. */
  @ParameterizedTest
  @CsvSource({
    "48, 'put a back of ''back'' on, a piece for each bay, screwed all round: '",
    "80, 'put a back of ''back'' on, screwed all round: '",
    "36, 'put a back of ''back'' on, a piece for each bay, screwed all round, once the job has stock of ''back'' that is large enough: '"
  })
  void aNewBackIsOfAsManyPiecesAsTheStockGives(String wide, String words) {
    CaseDraft draft = new CaseDraft();
    draft.back = Optional.empty();
    Job job = SampleJobs.job(draft.order());
    SheetStock stock =
        new SheetStock(
            "back", in("96"), in(wide), Optional.empty(), Optional.empty(), Supply.TO_BUY);
    Finding falls =
        ofKind(check(JobDraft.changed(job, d -> d.sheets = List.of(stock))), "case-sways")
            .getFirst();
    assertThat(falls.remedies()).anySatisfy(r -> assertThat(r.what()).startsWith(words));
  }

  /** A case that stands by itself for years is not said to lean over in time. */
  @Test
  void aPushThatIsTooMuchIsToldAsAPush() {
    Strength pushed =
        of(
            d -> {
              back(d, Back.Kind.RABBET);
              d.settings = d.settings.with(Setting.SWAY_PUSH, new SettingValue.OfNumber(1e6));
            });
    assertThat(value(pushed, "sway-reserve")).isGreaterThan(10);
    Finding sways = ofKind(pushed, "case-sways").getFirst();
    assertThat(sways.severity()).isEqualTo(Severity.ERROR);
    assertThat(sways.what())
        .contains("pushed sideways by", "breaks joints")
        .doesNotContain("creep");
  }

  @Test
  void aLooseBackIsGluedByOneSetting() {
    Consumer<CaseDraft> strict =
        d -> {
          back(d, Back.Kind.GROOVE);
          d.settings = d.settings.with(Setting.SWAY_LIMIT, new SettingValue.OfNumber(1000));
        };
    Finding sways = ofKind(of(strict), "case-sways").getFirst();
    assertThat(sways.severity()).isEqualTo(Severity.DOUBT);
    assertThat(sways.remedies().getFirst().stated())
        .contains(new Stated.OfSetting(Setting.BACK_FIXING, "glued"));
    assertThat(ofKind(of(strict.andThen(RackingTest::glue)), "case-sways")).isEmpty();
  }

  @Test
  void solidBacksAreNotToBeGlued() {
    Strength strength =
        of(
            d -> {
              d.back =
                  Optional.of(new Back(Back.Kind.RABBET, "oak", Optional.empty(), Back.Pieces.ONE));
              glue(d);
            });
    assertThat(ofKind(strength, "back-splits")).hasSize(1);
  }

  /** What stands in it adds to a push: half of what would fell it doubles the sway. */
  @Test
  void whatStandsInItLeansWithIt() {
    SwayFrame empty = new SwayFrame(1000, 2e7, 0, 0, 0);
    SwayFrame half = new SwayFrame(1000, 2e7, 0, 0, 1e7);
    assertThat(half.sway(100).orElseThrow())
        .isCloseTo(2 * empty.sway(100).orElseThrow(), within(1e-9));
    assertThat(new SwayFrame(1000, 2e7, 0, 0, 2e7).sway(1)).isEmpty();
    assertThat(half.reserve()).isEqualTo(2);
  }

  /** A loose panel does nothing before it jams, and all after. */
  @Test
  void aFrameLeansFreelyFirst() {
    SwayFrame frame = new SwayFrame(1000, 2e7, 1e9, 0.002, 0);
    assertThat(frame.sway(30).orElseThrow()).isCloseTo(1.5, within(1e-9));
    double lean = (100 * 1000 + 1e9 * 0.002) / (2e7 + 1e9);
    assertThat(frame.sway(100).orElseThrow()).isCloseTo(1000 * lean, within(1e-9));
    assertThat(List.of(frame.sway(30).orElseThrow(), frame.sway(100).orElseThrow())).isSorted();
  }
}
