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
 * Plates, at the mesh that the program uses, against the tables of Timoshenko and
 * Woinowsky-Krieger; Poisson ratio 0.3. The tables are rounded, and up to 0.5 % off the series.
 */
final class PlateChecks {

  private static final String TITLE =
      "Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. (1959)";
  private static final double SHORT = 500;
  private static final double PRESSURE = 0.01;
  private static final double FORCE = 1000;
  private static final double ONE_PER_CENT = 0.01;
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

  private static void hinged(List<Check> all) {
    String[][] table = {
      {"1.0", "0.00406", "0.0479", "0.0479"},
      {"1.2", "0.00564", "0.0627", "0.0501"},
      {"1.4", "0.00705", "0.0755", "0.0502"},
      {"1.6", "0.00830", "0.0862", "0.0492"},
      {"1.8", "0.00931", "0.0948", "0.0479"},
      {"2.0", "0.01013", "0.1017", "0.0464"},
      {"3.0", "0.01223", "0.1189", "0.0406"},
      {"5.0", "0.01297", "0.1246", "0.0375"}
    };
    for (String[] row : table) {
      Plate plate = plate(row[0], Edges.all(Hold.HINGED));
      String what = "all edges hinged, even load, sides 1 : " + row[0];
      double load = PRESSURE * SHORT * SHORT;
      all.add(
          check(what + ", sag over q b⁴ / D", row[1], "Table 8", () -> sag(evenly(plate), plate)));
      all.add(
          check(
              what + ", moment across over q b²",
              row[2],
              "Table 8",
              () -> moments(plate).y() / load));
      all.add(
          check(
              what + ", moment along over q b²",
              row[3],
              "Table 8",
              () -> moments(plate).x() / load));
    }
  }

  private static void hingedPoked(List<Check> all) {
    String[][] table = {
      {"1.0", "0.01160"}, {"1.2", "0.01353"}, {"1.4", "0.01484"},
      {"1.6", "0.01570"}, {"1.8", "0.01620"}, {"2.0", "0.01651"}
    };
    for (String[] row : table) {
      Plate plate = plate(row[0], Edges.all(Hold.HINGED));
      all.add(
          check(
              "all edges hinged, force in the middle, sides 1 : " + row[0] + ", sag over P b² / D",
              row[1],
              "Table 23",
              () -> poked(plate)));
    }
  }

  private static void clamped(List<Check> all) {
    String[][] table = {
      {"1.0", "0.00126", "0.00560"},
      {"1.2", "0.00172", "0.00647"},
      {"1.4", "0.00207", "0.00691"},
      {"1.6", "0.00230", "0.00712"},
      {"2.0", "0.00254", "0.00722"}
    };
    for (String[] row : table) {
      Plate plate = plate(row[0], Edges.all(Hold.CLAMPED));
      String what = "all edges clamped, sides 1 : " + row[0];
      all.add(
          check(
              what + ", even load, sag over q b⁴ / D",
              row[1],
              "Table 35",
              () -> sag(evenly(plate), plate)));
      all.add(
          fromMemory(
              what + ", force in the middle, sag over P b² / D",
              row[2],
              "",
              0.015 * Double.parseDouble(row[2]),
              TITLE,
              "Table 37",
              () -> poked(plate)));
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
    all.add(
        check(
            "the same, push of a corner over q a²",
            "0.25",
            "statics",
            () -> evenly(plate).reactions().getFirst() / (PRESSURE * SHORT * SHORT)));
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

  private static BentPlate.Moments moments(Plate plate) {
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
