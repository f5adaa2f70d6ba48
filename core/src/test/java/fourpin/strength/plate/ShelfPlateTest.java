package fourpin.strength.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.strength.Beam;
import fourpin.strength.plate.Plate.Band;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Support;
import fourpin.strength.plate.PlateLoad.Item;
import fourpin.strength.plate.Strips.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plates on points: against beams, statics, and what holds for each elastic body. */
class ShelfPlateTest {

  private static final double LENGTH = 800;
  private static final double DEPTH = 300;
  private static final Rigidity PLYWOOD = Rigidity.of(8270, 3500, 0.1, 517, 18);

  private static List<Support> four(double length, double depth, double end, double edge) {
    return List.of(
        new Support(end, edge),
        new Support(length - end, edge),
        new Support(end, depth - edge),
        new Support(length - end, depth - edge));
  }

  private static Plate shelf() {
    return Plate.even(LENGTH, DEPTH, PLYWOOD, Edges.FREE, four(LENGTH, DEPTH, 5, 37));
  }

  /** A narrow plate is a beam: {@code 5 w L⁴ / (384 E I)}, ends standing over included. */
  @ParameterizedTest
  @CsvSource({"0, 0.3", "40, 0.3", "120, 0.3", "40, 0.02"})
  void narrowPlatesAreBeams(double overhang, double poisson) {
    double depth = 20;
    Rigidity d = Rigidity.of(10_000, 10_000, poisson, 4000, 10);
    Plate plate = Plate.even(900, depth, d, Edges.FREE, four(900, depth, overhang, 2));
    BentPlate bent = new PlateSolver(plate).under(List.of(plate.evenly(0.01))).orElseThrow();
    double stiffness = 10_000 * depth * 1000 / 12;
    Beam beam = Beam.overhanging(900 - 2 * overhang, overhang, stiffness, Beam.NO_SHEAR);
    Beam.Bent line = beam.under(List.of(new Beam.Load.Even(0.01 * depth, 0, 900)));
    assertThat(bent.deflection(450, 10)).isCloseTo(line.deflection(450), withPercentage(0.5));
    assertThat(bent.deflection(0, 10)).isCloseTo(line.deflection(0), within(0.02));
    assertThat(bent.moments(450, 10).x() * depth).isCloseTo(line.moment(450), withPercentage(1));
  }

  /**
   * Glass deeper than long bends from front to back: stresses at the centre and in the middle of an
   * end edge are as 6.36 and 6.96 by an energy solution in other functions (Ritz, polynomials over
   * the whole plate).
   */
  @Test
  void aDeepPlateBendsFromFrontToBack() {
    Rigidity glass = Rigidity.isotropic(70_000, 0.22, 6);
    Plate plate = Plate.even(361, 682, glass, Edges.FREE, four(361, 682, 3.5, 37));
    BentPlate bent = new PlateSolver(plate).under(List.of(plate.evenly(0.001))).orElseThrow();
    double end = bent.moments(0, 341).principal();
    assertThat(bent.moments(180.5, 341).principal() / end)
        .isCloseTo(6.36 / 6.96, withPercentage(2));
  }

  /** As Mohr's circle says. */
  @ParameterizedTest
  @CsvSource({"3, 1, 0, 3", "-3, 1, 0, 3", "1, -5, 0, 5", "0, 0, -4, 4", "2, 8, 4, 10"})
  void theLargestMomentOfAnyDirection(double x, double y, double twist, double most) {
    assertThat(new BentPlate.Moments(x, y, twist).principal()).isCloseTo(most, within(1e-12));
  }

  /** Equal strips on both edges, their middles lower: the transformed section of the whole. */
  @Test
  void stripsOnBothEdgesAreATransformedSection() {
    double panel = 8270 * 100.0 * 18;
    double strip = 12_000 * 10.0 * 40;
    double below = 11;
    double own = 8270 * 100 * 5832.0 / 12 + 2 * 12_000 * 10 * 64_000.0 / 12;
    double stiffness = own + below * below * panel * 2 * strip / (panel + 2 * strip);
    assertThat(stripped(List.of(5.0, 115.0)).deflection(600, 60))
        .isCloseTo(5 * 0.001 * 120 * Math.pow(1200, 4) / (384 * stiffness), withPercentage(0.5));
  }

  /**
   * A strip on one edge: a section that is free to bend sideways is as stiff as {@code EIyy -
   * EIyz²/EIzz} (unsymmetrical bending, any strength of materials).
   */
  @Test
  void aStripOnOneEdgeIsAnAngle() {
    double panel = 8270 * 100.0 * 18;
    double strip = 12_000 * 10.0 * 40;
    double down = 11 * strip / (panel + strip);
    double out = 55 * strip / (panel + strip);
    double up =
        8270 * 100 * 5832.0 / 12
            + 12_000 * 10 * 64_000.0 / 12
            + panel * down * down
            + strip * (11 - down) * (11 - down);
    // The strip's own width is left out sideways, as it is in the plate.
    double sideways = 8270 * 18 * 1e6 / 12 + panel * out * out + strip * (55 - out) * (55 - out);
    double both = panel * down * out + strip * (11 - down) * (55 - out);
    double stiffness = up - both * both / sideways;
    BentPlate bent = stripped(List.of(5.0));
    double middle = (bent.deflection(600, 0) + bent.deflection(600, 110)) / 2;
    assertThat(middle)
        .isCloseTo(5 * 0.001 * 110 * Math.pow(1200, 4) / (384 * stiffness), withPercentage(2));
  }

  /** A narrow panel with strips, so stiff across that all of it bends alike. */
  private static BentPlate stripped(List<Double> places) {
    Rigidity panel = Rigidity.bar(8270 * 5832.0 / 12, 1e9, 1e9);
    Rigidity strip = Rigidity.bar(12_000 * 64_000.0 / 12, 1e9, 1e9);
    List<Band> bands = new ArrayList<>(List.of(new Band(10, strip), new Band(100, panel)));
    if (places.size() > 1) {
      bands.add(new Band(10, strip));
    }
    List<Strip> strips = places.stream().map(y -> new Strip(y, 12_000 * 400, 11)).toList();
    double depth = bands.stream().mapToDouble(Band::depth).sum();
    Plate plate =
        new Plate(
            1200,
            bands,
            Optional.of(new Strips(8270 * 1800.0, 100, 60, strips)),
            Edges.FREE,
            four(1200, depth, 0, 5));
    return new PlateSolver(plate).under(List.of(plate.evenly(0.001))).orElseThrow();
  }

  /** Whatever lies on it: supports push, carry it all, and touch where they push. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void supportsPushAndBalance(long seed) {
    Random random = new Random(seed);
    List<Support> supports = new ArrayList<>(four(LENGTH, DEPTH, 5, 37));
    if (seed % 2 == 0) {
      supports.add(new Support(5, 150));
      supports.add(new Support(LENGTH - 5, 150));
    }
    Plate plate = Plate.even(LENGTH, DEPTH, PLYWOOD, Edges.FREE, supports);
    PlateSolver solver = new PlateSolver(plate);
    for (int round = 0; round < 20; round++) {
      List<PlateLoad> loads = new ArrayList<>(List.of(plate.evenly(1e-4)));
      loads.add(new PlateLoad.Point(40 * random.nextDouble(), LENGTH * random.nextDouble(), 200));
      double from = 300 * random.nextDouble();
      loads.add(new PlateLoad.Patch(1e-3 * random.nextDouble(), from, from + 400, 60, 240));
      List<Double> low = supports.stream().map(_ -> 2 * random.nextDouble()).toList();
      balanced(supports, loads, low, solver.under(loads, low).orElseThrow());
    }
  }

  private static void balanced(
      List<Support> supports, List<PlateLoad> loads, List<Double> low, BentPlate bent) {
    double[] sums = new double[3];
    for (PlateLoad load : loads) {
      sums[0] += load.total();
      sums[1] += load.total() * load.middleX();
      sums[2] += load.total() * load.middleY();
    }
    double all = sums[0];
    for (int i = 0; i < supports.size(); i++) {
      Support support = supports.get(i);
      double push = bent.reactions().get(i);
      sums[0] -= push;
      sums[1] -= push * support.x();
      sums[2] -= push * support.y();
      double gap = low.get(i) - bent.deflection(support.x(), support.y());
      assertThat(push).isGreaterThanOrEqualTo(-1e-6 * all);
      assertThat(gap).isGreaterThan(-1e-6);
      assertThat(Math.min(push, gap)).isLessThan(1e-5);
    }
    assertThat(sums[0]).isCloseTo(0, within(1e-7 * all));
    assertThat(sums[1]).isCloseTo(0, within(1e-7 * all * LENGTH));
    assertThat(sums[2]).isCloseTo(0, within(1e-7 * all * DEPTH));
  }

  /**
   * A plate with a low pin rocks until {@code 4 G t³ d / (3 a b)} lies evenly on it (corner pins,
   * from the twist of a plate by its corners; see {@link PatchTest}).
   */
  @ParameterizedTest
  @CsvSource({"18, 0.8", "25, 0.8", "12, 2"})
  void aLowPinIsClosedByAKnownLoad(double thickness, double low) {
    Rigidity d = Rigidity.of(8270, 3500, 0.1, 517, thickness);
    Plate plate = Plate.even(LENGTH, DEPTH, d, Edges.FREE, four(LENGTH, DEPTH, 0, 0));
    PlateSolver solver = new PlateSolver(plate);
    double closes = 4 * 517 * Math.pow(thickness, 3) * low / (3 * LENGTH * DEPTH);
    double pressure = closes / (LENGTH * DEPTH);
    List<Double> lows = List.of(0.0, 0.0, 0.0, low);
    BentPlate less = solver.under(List.of(plate.evenly(0.99 * pressure)), lows).orElseThrow();
    BentPlate more = solver.under(List.of(plate.evenly(1.01 * pressure)), lows).orElseThrow();
    assertThat(less.reactions().get(3)).isZero();
    assertThat(less.lifted()).isPositive();
    assertThat(more.reactions().get(3)).isCloseTo(0.01 / 4 * closes, withPercentage(1));
    assertThat(more.lifted()).isZero();
    assertThat(solver.pushesIfAllTouch(List.of(plate.evenly(pressure)), lows)[3])
        .isCloseTo(0, within(1e-6));
  }

  /** A plate that hardly bends stands on three pins, and tips where statics says so. */
  @Test
  void aStiffPlateFollowsStatics() {
    Rigidity stiff = Rigidity.isotropic(2e5, 0.3, 200);
    Plate plate = Plate.even(LENGTH, DEPTH, stiff, Edges.FREE, four(LENGTH, DEPTH, 0, 50));
    PlateSolver solver = new PlateSolver(plate);
    PlateLoad own = plate.evenly(50 / (LENGTH * DEPTH));
    double tips = 50 * (150 - 50) / 50.0;
    assertThat(solver.under(List.of(own, new PlateLoad.Point(0.99 * tips, 400, 0)))).isPresent();
    assertThat(solver.under(List.of(own, new PlateLoad.Point(1.01 * tips, 400, 0)))).isEmpty();
    // Off the middle, beyond the line between two pins: the pin across that line comes up.
    PlateLoad corner = new PlateLoad.Point(80, 700, 60);
    BentPlate bent = solver.under(List.of(corner), List.of(0.0, 0.0, 0.0, 1.0)).orElseThrow();
    assertThat(bent.reactions().get(3)).isZero();
    assertThat(bent.reactions().get(2)).isCloseTo(80 * 10 / 200.0, within(1e-3));
    assertThat(bent.reactions().get(1)).isCloseTo(80 * 700 / 800.0, within(1e-3));
  }

  /** Maxwell's theorem: what one place does to another, the other does to it. */
  @Test
  void placesGiveToEachOtherAlike() {
    PlateSolver solver = new PlateSolver(shelf());
    PlateLoad down = shelf().evenly(1e-3);
    double there = give(solver, down, 250, 60, 610, 200);
    double back = give(solver, down, 610, 200, 250, 60);
    assertThat(there).isCloseTo(back, withPercentage(1e-4));
  }

  private static double give(
      PlateSolver solver, PlateLoad down, double x, double y, double atX, double atY) {
    BentPlate before = solver.under(List.of(down)).orElseThrow();
    BentPlate after = solver.under(List.of(down, new PlateLoad.Point(5, x, y))).orElseThrow();
    return after.deflection(atX, atY) - before.deflection(atX, atY);
  }

  /** Two halves of a load do what the whole does; things in a row are the patches they stand on. */
  @Test
  void partsOfALoadAddUp() {
    PlateSolver solver = new PlateSolver(shelf());
    List<PlateLoad> row =
        PlateLoad.row(
            0, 0, List.of(new Item(250, 300, 250 * 300 * 0.002), new Item(550, 300, 330)));
    BentPlate whole = solver.under(List.of(shelf().evenly(0.002))).orElseThrow();
    BentPlate parts = solver.under(row).orElseThrow();
    assertThat(parts.deflection(333, 99)).isCloseTo(whole.deflection(333, 99), within(1e-9));
    for (int i = 0; i < 4; i++) {
      assertThat(parts.reactions().get(i)).isCloseTo(whole.reactions().get(i), within(1e-9));
    }
  }

  /** Things at the front edge bend the front edge further than the same things spread out. */
  @Test
  void thingsAtTheFrontBendTheFront() {
    PlateSolver solver = new PlateSolver(shelf());
    BentPlate spread = solver.under(List.of(shelf().evenly(0.002))).orElseThrow();
    PlateLoad atFront = new PlateLoad.Patch(0.004, 0, LENGTH, 0, DEPTH / 2);
    BentPlate front = solver.under(List.of(atFront)).orElseThrow();
    assertThat(front.deflection(400, 0)).isGreaterThan(1.02 * spread.deflection(400, 0));
    assertThat(front.deflection(400, DEPTH)).isLessThan(spread.deflection(400, DEPTH));
    assertThat(front.reactions().get(0)).isGreaterThan(front.reactions().get(2));
  }

  /**
   * What the program's mesh says of shelves against one three times as fine: 1 % sag, 1.5 % moment.
   */
  @ParameterizedTest
  @CsvSource({"800, 300, 18", "400, 300, 18", "1200, 250, 25", "600, 600, 19"})
  void theMeshIsFineEnough(double length, double depth, double thickness) {
    Rigidity d = Rigidity.of(12_000, 800, 0.4, 800, thickness);
    Plate plate = Plate.even(length, depth, d, Edges.FREE, four(length, depth, 5, 37));
    List<PlateLoad> load = List.of(plate.evenly(0.003));
    BentPlate usual = new PlateSolver(plate).under(load).orElseThrow();
    BentPlate fine = new PlateSolver(plate, 3 * PlateSolver.PARTS).under(load).orElseThrow();
    double sag = Math.abs(fine.deflection(length / 2, depth / 2));
    for (double y : new double[] {0, depth / 2, depth}) {
      assertThat(usual.deflection(length / 2, y))
          .isCloseTo(fine.deflection(length / 2, y), within(0.01 * sag));
    }
    assertThat(usual.moments(length / 2, depth / 2).x())
        .isCloseTo(fine.moments(length / 2, depth / 2).x(), withPercentage(1.5));
  }
}
