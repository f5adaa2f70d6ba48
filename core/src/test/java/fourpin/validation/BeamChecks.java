package fourpin.validation;

import static fourpin.validation.Check.published;

import fourpin.strength.Beam;
import fourpin.strength.Beam.Bent;
import fourpin.strength.Beam.Hold;
import fourpin.strength.Beam.Load;
import fourpin.strength.Beam.Support;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** Beams: the factors of the Wood Handbook's table, and printed answers of textbooks. */
final class BeamChecks {

  private static final String HANDBOOK = "Wood Handbook FPL-GTR-190 (2010)";
  private static final String TABLE = "Table 9-1";
  private static final double SPAN = 900;
  private static final double EI = 2e9;
  private static final double GA = 4e5;
  private static final double TOTAL = 500;
  private static final Load EVEN = new Load.Even(TOTAL / SPAN, 0, SPAN);
  private static final Load MIDDLE = new Load.Point(TOTAL, SPAN / 2);
  private static final List<Load> QUARTERS =
      List.of(new Load.Point(TOTAL / 2, SPAN / 4), new Load.Point(TOTAL / 2, SPAN * 3 / 4));

  private BeamChecks() {}

  static List<Check> all() {
    List<Check> all = new ArrayList<>(handbook());
    all.addAll(textbooks());
    return all;
  }

  private static List<Check> handbook() {
    List<Check> all = new ArrayList<>();
    add(all, "even load, ends resting, middle", "0.0130208", "0.125", rests(), List.of(EVEN), 0.5);
    add(
        all,
        "even load, ends clamped, middle",
        "0.00260417",
        "0.125",
        clamped(),
        List.of(EVEN),
        0.5);
    add(
        all,
        "load in the middle, ends resting",
        "0.0208333",
        "0.25",
        rests(),
        List.of(MIDDLE),
        0.5);
    add(
        all,
        "load in the middle, ends clamped",
        "0.00520833",
        "0.25",
        clamped(),
        List.of(MIDDLE),
        0.5);
    add(
        all,
        "loads at the quarter points, resting, middle",
        "0.0143229",
        "0.125",
        rests(),
        QUARTERS,
        0.5);
    add(
        all,
        "loads at the quarter points, resting, at a load",
        "0.0104167",
        "0.125",
        rests(),
        QUARTERS,
        0.25);
    add(all, "cantilever, even load, free end", "0.125", "0.5", cantilever(), List.of(EVEN), 1);
    add(
        all,
        "cantilever, load at the free end",
        "0.333333",
        "1",
        cantilever(),
        List.of(new Load.Point(TOTAL, SPAN)),
        1);
    return all;
  }

  /** The bending factor without shear, and the shear factor from what shear adds. */
  private static void add(
      List<Check> all,
      String what,
      String kb,
      String ks,
      List<Support> supports,
      List<Load> loads,
      double at) {
    DoubleSupplier bending = () -> sag(supports, Beam.NO_SHEAR, loads, at);
    all.add(
        published(
            what + ": k_b",
            kb,
            "",
            1e-5 * Double.parseDouble(kb),
            HANDBOOK,
            TABLE,
            () -> bending.getAsDouble() * EI / (TOTAL * SPAN * SPAN * SPAN)));
    all.add(
        published(
            what + ": k_s",
            ks,
            "",
            1e-6,
            HANDBOOK,
            TABLE,
            () -> (sag(supports, GA, loads, at) - bending.getAsDouble()) * GA / (TOTAL * SPAN)));
  }

  private static double sag(List<Support> supports, double shear, List<Load> loads, double at) {
    return new Beam(SPAN, EI, shear, supports).under(loads).deflection(at * SPAN);
  }

  private static List<Support> rests() {
    return List.of(new Support(0, Hold.RESTS), new Support(SPAN, Hold.RESTS));
  }

  private static List<Support> clamped() {
    return List.of(new Support(0, Hold.CLAMPED), new Support(SPAN, Hold.CLAMPED));
  }

  private static List<Support> cantilever() {
    return List.of(new Support(0, Hold.CLAMPED));
  }

  private static Bent simple(double span, double stiffness, Load... loads) {
    return Beam.simple(span, stiffness, Beam.NO_SHEAR).under(List.of(loads));
  }

  private static List<Check> textbooks() {
    double timber = 1e4 * 200 * Math.pow(300, 3) / 12;
    List<Support> far = List.of(new Support(0, Hold.RESTS), new Support(144, Hold.RESTS));
    List<Support> held = List.of(new Support(0, Hold.CLAMPED), new Support(16, Hold.CLAMPED));
    return List.of(
        published(
            "50 kN in the middle of 6 m, E 2.1e5 MPa, I 78e6 mm⁴",
            "13.736",
            "mm",
            0.001,
            "Bansal, Strength of Materials",
            "Problem 12.1 (p. 518)",
            () -> simple(6000, 2.1e5 * 78e6, new Load.Point(50_000, 3000)).deflection(3000)),
        published(
            "5 kN, 3 m along 5 m, under the load",
            "0.6",
            "mm",
            0.0005,
            "Bansal, Strength of Materials",
            "Problem 12.4 (p. 526)",
            () -> simple(5000, 2e5 * 1e8, new Load.Point(5000, 3000)).deflection(3000)),
        published(
            "9 kN/m on a timber 200 x 300 mm over 5 m",
            "16.27",
            "mm",
            0.01,
            "Bansal, Strength of Materials",
            "Problem 12.5 (p. 529)",
            () -> simple(5000, timber, new Load.Even(9, 0, 5000)).deflection(2500)),
        published(
            "the same, slope at the end",
            "0.0104",
            "rad",
            5e-5,
            "Bansal, Strength of Materials",
            "Problem 12.5 (p. 529)",
            () -> simple(5000, timber, new Load.Even(9, 0, 5000)).slope(0)),
        published(
            "80 and 100 lb on 9 ft, E I d in the middle",
            "1981",
            "lb ft³",
            0.6,
            "Pytel and Kiusalaas, Mechanics of Materials",
            "Example 6.11 (p. 234)",
            () -> simple(9, 1, new Load.Point(80, 3), new Load.Point(100, 7)).deflection(4.5)),
        published(
            "600 N/m from 1 to 4 m on 6 m, E I d in the middle",
            "6963",
            "N m³",
            1,
            "Pytel and Kiusalaas, Mechanics of Materials",
            "Example 6.12 (p. 234)",
            () -> simple(6, 1, new Load.Even(600, 1, 4)).deflection(3)),
        published(
            "clamped over 16 ft, 6 k in the middle, 3 k/ft on one half, E I d",
            "384",
            "kip ft³",
            0.1,
            "Levinson, Statics and Strength of Materials",
            "Example 13.6 (p. 329)",
            () ->
                new Beam(16, 1, Beam.NO_SHEAR, held)
                    .under(List.of(new Load.Point(6, 8), new Load.Even(3, 0, 8)))
                    .deflection(8)),
        published(
            "5 k at the tip, 12 ft beyond a span of 12 ft",
            "2.75",
            "in",
            0.005,
            "Hibbeler, Mechanics of Materials",
            "Example 12.12 (p. 612)",
            () ->
                new Beam(288, 29e3 * 125, Beam.NO_SHEAR, far)
                    .under(List.of(new Load.Point(5, 288)))
                    .deflection(288)),
        published(
            "even load on one half, middle, over w L⁴ / (E I)",
            "0.00651042",
            "",
            1e-8,
            "Hibbeler, Mechanics of Materials",
            "Example 12.13: 5 / 768",
            () ->
                simple(SPAN, EI, new Load.Even(1, 0, SPAN / 2)).deflection(SPAN / 2)
                    * EI
                    / Math.pow(SPAN, 4)),
        published(
            "cantilever of 3 m, 25 kN at its end",
            "10.71",
            "mm",
            0.006,
            "Bansal, Strength of Materials",
            "Problem 13.1 (p. 557)",
            () ->
                new Beam(3000, 2.1e5 * 1e8, Beam.NO_SHEAR, cantilever())
                    .under(List.of(new Load.Point(25_000, 3000)))
                    .deflection(3000)),
        published(
            "cantilever of 2.5 m, 16.4 kN/m",
            "5.036",
            "mm",
            0.001,
            "Bansal, Strength of Materials",
            "Problem 13.3 (p. 559)",
            () ->
                new Beam(2500, 2e5 * 7.95e7, Beam.NO_SHEAR, cantilever())
                    .under(List.of(new Load.Even(16.4, 0, 2500)))
                    .deflection(2500)),
        published(
            "C24, 75 x 200 mm over 4.5 m, 0.75 kN/m, with shear",
            "7.50105",
            "mm",
            2e-4,
            "Benoit, Legrand, Tastet, Calcul de structures en bois",
            "ex. 2.3.1, in a public verification suite",
            () -> withShear(0.75)),
        published(
            "the same under 1.0 kN/m",
            "10.0014",
            "mm",
            2e-4,
            "Benoit, Legrand, Tastet, Calcul de structures en bois",
            "ex. 2.3.1, in a public verification suite",
            () -> withShear(1)));
  }

  static double withShear(double load) {
    double bending = 11_000 * 75 * Math.pow(200, 3) / 12;
    double shear = 690 * 5.0 / 6 * 75 * 200;
    return Beam.simple(4500, bending, shear)
        .under(List.of(new Load.Even(load, 0, 4500)))
        .deflection(2250);
  }
}
