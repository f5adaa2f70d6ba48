package fourpin.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.Section.Layer;
import fourpin.strength.Section.Matter;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole shelves against published tables and the mechanics that they rest on. */
class LoadedShelfTest {

  private static final double MM_PER_INCH = 25.4;
  private static final double MPA_PER_PSI = 6.894757e-3;
  private static final double N_PER_MM_PER_PLF = 1.459390e-2;

  /** So stiff in shear that only bending is left, as in the tables held against. */
  private static final double NO_SHEAR_MPA = 1e9;

  private static Sourced sourced(double value, QuantityUnit unit) {
    return new Sourced(Quantity.of(value, unit), Source.STATED);
  }

  private static Sourced ratio(double value) {
    return sourced(value, QuantityUnit.RATIO);
  }

  private static Matter weightless(double modulus) {
    return new Matter(
        SectionTest.isotropic(modulus),
        sourced(NO_SHEAR_MPA, QuantityUnit.STRESS),
        sourced(0, QuantityUnit.DENSITY));
  }

  private static Section plain(Matter matter, double depth, double thickness) {
    return new Section(List.of(new Layer("shelf", matter, depth, thickness, 0, 0)));
  }

  /** Industry guidance on MDF, chapter 11: d = 5 W L³ 9.81/(32 E b t³), W kg on the shelf. */
  @ParameterizedTest
  @CsvSource({"20,800,250,18,2500", "35,600,300,16,2500", "10,1000,200,22,3000"})
  void sagIsThatOfTheMdfGuidance(double kg, double span, double depth, double t, double modulus) {
    double expected = 5 * kg * Math.pow(span, 3) * 9.81 / (32 * modulus * depth * Math.pow(t, 3));
    LoadedShelf shelf =
        new LoadedShelf(plain(weightless(modulus), depth, t), span, 0, kg * 9.81 / span);
    assertThat(shelf.sag()).isCloseTo(expected, within(expected * 1e-8));
  }

  /**
   * Weak check, computed elsewhere by plain mechanics for shelves 11 1/4 in deep without their own
   * weight: sag in inches, to two digits.
   */
  @ParameterizedTest
  @CsvSource({
    "1.2e6,0.71875,30,20,0.04", "1.2e6,0.71875,30,35,0.07",
    "1.2e6,0.71875,36,20,0.09", "1.2e6,0.71875,36,35,0.15",
    "1.2e6,0.71875,48,20,0.28", "1.2e6,0.71875,48,35,0.48",
    "0.4e6,0.75,24,20,0.05", "0.4e6,0.75,36,35,0.40",
    "0.35e6,0.75,24,35,0.09", "0.35e6,0.75,36,20,0.26",
    "1.2e6,0.75,36,20,0.08", "1.8e6,0.75,36,20,0.05",
    "1.8e6,0.8125,36,35,0.07", "1.8e6,0.8125,48,35,0.22",
    "1.2e6,1.4375,48,20,0.03", "1.2e6,1.4375,48,35,0.06"
  })
  void sagsOfCommonShelves(double psi, double thickness, double span, double plf, double sag) {
    Section section =
        plain(weightless(psi * MPA_PER_PSI), 11.25 * MM_PER_INCH, thickness * MM_PER_INCH);
    LoadedShelf shelf = new LoadedShelf(section, span * MM_PER_INCH, 0, plf * N_PER_MM_PER_PLF);
    assertThat(shelf.sag() / MM_PER_INCH).isCloseTo(sag, within(0.0061));
  }

  /**
   * Weak check, computed elsewhere: an oak strip 3/4 x 1 1/2 in, tops flush, makes 23/32 in plywood
   * 2.4 times as stiff as bare, on both edges 3.7 times, 11 1/4 in deep over all.
   */
  @Test
  void edgeStripsStiffen() {
    Matter ply = weightless(1.2e6);
    Matter oak = weightless(1.8e6);
    double bare = plain(ply, 11.25, 0.71875).bendingStiffness();
    Layer front = new Layer("front strip", oak, 0.75, 1.5, 0, 0);
    Section one = new Section(List.of(front, new Layer("shelf", ply, 10.5, 0.71875, 0.75, 0)));
    assertThat(one.bendingStiffness() / bare).isCloseTo(2.4, within(0.05));
    Layer back = new Layer("back strip", oak, 0.75, 1.5, 10.5, 0);
    Section both =
        new Section(List.of(front, new Layer("shelf", ply, 9.75, 0.71875, 0.75, 0), back));
    assertThat(both.bendingStiffness() / bare).isCloseTo(3.7, within(0.05));
  }

  /** A quarter-inch glass shelf 36 x 12 in: 540 psi with 5 lb, 1000 psi with 18 lb; computed. */
  @ParameterizedTest
  @CsvSource({"5,540", "18,1000"})
  void glassStress(double pounds, double psi) {
    Matter glass =
        new Matter(
            SectionTest.isotropic(70_000),
            sourced(28_700, QuantityUnit.STRESS),
            sourced(2500, QuantityUnit.DENSITY));
    Section section = plain(glass, 12 * MM_PER_INCH, 0.25 * MM_PER_INCH);
    double load = pounds / 3 * N_PER_MM_PER_PLF;
    LoadedShelf shelf = new LoadedShelf(section, 36 * MM_PER_INCH, 0, load);
    double stress = section.stress(section.layers().getFirst(), shelf.moment());
    assertThat(stress / MPA_PER_PSI).isCloseTo(psi, within(psi * 0.02));
  }

  /** Cube of thickness: 7/8 against 3/4 is 59 % stiffer; fourth power of span: 10 % is 46 %. */
  @Test
  void powersOfThicknessAndSpan() {
    LoadedShelf thin = new LoadedShelf(plain(weightless(8000), 280, 24), 900, 0, 0.4);
    LoadedShelf thick = thin.of(plain(weightless(8000), 280, 28));
    assertThat(thin.sag() / thick.sag()).isCloseTo(1.588, within(0.001));
    assertThat(thin.over(990).sag() / thin.sag()).isCloseTo(1.4641, within(1e-4));
  }

  /** Properties of shelves drawn at random. */
  @ParameterizedTest
  @ValueSource(longs = {7, 88, 999})
  void behavesAsAShelf(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      Matter wood =
          SectionTest.matter(random.nextDouble(1500, 15_000), random.nextDouble(400, 900));
      double depth = random.nextDouble(150, 500);
      double thickness = random.nextDouble(6, 50);
      LoadedShelf shelf =
          new LoadedShelf(
              plain(wood, depth, thickness),
              random.nextDouble(300, 2000),
              random.nextDouble(0, 20),
              random.nextDouble(0.01, 1));
      assertThat(shelf.under(shelf.load() * 1.1).sag()).isGreaterThan(shelf.sag());
      assertThat(shelf.over(shelf.span() * 1.1).sag()).isGreaterThan(shelf.sag());
      assertThat(shelf.of(plain(wood, depth, thickness * 1.1)).sag()).isLessThan(shelf.sag());
      assertThat(shelf.reaction() * 2)
          .isCloseTo(shelf.total() * shelf.length(), within(1e-6 * shelf.reaction()));
      stripStiffens(shelf, random);
      limitsAreMet(shelf);
    }
  }

  private static void stripStiffens(LoadedShelf shelf, Random random) {
    Layer panel = shelf.section().layers().getFirst();
    Matter strip = SectionTest.matter(random.nextDouble(6000, 15_000), 600);
    double height = panel.thickness() * random.nextDouble(1, 4);
    Section with = new Section(List.of(panel, new Layer("front strip", strip, 19, height, -19, 0)));
    assertThat(with.bendingStiffness()).isGreaterThan(shelf.section().bendingStiffness());
  }

  /** At its longest span a shelf just holds. */
  private static void limitsAreMet(LoadedShelf shelf) {
    ShelfLimits rule = new ShelfLimits(ratio(2), ratio(600), ratio(384), Optional.empty());
    double longest = rule.longestSpan(shelf, 1);
    LoadedShelf atEnds = new LoadedShelf(shelf.section(), longest, 0, shelf.load());
    assertThat(rule.use(atEnds)).isCloseTo(1, within(1e-9));
    assertThat(rule.holds(atEnds.over(longest * 0.999))).isTrue();
    assertThat(rule.holds(atEnds.over(longest * 1.001))).isFalse();
  }

  /** Whichever limit is nearer decides: creep 2 against 600 and 384 is the limit after years. */
  @Test
  void nearerLimitDecides() {
    LoadedShelf shelf = new LoadedShelf(plain(weightless(8000), 280, 18), 900, 0, 0.4);
    double sagOverSpan = shelf.sag() / 900;
    assertThat(new ShelfLimits(ratio(2), ratio(600), ratio(384), Optional.empty()).use(shelf))
        .isCloseTo(sagOverSpan * 2 * 384, within(1e-12));
    assertThat(new ShelfLimits(ratio(1.5), ratio(600), ratio(384), Optional.empty()).use(shelf))
        .isCloseTo(sagOverSpan * 600, within(1e-12));
  }
}
