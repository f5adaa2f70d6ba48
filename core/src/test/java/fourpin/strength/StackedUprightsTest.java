package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Joint;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every upright of a case on another one stands over an upright there, or bends its top. */
@ExtendWith(CommaDecimals.class)
class StackedUprightsTest {

  private static CaseDraft draft(String name, String width, String height, Bay... bays) {
    CaseDraft draft = new CaseDraft();
    draft.name = name;
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in(height), in("12"));
    draft.bays = List.of(bays);
    return draft;
  }

  private static Bay[] bays(int count) {
    return Stream.generate(() -> SampleJobs.bay(3)).limit(count).toArray(Bay[]::new);
  }

  private static CaseOrder base(String width, int bays) {
    CaseDraft draft = draft("Base", width, "30", bays(bays));
    draft.settings = draft.settings.with(Setting.TOP_REACH, new SettingValue.OfLength(Length.ZERO));
    return draft.order();
  }

  private static CaseOrder standing(CaseDraft draft) {
    return draft.order().standingOn(Optional.of("Base"));
  }

  /** Its bottom lies on the base. */
  private static CaseOrder flat(String width, int bays) {
    CaseDraft draft = draft("Upper", width, "48", bays(bays));
    draft.kick = Optional.empty();
    draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    return standing(draft);
  }

  private static Strength check(Job job) {
    return StrengthChecker.check(job, CaseworkBuilder.build(job).cases());
  }

  private static Figure find(Strength strength, String id) {
    return Shelving.find(strength, id).orElseThrow();
  }

  private static double value(Strength strength, String id) {
    return find(strength, id).value().value();
  }

  private static List<Double> inputs(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(i -> i.symbol().equals(symbol))
        .map(i -> i.value().value())
        .toList();
  }

  private static double input(Figure figure, String symbol) {
    return inputs(figure, symbol).getFirst();
  }

  /**
   * A load in the middle of a simple beam bends it by R L³ / (48 E I), one all over it by 5 q L⁴ /
   * (384 E I) (Wood Handbook FPL-GTR-190, Table 9-1); the bottom above ends half a thickness before
   * the uprights' middles, and bends along with its own E I.
   */
  @Test
  void aPartitionOverAnOpenBayBendsTheTopBelow() {
    Strength strength = check(SampleJobs.job(flat("48", 2), base("48", 1)));
    Figure sag = find(strength, "upper/stack-top-sag");
    double span = input(sag, "L");
    double stiffness = input(sag, "E I");
    assertThat(input(sag, "a")).isCloseTo(span / 2, within(1e-9));
    assertThat(sag.value().value())
        .isCloseTo(
            input(sag, "R") * Math.pow(span, 3) / (48 * stiffness) + evenly(sag) / stiffness,
            withPercentage(0.5));
    assertThat(value(strength, "upper/stack-top-sag-years"))
        .isCloseTo(2 * sag.value().value(), within(1e-9));
    assertThat(value(strength, "upper/stack-off-p1")).isCloseTo(span / 2, within(1e-9));
    assertThat(value(strength, "upper/stack-off-l")).isZero();
    Finding found = ofKind(strength, "stack-off-uprights").getFirst();
    assertThat(found.severity()).isEqualTo(Severity.DOUBT);
    assertThat(found.what()).contains("P1");
    assertThat(found.remedies())
        .extracting(Remedy::what)
        .anyMatch(cure -> cure.contains("partition") && cure.endsWith("which is allowed"));
  }

  /**
   * What lies on it from b to c bends the middle of a beam by the integral of x (3 L² - 4 x²) / (48
   * E I) up to the middle, and likewise beyond; times E I.
   */
  private static double evenly(Figure sag) {
    double span = input(sag, "L");
    double all = input(sag, "g") * upTo(span, span);
    List<Double> lines = inputs(sag, "q");
    for (int i = 0; i < lines.size(); i++) {
      double from = inputs(sag, "b").get(i);
      double to = inputs(sag, "c").get(i);
      all += lines.get(i) * (upTo(to, span) - upTo(from, span));
    }
    return all;
  }

  private static double upTo(double x, double span) {
    return x > span / 2
        ? 2 * upTo(span / 2, span) - upTo(span - x, span)
        : (1.5 * span * span * x * x - Math.pow(x, 4)) / 48;
  }

  /** The cure by a partition, made. */
  @Test
  void uprightOverUprightBendsNothing() {
    Strength strength = check(SampleJobs.job(flat("48", 2), base("48", 2)));
    assertThat(value(strength, "upper/stack-off-p1")).isZero();
    assertThat(inputs(find(strength, "upper/stack-top-sag"), "R")).isEmpty();
    assertThat(ofKind(strength, "stack-off-uprights")).isEmpty();
    assertThat(ofKind(strength, "stack-top-sags")).isEmpty();
  }

  /** Sides over sides, and a bottom that lies on the top between them: nothing stands beside. */
  @Test
  void aBottomAloneThatBendsTheTopIsToldAsThat() {
    Strength strength = check(SampleJobs.job(flat("72", 1), base("72", 1)));
    assertThat(ofKind(strength, "stack-off-uprights")).isEmpty();
    Finding found = ofKind(strength, "stack-top-sags").getFirst();
    assertThat(found.remedies())
        .extracting(Remedy::what)
        .noneMatch(cure -> cure.contains("upright over upright"))
        .anyMatch(cure -> cure.startsWith("make the top of Base"));
  }

  /**
   * All that stands over a partition comes down by it: its weight, and what lies half way round.
   */
  @Test
  void aPartitionBringsDownWhatStandsOnItsCase() {
    Strength alone = check(SampleJobs.job(base("48", 2)));
    Strength stacked = check(SampleJobs.job(flat("48", 2), base("48", 2)));
    double more = foot(stacked) - foot(alone);
    double uprights =
        Stream.of("l", "p1", "r").mapToDouble(m -> value(stacked, "upper/stack-press-" + m)).sum();
    double lying = input(find(stacked, "base/floor-load"), "F₂") - uprights;
    assertThat(more)
        .isCloseTo(value(stacked, "upper/stack-press-p1") + lying / 2, withPercentage(0.1));
  }

  private static double foot(Strength strength) {
    return strength.cases().stream()
        .flatMap(c -> c.feet().stream())
        .filter(f -> f.id().equals("base/partition-load-1"))
        .mapToDouble(f -> f.value().value())
        .sum();
  }

  /** The cure by a thicker top. */
  @ParameterizedTest
  @CsvSource({"2, 1", "2 1/4, 0"})
  void aTopAsThickAsTheCureSaysHolds(String thickness, int found) {
    CaseDraft below = draft("Base", "48", "30", bays(1));
    below.material = "thick";
    Job job = SampleJobs.job(flat("48", 2), below.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(SampleJobs.board("thick", "plywood, veneer core", thickness));
    Job thicker = JobDraft.changed(job, d -> d.materials = materials);
    assertThat(ofKind(check(thicker), "stack-off-uprights")).hasSize(found);
  }

  /**
   * Two loads, each a from its end, bend the middle by R a (3 L² - 4 a²) / (24 E I) (AISC), and
   * shear.
   */
  @Test
  void bothSidesOfANarrowerCaseBendTheTopBelow() {
    Strength strength =
        check(SampleJobs.job(standing(draft("Upper", "30", "48", bays(1))), base("48", 1)));
    Figure sag = find(strength, "upper/stack-top-sag");
    double span = input(sag, "L");
    double stiffness = input(sag, "E I");
    double a = input(sag, "a");
    assertThat(inputs(sag, "a").getLast()).isCloseTo(span - a, within(1e-9));
    assertThat(sag.value().value())
        .isCloseTo(
            input(sag, "R") * a * (3 * span * span - 4 * a * a) / (24 * stiffness)
                + 5 * input(sag, "g") * Math.pow(span, 4) / (384 * stiffness)
                + (input(sag, "R") * a + input(sag, "g") * span * span / 8) / input(sag, "G A"),
            withPercentage(0.01));
    assertThat(ofKind(strength, "stack-off-uprights")).isNotEmpty();
  }

  /** All of the upper case and its contents comes down by its uprights or by its bottom. */
  @Test
  void uprightsAndBottomBringDownAllOfIt() {
    Strength strength = check(SampleJobs.job(flat("48", 2), base("48", 2)));
    double uprights =
        Stream.of("l", "p1", "r").mapToDouble(m -> value(strength, "upper/stack-press-" + m)).sum();
    double all = input(find(strength, "base/floor-load"), "F₂");
    assertThat(uprights).isBetween(0.6 * all, all);
    Strength raised =
        check(SampleJobs.job(standing(draft("Upper", "48", "48", bays(2))), base("48", 2)));
    assertThat(
            Stream.of("l", "p1", "r")
                .mapToDouble(m -> value(raised, "upper/stack-press-" + m))
                .sum())
        .isCloseTo(input(find(raised, "base/floor-load"), "F₂"), within(1e-6));
  }
}
