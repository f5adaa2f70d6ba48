package fourpin.validation;

import static fourpin.validation.Check.fromMemory;
import static fourpin.validation.Check.published;

import fourpin.strength.frame.Corner;
import fourpin.strength.frame.ShearPanel;
import fourpin.strength.frame.SwayFrame;
import fourpin.strength.wood.DowelBearing;
import fourpin.strength.wood.Slip;
import fourpin.strength.wood.YieldedDowel;
import java.util.List;

/** Frames pushed out of square: panels in shear, fasteners that slide, corners that turn. */
final class FrameChecks {

  private static final double MM_PER_INCH = 25.4;
  private static final double NEWTON_PER_POUND = 4.4482216152605;
  private static final double MPA_PER_PSI = 6.894757e-3;
  private static final double STIFF = 1e12;

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
        fromMemory(
            "closed square frame, head pushed: sway over P h³ / (E I)",
            "0.0833",
            "",
            0.00005,
            "handbooks of rigid frames",
            "1 / 12, no bending half way along each side",
            FrameChecks::square),
        fromMemory(
            "frame of one bay, beams as stiff as its columns and twice as long: sway over P h³ / (E I)",
            "0.125",
            "",
            0.00005,
            "approximate sway of frames, P h² (h / I + L / I) / (24 E)",
            "portal method",
            FrameChecks::portal),
        fromMemory(
            "stiff bar on a turning spring, load over k / h at which it falls",
            "1",
            "",
            1e-9,
            "Timoshenko and Gere, Theory of Elastic Stability, 2nd ed. (1961)",
            "art. 2.1, bars on springs",
            () -> new SwayFrame(1000, 3e6, 0, 0, 3e6).reserve()),
        published(
            "load over slip of a 1/4 in dowel in wood, 180,000 D^1.5",
            "22500",
            "lb/in",
            0.5,
            "NDS 2018",
            "11.3.6, as two public code copies have it",
            () -> Slip.nds(MM_PER_INCH / 4) * MM_PER_INCH / NEWTON_PER_POUND));
  }

  static List<Check> yielding() {
    String suite =
        "AWC, Structural Wood Design Solved Example Problems, as worked in a public test suite";
    return List.of(
        published(
            "nail 0.148 x 3 in, side of 3/4 in, G 0.50, single shear",
            "467.49",
            "N",
            0.7,
            suite,
            "E2.2 and its like; 105 lb in the table",
            () -> yielded(0.148, 0.148, 0.75, 2.25, 0.5, 90_000, 2.2)),
        published(
            "No. 10 screw, sides of 1 1/2 in, G 0.55, one plane of two in double shear",
            "519.80",
            "N",
            0.7,
            suite,
            "E2.4, half of 1039.6 N",
            () -> yielded(0.152, 0.19, 1.5, 3, 0.55, 80_000, 2.4)));
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
    double corners = 4 * new Corner(STIFF * STIFF, bending, span, bending, height).stiffness();
    double push = 1;
    double sway = new SwayFrame(height, corners, 0, 0, 0).sway(push).orElseThrow();
    return sway / (push * height * height * height / bending);
  }
}
