package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.measure.Inputs.inputs;
import static fourpin.strength.Shelving.ofKind;
import static fourpin.strength.Stacks.find;
import static fourpin.strength.Stacks.stacked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding.Remedy;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.strength.plate.MirroredPlate;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Band;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.PlateSolver;
import fourpin.strength.plate.Rigidity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Of a top what is under the case on it is counted on, and each of its parts is judged. */
@ExtendWith(CommaDecimals.class)
class StackedShallowTest {

  private static final double THICK = 0.75 * 25.4;

  private static CaseDraft draft(String name, String depth, int bays) {
    CaseDraft draft = new CaseDraft();
    draft.name = name;
    draft.material = "chips";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("30"), in(depth));
    draft.bays = new ArrayList<>();
    for (int i = 0; i < bays; i++) {
      draft.bays.add(SampleJobs.bay(2));
    }
    draft.load = Optional.of(new Load.Holds("records, 12 in"));
    return draft;
  }

  private static CaseDraft flat(String depth, int bays) {
    return Stacks.flat(draft("Upper", depth, bays));
  }

  private static CaseDraft base(String depth) {
    return Stacks.bare(draft("Base", depth, 1));
  }

  /** With a strip of oak along its front edges, as high as its panels. */
  private static CaseDraft stripped(String depth) {
    CaseDraft draft = base(depth);
    draft.edging = List.of(SampleJobs.strip("1/2", "3/4"));
    return draft;
  }

  /** Of all boards here. */
  private static double modulus() {
    return input(find(stacked(draft("Upper", "12", 2), base("12")), "stack-top-stress"), "E");
  }

  private static double stiffness(double modulus, double wide) {
    return modulus * wide * 25.4 * Math.pow(THICK, 3) / 12;
  }

  /**
   * The bottom stands off the top, and a partition in the middle: R L³ / (48 E I) + 5 g L⁴ / (384 E
   * I), and 6 M / (b t²) of M = R L / 4 + g L² / 8 (Wood Handbook FPL-GTR-190, Table 9-1).
   */
  @ParameterizedTest
  @CsvSource({"12, 12", "16, 12", "24, 12", "24, 8", "24, 24"})
  void onlyWhatIsUnderTheCaseCounts(String deep, String shallow) {
    Strength strength = stacked(draft("Upper", shallow, 2), base(deep));
    Figure sag = find(strength, "stack-top-sag");
    double span = input(sag, "L");
    double wide = Double.parseDouble(shallow);
    double stiff = stiffness(modulus(), wide);
    double load = input(sag, "R");
    double own = input(sag, "g");
    assertThat(input(sag, "E I")).isCloseTo(stiff, withPercentage(0.01));
    assertThat(sag.value().value())
        .isCloseTo(
            load * Math.pow(span, 3) / (48 * stiff) + 5 * own * Math.pow(span, 4) / (384 * stiff),
            withPercentage(4));
    double moment = load * span / 4 + own * span * span / 8;
    assertThat(find(strength, "stack-top-stress").value().value())
        .isCloseTo(6 * moment / (wide * 25.4 * THICK * THICK), withPercentage(0.01));
  }

  /**
   * As a plate, hinged along its ends, twice as stiff under the bottom that bends along as before
   * it: that sags more than a beam of all the depth, and less than is told.
   */
  @ParameterizedTest
  @CsvSource({"18, 12", "24, 10", "24, 8"})
  void itIsToldToSagNoLessThanAPlate(double deep, double shallow) {
    Figure sag = find(stacked(flat("" + (int) shallow, 1), base("" + (int) deep)), "stack-top-sag");
    double span = input(sag, "L");
    double line = inputs(sag, "q").stream().mapToDouble(q -> q).sum();
    double plate = plate(span, deep, shallow, line, input(sag, "g"));
    double all = line + input(sag, "g");
    double beam = 5 * all * Math.pow(span, 4) / (384 * stiffness(modulus(), deep + shallow));
    assertThat(plate).isGreaterThan(1.03 * beam);
    assertThat(sag.value().value()).isBetween(plate, 1.7 * plate);
  }

  /** How far it sags at the most. */
  private static double plate(double span, double deep, double shallow, double line, double own) {
    Flat flat = Matters.of(SampleJobs.board("chips", "particleboard, M-2", "3/4")).flat();
    Rigidity one = flat.plate(THICK);
    Rigidity two =
        new Rigidity(2 * one.alongX(), 2 * one.alongY(), 2 * one.coupling(), 2 * one.twist());
    double front = (deep - shallow) * 25.4;
    double back = deep * 25.4;
    Plate plate =
        new Plate(
            span,
            List.of(new Band(front, one), new Band(back - front, two)),
            Optional.empty(),
            Edges.ends(Hold.HINGED),
            List.of());
    return new MirroredPlate(plate, PlateSolver.PARTS)
        .under(
            List.of(
                new PlateLoad.Patch(line / (back - front), 0, span, front, back),
                plate.evenly(own / back)))
        .orElseThrow()
        .deflection(span / 2, back);
  }

  /**
   * All rectangles of one height bend about one middle: E I = (E₁ b₁ + E₂ b₂) t³ / 12, σ = M E z /
   * (E I). Boards of hardwood: 18 MPa, class D18 of EN 338, times 0.70 over 1.3 and 1.5.
   */
  @Test
  void aStripIsHeldAgainstItsOwnStrength() {
    Strength strength = stacked(draft("Upper", "12", 2), stripped("12"));
    Figure stress = find(strength, "stack-top-stress");
    double strip = input(stress, "E");
    assertThat(strip).isGreaterThan(3 * modulus());
    assertThat(input(stress, "E I"))
        .isCloseTo(stiffness(modulus(), 11.5) + stiffness(strip, 0.5), withPercentage(0.01));
    assertThat(stress.title()).contains("front strip of the top");
    assertThat(stress.value().value())
        .isCloseTo(
            input(stress, "M") * strip * THICK / 2 / input(stress, "E I"), withPercentage(0.01));
    assertThat(find(strength, "stack-top-stress-allowed").value().value())
        .isCloseTo(18 * 0.7 / 1.3 / 1.5, within(1e-9));
    assertThat(ofKind(strength, "stack-top-breaks").getFirst().what())
        .contains("stresses the front strip of its top to", "937 psi");
  }

  /** It bends no more than if all the top bent alike. */
  @Test
  void aStripBeforeTheCaseIsJudgedByTheWholeTop() {
    Figure stress = find(stacked(draft("Upper", "12", 2), stripped("18")), "stack-top-stress");
    double strip = input(stress, "E");
    assertThat(stress.title()).contains("front strip of the top");
    assertThat(input(stress, "E I"))
        .isCloseTo(stiffness(modulus(), 17.5) + stiffness(strip, 0.5), withPercentage(0.01));
    assertThat(stress.value().value())
        .isCloseTo(
            input(stress, "M") * strip * THICK / 2 / input(stress, "E I"), withPercentage(0.01));
  }

  /** A partition under the upright leaves a bay beside it that what lies on it bends too far. */
  @Test
  void aPartitionThatDoesNotCureIsNoCure() {
    CaseDraft upper = flat("12", 2);
    CaseDraft below = base("12");
    upper.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("60"), in("30"), in("12"));
    below.sizes = upper.sizes;
    Bay bay = upper.bays.getFirst();
    upper.bays =
        List.of(
            new Bay(
                Optional.of(in("8")),
                bay.fixedShelves(),
                bay.shelves(),
                bay.supports(),
                bay.load()),
            bay);
    assertThat(ofKind(stacked(upper, below), "stack-off-uprights").getFirst().remedies())
        .extracting(Remedy::what)
        .isNotEmpty()
        .noneMatch(cure -> cure.contains("partition"));
  }
}
