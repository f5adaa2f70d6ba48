package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Edging;
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
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What holds of whole cases, alone and stacked, on a kick and flat, with partitions and without.
 */
@ExtendWith(CommaDecimals.class)
class CasePropertiesTest {

  private static final int JOBS = 12;

  /** Of figures, so that what is refused does not leave nothing to hold. */
  private static final int LEAST_HELD = 20;

  /** Rounding of sums, and of meshes that do not lie alike. */
  private static final double SAME = 1e-6;

  /** Last levels of ids; what sags comes first. */
  private static final String SAGS =
      "sag-now|sag-years|plate-front-row|plate-half|bottom-(\\d+-)?sag(-years)?|stack-top-sag";

  private static final String FORCES =
      "plate-stress|stress|support-push|load-(front|back)|end-load|joint-(load|bearing|screw)"
          + "|partition-load-\\d+|stack-press-.*";

  private static final Pattern SAG = Pattern.compile(".*/(" + SAGS + ")");

  /**
   * What other uprights share of a wider case may leave one of them less. The weight of one that
   * stands on another lies otherwise from front to back as it is wider, and turns about screws by
   * that.
   */
  private static final Pattern OF_SPANS =
      Pattern.compile(
          ".*/("
              + SAGS
              + "|plate-stress|stress|support-push|joint-load"
              + "|(?<!/stack-top-[lr]/)joint-screw)");

  private static final Pattern ALL = Pattern.compile(".*/(" + SAGS + "|" + FORCES + ")");

  /** Drawn at random. */
  private record Drawn(
      Length width,
      Length depth,
      String thickness,
      List<Bay> bays,
      double load,
      Joint.Kind joint,
      boolean onKick,
      boolean stacked) {

    static Drawn of(Random random) {
      int bays = random.nextInt(1, 4);
      Length width = Length.inches(random.nextInt(16 * bays, 34 * bays), 1);
      return new Drawn(
          width,
          Length.inches(random.nextInt(18, 30), 2),
          random.nextBoolean() ? "3/4" : "5/8",
          bays(random, bays, width),
          random.nextDouble(0.05, 0.6),
          random.nextBoolean() ? Joint.Kind.DADO : Joint.Kind.BUTT,
          random.nextBoolean(),
          random.nextBoolean());
    }

    /** The first of a width of its own, so that a mirrored case is another one. */
    private static List<Bay> bays(Random random, int count, Length width) {
      List<Edging> strip =
          random.nextBoolean() ? List.of() : List.of(SampleJobs.strip("3/4", "1 1/4"));
      Bay bay = Shelving.bay(Shelving.shelves("panel", strip), SampleJobs.pins());
      List<Bay> bays = new ArrayList<>(Collections.nCopies(count, bay));
      if (count > 1) {
        bays.set(
            0,
            new Bay(
                Optional.of(width.over(count + 1)),
                bay.fixedShelves(),
                bay.shelves(),
                bay.supports(),
                bay.load()));
      }
      return bays;
    }

    Drawn loaded(double more) {
      return new Drawn(width, depth, thickness, bays, more * load, joint, onKick, stacked);
    }

    Drawn longer() {
      return new Drawn(width.plus(in("3")), depth, thickness, bays, load, joint, onKick, stacked);
    }

    Drawn thicker() {
      return new Drawn(width, depth, "7/8", bays, load, joint, onKick, stacked);
    }

    Drawn mirrored() {
      return new Drawn(width, depth, thickness, bays.reversed(), load, joint, onKick, stacked);
    }

    Job job() {
      List<CaseOrder> orders = new ArrayList<>(List.of(order("Low", "30", onKick)));
      if (stacked) {
        orders.add(order("Upper", "40", false).standingOn(Optional.of("Low")));
      }
      Job job = SampleJobs.job(orders.toArray(CaseOrder[]::new));
      List<Material> materials = new ArrayList<>(job.materials());
      materials.add(SampleJobs.board("panel", "plywood, veneer core", thickness));
      return JobDraft.changed(job, d -> d.materials = materials);
    }

    private CaseOrder order(String name, String height, boolean kick) {
      CaseDraft draft = new CaseDraft();
      draft.name = name;
      draft.material = "panel";
      draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, width, in(height), depth);
      draft.bays = bays;
      draft.load = Optional.of(new Load.PerLength(line()));
      draft.settings = draft.settings.with(Setting.TOP_LOAD, new SettingValue.OfLoad(line()));
      draft.topJoint = CaseDraft.joint(joint, "1/4");
      if (!kick) {
        draft.kick = Optional.empty();
        draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
      }
      return draft.order();
    }

    private Quantity line() {
      return Quantity.of(load, QuantityUnit.LINE_LOAD);
    }
  }

  /** None of what casework refuses. */
  private static Map<String, Double> values(Drawn drawn, Pattern which) {
    Job job = drawn.job();
    Strength strength = StrengthChecker.check(job, CaseworkBuilder.build(job).cases());
    return Stream.concat(
            strength.shelves().stream().flatMap(s -> s.figures().stream()),
            strength.cases().stream().flatMap(CasePropertiesTest::figures))
        .filter(f -> which.matcher(f.id()).matches())
        .collect(Collectors.toMap(Figure::id, f -> f.value().value()));
  }

  private static Stream<Figure> figures(CaseAnswer answer) {
    return Stream.of(answer.feet(), answer.top(), answer.stacked()).flatMap(List::stream);
  }

  /** Each of the first is no more than the same of the second; how many were held so. */
  private static long grow(Drawn less, Drawn more, Pattern which) {
    Map<String, Double> before = values(less, which);
    Map<String, Double> after = values(more, which);
    List<String> both = before.keySet().stream().filter(after::containsKey).sorted().toList();
    for (String id : both) {
      double value = Objects.requireNonNull(before.get(id));
      assertThat(after.get(id))
          .as("%s of %s", id, less)
          .isGreaterThanOrEqualTo(value * (1 - SAME) - SAME);
    }
    return both.size();
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 31})
  void moreLoadNeverDoesLess(long seed) {
    Random random = new Random(seed);
    long held = 0;
    for (int i = 0; i < JOBS; i++) {
      Drawn drawn = Drawn.of(random);
      held += grow(drawn, drawn.loaded(1.2), ALL);
    }
    assertThat(held).isGreaterThan(LEAST_HELD);
  }

  @ParameterizedTest
  @ValueSource(longs = {5, 51})
  void aWiderCaseNeverSagsOrPressesLess(long seed) {
    Random random = new Random(seed);
    long held = 0;
    for (int i = 0; i < JOBS; i++) {
      Drawn drawn = Drawn.of(random);
      held += grow(drawn, drawn.longer(), OF_SPANS);
    }
    assertThat(held).isGreaterThan(LEAST_HELD);
  }

  @ParameterizedTest
  @ValueSource(longs = {7, 71})
  void thickerPanelsNeverSagMore(long seed) {
    Random random = new Random(seed);
    long held = 0;
    for (int i = 0; i < JOBS; i++) {
      Drawn drawn = Drawn.of(random);
      held += grow(drawn.thicker(), drawn, SAG);
    }
    assertThat(held).isGreaterThan(LEAST_HELD);
  }

  /** Whose left is right and right left: the same, in other places. */
  @ParameterizedTest
  @ValueSource(longs = {9, 91})
  void aMirroredCaseAnswersAlike(long seed) {
    Random random = new Random(seed);
    int parted = 0;
    for (int i = 0; i < JOBS; i++) {
      Drawn drawn = Drawn.of(random);
      List<Double> mirrored = sorted(values(drawn.mirrored(), ALL));
      assertThat(sorted(values(drawn, ALL)))
          .as(drawn.toString())
          .zipSatisfy(
              mirrored,
              (one, other) ->
                  assertThat(one).isCloseTo(other, within(SAME * (1 + Math.abs(other)))));
      parted += drawn.bays().size() > 1 && !mirrored.isEmpty() ? 1 : 0;
    }
    assertThat(parted).isPositive();
  }

  private static List<Double> sorted(Map<String, Double> values) {
    return values.values().stream().sorted().toList();
  }
}
