package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.FixedShelving.find;
import static fourpin.strength.FixedShelving.loaded;
import static fourpin.strength.FixedShelving.of;
import static fourpin.strength.FixedShelving.value;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.job.CaseDraft;
import fourpin.job.Joint;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What fixed shelves and partitions do to what holds them. */
@ExtendWith(CommaDecimals.class)
class JointTest {

  private static void joined(CaseDraft draft, Joint.Kind kind) {
    draft.fixedShelfJoint = CaseDraft.joint(kind, "1/4");
  }

  /** No less deep than the shelf, so that it can't stand in a row in front. */
  private static void filling(CaseDraft draft, double newtonEachMm) {
    loaded(draft, newtonEachMm);
    draft.settings = draft.settings.with(Setting.ROW_DEPTH, new SettingValue.OfLength(in("40")));
  }

  /** Half of load and weight comes to each end. */
  @ParameterizedTest
  @EnumSource(
      value = Joint.Kind.class,
      names = {"DADO", "BUTT"})
  void eachEndCarriesHalf(Joint.Kind kind) {
    Figure load = find(of(d -> joined(d, kind)), "joint-load");
    assertThat(load.value().value())
        .isCloseTo((input(load, "q") + input(load, "g")) * input(load, "l") / 2, within(1e-6));
  }

  /** The shelf stands 1/4 in deep in the side over its whole depth. */
  @Test
  void aDadoBearsOverItsDepth() {
    Figure bearing =
        find(
            of(
                d -> {
                  joined(d, Joint.Kind.DADO);
                  filling(d, 0.4);
                }),
            "joint-bearing");
    assertThat(input(bearing, "a")).isCloseTo(6.35, within(1e-6));
    assertThat(bearing.value().value())
        .isCloseTo(input(bearing, "R") / (input(bearing, "a") * input(bearing, "D")), within(1e-9));
  }

  /** A maker who cut rabbets looks for no dado. */
  @ParameterizedTest
  @CsvSource({
    "case/shelf-1-f1/joint-bearing, shelf, lower wall of its dado, depth of the dado",
    "case/top/joint-bearing, top, shoulder of its rabbet, depth of the rabbet"
  })
  void aJointIsCalledWhatItIs(String id, String part, String wall, String depth) {
    Strength strength = of(d -> d.name = "Case");
    Figure bearing =
        Stream.concat(
                strength.shelves().stream().flatMap(s -> s.inSides().stream()),
                strength.cases().getFirst().figures().stream())
            .filter(f -> f.id().equals(id))
            .findFirst()
            .orElseThrow();
    assertThat(bearing.title()).contains("pressure of the " + part + " on the " + wall);
    assertThat(bearing.inputs())
        .extracting(Figure.Input::meaning)
        .contains(depth, "depth of the " + part);
  }

  /** Screws at most 6 in apart over about 11 in: two. */
  @Test
  void screwsShareTheLoadOfTheirEnd() {
    Figure screw =
        find(
            of(
                d -> {
                  joined(d, Joint.Kind.BUTT);
                  filling(d, 0.4);
                }),
            "joint-screw");
    assertThat(input(screw, "n")).isEqualTo(2);
    assertThat(screw.value().value()).isCloseTo(input(screw, "R") / 2, within(1e-9));
  }

  /** By moments about the back one, two of them being in quarters of the depth. */
  @Test
  void aRowInFrontPullsAtTheFrontScrew() {
    Figure screw = find(of(d -> joined(d, Joint.Kind.BUTT)), "joint-screw");
    assertThat(screw.title()).endsWith("the load in a row along the front edge");
    double back = input(screw, "y₀") + input(screw, "y₁ - y₀");
    assertThat(screw.value().value())
        .isCloseTo(
            input(screw, "R") * (back - input(screw, "y")) / (2 * input(screw, "y₁ - y₀")),
            within(1e-6))
        .isGreaterThan(0.7 * input(screw, "R"));
  }

  /**
   * Statics of a line that only pushes, by hand: even, at the third of it, and nearer the edge; at
   * the edge and beyond it over no less than 20 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "150, 1", "100, 2", "50, 4", "250, 4", "10, 20", "5, 30", "0, 30", "-3, 30", "300, 30"
  })
  void theNearerTheEdgeTheHarderItPresses(double middle, double times) {
    assertThat(new EndLoad(LoadCase.EVEN, "", 300, middle).onLine(300, 20))
        .isCloseTo(times, within(1e-9));
  }

  /** Three screws give alike: 100 N at the first of them pulls five sixths of it there. */
  @Test
  void threeScrewsShareByStatics() {
    EndLoad load = new EndLoad(LoadCase.EVEN, "", 100, 50);
    assertThat(load.onScrew(List.of(50.0, 150.0, 250.0))).isCloseTo(500.0 / 6, within(1e-9));
  }

  /** The same load on the same span: its ends hang on their screws as a fixed shelf's do. */
  @Test
  void aBottomBehindAKickHangsOnItsScrews() {
    Consumer<CaseDraft> butt =
        d -> {
          d.bottomJoint = CaseDraft.joint(Joint.Kind.BUTT, "1/4");
          filling(d, 3);
        };
    Strength strength = of(butt);
    Figure screw =
        strength.cases().getFirst().feet().stream()
            .filter(f -> f.id().endsWith("bottom-1/joint-screw"))
            .findFirst()
            .orElseThrow();
    assertThat(screw.value().value())
        .isCloseTo(input(screw, "R") / input(screw, "n"), within(1e-6));
    assertThat(ofKind(strength, "joint-carries"))
        .anyMatch(f -> f.what().startsWith("the bottom, its kick not counted on: the most loaded"));
  }

  /**
   * NDS: yield times 0.9 times 0.67 over 10 x 0.19 + 0.5; Eurocode 5: times 0.7 / 3 / 1.3, of a
   * load that is 1.5 times as large (EN 1990, Table A1.2(B)).
   */
  @Test
  void codesReduceWhatYields() {
    Strength strength = of(d -> joined(d, Joint.Kind.BUTT));
    Figure nds = find(strength, "joint-screw-nds");
    assertThat(nds.value().value()).isCloseTo(input(nds, "Z") * 0.9 * 0.67 / 2.4, within(1e-6));
    Figure ec5 = find(strength, "joint-screw-ec5");
    assertThat(ec5.value().value())
        .isCloseTo(input(ec5, "F") * 0.7 / 3 / (1.3 * 1.5), within(1e-6));
  }

  @Test
  void screwsThatCarryTooMuchAreFoundAndMoreOfThemCure() {
    Consumer<CaseDraft> heavy =
        d -> {
          joined(d, Joint.Kind.BUTT);
          filling(d, 1.2);
        };
    Strength strength = of(heavy);
    Finding finding = ofKind(strength, "joint-carries").getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.place().part()).contains("1-F1");
    Stated.OfSetting stated =
        finding.remedies().stream()
            .flatMap(r -> r.stated().stream())
            .map(Stated.OfSetting.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(stated.setting()).isEqualTo(Setting.SCREW_SPACING);
    Strength cured =
        of(
            heavy.andThen(
                d ->
                    d.settings =
                        d.settings.with(
                            Setting.SCREW_SPACING,
                            new SettingValue.OfLength(in(stated.value().replace(" in", ""))))));
    assertThat(ofKind(cured, "joint-carries")).isEmpty();
    Strength dadoed = of(heavy.andThen(d -> joined(d, Joint.Kind.DADO)));
    assertThat(ofKind(dadoed, "joint-carries")).isEmpty();
  }

  /**
   * A cleat lies across the grain of solid sides, which move over the year; plywood may be glued
   * over its whole depth. Common practice.
   */
  @ParameterizedTest
  @CsvSource({
    "ply, 'glue and screw a cleat'",
    "oak, 'glue at its front end only, and the screws behind in slots'"
  })
  void aCleatLetsSolidSidesMove(String sides, String words) {
    Strength strength =
        of(
            d -> {
              d.material = sides;
              joined(d, Joint.Kind.BUTT);
              loaded(d, 2.9);
            });
    assertThat(ofKind(strength, "joint-carries").getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .filteredOn(what -> what.contains("cleat"))
        .hasSize(1)
        .allMatch(what -> what.contains(words));
  }

  /** A top lies at the end of the sides, where a rabbet fits and a dado does not. */
  @Test
  void aTopIsToldTheJointThatHoldsIt() {
    Consumer<CaseDraft> butt =
        d -> {
          d.topJoint = CaseDraft.joint(Joint.Kind.BUTT, "1/4");
          topLoaded(d, 1.5);
        };
    assertThat(ofTop(of(butt)).remedies())
        .extracting(Finding.Remedy::what)
        .anyMatch(what -> what.endsWith("joints: top: rabbet"))
        .noneMatch(what -> what.contains("dado"));
    Strength cured = of(butt.andThen(d -> d.topJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8")));
    assertThat(ofKind(cured, "joint-carries")).isEmpty();
  }

  private static Finding ofTop(Strength strength) {
    return ofKind(strength, "joint-carries").stream()
        .filter(f -> f.what().startsWith("the top"))
        .findFirst()
        .orElseThrow();
  }

  private static void topLoaded(CaseDraft draft, double newtonEachMm) {
    draft.settings =
        draft.settings.with(
            Setting.TOP_LOAD,
            new SettingValue.OfLoad(Quantity.of(newtonEachMm, QuantityUnit.LINE_LOAD)));
  }

  @Test
  void aShallowDadoCrushesUnderALoadOfStone() {
    Strength strength =
        of(
            d -> {
              d.fixedShelfJoint = CaseDraft.joint(Joint.Kind.DADO, "1/32");
              loaded(d, 2.9);
            });
    Finding finding = ofKind(strength, "joint-carries").getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(value(strength, "joint-bearing"))
        .isGreaterThan(value(strength, "joint-bearing-allowed"));
  }

  @Test
  void aPartitionBringsHalfOfBothBaysDown() {
    Strength strength = of(d -> joined(d, Joint.Kind.DADO));
    Figure load = strength.cases().getFirst().feet().getFirst();
    double ends =
        strength.shelves().stream()
            .mapToDouble(
                s ->
                    s.inSides().stream()
                        .filter(f -> f.id().endsWith("joint-load"))
                        .mapToDouble(f -> f.value().value())
                        .sum())
            .sum();
    assertThat(input(load, "Σ R")).isCloseTo(ends, within(1e-6));
    assertThat(ofKind(strength, "partition-sinks")).hasSize(1);
    Strength onTheFloor =
        of(
            d -> {
              d.kick = Optional.empty();
              d.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
            });
    assertThat(onTheFloor.findings())
        .extracting(Finding::kind)
        .doesNotContain("partition-foot", "partition-sinks");
  }
}
