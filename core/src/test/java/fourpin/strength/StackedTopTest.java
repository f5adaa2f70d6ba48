package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.ofKind;
import static fourpin.strength.Stacks.find;
import static fourpin.strength.Stacks.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.Joint;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A top that carries a case is held against its strength, and its ends against their joints. */
@ExtendWith(CommaDecimals.class)
class StackedTopTest {

  private static CaseDraft draft(String name, String width, String height, int bays) {
    CaseDraft draft = new CaseDraft();
    draft.name = name;
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in(height), in("12"));
    draft.bays = Stream.generate(() -> SampleJobs.bay(3)).limit(bays).toList();
    draft.load = Optional.of(new Load.Holds("records, 12 in"));
    return draft;
  }

  /** Of particleboard, with nothing on its own shelves to speak of. */
  private static CaseDraft base(String width, int bays) {
    CaseDraft draft = draft("Base", width, "30", bays);
    draft.material = "chips";
    return Stacks.bare(draft);
  }

  /** Its bottom stands off the top below. */
  private static Strength stacked(CaseDraft base) {
    return Stacks.stacked(draft("Upper", "60", "60", 2), base);
  }

  /**
   * A load in the middle of a simple beam and one all over it: R L / 4 + q L² / 8; the extreme
   * fibre of a rectangle is stressed to 6 M / (b t²) (AISC; Wood Handbook FPL-GTR-190, Section 9).
   * Class P2 boards of 3/4 in: 11 MPa by EN 12369-1, times 0.30 over 1.3 and 1.5.
   */
  @Test
  void whatBendsItStressesIt() {
    Strength strength = stacked(base("60", 1));
    Figure sag = find(strength, "stack-top-sag");
    Figure stress = find(strength, "stack-top-stress");
    double span = input(sag, "L");
    double moment = input(sag, "R") * span / 4 + input(sag, "g") * span * span / 8;
    double wide = 12 * 25.4;
    double thick = 0.75 * 25.4;
    assertThat(stress.value().value())
        .isCloseTo(6 * moment / (wide * thick * thick), withPercentage(0.01));
    assertThat(input(stress, "M")).isCloseTo(moment, withPercentage(0.01));
    Figure allowed = find(strength, "stack-top-stress-allowed");
    assertThat(allowed.value().value())
        .isCloseTo(
            input(allowed, "f")
                * input(allowed, "k_mod")
                / (input(allowed, "γ_M") * input(allowed, "γ_Q")),
            within(1e-9));
    assertThat(allowed.value().value()).isCloseTo(2.2, within(0.2));
  }

  @Test
  void aTopThatMayBreakUnderACaseIsAnError() {
    Strength strength = stacked(base("60", 1));
    Finding found = ofKind(strength, "stack-top-breaks").getFirst();
    assertThat(found.severity()).isEqualTo(Severity.ERROR);
    assertThat(found.place().caseName()).isEqualTo("Base");
    assertThat(found.place().part()).contains("T");
    assertThat(found.what()).contains("it may break");
    assertThat(found.figures())
        .extracting(Figure::id)
        .contains("upper/stack-top-stress", "upper/stack-top-stress-allowed");
    assertThat(found.remedies())
        .extracting(Remedy::what)
        .anyMatch(cure -> cure.contains("partition") && cure.contains("is stressed to"));
  }

  /** The cure by a partition, made. */
  @Test
  void uprightOverUprightBreaksNothing() {
    assertThat(ofKind(stacked(base("60", 2)), "stack-top-breaks")).isEmpty();
  }

  /** A bottom that lies on it and bends alike takes its share of the moment by its stiffness. */
  @Test
  void aBottomThatBendsAlongTakesItsShare() {
    CaseDraft upper = draft("Upper", "60", "60", 2);
    upper.kick = Optional.empty();
    upper.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    CaseDraft below = base("60", 1);
    below.material = upper.material;
    Strength strength = Stacks.stacked(upper, below);
    Figure stress = find(strength, "stack-top-stress");
    double section = 12 * 25.4 * Math.pow(input(stress, "z") * 2, 2) / 6;
    double own = input(stress, "E") * section * input(stress, "z");
    double share = own / input(find(strength, "stack-top-sag"), "E I");
    assertThat(share).isCloseTo(0.5, within(1e-9));
    assertThat(stress.value().value())
        .isCloseTo(share * input(stress, "M") / section, withPercentage(0.01));
  }

  /** A lever over the open bay brings half of what stands in its middle to each end. */
  @ParameterizedTest
  @CsvSource({"l", "r"})
  void whatStandsOnItComesToItsEnds(String end) {
    Strength strength = stacked(base("60", 1));
    Figure sag = find(strength, "stack-top-sag");
    Figure load = find(strength, "stack-top-" + end + "/joint-load");
    double own = input(sag, "g") * input(sag, "L");
    assertThat(load.value().value())
        .isCloseTo((value(strength, "stack-press-p1") + own) / 2, withPercentage(0.01));
    Figure bearing = find(strength, "stack-top-" + end + "/joint-bearing");
    assertThat(input(bearing, "R")).isCloseTo(load.value().value(), within(1e-9));
    assertThat(bearing.value().value())
        .isGreaterThanOrEqualTo(
            input(bearing, "R") / (input(bearing, "a") * input(bearing, "D")) - 1e-9);
  }

  /** What stands over a side goes down into it, and leaves the joint alone. */
  @Test
  void sidesOverSidesLoadNoJoint() {
    Strength strength = Stacks.stacked(draft("Upper", "60", "60", 1), base("60", 1));
    Figure sag = find(strength, "stack-top-sag");
    assertThat(value(strength, "stack-top-l/joint-load"))
        .isCloseTo(input(sag, "g") * input(sag, "L") / 2, withPercentage(0.01));
    assertThat(ofKind(strength, "joint-carries"))
        .noneMatch(f -> f.place().part().equals(Optional.of("T")));
  }

  /** Screws in end grain under a case that stands beside the sides. */
  @Test
  void jointsThatCarryTooMuchUnderACaseAreAnError() {
    CaseDraft below = base("60", 1);
    below.material = "ply";
    below.topJoint = new Joint(Joint.Kind.BUTT, Optional.empty());
    Strength strength = Stacks.stacked(draft("Upper", "48", "60", 1), below);
    Finding found =
        ofKind(strength, "joint-carries").stream()
            .filter(f -> f.place().caseName().equals("Base"))
            .filter(f -> f.place().part().equals(Optional.of("T")))
            .findFirst()
            .orElseThrow();
    assertThat(found.severity()).isEqualTo(Severity.ERROR);
    assertThat(found.what()).contains("under what stands on it").doesNotContain("top-load");
    assertThat(found.figures().getFirst().value().value())
        .isGreaterThan(found.figures().get(1).value().value());
  }

  /** Half over a side, an upright brings half of its press to the joint. */
  @Test
  void whatStandsHalfOverASideLoadsTheJointByHalf() {
    Strength aligned = Stacks.stacked(draft("Upper", "60", "60", 1), base("60", 1));
    CaseDraft narrower = draft("Upper", "59 1/4", "60", 1);
    narrower.material = "chips";
    Strength half = Stacks.stacked(narrower, base("60", 1));
    double more = value(half, "stack-top-l/joint-load") - value(aligned, "stack-top-l/joint-load");
    assertThat(more / value(half, "stack-press-l")).isCloseTo(0.5, within(0.01));
  }
}
