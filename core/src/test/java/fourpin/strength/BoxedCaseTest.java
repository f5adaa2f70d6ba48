package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.measure.Inputs.inputs;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Kick;
import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.job.Material.Turn;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.strength.Beam.Hold;
import fourpin.strength.Beam.Load;
import fourpin.strength.Beam.Support;
import fourpin.strength.frame.Member;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases of hollow panels, which give by shear as well as they bend. */
@ExtendWith(CommaDecimals.class)
class BoxedCaseTest {

  private static final String PLY = "plywood, veneer core";

  /** Faces of a quarter inch on ribs across, few of them, 3/4 in thick; or solid as thick. */
  private static Material panel(boolean hollow) {
    return new Material(
        "panel",
        Material.Kind.SHEET,
        PLY,
        in("1 1/2"),
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        hollow
            ? List.of(
                new Layer(PLY, in("1/4"), 1, Turn.ALONG, Optional.empty(), Optional.empty()),
                new Layer(
                    PLY, in("1"), 0.13, Turn.ACROSS, Optional.of("ribs"), Optional.of(in("3/4"))),
                new Layer(PLY, in("1/4"), 1, Turn.ALONG, Optional.empty(), Optional.empty()))
            : List.of());
  }

  private static CaseDraft draft(String name, String height) {
    CaseDraft draft = new CaseDraft();
    draft.name = name;
    draft.material = "panel";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("48"), in(height), in("12"));
    draft.bays = List.of(SampleJobs.bay(2));
    return draft;
  }

  private static Strength stacked(boolean hollow) {
    CaseDraft base = draft("Base", "30");
    CaseDraft upper = draft("Upper", "40");
    upper.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("30"), in("40"), in("12"));
    Job job = SampleJobs.job(upper.order().standingOn(Optional.of("Base")), base.order());
    List<Material> all = new ArrayList<>(job.materials());
    all.add(panel(hollow));
    return Shelving.check(JobDraft.changed(job, d -> d.materials = all));
  }

  private static Figure find(Strength strength, String id) {
    return Stream.concat(
            strength.cases().stream().flatMap(c -> c.figures().stream()),
            strength.cases().stream().flatMap(c -> c.racking().stream()))
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /**
   * {@code w = 5 q L⁴ / (384 E I) + q L² / (8 G A)}, and of two loads, each a from its end, {@code
   * R a (3 L² - 4 a²) / (24 E I) + R a / (G A)}: Wood Handbook FPL-GTR-190, eq. 9-1 and Table 9-1.
   */
  @ParameterizedTest
  @CsvSource({"true, 1.3", "false, 1.002"})
  void aTopBelowGivesByShear(boolean hollow, double more) {
    Figure sag = find(stacked(hollow), "upper/stack-top-sag");
    double l = input(sag, "L");
    double a = input(sag, "a");
    double q = input(sag, "g");
    double r = input(sag, "R");
    assertThat(inputs(sag, "R")).hasSize(2);
    double bends = 5 * q * Math.pow(l, 4) / 384 + r * a * (3 * l * l - 4 * a * a) / 24;
    double bent = bends / input(sag, "E I");
    double sheared = (q * l * l / 8 + r * a) / input(sag, "G A");
    assertThat(sag.value().value()).isCloseTo(bent + sheared, withPercentage(0.01));
    assertThat(sag.value().value()).isGreaterThan(more * bent);
  }

  /** Hollow uprights let a case lean more than their bending says, and solid ones hardly. */
  @ParameterizedTest
  @CsvSource({"true, 0.9, 0.95", "false, 0.999, 1"})
  void hollowPanelsLeanByShear(boolean hollow, double least, double most) {
    Figure joints = find(stacked(hollow), "base/sway-joints-stiffness");
    double bentOnly = 0;
    double all = 0;
    for (int i = 0; i < inputs(joints, "n").size(); i++) {
      double h = input(joints, "h");
      double l = inputs(joints, "L").get(i);
      double turns =
          1 / (10 * inputs(joints, "k").get(i) * inputs(joints, "D").get(i))
              + l / (6 * inputs(joints, "E I₁").get(i))
              + h / (6 * inputs(joints, "E I₂").get(i));
      double slants =
          2 / (inputs(joints, "G A₁").get(i) * l) + 2 / (inputs(joints, "G A₂").get(i) * h);
      bentOnly += inputs(joints, "n").get(i) / turns;
      all += inputs(joints, "n").get(i) / (turns + slants);
    }
    assertThat(joints.value().value()).isCloseTo(all, withPercentage(1e-6));
    assertThat(all / bentOnly).isStrictlyBetween(least, most);
  }

  /**
   * Half of a panel bent in an S is a cantilever, its end pushed; so is all of one that a moment
   * turns at one end. Held against the beam of singularity functions, of which it shares nothing.
   */
  @ParameterizedTest
  @CsvSource({"900, 2e9, 1e5", "900, 2e9, Infinity", "300, 4e8, 2e4"})
  void membersTurnAsCantileversSay(double length, double bending, double shear) {
    Member member = new Member(length, bending, shear);
    assertThat(member.inS()).isCloseTo(turn(length / 2, bending, shear), within(1e-12));
    assertThat(member.fromOneEnd()).isCloseTo(turn(length, bending, shear), within(1e-12));
  }

  /** Of the line from the foot to the end of a cantilever, over the moment at its foot. */
  private static double turn(double length, double bending, double shear) {
    Beam cantilever = new Beam(length, bending, shear, List.of(new Support(0, Hold.CLAMPED)));
    double down = cantilever.under(List.of(new Load.Point(1, length))).deflection(length);
    return down / length / length;
  }

  /** A kick of 20 in gives more by shear than it bends. */
  @Test
  void aHighKickGivesByShear() {
    CaseDraft draft = draft("Base", "60");
    draft.kick = Optional.of(new Kick(in("20"), in("0"), "ply"));
    Job job = SampleJobs.job(draft.order());
    List<Material> all = new ArrayList<>(job.materials());
    all.add(panel(false));
    Figure kick =
        find(
            Shelving.check(JobDraft.changed(job, d -> d.materials = all)),
            "base/sway-kick-stiffness");
    double b = input(kick, "b");
    assertThat(2 / (input(kick, "G A") * b)).isGreaterThan(b / (6 * input(kick, "E I")));
    double squares = inputs(kick, "r").stream().mapToDouble(r -> r * r).sum();
    double turns = 1 / (input(kick, "k") * squares) + b / (6 * input(kick, "E I"));
    assertThat(kick.value().value())
        .isCloseTo(2 / (turns + 2 / (input(kick, "G A") * b)), withPercentage(1e-6));
  }
}
