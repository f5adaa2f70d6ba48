package fourpin.boring.way;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Use;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.job.Setting;
import fourpin.job.Shop;
import fourpin.job.Support;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Lays every guide on every panel as a maker would, by nothing but the guide's hole table and the
 * clampings, and looks where its holes come.
 */
class GuideTest {

  private static final int JOBS = 60;

  static LongStream seeds() {
    return LongStream.range(0, JOBS);
  }

  /** A hole in a face, in picometres from the front and the foot of the case. */
  private record Spot(String part, Face face, long y, long z, Length diameter, Length depth) {}

  private record Laid(Job job, BuiltCase built, CaseBoring boring, Way way, Method.Guided method) {}

  /** Shops drawn at random seldom have strips that fit, so each gets some of its own. */
  private static Job withStrips(Job job, long seed) {
    List<Tool> tools = new ArrayList<>(job.shop().tools());
    Length pitch = job.cases().getFirst().settings().length(Setting.PITCH);
    job.cases().getFirst().bays().stream()
        .flatMap(bay -> bay.supports().stream())
        .filter(Support.Pins.class::isInstance)
        .map(support -> ((Support.Pins) support).diameter())
        .findFirst()
        .ifPresent(hole -> tools.addAll(kit(hole, pitch, seed)));
    return job.with(new Shop(job.shop().name(), tools));
  }

  private static List<Tool> kit(Length hole, Length pitch, long seed) {
    Length nose = hole.plus(Length.mm(4));
    Length tip = hole.plus(Length.mm(1));
    Length twice = hole.plus(Length.mm(2));
    return List.of(
        new Tool.HandDrill("short drill", Length.mm(150), Optional.empty()),
        new Tool.PlainBit("own bit", hole, Length.mm(2), Length.mm(60), Optional.empty()),
        new Tool.CentringBit(
            "own nose",
            hole,
            nose,
            tip,
            Optional.empty(),
            Length.mm(2),
            Length.mm(30),
            Optional.empty()),
        strip("own strip", Tool.StripKind.HARDBOARD, hole, pitch, seed),
        strip("own strap", Tool.StripKind.STEEL, twice, pitch.over(2), seed));
  }

  private static Tool strip(
      String name, Tool.StripKind kind, Length hole, Length pitch, long seed) {
    int spaces = 20 + (int) seed;
    return new Tool.PerforatedStrip(
        name,
        kind,
        hole,
        pitch.times(spaces),
        spaces,
        Length.mm(7),
        Length.mm(12),
        Length.mm(2),
        pitch.times(spaces).plus(Length.mm(14)),
        Length.mm(20 + seed % 9),
        Optional.empty());
  }

  private static List<Laid> guided(long seed) {
    Job job = withStrips(RandomJobs.of(seed), seed);
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<Laid> laid = new ArrayList<>();
    for (CaseBoring each : Ways.of(job, boring).borings()) {
      for (WayAnswer answer : each.answers()) {
        if (answer.method().orElse(null) instanceof Method.Guided guided) {
          laid.add(new Laid(job, boring.cases().getFirst(), each, answer.way(), guided));
        }
      }
    }
    return laid;
  }

  /** Every hole that the clampings bore; each step along starts from a hole that is there. */
  private static List<Spot> bored(Laid laid) {
    List<Spot> spots = new ArrayList<>();
    for (Clamping clamping : laid.method().clampings()) {
      Part part = laid.built().part(clamping.part());
      long zero = part.box().low().z().picometres() + clamping.along().picometres();
      for (Reach reach : clamping.reaches()) {
        if (reach.step().isPresent()) {
          long pin = laid.method().guide().hole(reach.step().get().pin()).along().picometres();
          long into = laid.method().guide().hole(reach.step().get().into()).along().picometres();
          long at = zero + into;
          assertThat(spots)
              .anyMatch(
                  s -> s.z() == at && s.part().equals(part.mark()) && s.face() == clamping.face());
          zero = at - pin;
        }
        for (int number : reach.holes()) {
          spots.add(spot(laid, clamping, part, zero, laid.method().guide().hole(number)));
        }
      }
    }
    return spots;
  }

  private static Spot spot(Laid laid, Clamping clamping, Part part, long zero, GuideHole hole) {
    assertThat(hole.use()).isEqualTo(Use.BORED);
    long across = clamping.across().picometres();
    long column = hole.across().picometres();
    long width = laid.method().guide().width().picometres();
    long y =
        clamping.edge() == Face.FRONT
            ? part.box().low().y().picometres() + across + column
            : part.box().high().y().picometres() - across - width + column;
    BitSetting bit = laid.method().bit();
    return new Spot(
        part.mark(),
        clamping.face(),
        y,
        zero + hole.along().picometres(),
        bit.diameter(),
        bit.depth());
  }

  private static List<Spot> wanted(Laid laid) {
    Set<String> purposes = new HashSet<>();
    laid.boring().grids().forEach(g -> purposes.add("bay " + g.bay()));
    List<Spot> spots = new ArrayList<>();
    for (Part part : laid.built().parts()) {
      part.features().stream()
          .filter(f -> f instanceof Hole h && h.use() == Hole.Use.SUPPORT)
          .map(Hole.class::cast)
          .filter(h -> purposes.contains(h.purpose().substring(h.purpose().indexOf("bay "))))
          .map(h -> spot(part, h))
          .forEach(spots::add);
    }
    return spots;
  }

  private static Spot spot(Part part, Hole hole) {
    return new Spot(
        part.mark(),
        hole.face(),
        hole.centre().y().picometres(),
        hole.centre().z().picometres(),
        hole.diameter(),
        hole.depth());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_put_every_hole_where_the_casework_has_one_and_no_other(long seed) {
    for (Laid laid : guided(seed)) {
      assertThat(bored(laid))
          .as(laid.way().key())
          .containsExactlyInAnyOrderElementsOf(wanted(laid));
    }
  }

  /** Between end and block there is a spacer or nothing; below a standing guide likewise. */
  @ParameterizedTest
  @MethodSource("seeds")
  void should_never_need_a_spacer_thinner_than_nothing(long seed) {
    for (Laid laid : guided(seed)) {
      for (Clamping clamping : laid.method().clampings()) {
        Part part = laid.built().part(clamping.part());
        switch (clamping.bearing()) {
          case Bearing.End() -> assertThat(clamping.along().isPositive()).isFalse();
          case Bearing.PanelBelow(String mark, Length spacer) -> {
            assertThat(spacer.isNegative()).isFalse();
            Length floor = laid.built().part(mark).box().high().z();
            assertThat(part.box().low().z().plus(clamping.along()).minus(spacer)).isEqualTo(floor);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_keep_every_hole_inside_the_guide_and_the_guide_inside_a_standing_bay(long seed) {
    for (Laid laid : guided(seed)) {
      Guide guide = laid.method().guide();
      for (GuideHole hole : guide.holes()) {
        Length half = hole.diameter().over(2);
        assertThat(hole.along().isPositive()).isTrue();
        assertThat(guide.length().minus(half)).isGreaterThanOrEqualTo(hole.along());
        assertThat(hole.across()).isGreaterThanOrEqualTo(half);
        assertThat(guide.width().minus(half)).isGreaterThanOrEqualTo(hole.across());
      }
      laid.method().clampings().forEach(c -> fits(laid, c));
    }
  }

  private static void fits(Laid laid, Clamping clamping) {
    if (!(clamping.bearing() instanceof Bearing.PanelBelow(String below, Length _))) {
      return;
    }
    Guide guide = laid.method().guide();
    BaySpace bay = laid.built().bays().get(clamping.bay() - 1);
    Length ceiling =
        bay.openings().stream()
            .filter(o -> o.below().equals(below))
            .findFirst()
            .orElseThrow()
            .clear()
            .high()
            .z();
    Length zero = laid.built().part(clamping.part()).box().low().z().plus(clamping.along());
    for (Reach reach : clamping.reaches()) {
      if (reach.step().isPresent()) {
        zero =
            zero.plus(guide.hole(reach.step().get().into()).along())
                .minus(guide.hole(reach.step().get().pin()).along());
      }
      assertThat(ceiling).isGreaterThanOrEqualTo(zero.plus(guide.length()));
    }
  }

  /** The random jobs meet what they are to prove. */
  @Test
  void should_meet_every_guided_way_steps_spacers_and_standing_cases() {
    Map<Way, Integer> ways = new EnumMap<>(Way.class);
    int steps = 0;
    int spacers = 0;
    int standing = 0;
    for (long seed = 0; seed < JOBS; seed++) {
      for (Laid laid : guided(seed)) {
        ways.merge(laid.way(), 1, Integer::sum);
        for (Clamping clamping : laid.method().clampings()) {
          steps += clamping.reaches().size() - 1;
          spacers += clamping.along().isNegative() ? 1 : 0;
          standing += clamping.bearing() instanceof Bearing.PanelBelow ? 1 : 0;
        }
      }
    }
    assertThat(ways.keySet())
        .containsExactlyInAnyOrder(
            Way.HARDBOARD_STRIP, Way.CENTRING_GUIDE, Way.ROUTER_GUIDE, Way.STEEL_STRAP);
    assertThat(ways.values()).as("%s", ways).allMatch(n -> n > 5);
    assertThat(List.of(steps, spacers, standing)).allMatch(n -> n > 20);
  }
}
