package fourpin.validation;

import static fourpin.validation.Check.derived;
import static fourpin.validation.Check.published;

import fourpin.strength.frame.Corner;
import fourpin.strength.frame.Frame;
import fourpin.strength.frame.FrameOnLegs;
import fourpin.strength.frame.Legs;
import fourpin.strength.frame.Member;
import fourpin.strength.frame.ShearPanel;
import fourpin.strength.frame.SwayFrame;
import fourpin.strength.wood.DowelBearing;
import fourpin.strength.wood.DowelInWood;
import fourpin.strength.wood.Slip;
import fourpin.strength.wood.YieldedDowel;
import java.util.ArrayList;
import java.util.List;

/** Frames pushed out of square: panels in shear, fasteners that slide, corners that turn. */
final class FrameChecks {

  private static final double MM_PER_INCH = 25.4;
  private static final double NEWTON_PER_POUND = 4.4482216152605;
  private static final double MPA_PER_PSI = 6.894757e-3;
  private static final double STIFF = 1e12;
  private static final String NDS = "NDS 2018";

  /** The tables are rounded to a pound, and worked out with bearing rounded to 50 psi. */
  private static final double TO_A_POUND = 1;

  private FrameChecks() {}

  static List<Check> racking() {
    return List.of(
        published(
            "443 lb/ft on plywood of 0.535 in, G 90,000 psi, 8 ft high: shear of the panel",
            "0.0736",
            "in",
            0.00005,
            "a worked shear wall in the structural engineers' mail archive, February 1998",
            "v h / (G t)",
            FrameChecks::shear),
        published(
            "sheet of 4 x 8 ft, its fasteners sliding by 0.023 in: 0.75 h e, h in feet, e in inches",
            "0.138",
            "in",
            0.00005,
            "Wood Structural Panel Shear Wall Deflection Formula, Technical Topics TT-053A (2007)",
            "term of fastener slip",
            FrameChecks::slips),
        derived(
            "closed square frame, head pushed: sway over P h³ / (E I)",
            "0.0833",
            "",
            0.00005,
            "cantilevers of half a side, bent by half the push",
            "1 / 12, no bending half way along each side",
            FrameChecks::square),
        derived(
            "frame of one bay, beams as stiff as its columns and twice as long: sway over P h³ / (E I)",
            "0.125",
            "",
            0.00005,
            "portal method, P h² (h / I + L / I) / (24 E)",
            "no bending half way along each part",
            FrameChecks::portal),
        derived(
            "panel bent in an S that gives by shear as much as it bends, its end's stiffness over E I / L",
            "3",
            "",
            1e-9,
            "6 / (1 + Φ), Φ = 12 E I / (G A L²) = 1",
            "Przemieniecki, Theory of Matrix Structural Analysis (1968), ch. 5, from memory",
            () -> 1 / new Member(1000, 1e9, 12 * 1e9 / 1e6).inS() / (1e9 / 1000)),
        derived(
            "the same turned at one end, the other hinged",
            "2.4",
            "",
            1e-9,
            "3 / (1 + Φ / 4), Φ = 1",
            "Przemieniecki, Theory of Matrix Structural Analysis (1968), ch. 5, from memory",
            () -> 1 / new Member(1000, 1e9, 12 * 1e9 / 1e6).fromOneEnd() / (1e9 / 1000)),
        derived(
            "stiff bar on a turning spring under half the load at which it falls, sway over that without a load",
            "2",
            "",
            1e-9,
            "balance of moments, H h + P h φ against k φ: 1 / (1 - P / Pₖ)",
            "bars on springs, as in Timoshenko and Gere, Theory of Elastic Stability, ch. 2",
            () -> swayOf(1.5e6) / swayOf(0)),
        derived(
            "legs that go on in a frame that can't lean, their joints loose: sway over P a² (h + a) / (3 E I)",
            "1",
            "",
            1e-9,
            "beam that overhangs one support, loaded at its end",
            "Steel Construction Manual, Table 3-23, from memory",
            FrameChecks::overhang),
        derived(
            "two stiff bars of a length, a spring at the foot and one between: load at which they fall over c / l",
            "0.381966",
            "",
            5e-7,
            "(3 - √5) / 2, by balance of moments",
            "bars on springs, as in Timoshenko and Gere, Theory of Elastic Stability, ch. 2",
            () ->
                new FrameOnLegs(
                        new SwayFrame(700, 0, 0, 0, 1e6), new Legs(700, 0, 2e6, 2e6, 1e6, 1e6))
                    .reserve()),
        derived(
            "panel 800 x 1800 x 6, 3500 MPa, jammed in its frame: push times height over lean",
            "1122309278",
            "N·mm",
            0.5,
            "pinned frame with one brace, E A b² h² / d³, of an area A = t d / 10",
            "the width of a tenth of the diagonal is from memory of rules for infilled frames",
            () -> new ShearPanel(800, 1800, 6, 0, 3500).jammed()),
        published(
            "load over slip of four bolts of 12 mm in GL24h on steel, two planes each, by Eurocode 5",
            "71853.4",
            "N/mm",
            0.05,
            "EN 1995-1-1:2004, as worked in a public test suite",
            "Table 7.1, ρ^1.5 d / 23, and 7.1(3), twice as much on steel",
            () -> 4 * 2 * 2 * Slip.ec5(420, 420, 12)));
  }

  private static double swayOf(double burden) {
    return new SwayFrame(1000, 3e6, 0, 0, burden).sway(10).orElseThrow();
  }

  /** Pins of shelves in the wood of a side. */
  static List<Check> pins() {
    return List.of(
        derived(
            "stiff pin flush with the wood, push at which that yields, over f d t",
            "0.41421",
            "",
            0.000005,
            "√2 - 1, by balance of forces and moments",
            "which EN 1995-1-1:2004, Eq. 8.9(a), rounds to 0.4, from memory",
            () -> new DowelInWood(5, 10, 0).yieldsAt(30) / (30 * 5 * 10)),
        derived(
            "stiff pin of 5 mm, 10 mm deep, pushed 10 mm before wood of 30 MPa, push at which that yields",
            "243.416",
            "N",
            0.0005,
            "balance of forces and moments",
            "P = f d (2 z - t), moments about the face of the wood, z by halving",
            () -> new DowelInWood(5, 10, 10).yieldsAt(30)),
        derived(
            "pin of 2.5 mm that yields at 1949.47 N mm, flush with wood of 30 MPa, push that bends it so far",
            "540.76",
            "N",
            0.005,
            "√(2 M f d), the plastic hinge of Johansen's theory",
            "EN 1995-1-1:2004, Eq. 8.9(b) without its 1.15, from memory",
            () -> new DowelInWood(2.5, 20, 0).pushOf(1949.47, 30)));
  }

  static List<Check> yielding() {
    String suite =
        "AWC, Structural Wood Design Solved Example Problems, as worked in a public test suite";
    List<Check> all = new ArrayList<>();
    all.add(
        published(
            "nail 0.148 x 3 in, side of 3/4 in, G 0.50, single shear",
            "467.49",
            "N",
            0.7,
            suite,
            "E2.2 and its like; 105 lb in the table",
            () -> yielded(0.148, 0.148, 0.75, 2.25, 0.5, 90_000, 2.2)));
    all.add(
        published(
            "No. 10 screw, sides of 1 1/2 in, G 0.55, one plane of two in double shear",
            "519.80",
            "N",
            0.7,
            suite,
            "E2.4, half of 1039.6 N",
            () -> yielded(0.152, 0.19, 1.5, 3, 0.55, 80_000, 2.4)));
    screws(all);
    nails(all);
    return all;
  }

  /** Ten diameters deep; on the root, which sets the reduction of the thick ones as well. */
  private static void screws(List<Check> all) {
    Object[][] table = {
      {"No. 8, side of 1/2 in, G 0.50", "73", 0.131, 0.164, 0.5, 0.5, 90_000, 2.2},
      {"No. 10, side of 1/2 in, G 0.50", "90", 0.152, 0.19, 0.5, 0.5, 80_000, 2.2},
      {"No. 10, side of 1 1/2 in, G 0.50", "117", 0.152, 0.19, 1.5, 0.5, 80_000, 2.2},
      {"No. 12, side of 1/2 in, G 0.42", "91", 0.171, 0.216, 0.5, 0.42, 80_000, 2.21},
      {"No. 14, side of 1/2 in, G 0.50", "120", 0.196, 0.242, 0.5, 0.5, 70_000, 2.46}
    };
    for (Object[] row : table) {
      double shank = (Double) row[3];
      all.add(
          published(
              "screw " + row[0],
              (String) row[1],
              "lb",
              TO_A_POUND,
              NDS,
              "Table 12L (p. 109), as public checks of it quote it",
              () ->
                  yielded(
                          (Double) row[2],
                          shank,
                          (Double) row[4],
                          9 * shank,
                          (Double) row[5],
                          (Integer) row[6],
                          (Double) row[7])
                      / NEWTON_PER_POUND));
    }
  }

  /** Through 3/4 and 1 in of G 0.50, which the table prints nails of four lengths for. */
  private static void nails(List<Check> all) {
    Object[][] table = {
      {"6d", 0.113, 2.0, 100_000, "72", "72"},
      {"8d", 0.131, 2.5, 100_000, "90", "97"},
      {"10d", 0.148, 3.0, 90_000, "105", "118"},
      {"16d", 0.162, 3.5, 90_000, "121", "141"}
    };
    for (Object[] row : table) {
      nail(all, row, "side of 3/4 in", 0.75, (String) row[4]);
      nail(all, row, "side of 1 in", 1, (String) row[5]);
    }
  }

  private static void nail(List<Check> all, Object[] row, String what, double side, String pounds) {
    double thick = (Double) row[1];
    double main = (Double) row[2] - side - thick;
    all.add(
        published(
            "common nail " + row[0] + ", " + what + ", G 0.50",
            pounds,
            "lb",
            TO_A_POUND,
            NDS,
            "Table 12N (p. 111), as public checks of it quote it",
            () ->
                yielded(thick, thick, side, main, 0.5, (Integer) row[3], 2.2) / NEWTON_PER_POUND));
  }

  /** Allowed at normal duration, N; inches and psi. */
  private static double yielded(
      double root,
      double shank,
      double side,
      double main,
      double gravity,
      double steel,
      double reduction) {
    double bearing = DowelBearing.nds(gravity, shank * MM_PER_INCH, 0);
    double diameter = root * MM_PER_INCH;
    double moment = steel * MPA_PER_PSI * Math.pow(diameter, 3) / 6;
    return new YieldedDowel(
                diameter, side * MM_PER_INCH, main * MM_PER_INCH, bearing, bearing, moment)
            .yieldsAt()
        / reduction;
  }

  /** A glued panel of 4 x 8 ft under its push, sway of the head in inches. */
  private static double shear() {
    double width = 48 * MM_PER_INCH;
    double height = 96 * MM_PER_INCH;
    ShearPanel panel =
        new ShearPanel(width, height, 0.535 * MM_PER_INCH, 90_000 * MPA_PER_PSI, 1000);
    double push = 443 * NEWTON_PER_POUND * 4;
    return push * height * height / panel.glued() / MM_PER_INCH;
  }

  /** A stiff sheet whose fasteners each slide 0.023 in under the push. */
  private static double slips() {
    double width = 48 * MM_PER_INCH;
    double height = 96 * MM_PER_INCH;
    double spacing = 150;
    double slip = 1000;
    double each = slip * 0.023 * MM_PER_INCH;
    double push = each / spacing * width;
    ShearPanel panel = new ShearPanel(width, height, 10, STIFF, 1000);
    return push * height * height / panel.fastened(spacing, slip) / MM_PER_INCH;
  }

  /** Of one upright, 1200 mm over its joint and 500 mm below. */
  private static double overhang() {
    double bending = 1e9;
    double above = 1200;
    double below = 500;
    Legs legs = new Legs(below, 0, fromOneEnd(above, bending), fromOneEnd(below, bending), 0, 0);
    Frame frame = new FrameOnLegs(new SwayFrame(above, STIFF * STIFF, 0, 0, 0), legs);
    return frame.sway(1).orElseThrow() / (below * below * (above + below) / (3 * bending));
  }

  private static double fromOneEnd(double length, double bending) {
    return 1 / new Member(length, bending, Member.NO_SHEAR).fromOneEnd();
  }

  private static double square() {
    return frame(1000);
  }

  private static double portal() {
    return frame(2000);
  }

  /** Sway of a closed frame of one stiffness, 1000 mm high, over P h³ / (E I). */
  private static double frame(double span) {
    double height = 1000;
    double bending = 1e9;
    Member beam = new Member(span, bending, Member.NO_SHEAR);
    Member column = new Member(height, bending, Member.NO_SHEAR);
    double corners = 4 * new Corner(STIFF * STIFF, beam, column).stiffness();
    double push = 1;
    double sway = new SwayFrame(height, corners, 0, 0, 0).sway(push).orElseThrow();
    return sway / (push * height * height * height / bending);
  }
}
