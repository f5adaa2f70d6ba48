package fourpin.strength.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fourpin.strength.plate.Bent.Moments;
import fourpin.strength.plate.Plate.Band;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import fourpin.strength.plate.Strips.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Half a plate tells what the whole one does, whatever holds and stiffens it. */
class MirroredPlateTest {

  private static final Rigidity OAK = Rigidity.of(12_300, 886, 0.43, 1058, 19);
  private static final double NEAR = 1e-6;

  private record Case(Plate plate, List<PlateLoad> loads, List<Double> low) {}

  static Stream<Case> cases() {
    Random random = new Random(6);
    return IntStream.range(0, 40).mapToObj(_ -> random(random));
  }

  private static Case random(Random random) {
    double length = 300 + 700 * random.nextDouble();
    double depth = 150 + 250 * random.nextDouble();
    Plate plate = plate(random, length, depth);
    double hand = 20 * random.nextDouble();
    List<PlateLoad> loads =
        List.of(
            plate.evenly(0.001 * random.nextDouble()),
            new PlateLoad.Patch(0.002, length / 4, length * 3 / 4, 0, depth / 2),
            new PlateLoad.Point(hand, length / 2, depth / 2));
    List<Double> low = plate.supports().stream().map(_ -> random.nextDouble()).toList();
    return new Case(plate, loads, low);
  }

  private static Plate plate(Random random, double length, double depth) {
    boolean free = random.nextInt(4) > 0;
    List<Support> supports = new ArrayList<>();
    if (free) {
      double end = 20 * random.nextDouble();
      for (double y : List.of(0.1 * depth, depth * (0.6 + 0.3 * random.nextDouble()))) {
        supports.add(new Support(end, y));
        supports.add(new Support(length - end, y));
      }
    }
    if (random.nextBoolean()) {
      supports.add(new Support(length / 2, depth));
    }
    int strips = random.nextInt(3);
    List<Band> bands = new ArrayList<>(List.of(new Band(depth - 20 * strips, OAK)));
    for (int i = 0; i < strips; i++) {
      bands.add(i * bands.size(), new Band(20, OAK));
    }
    return new Plate(
        length,
        bands,
        strips(strips, depth),
        free ? Edges.FREE : Edges.ends(Hold.values()[1 + random.nextInt(2)]),
        supports);
  }

  private static Optional<Strips> strips(int count, double depth) {
    List<Strip> strips =
        Stream.of(new Strip(10, 4e6, 11), new Strip(depth - 10, 4e6, 11)).limit(count).toList();
    return count == 0
        ? Optional.empty()
        : Optional.of(new Strips(12_300 * 19 * depth, depth, depth / 2, strips));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void halfBendsAsTheWhole(Case of) {
    Plate plate = of.plate();
    BentPlate whole = new PlateSolver(plate).under(of.loads()).orElseThrow();
    BentPlate half = new MirroredPlate(plate, PlateSolver.PARTS).under(of.loads()).orElseThrow();
    for (int i = 0; i < plate.supports().size(); i++) {
      assertThat(half.reactions().get(i)).isCloseTo(whole.reactions().get(i), within(NEAR));
    }
    assertThat(half.lifted()).isEqualTo(whole.lifted());
    // Thirteenths lie in the middle of no space, where either of two points would be the nearest.
    for (double share : List.of(0.0, 1 / 13.0, 5 / 13.0, 0.5, 7 / 13.0, 9 / 13.0, 1.0)) {
      double x = plate.length() * share;
      assertThat(half.stripForces(x))
          .zipSatisfy(
              whole.stripForces(x), (one, other) -> assertThat(one).isCloseTo(other, within(1e-4)));
      for (double y : List.of(0.0, plate.depth() * 0.3, plate.depth())) {
        assertThat(half.deflection(x, y)).isCloseTo(whole.deflection(x, y), within(NEAR));
        close(half.moments(x, y), whole.moments(x, y));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aLoadOnOneHalfIsTheSumOfAlikeAndUpsideDown(Case of) {
    Plate plate = of.plate();
    PlateLoad even = plate.evenly(0.002);
    List<PlateLoad> loads = new ArrayList<>(of.loads());
    loads.add(even.leftOf(plate.length() / 2).orElseThrow());
    BentPlate whole = new PlateSolver(plate).under(loads).orElseThrow();
    OneSided sum =
        new MirroredPlate(plate, PlateSolver.PARTS).underLeftOf(of.loads(), even).orElseThrow();
    assertThat(sum.reactions())
        .zipSatisfy(whole.reactions(), (one, all) -> assertThat(one).isCloseTo(all, within(NEAR)));
    assertThat(sum.lifted()).isEqualTo(whole.lifted());
    for (double share : List.of(0.0, 0.3, 0.5, 0.8, 1.0)) {
      double x = plate.length() * share;
      assertThat(sum.deflection(x, 10)).isCloseTo(whole.deflection(x, 10), within(NEAR));
    }
  }

  /**
   * With a support in the middle of its depth a shelf may lift off others, and is bent as a whole.
   */
  @Test
  void whatLiftsOffIsBentAsAWhole() {
    List<Support> six = new ArrayList<>();
    for (double y : List.of(20.0, 130.0, 280.0)) {
      six.add(new Support(10, y));
      six.add(new Support(790, y));
    }
    Plate plate = Plate.even(800, 300, OAK, Edges.FREE, six);
    PlateLoad front = new PlateLoad.Patch(0.02, 0, 800, 0, 40);
    OneSided sum =
        new MirroredPlate(plate, PlateSolver.PARTS).underLeftOf(List.of(), front).orElseThrow();
    BentPlate whole =
        new PlateSolver(plate).under(List.of(front.leftOf(400).orElseThrow())).orElseThrow();
    assertThat(sum.turned()).isEmpty();
    assertThat(sum.lifted()).isPositive().isEqualTo(whole.lifted());
    assertThat(sum.deflection(300, 0)).isCloseTo(whole.deflection(300, 0), within(NEAR));
  }

  private static void close(Moments one, Moments other) {
    assertThat(one.x()).isCloseTo(other.x(), within(1e-5));
    assertThat(one.y()).isCloseTo(other.y(), within(1e-5));
    assertThat(one.twist()).isCloseTo(other.twist(), within(1e-5));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void halvesPushBackAsTheWholeOnUnlevelSupports(Case of) {
    double[] whole = new PlateSolver(of.plate()).pushesIfAllTouch(of.loads(), of.low());
    double[] halves =
        new MirroredPlate(of.plate(), PlateSolver.PARTS).pushesIfAllTouch(of.loads(), of.low());
    assertThat(halves).hasSameSizeAs(whole);
    for (int i = 0; i < whole.length; i++) {
      assertThat(halves[i]).isCloseTo(whole[i], within(1e-6));
    }
  }

  @Test
  void whatIsNotAlikeOnBothSidesIsRefused() {
    List<Support> odd = List.of(new Support(10, 30), new Support(10, 200), new Support(700, 200));
    Plate supports = Plate.even(800, 250, OAK, Edges.FREE, odd);
    MirroredPlate plate = new MirroredPlate(supports, PlateSolver.PARTS);
    assertThatThrownBy(() -> plate.under(List.of(supports.evenly(0.001))))
        .hasMessageContaining("not alike on both sides");
    Edges edges = new Edges(Hold.CLAMPED, Hold.HINGED, Hold.FREE, Hold.FREE);
    assertThatThrownBy(() -> new MirroredPlate(Plate.even(800, 250, OAK, edges, List.of()), 10))
        .hasMessageContaining("ends held unlike");
  }
}
