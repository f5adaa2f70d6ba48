package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.measure.Inputs.inputs;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Tops on which no job says what stands. */
@ExtendWith(CommaDecimals.class)
class OpenTopTest {

  private static CaseDraft low(String width) {
    CaseDraft draft = new CaseDraft();
    draft.name = "Low";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in("40"), in("12"));
    draft.bays = List.of(SampleJobs.bay(1));
    return draft;
  }

  private static Strength check(CaseDraft draft) {
    return Shelving.check(SampleJobs.job(draft.order()));
  }

  private static CaseDraft with(CaseDraft draft, Setting setting, SettingValue value) {
    draft.settings = draft.settings.with(setting, value);
    return draft;
  }

  private static CaseDraft loaded(CaseDraft draft, double newtonPerMm) {
    Quantity load = Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD);
    return with(draft, Setting.TOP_LOAD, new SettingValue.OfLoad(load));
  }

  private static List<Figure> top(Strength strength) {
    return strength.cases().getFirst().top();
  }

  private static Figure find(List<Figure> figures, String end) {
    return figures.stream().filter(f -> f.id().endsWith(end)).findFirst().orElseThrow();
  }

  private static double value(Strength strength, String end) {
    return find(strength.cases().getFirst().figures(), end).value().value();
  }

  /** 5 q L⁴ / (384 E I), any handbook; a plate of plywood sags a little less in its middle. */
  @Test
  void itSagsAsABeamOverItsBay() {
    Strength strength = check(low("36"));
    double span = value(strength, "top/span");
    LoadedShelf beam = beam(low("36"));
    double load = 25 * 4.4482216 / 304.8;
    assertThat(value(strength, "top/load")).isCloseTo(load, withPercentage(0.01));
    assertThat(value(strength, "top/sag-now"))
        .isCloseTo(
            5
                * (load + beam.section().weight())
                * Math.pow(span, 4)
                / (384 * beam.section().bendingStiffness()),
            withPercentage(4));
    assertThat(value(strength, "top/plate-front-row"))
        .isGreaterThan(value(strength, "top/sag-now"));
  }

  /** Wood creeps under loads that stay. */
  @Test
  void aHandDoesNotStayForYears() {
    assertThat(top(check(low("36"))))
        .extracting(Figure::id)
        .anyMatch(id -> id.endsWith("top/hand"))
        .anyMatch(id -> id.endsWith("front-row-years"))
        .noneMatch(id -> id.endsWith("hand-years"));
  }

  private static LoadedShelf beam(CaseDraft draft) {
    Job job = SampleJobs.job(draft.order());
    BuiltCase built = CaseworkBuilder.build(job).cases().getFirst();
    return new ShelfReader(job, built).top(built.bays().getFirst()).loaded();
  }

  /** What bends too far is told with what it was taken to carry; its cure, set, leaves no fault. */
  @Test
  void aTopThatBendsTooFarIsADoubt() {
    Finding sags = ofKind(check(low("48")), "top-sags").getFirst();
    assertThat(sags.severity()).isEqualTo(Severity.DOUBT);
    assertThat(sags.what())
        .startsWith("the top, with its load in a row 6.5 in deep along the front edge, sags by ")
        .endsWith("No job states what stands on a top; 25 lb/ft is taken, by top-load");
    Stated.OfSetting less =
        sags.remedies().stream()
            .flatMap(r -> r.stated().stream())
            .map(Stated.OfSetting.class::cast)
            .findFirst()
            .orElseThrow();
    SettingValue value = SettingReader.read(less.setting(), less.value(), Unit.INCH).orThrow();
    assertThat(ofKind(check(with(low("48"), less.setting(), value)), "top-sags")).isEmpty();
  }

  @Test
  void whatNobodyReachesAndWhatCarriesACaseIsNotJudged() {
    SettingValue low = new SettingValue.OfLength(in("39"));
    assertThat(top(check(with(low("36"), Setting.TOP_REACH, low)))).isEmpty();
    CaseDraft upper = low("36");
    upper.name = "Upper";
    upper.kick = Optional.empty();
    upper.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    CaseOrder onLow = upper.order().standingOn(Optional.of("Low"));
    Strength strength = Shelving.check(SampleJobs.job(low("36").order(), onLow));
    assertThat(top(strength)).isEmpty();
    assertThat(strength.cases().getLast().top()).isNotEmpty();
    assertThat(top(check(low("36")))).isNotEmpty();
  }

  /** 3.25 in behind the front: a row there turns a case forward whose foot stands 4 in back. */
  @Test
  void whatStandsOnATopTipsACaseWhoseFootStandsFurtherBack() {
    double little = value(check(loaded(footed(), 0.01)), "tips-at-forward");
    double much = value(check(loaded(footed(), 0.11)), "tips-at-forward");
    double row = in("3 1/4").mm() - in("4").mm();
    double width = in("36").mm();
    double fall = 0.005 * (in("40").mm() + in("3 1/4").mm());
    assertThat(much - little).isCloseTo(0.1 * width * (row - fall) / in("40").mm(), within(0.01));
  }

  private static CaseDraft footed() {
    CaseDraft draft = low("36");
    draft.kick = Optional.of(new Kick(in("4"), in("4"), "ply"));
    draft.load = Optional.of(new Load.PerLength(Quantity.of(0.01, QuantityUnit.LINE_LOAD)));
    return draft;
  }

  @Test
  void partitionsBringDownWhatStandsOnIt() {
    double little = value(check(loaded(parted(), 0.01)), "partition-load-1");
    double much = value(check(loaded(parted(), 1)), "partition-load-1");
    double clear = value(check(parted()), "top/span");
    assertThat(much - little).isCloseTo(0.99 * clear, within(0.01));
  }

  private static CaseDraft parted() {
    CaseDraft draft = low("36");
    draft.bays = List.of(SampleJobs.bay(1), SampleJobs.bay(1));
    return draft;
  }

  /** What stands on no top that nobody reaches. */
  private static CaseDraft bare(CaseDraft draft) {
    return with(draft, Setting.TOP_REACH, new SettingValue.OfLength(Length.ZERO));
  }

  private static Figure figure(Strength strength, String end) {
    var answer = strength.cases().getFirst();
    return find(
        Stream.of(answer.figures(), answer.racking(), answer.standing())
            .flatMap(List::stream)
            .toList(),
        end);
  }

  /** All of it comes to the floor. */
  @Test
  void theFloorCarriesWhatStandsOnTheTop() {
    Figure with = figure(check(loaded(low("48"), 0.8)), "/floor-load");
    Figure without = figure(check(bare(loaded(low("48"), 0.8))), "/floor-load");
    assertThat(input(with, "F₃")).isCloseTo(0.8 * input(with, "W"), within(1e-6));
    assertThat(input(without, "F₃")).isZero();
    assertThat(with.value().value() - without.value().value())
        .isCloseTo(1000 * 0.8 / input(with, "D"), within(1e-9));
  }

  /** A case that leans takes it along, as far as its top goes. */
  @Test
  void whatStandsOnTheTopLeansTheCase() {
    Figure with = figure(check(loaded(low("48"), 0.8)), "/sway");
    Figure without = figure(check(bare(loaded(low("48"), 0.8))), "/sway");
    double newton = input(figure(check(loaded(low("48"), 0.8)), "/floor-load"), "F₃");
    assertThat(input(with, "B") - input(without, "B"))
        .isCloseTo(newton * input(with, "h"), within(1e-3));
    assertThat(with.value().value()).isGreaterThan(without.value().value());
  }

  /**
   * A moment at the end of a beam bows it by M h² / (9 √3 E I) (any handbook of beams); the shelves
   * bow it as much more or less as they do alone, at the most.
   */
  @Test
  void theEndOfTheTopBowsASide() {
    Figure with = figure(check(loaded(low("48"), 8)), "/bow-1-b");
    Figure without = figure(check(bare(loaded(low("48"), 8))), "/bow-1-b");
    double h = input(with, "h");
    double moment = inputs(with, "M").getLast();
    assertThat(inputs(with, "a").getLast()).isEqualTo(h);
    assertThat(with.value().value())
        .isCloseTo(
            moment * h * h / (9 * Math.sqrt(3) * input(with, "E I")),
            within(1.01 * without.value().value()))
        .isGreaterThan(without.value().value());
    double end = input(figure(check(loaded(low("48"), 8)), "top/joint-load"), "q");
    assertThat(end).isCloseTo(8, within(1e-6));
  }

  /**
   * Sideways only what lies beyond the plumb line over the foot turns the case: q x² / 2, x the
   * length of the top beyond it, of which its foot is as far from the side's as the joint says.
   */
  @Test
  void onlyWhatLiesBeyondTheFootTurnsItSideways() {
    CaseDraft draft = with(low("20"), Setting.FLOOR_SLOPE_SIDEWAYS, new SettingValue.OfNumber(50));
    double with = held(figure(check(loaded(draft, 0.8)), "/tips-sideways-turning"));
    double without = held(figure(check(bare(draft)), "/tips-sideways-turning"));
    double up = 40 * 25.4 + 165 / 2.0;
    double beyond = 0.05 * up - (0.71875 - 0.375) * 25.4;
    assertThat(without - with).isCloseTo(0.8 * beyond * beyond / 2, withPercentage(2));
  }

  private static double held(Figure tips) {
    return input(tips, "F") * (input(tips, "x") - input(tips, "n") * input(tips, "z") / 1000);
  }
}
