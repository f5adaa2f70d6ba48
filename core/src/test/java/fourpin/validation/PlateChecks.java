package fourpin.validation;

import static fourpin.validation.Check.fromMemory;
import static fourpin.validation.Check.published;

import fourpin.strength.plate.BentPlate;
import fourpin.strength.plate.MirroredPlate;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.PlateSolver;
import fourpin.strength.plate.Rigidity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * Plates, at the mesh that the program uses, against printed tables; Poisson ratio 0.3. The tables
 * are rounded, and up to 1 % off the series that {@link PlateSecondChecks} sums.
 */
final class PlateChecks {

  private static final String TITLE =
      "Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. (1959)";
  private static final double SHORT = 500;
  private static final double PRESSURE = 0.01;
  private static final double FORCE = 1000;
  private static final double ONE_PER_CENT = 0.01;

  /** {@code 12 (1 - ν²)}, from {@code D} to {@code E t³}. */
  private static final double FREE_SIDES = 12 * (1 - 0.3 * 0.3);

  private static final Rigidity BEAM = Rigidity.of(70_000, 70_000, 0, 35_000, 10);
  private static final Rigidity STIFF = Rigidity.isotropic(70_000, 0.3, 10);

  private PlateChecks() {}

  static List<Check> all() {
    List<Check> all = new ArrayList<>();
    hinged(all);
    hingedPoked(all);
    clamped(all);
    endsHinged(all);
    corners(all);
    onOneHalf(all);
    return all;
  }

  /** As the table has them, over the modulus and the thickness. */
  private static void hinged(List<Check> all) {
    String[][] table = {
      {"1.0", "0.0444", "0.2874"},
      {"1.2", "0.0616", "0.3762"},
      {"1.4", "0.0770", "0.4530"},
      {"1.6", "0.0906", "0.5172"},
      {"1.8", "0.1017", "0.5688"},
      {"2.0", "0.1110", "0.6102"},
      {"3.0", "0.1335", "0.7134"},
      {"4.0", "0.1400", "0.7410"},
      {"5.0", "0.1417", "0.7476"}
    };
    for (String[] row : table) {
      Plate plate = plate(row[0], Edges.all(Hold.HINGED));
      String what = "all edges hinged, even load, sides 1 : " + row[0];
      double load = PRESSURE * SHORT * SHORT;
      all.add(
          roark(
              what + ", sag over q b⁴ / (E t³)",
              row[1],
              "1a",
              () -> FREE_SIDES * sag(evenly(plate), plate)));
      all.add(
          roark(
              what + ", stress over q b² / t²",
              row[2],
              "1a",
              () -> 6 * middleMoments(plate).y() / load));
    }
  }

  private static void hingedPoked(List<Check> all) {
    String[][] table = {
      {"1.0", "0.1267"}, {"1.2", "0.1478"}, {"1.4", "0.1621"},
      {"1.6", "0.1715"}, {"1.8", "0.1770"}, {"2.0", "0.1805"}
    };
    for (String[] row : table) {
      Plate plate = plate(row[0], Edges.all(Hold.HINGED));
      all.add(
          roark(
              "all edges hinged, force in the middle, sides 1 : "
                  + row[0]
                  + ", sag over P b² / (E t³)",
              row[1],
              "1b",
              () -> FREE_SIDES * poked(plate)));
    }
  }

  /** Sag alone: the program clamps no edge of a shelf, and takes no moments of clamped plates. */
  private static void clamped(List<Check> all) {
    String[][] table = {
      {"1.0", "0.00126", "0.00560"},
      {"1.2", "0.00172", "0.00647"},
      {"1.4", "0.00207", "0.00691"},
      {"1.6", "0.00230", "0.00712"},
      {"1.8", "0.00245", ""},
      {"2.0", "0.00254", "0.00722"}
    };
    for (String[] row : table) {
      Plate plate = plate(row[0], Edges.all(Hold.CLAMPED));
      String what = "all edges clamped, sides 1 : " + row[0];
      all.add(
          published(
              what + ", even load, sag over q b⁴ / D",
              row[1],
              "",
              ONE_PER_CENT * Double.parseDouble(row[1]),
              TITLE,
              "Table 35, as a public code copy has it",
              () -> sag(evenly(plate), plate)));
      if (!row[2].isEmpty()) {
        all.add(
            check(
                what + ", force in the middle, sag over P b² / D",
                row[2],
                "Table 37",
                () -> poked(plate)));
      }
    }
  }

  /** As a shelf in dadoes. */
  private static void endsHinged(List<Check> all) {
    String[][] table = {{"1.0", "0.01309", "0.01509"}, {"2.0", "0.01289", "0.01521"}};
    for (String[] row : table) {
      double depth = Double.parseDouble(row[0]) * SHORT;
      Plate plate = Plate.even(SHORT, depth, STIFF, Edges.ends(Hold.HINGED), List.of());
      String what = "ends hinged, front and back free, even load, depth over span " + row[0];
      all.add(check(what + ", middle", row[1], "Table 47", () -> sag(evenly(plate), plate)));
      all.add(
          check(
              what + ", free edge",
              row[2],
              "Table 47",
              () -> factor(evenly(plate).deflection(SHORT / 2, 0))));
    }
  }

  private static void corners(List<Check> all) {
    List<Support> corners =
        List.of(
            new Support(0, 0),
            new Support(SHORT, 0),
            new Support(0, SHORT),
            new Support(SHORT, SHORT));
    Plate plate = Plate.even(SHORT, SHORT, STIFF, Edges.FREE, corners);
    all.add(
        check(
            "square on its corners, even load, middle, over q a⁴ / D",
            "0.0255",
            "ch. 7",
            () -> sag(evenly(plate), plate)));
  }

  /**
   * A strip that bends like a beam, loaded on one half: what a shelf's answer sums from two halves.
   */
  private static void onOneHalf(List<Check> all) {
    double depth = SHORT / 50;
    Plate strip = Plate.even(SHORT, depth, BEAM, Edges.ends(Hold.HINGED), List.of());
    all.add(
        published(
            "strip with its ends hinged, even load on one half, middle, over w L⁴ / (E I)",
            "0.00651042",
            "",
            ONE_PER_CENT * 0.00651042,
            "Hibbeler, Mechanics of Materials",
            "Example 12.13: 5 / 768",
            () ->
                new MirroredPlate(strip, PlateSolver.PARTS)
                        .underLeftOf(List.of(), strip.evenly(PRESSURE))
                        .orElseThrow()
                        .deflection(SHORT / 2, depth / 2)
                    * BEAM.alongX()
                    / (PRESSURE * Math.pow(SHORT, 4))));
  }

  private static Check roark(String what, String printed, String part, DoubleSupplier ours) {
    return published(
        what,
        printed,
        "",
        ONE_PER_CENT * Double.parseDouble(printed),
        "Roark's Formulas for Stress and Strain, 7th ed. (2002)",
        "Table 11.4, case " + part + " (p. 502)",
        ours);
  }

  private static Check check(String what, String printed, String place, DoubleSupplier ours) {
    return fromMemory(
        what, printed, "", ONE_PER_CENT * Double.parseDouble(printed), TITLE, place, ours);
  }

  private static Plate plate(String ratio, Edges edges) {
    return Plate.even(Double.parseDouble(ratio) * SHORT, SHORT, STIFF, edges, List.of());
  }

  private static BentPlate evenly(Plate plate) {
    return new PlateSolver(plate).under(List.of(plate.evenly(PRESSURE))).orElseThrow();
  }

  private static BentPlate.Moments middleMoments(Plate plate) {
    return evenly(plate).moments(plate.length() / 2, plate.depth() / 2);
  }

  private static double poked(Plate plate) {
    PlateLoad poke = new PlateLoad.Point(FORCE, plate.length() / 2, plate.depth() / 2);
    BentPlate bent = new PlateSolver(plate).under(List.of(poke)).orElseThrow();
    return middle(bent, plate) * STIFF.alongX() / (FORCE * SHORT * SHORT);
  }

  private static double sag(BentPlate bent, Plate plate) {
    return factor(middle(bent, plate));
  }

  private static double middle(BentPlate bent, Plate plate) {
    return bent.deflection(plate.length() / 2, plate.depth() / 2);
  }

  private static double factor(double deflection) {
    return deflection * STIFF.alongX() / (PRESSURE * Math.pow(SHORT, 4));
  }
}
