package fourpin.casework;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseOrder;
import fourpin.job.FaceFrame;
import fourpin.job.FaceFrame.Scribe;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every case, on jobs drawn from fixed seeds. */
class CaseworkPropertiesTest {

  private static final double ROUNDING_MM = 1e-6;
  private static final int POINTS = 10;

  static LongStream seeds() {
    return LongStream.range(0, 400);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_keep_what_is_cut_inside_its_part(long seed) {
    for (BuiltCase built : CaseworkBuilder.build(RandomJobs.of(seed)).cases()) {
      for (Part part : built.parts()) {
        assertThat(part.features())
            .filteredOn(Feature.Channel.class::isInstance)
            .allSatisfy(
                f -> {
                  Box volume = ((Feature.Channel) f).volume();
                  assertThat(part.box().contains(volume)).isTrue();
                  assertThat(volume.at(f.face())).isEqualTo(part.box().at(f.face()));
                });
      }
    }
  }

  /** Points thrown into the case lie in the wood of at most one part. */
  @ParameterizedTest
  @MethodSource("seeds")
  void should_fill_no_room_twice(long seed) {
    Random random = new Random(seed);
    for (BuiltCase built : CaseworkBuilder.build(onKick(RandomJobs.of(seed), seed)).cases()) {
      for (Part part : built.parts()) {
        for (int i = 0; i < POINTS; i++) {
          double[] point = pointIn(part.box(), random);
          assertThat(built.parts().stream().filter(p -> wood(p, point)).map(Part::mark).toList())
              .hasSizeLessThanOrEqualTo(1);
        }
      }
    }
  }

  /** With all that may stand behind a kick, in turns. */
  private static Job onKick(Job job, long seed) {
    String behind = List.of("nothing", "blocks", "board").get((int) (seed % 3));
    return job.with(
        job.cases().stream()
            .map(
                order ->
                    order.with(
                        order
                            .settings()
                            .with(Setting.BEHIND_KICK, new SettingValue.OfChoice(behind))))
            .toList());
  }

  private static double[] pointIn(Box box, Random random) {
    double[] point = new double[3];
    for (Axis axis : Axis.values()) {
      double low = box.low().along(axis).mm();
      point[axis.ordinal()] = low + random.nextDouble() * box.size(axis).mm();
    }
    return point;
  }

  private static boolean wood(Part part, double[] point) {
    return inside(part.box(), point)
        && part.features().stream()
            .noneMatch(f -> f instanceof Feature.Channel c && inside(c.volume(), point));
  }

  private static boolean inside(Box box, double[] point) {
    boolean inside = true;
    for (Axis axis : Axis.values()) {
      double at = point[axis.ordinal()];
      inside &= at > box.low().along(axis).mm() + ROUNDING_MM;
      inside &= at < box.high().along(axis).mm() - ROUNDING_MM;
    }
    return inside;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_mirror_with_its_bays(long seed) {
    Job job = RandomJobs.of(seed);
    Casework plain = CaseworkBuilder.build(job);
    Casework mirrored = CaseworkBuilder.build(mirrored(job));
    assertThat(mirrored.cases()).hasSameSizeAs(plain.cases());
    for (int i = 0; i < plain.cases().size(); i++) {
      BuiltCase one = plain.cases().get(i);
      BuiltCase other = mirrored.cases().get(i);
      assertThat(other.parts()).hasSameSizeAs(one.parts());
      double width = one.part("R").box().high().x().mm();
      for (Part part : one.parts()) {
        assertThat(other.parts().stream().filter(p -> mirrors(part, p, width)))
            .as("mirror image of " + part.mark())
            .hasSize(1);
      }
    }
  }

  private static boolean mirrors(Part part, Part mirror, double width) {
    return mirror.role() == part.role()
        && Math.abs(width - part.box().high().x().mm() - mirror.box().low().x().mm()) < ROUNDING_MM
        && Math.abs(width - part.box().low().x().mm() - mirror.box().high().x().mm()) < ROUNDING_MM
        && mirror.box().low().y().equals(part.box().low().y())
        && mirror.box().low().z().equals(part.box().low().z())
        && mirror.box().high().z().equals(part.box().high().z());
  }

  private static Job mirrored(Job job) {
    return job.with(job.cases().stream().map(CaseworkPropertiesTest::mirrored).toList());
  }

  private static CaseOrder mirrored(CaseOrder order) {
    List<Bay> bays = new ArrayList<>(order.bays());
    Collections.reverse(bays);
    return new CaseOrder(
        order.name(),
        order.quantity(),
        order.sizes(),
        order.material(),
        bays,
        order.topJoint(),
        order.bottomJoint(),
        order.partitionJoint(),
        order.fixedShelfJoint(),
        order.back(),
        order.kick(),
        order.faceFrame().map(CaseworkPropertiesTest::mirrored),
        order.doors(),
        order.edging(),
        order.load(),
        order.settings());
  }

  private static FaceFrame mirrored(FaceFrame frame) {
    Scribe scribe =
        switch (frame.scribe()) {
          case LEFT -> Scribe.RIGHT;
          case RIGHT -> Scribe.LEFT;
          case NONE, BOTH -> frame.scribe();
        };
    return new FaceFrame(
        frame.material(),
        frame.stile(),
        frame.middleStile(),
        frame.topRail(),
        frame.bottomRail(),
        frame.overhang(),
        scribe);
  }

  /** Enough of the jobs can be built for the properties above to mean something. */
  @ParameterizedTest
  @MethodSource("halves")
  void should_build_most_and_refuse_some(long from) {
    List<Casework> all =
        LongStream.range(from, from + 200)
            .mapToObj(s -> CaseworkBuilder.build(RandomJobs.of(s)))
            .toList();
    long built = all.stream().filter(c -> !c.cases().isEmpty()).count();
    assertThat(built).isBetween(100L, 199L);
    assertThat(all)
        .filteredOn(c -> c.cases().isEmpty())
        .allSatisfy(
            c ->
                assertThat(c.findings())
                    .anySatisfy(f -> assertThat(f.severity()).isEqualTo(Severity.REFUSED)));
  }

  static LongStream halves() {
    return LongStream.of(0, 200);
  }
}
