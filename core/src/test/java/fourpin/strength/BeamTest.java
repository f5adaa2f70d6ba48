package fourpin.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fourpin.strength.Beam.Bent;
import fourpin.strength.Beam.Hold;
import fourpin.strength.Beam.Load;
import fourpin.strength.Beam.Support;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Beams against printed answers of textbooks and handbooks, recomputed from their inputs. */
class BeamTest {

  private static final double SPAN = 900;
  private static final double EI = 2e9;
  private static final double GA = 4e5;

  /**
   * Wood Handbook FPL-GTR-190 (2010), Table 9-1: kb and ks of deflection = kb W L³/(E I) + ks W
   * L/(G A'). Loads: even over the length, in the middle, two at the quarter points, at the end.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          EVEN     | RESTS   | RESTS   | 0.5  | 5   | 384 | 1 | 8
          EVEN     | CLAMPED | CLAMPED | 0.5  | 1   | 384 | 1 | 8
          MIDDLE   | RESTS   | RESTS   | 0.5  | 1   | 48  | 1 | 4
          MIDDLE   | CLAMPED | CLAMPED | 0.5  | 1   | 192 | 1 | 4
          QUARTERS | RESTS   | RESTS   | 0.5  | 11  | 768 | 1 | 8
          QUARTERS | RESTS   | RESTS   | 0.25 | 1   | 96  | 1 | 8
          EVEN     | CLAMPED | FREE    | 1    | 1   | 8   | 1 | 2
          END      | CLAMPED | FREE    | 1    | 1   | 3   | 1 | 1
          """)
  void agreesWithTheHandbookTable(
      Loading loading,
      End left,
      End right,
      double at,
      double kb,
      double kbOver,
      double ks,
      double ksOver) {
    double total = 500;
    double deflection = beam(left, right).under(loading.of(total)).deflection(at * SPAN);
    double expected =
        kb / kbOver * total * SPAN * SPAN * SPAN / EI + ks / ksOver * total * SPAN / GA;
    assertThat(deflection).isCloseTo(expected, within(expected * 1e-9));
  }

  private static Beam beam(End left, End right) {
    List<Support> supports =
        right == End.FREE
            ? List.of(new Support(0, left.hold))
            : List.of(new Support(0, left.hold), new Support(SPAN, right.hold));
    return new Beam(SPAN, EI, GA, supports);
  }

  enum End {
    RESTS(Hold.RESTS),
    CLAMPED(Hold.CLAMPED),
    FREE(Hold.RESTS);

    private final Hold hold;

    End(Hold hold) {
      this.hold = hold;
    }
  }

  enum Loading {
    EVEN,
    MIDDLE,
    QUARTERS,
    END;

    List<Load> of(double total) {
      return switch (this) {
        case EVEN -> List.of(new Load.Even(total / SPAN, 0, SPAN));
        case MIDDLE -> List.of(new Load.Point(total, SPAN / 2));
        case QUARTERS ->
            List.of(new Load.Point(total / 2, SPAN / 4), new Load.Point(total / 2, SPAN * 3 / 4));
        case END -> List.of(new Load.Point(total, SPAN));
      };
    }
  }

  /** Bansal, Strength of Materials, Problem 12.1 (p. 518): 13.736 mm. */
  @Test
  void pointLoadInTheMiddle() {
    Bent bent =
        Beam.simple(6000, 2.1e5 * 78e6, Beam.NO_SHEAR).under(List.of(new Load.Point(50_000, 3000)));
    assertThat(bent.deflection(3000)).isCloseTo(13.736, within(0.001));
  }

  /** Bansal, Problem 12.4 (p. 526): 0.6 mm under the load. */
  @Test
  void pointLoadOffTheMiddle() {
    Bent bent =
        Beam.simple(5000, 2e5 * 1e8, Beam.NO_SHEAR).under(List.of(new Load.Point(5000, 3000)));
    assertThat(bent.deflection(3000)).isCloseTo(0.6, within(0.0005));
    assertThat(bent.reactions()).containsExactly(new double[] {2000, 3000}, within(1e-6));
  }

  /** Bansal, Problem 12.5 (p. 529): 16.27 mm and 0.0104 rad at the end. */
  @Test
  void evenLoadOnATimber() {
    double stiffness = 1e4 * 200 * Math.pow(300, 3) / 12;
    Bent bent =
        Beam.simple(5000, stiffness, Beam.NO_SHEAR).under(List.of(new Load.Even(9, 0, 5000)));
    assertThat(bent.deflection(2500)).isCloseTo(16.27, within(0.01));
    assertThat(bent.slope(0)).isCloseTo(0.0104, within(5e-5));
    assertThat(bent.slope(5000)).isCloseTo(-0.0104, within(5e-5));
  }

  /** Pytel and Kiusalaas, Mechanics of Materials, Example 6.11 (p. 234): 1981 lb ft³. */
  @Test
  void twoUnequalLoads() {
    Bent bent =
        Beam.simple(9, 1, Beam.NO_SHEAR)
            .under(List.of(new Load.Point(80, 3), new Load.Point(100, 7)));
    assertThat(bent.deflection(4.5)).isCloseTo(1981, within(0.6));
  }

  /** Pytel and Kiusalaas, Example 6.12 (p. 234): 6963 N m³. */
  @Test
  void evenLoadOnAPart() {
    Bent bent = Beam.simple(6, 1, Beam.NO_SHEAR).under(List.of(new Load.Even(600, 1, 4)));
    assertThat(bent.deflection(3)).isCloseTo(6963, within(1.0));
  }

  /**
   * Levinson, Statics and Strength of Materials, Example 13.6 (p. 329): 384 kip ft³. Clamped at
   * both ends, a load in the middle and an even load on one half.
   */
  @Test
  void clampedAtBothEnds() {
    List<Support> clamped = List.of(new Support(0, Hold.CLAMPED), new Support(16, Hold.CLAMPED));
    Bent bent =
        new Beam(16, 1, Beam.NO_SHEAR, clamped)
            .under(List.of(new Load.Point(6, 8), new Load.Even(3, 0, 8)));
    assertThat(bent.deflection(8)).isCloseTo(384, within(0.1));
  }

  /** Hibbeler, Mechanics of Materials, Example 12.12 (p. 612): 2.75 in at the tip. */
  @Test
  void overhangingEnd() {
    List<Support> supports = List.of(new Support(0, Hold.RESTS), new Support(144, Hold.RESTS));
    Bent bent =
        new Beam(288, 29e3 * 125, Beam.NO_SHEAR, supports).under(List.of(new Load.Point(5, 288)));
    assertThat(bent.deflection(288)).isCloseTo(2.75, within(0.005));
    assertThat(bent.reactions()).containsExactly(new double[] {-5, 10}, within(1e-9));
  }

  /** Bansal, Problems 13.1 (p. 557), 10.71 mm, and 13.3 (p. 559), 5.036 mm: cantilevers. */
  @Test
  void cantilevers() {
    Bent point =
        new Beam(3000, 2.1e5 * 1e8, Beam.NO_SHEAR, List.of(new Support(0, Hold.CLAMPED)))
            .under(List.of(new Load.Point(25_000, 3000)));
    assertThat(point.deflection(3000)).isCloseTo(10.71, within(0.006));
    Bent even =
        new Beam(2500, 2e5 * 7.95e7, Beam.NO_SHEAR, List.of(new Support(0, Hold.CLAMPED)))
            .under(List.of(new Load.Even(16.4, 0, 2500)));
    assertThat(even.deflection(2500)).isCloseTo(5.036, within(0.001));
  }

  /**
   * Benoit, Legrand, Tastet, Calcul de structures en bois, example 2.3.1, as quoted with these
   * digits in a public verification suite of a finite-element program: shear included.
   */
  @ParameterizedTest
  @CsvSource({"0.75,7.50105", "1.0,10.0014"})
  void timberWithShear(double load, double expected) {
    double bending = 11_000 * 75 * Math.pow(200, 3) / 12;
    double shear = 690 * 5.0 / 6 * 75 * 200;
    Bent bent = Beam.simple(4500, bending, shear).under(List.of(new Load.Even(load, 0, 4500)));
    assertThat(bent.deflection(2250)).isCloseTo(expected, within(0.0002));
  }

  /** Hibbeler, Example 12.13: 5 w L⁴/(768 E I) in the middle under an even load on one half. */
  @Test
  void evenLoadOnHalf() {
    Bent bent = Beam.simple(SPAN, EI, Beam.NO_SHEAR).under(List.of(new Load.Even(1, 0, SPAN / 2)));
    assertThat(bent.deflection(SPAN / 2))
        .isCloseTo(5 * Math.pow(SPAN, 4) / (768 * EI), within(1e-9));
  }

  /** Bansal, Problem 12.4 again: the greatest sag stands at sqrt((L² - b²)/3) from the far end. */
  @Test
  void greatestSagUnderAnOffsetLoad() {
    double b = 300;
    Bent bent = Beam.simple(SPAN, EI, Beam.NO_SHEAR).under(List.of(new Load.Point(500, SPAN - b)));
    double x = Math.sqrt((SPAN * SPAN - b * b) / 3);
    double printed = 500 * b * Math.pow(SPAN * SPAN - b * b, 1.5) / (9 * Math.sqrt(3) * EI * SPAN);
    assertThat(bent.deflection(x)).isCloseTo(printed, within(printed * 1e-9));
    assertThat(bent.slope(x)).isCloseTo(0, within(1e-9));
  }

  /** Plain mechanics: w L² (5 L² - 24 c²)/(384 E I) between supports that stand c inboard. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 6, 40, 200})
  void supportsInboard(double overhang) {
    double length = SPAN + 2 * overhang;
    Bent bent =
        Beam.overhanging(SPAN, overhang, EI, Beam.NO_SHEAR)
            .under(List.of(new Load.Even(0.4, 0, length)));
    double expected = 0.4 * SPAN * SPAN * (5 * SPAN * SPAN - 24 * overhang * overhang) / (384 * EI);
    assertThat(bent.deflection(length / 2)).isCloseTo(expected, within(1e-9));
  }

  /**
   * A middle support carries 10/8 of one span's load and the ends 3/8 (three-moment equation, any
   * strength-of-materials table of continuous beams).
   */
  @Test
  void threeSupports() {
    List<Support> three =
        List.of(
            new Support(0, Hold.RESTS), new Support(450, Hold.RESTS), new Support(900, Hold.RESTS));
    Bent bent = new Beam(900, EI, Beam.NO_SHEAR, three).under(List.of(new Load.Even(1, 0, 900)));
    assertThat(bent.reactions())
        .containsExactly(new double[] {168.75, 562.5, 168.75}, within(1e-6));
    assertThat(bent.moment(450)).isCloseTo(-450 * 450 / 8.0, within(1e-6));
  }

  @Test
  void supportsMustHoldTheBeam() {
    Support one = new Support(450, Hold.RESTS);
    for (List<Support> loose : List.of(List.<Support>of(), List.of(one), List.of(one, one))) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Beam(900, EI, Beam.NO_SHEAR, loose))
          .withMessageStartingWith("these supports do not hold a beam");
    }
  }

  /** Statics and Maxwell's theorem, on beams drawn at random. */
  @ParameterizedTest
  @ValueSource(longs = {4, 55, 666})
  void keepsBalanceAndReciprocity(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double length = random.nextDouble(100, 3000);
      double left = random.nextDouble(0, 0.3) * length;
      double right = random.nextDouble(0.7, 1) * length;
      List<Support> supports =
          List.of(new Support(left, Hold.RESTS), new Support(right, Hold.RESTS));
      Beam beam = new Beam(length, random.nextDouble(1e7, 1e10), 1e5, supports);
      double a = random.nextDouble(0, length);
      double b = random.nextDouble(0, length);
      Bent atA = beam.under(List.of(new Load.Point(100, a)));
      Bent atB = beam.under(List.of(new Load.Point(100, b)));
      double[] forces = atA.reactions();
      assertThat(forces[0] + forces[1]).isCloseTo(100, within(1e-6));
      assertThat(forces[1] * (right - left)).isCloseTo(100 * (a - left), within(1e-6 * length));
      double there = atA.deflection(b);
      assertThat(atB.deflection(a)).isCloseTo(there, within(1e-9 + 1e-6 * Math.abs(there)));
    }
  }
}
