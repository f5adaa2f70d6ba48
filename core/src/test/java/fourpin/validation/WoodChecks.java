package fourpin.validation;

import static fourpin.validation.Check.fromMemory;
import static fourpin.validation.Check.published;

import fourpin.reference.PowerLaw;
import fourpin.reference.Reference;
import fourpin.reference.Wood;
import fourpin.strength.wood.DowelBearing;
import fourpin.strength.wood.Embedment;
import fourpin.strength.wood.Withdrawal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** Wood and what is fastened in it: rows of handbooks, bearing, withdrawal, creep. */
final class WoodChecks {

  private static final String HANDBOOK = "Wood Handbook FPL-GTR-190 (2010)";
  private static final String NDS = "NDS 2018";
  private static final double MPA_PER_PSI = 6.894757e-3;
  private static final double MM_PER_INCH = 25.4;

  private static final String KCR = "Eq. 3.5-1, as public notes on shelves quote it";
  private static final String KDEF =
      "Table 3.2, by service class as a public code copy of NTC 2018, Table 4.4.V, has it";

  /** The tables are rounded: metric to 100 MPa, inch-pound to 0.01 million psi (69 MPa). */
  private static final double BOTH_ROUNDED = 85 / MPA_PER_PSI / 1e6;

  private WoodChecks() {}

  /** The inch-pound table, printed apart from the metric one that woods.csv is from. */
  static List<Check> moduli() {
    List<Check> all = new ArrayList<>();
    for (Rows.Row row : Rows.reference("woods.csv")) {
      String printed = row.text("modulus_printed_mpsi");
      Wood wood = Reference.woods().get(row.text("name"));
      if (!printed.isEmpty()) {
        all.add(
            published(
                "modulus of " + wood.name(),
                printed,
                "10⁶ psi",
                BOTH_ROUNDED,
                HANDBOOK,
                "Table 5-3b",
                () -> wood.modulus().typical().value() / MPA_PER_PSI / 1e6));
      }
    }
    return all;
  }

  static List<Check> density() {
    return List.of(
        published(
            "density of white ash at 12 %",
            "672",
            "kg/m³",
            0.5,
            HANDBOOK,
            "Table 4-6a",
            () -> Reference.woods().get("ash, white").density().typical().value()));
  }

  /** The code's own table, rounded to 50 psi; its angle is that between push and grain. */
  static List<Check> bearing() {
    String suite = "EN 1995-1-1, as worked in a public test suite";
    Object[][] table = {
      {"along the grain, 1/4 in and more, G 0.50", "5600", 0.5, 0.5, 0},
      {"across the grain, G 0.50, 1/4 in", "4450", 0.5, 0.25, 90},
      {"across the grain, G 0.50, 3/8 in", "3650", 0.5, 0.375, 90},
      {"across the grain, G 0.50, 1/2 in", "3150", 0.5, 0.5, 90},
      {"under 1/4 in, any way, G 0.50", "4650", 0.5, 0.2, 0},
      {"under 1/4 in, any way, G 0.42", "3350", 0.42, 0.2, 90}
    };
    List<Check> all = new ArrayList<>();
    for (Object[] row : table) {
      all.add(
          published(
              (String) row[0],
              (String) row[1],
              "psi",
              25,
              NDS,
              "Table 12.3.3 (p. 86), as public checks of it quote it",
              () -> nds((Double) row[2], (Double) row[3], (Integer) row[4])));
    }
    all.add(
        fromMemory(
            "under 1/4 in, any way, G 0.55",
            "5550",
            "psi",
            25,
            NDS,
            "Table 12.3.3",
            () -> nds(0.55, 0.2, 90)));
    all.add(
        published(
            "under 1/4 in, G 1, as the handbook's 114.5 MPa",
            "114.5",
            "MPa",
            0.06,
            "Wood Handbook FPL-GTR-282 (2021)",
            "Eq. 8-3",
            () -> nds(1, 0.2, 0) * MPA_PER_PSI));
    all.add(
        published(
            "along the grain, d 10 mm, ρ 350 kg/m³",
            "25.83",
            "MPa",
            0.005,
            suite,
            "Eq. 8.32",
            () -> DowelBearing.ec5(Wood.Kind.SOFTWOOD, 350, 10, 0)));
    all.add(
        published(
            "along the grain, d 11 mm, ρ 386 kg/m³",
            "28.17028",
            "MPa",
            1e-5,
            suite,
            "Eq. 8.32",
            () -> DowelBearing.ec5(Wood.Kind.SOFTWOOD, 386, 11, 0)));
    all.add(
        published(
            "along over across, softwood, d 10 mm",
            "1.5",
            "",
            1e-9,
            suite,
            "Eq. 8.33",
            () -> DowelBearing.k90(Wood.Kind.SOFTWOOD, 10)));
    all.addAll(embedment());
    all.add(
        published(
            "moment at which a nail of 2.5 mm and 600 MPa yields",
            "1949.47",
            "N mm",
            0.005,
            suite,
            "Eq. 8.14",
            () -> Reference.constant("EC5 yield moment").value() * Math.pow(2.5, 2.6)));
    return all;
  }

  /** Worked by hand: no example in print was found. */
  private static List<Check> embedment() {
    String nails = "8.3.1.3, nails, screws up to 6 mm and pins that are no dowels, worked by hand";
    String bolts = "8.5.1.1(3), bolts, dowels from 6 mm on, worked by hand";
    return List.of(
        embedment("plywood of 630 kg/m³, d 3 mm", "49.84", nails, () -> plywood(630, 3)),
        embedment("plywood of 600 kg/m³, d 5 mm", "40.72", nails, () -> plywood(600, 5)),
        embedment("plywood of 600 kg/m³, d 8 mm", "60.72", bolts, () -> plywood(600, 8)),
        embedment("particleboard of 18 mm, d 5 mm", "28.13", nails, () -> board(5, 18)),
        embedment("particleboard of 16 mm, d 4.25 mm", "31.15", nails, () -> board(4.25, 16)),
        embedment("particleboard of 18 mm, d 8 mm", "25.60", bolts, () -> board(8, 18)));
  }

  private static Check embedment(String of, String mpa, String rule, DoubleSupplier program) {
    return fromMemory(of, mpa, "MPa", 0.006, "EN 1995-1-1:2004", rule, program);
  }

  private static double plywood(double density, double diameter) {
    return Embedment.ofPlywood(density, diameter).mpa();
  }

  private static double board(double diameter, double thickness) {
    return Embedment.ofBoard(diameter, thickness).mpa();
  }

  private static double nds(double gravity, double inches, double degrees) {
    return DowelBearing.nds(gravity, inches * MM_PER_INCH, degrees) / MPA_PER_PSI;
  }

  /** Lag screws, the whole table. */
  static List<Check> lagScrews() {
    List<Check> all = new ArrayList<>();
    for (Rows.Row row : Rows.of("nds_lag_withdrawal.csv")) {
      all.add(
          published(
              "G " + row.text("gravity") + ", " + row.text("inches") + " in",
              row.text("printed_lb_per_in"),
              "lb/in",
              1,
              "NDS",
              "Table 12.2A, scanned page",
              () -> Withdrawal.lagScrew().printed(row.number("gravity"), row.number("inches"))));
    }
    return all;
  }

  static List<Check> screws() {
    PowerLaw lag = Withdrawal.lagScrew();
    PowerLaw wood = Withdrawal.woodScrew();
    Object[][] table = {
      {"no. 8 (0.164 in), G 0.42", "82", 0.42, 0.164},
      {"no. 10 (0.190 in), G 0.50", "135", 0.5, 0.19},
      {"no. 14 (0.242 in), G 0.42", "121", 0.42, 0.242},
      {"no. 14 (0.242 in), G 0.50", "172", 0.5, 0.242},
      {"no. 14 (0.242 in), G 0.55", "208", 0.55, 0.242}
    };
    List<Check> all = new ArrayList<>();
    all.add(
        published(
            "lag screw 1/2 x 4 in through 1 1/2 in, tip 5/16 in, G 0.55",
            "955",
            "lb",
            1,
            "AWC, Structural Wood Design Solved Example Problems",
            "E2.3",
            () -> lag.printed(0.55, 0.5) * (4 - 1.5 - 0.3125)));
    for (Object[] row : table) {
      all.add(
          published(
              "wood screw " + row[0],
              (String) row[1],
              "lb/in",
              1,
              NDS,
              "Table 12.2B (p. 78), as public checks of it quote it",
              () -> wood.printed((Double) row[2], (Double) row[3])));
    }
    all.add(
        fromMemory(
            "wood screw no. 8 (0.164 in), G 0.50",
            "117",
            "lb/in",
            0.5,
            NDS,
            "Table 12.2B",
            () -> wood.printed(0.5, 0.164)));
    return all;
  }

  static List<Check> creep() {
    String ec5 = "EN 1995-1-1:2004";
    return List.of(
        published(
            "seasoned wood",
            "1.5",
            "",
            0,
            "American Wood Council answer on NDS 3.5.2",
            "K_cr",
            () -> creep("handbook, solid wood")),
        published(
            "unseasoned wood",
            "2.0",
            "",
            0,
            "American Wood Council answer on NDS 3.5.2",
            "K_cr",
            () -> creep("handbook, solid wood, unseasoned")),
        published(
            "solid wood, k_def, service class 1",
            "0.60",
            "",
            1e-9,
            ec5,
            "Table 3.2, three public code repositories",
            () -> creep("eurocode, solid wood") - 1),
        published(
            "solid wood, k_def, service class 2",
            "0.80",
            "",
            1e-9,
            ec5,
            "Table 3.2, three public code repositories",
            () -> creep("eurocode, solid wood, service class 2") - 1),
        published(
            "solid wood, k_def, service class 3",
            "2.00",
            "",
            1e-9,
            ec5,
            "Table 3.2, three public code repositories",
            () -> creep("eurocode, solid wood, service class 3") - 1),
        published(
            "laminated wood, k_def, service class 1",
            "0.60",
            "",
            1e-9,
            ec5,
            "Table 3.2, three public code repositories",
            () -> creep("eurocode, laminated wood") - 1),
        published(
            "laminated wood, years over first",
            "1.5",
            "",
            0,
            NDS,
            KCR,
            () -> creep("handbook, laminated wood")),
        published(
            "structural panels, dry, years over first",
            "2.0",
            "",
            0,
            NDS,
            KCR,
            () -> creep("handbook, strand board")),
        published(
            "plywood, k_def, service class 1",
            "0.80",
            "",
            1e-9,
            ec5,
            KDEF,
            () -> creep("eurocode, plywood") - 1),
        published(
            "OSB/3, k_def, service class 1",
            "1.50",
            "",
            1e-9,
            ec5,
            KDEF,
            () -> creep("eurocode, strand board") - 1),
        published(
            "MDF.LA, k_def, service class 1",
            "2.25",
            "",
            1e-9,
            ec5,
            KDEF,
            () -> creep("eurocode, fibreboard") - 1),
        published(
            "particleboard P4, k_def, service class 1",
            "2.25",
            "",
            1e-9,
            ec5,
            KDEF,
            () -> creep("eurocode, particleboard") - 1),
        published(
            "C24, 75 x 200 mm over 4.5 m, 0.51 kN/m that stays: what creep adds, service class 1",
            "3.06043",
            "mm",
            1e-5,
            "Benoit, Legrand, Tastet, Calcul de structures en bois",
            "ex. 2.3.1, in a public verification suite",
            () -> (creep("eurocode, solid wood") - 1) * BeamChecks.withShear(0.51)));
  }

  static List<Check> duration() {
    return List.of(
        duration("solid wood and plywood", 1, "0.70", ""),
        duration("solid wood and plywood", 2, "0.70", ", service class 2"),
        duration("solid wood and plywood", 3, "0.55", ", service class 3"),
        duration("OSB/3", 1, "0.50", ", strand board"),
        duration("OSB/3", 2, "0.40", ", strand board, service class 2"),
        duration("particleboard P4", 1, "0.45", ", particleboard"),
        duration("particleboard P5", 2, "0.30", ", particleboard, service class 2"),
        duration("MDF.LA", 1, "0.40", ", fibreboard"),
        brief(1, "0.90", ""),
        brief(2, "0.90", ", service class 2"),
        brief(3, "0.70", ", service class 3"));
  }

  private static Check duration(String what, int serviceClass, String printed, String row) {
    return duration(
        what + ", k_mod, service class " + serviceClass + ", long-term",
        printed,
        "EC5 duration for stored loads" + row);
  }

  private static Check brief(int serviceClass, String printed, String row) {
    return duration(
        "solid wood and plywood, k_mod, service class " + serviceClass + ", short-term",
        printed,
        "EC5 duration for brief loads" + row);
  }

  private static Check duration(String what, String printed, String constant) {
    return published(
        what,
        printed,
        "",
        1e-9,
        "EN 1995-1-1:2004",
        "Table 3.1, ICE Manual of Structural Design, Table 19.9",
        () -> Reference.constant(constant).value());
  }

  private static double creep(String name) {
    return Reference.creep().get(name).totalOverFirst();
  }
}
