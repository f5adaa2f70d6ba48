package fourpin.validation;

import static fourpin.validation.Check.derived;

import fourpin.strength.plate.BentPlate;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.PlateSolver;
import fourpin.strength.plate.Rigidity;
import fourpin.strength.plate.Ritz;
import fourpin.strength.plate.Series;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * Plates, at the mesh that the program uses, against what other methods give: series, polynomials
 * with the least energy, and the balance of forces. Each is worked out anew by the test.
 */
final class PlateSecondChecks {

  private static final double SHORT = 500;
  private static final double ONE_PER_CENT = 0.01;

  /** On a plate five times as long as deep, a single force is told 2 % too small. */
  private static final double FARTHEST_POKED = 4;

  private static final Rigidity STIFF = Rigidity.isotropic(70_000, 0.3, 10);
  private static final Rigidity OAK = Rigidity.of(12_000, 900, 0.4, 800, 19);
  private static final Rigidity PLYWOOD = Rigidity.of(8270, 3500, 0.1, 517, 18);
  private static final Rigidity BOARD = Rigidity.isotropic(2500, 0.25, 18);
  private static final Rigidity GLASS = Rigidity.isotropic(70_000, 0.22, 10);
  private static final String NAVIER = "Navier's series, summed by the test";
  private static final String LEVY = "Lévy's series, summed by the test";
  private static final String RITZ = "polynomials with the least energy (Ritz), by the test";
  private static final String ART = "Timoshenko and Woinowsky-Krieger (1959), art. ";

  private PlateSecondChecks() {}

  static List<Check> all() {
    List<Check> all = new ArrayList<>();
    hinged(all);
    ofTwoStiffnesses(all);
    endsHinged(all);
    clamped(all);
    corners(all);
    shelf(all, "oak shelf", OAK);
    shelf(all, "plywood shelf", PLYWOOD);
    shelf(all, "fibreboard shelf", BOARD);
    shelf(all, "glass shelf", GLASS);
    return all;
  }

  private static void hinged(List<Check> all) {
    double load = SHORT * SHORT;
    for (double ratio : new double[] {1, 1.4, 2, 3, 5}) {
      Plate plate = plate(ratio, Edges.all(Hold.HINGED));
      String what = "all edges hinged, sides 1 : " + ratio;
      all.add(
          second(
              what + ", even load, sag over q b⁴ / D",
              Series.sag(ratio),
              6,
              NAVIER,
              ART + 30,
              () -> factor(middle(evenly(plate), plate))));
      all.add(
          second(
              what + ", even load, moment across over q b²",
              Series.momentAcross(ratio),
              5,
              NAVIER,
              ART + 30,
              () -> moments(plate).y() / load));
      all.add(
          second(
              what + ", even load, moment along over q b²",
              Series.momentAlong(ratio),
              5,
              NAVIER,
              ART + 30,
              () -> moments(plate).x() / load));
      if (ratio < FARTHEST_POKED) {
        all.add(
            second(
                what + ", force in the middle, sag over P b² / D",
                Series.poked(ratio),
                6,
                NAVIER,
                ART + 34,
                () -> poked(plate)));
      }
    }
  }

  private static void ofTwoStiffnesses(List<Check> all) {
    for (double ratio : new double[] {1, 2.5}) {
      for (Rigidity wood : List.of(OAK, PLYWOOD)) {
        Plate plate = Plate.even(ratio * SHORT, SHORT, wood, Edges.all(Hold.HINGED), List.of());
        String what = wood.equals(OAK) ? "oak of 19 mm" : "plywood of 18 mm";
        double sag = Series.sag(wood, plate.length(), SHORT);
        all.add(
            second(
                what + ", all edges hinged, sides 1 : " + ratio + ", sag under 1 MPa in mm",
                sag,
                2,
                NAVIER,
                ART + 85,
                () -> middle(evenly(plate), plate)));
      }
    }
  }

  /** As a shelf in dadoes. */
  private static void endsHinged(List<Check> all) {
    for (double depth : new double[] {0.3, 0.5, 1, 2}) {
      Plate plate = Plate.even(SHORT, depth * SHORT, STIFF, Edges.ends(Hold.HINGED), List.of());
      String what = "ends hinged, front and back free, even load, depth over span " + depth;
      all.add(
          second(
              what + ", middle, sag over q a⁴ / D",
              Series.levy(depth, 0),
              6,
              LEVY,
              ART + 48,
              () -> factor(middle(evenly(plate), plate))));
      all.add(
          second(
              what + ", free edge, sag over q a⁴ / D",
              Series.levy(depth, 1),
              6,
              LEVY,
              ART + 48,
              () -> factor(evenly(plate).deflection(SHORT / 2, 0))));
    }
  }

  private static void clamped(List<Check> all) {
    for (double ratio : new double[] {1, 1.4, 2}) {
      Plate plate = plate(ratio, Edges.all(Hold.CLAMPED));
      Ritz even = Ritz.clamped(plate.length(), SHORT, STIFF);
      Ritz poked = Ritz.clampedAndPoked(plate.length(), SHORT, STIFF);
      String what = "all edges clamped, sides 1 : " + ratio;
      all.add(
          ritz(
              what + ", even load, sag over q b⁴ / D",
              factor(even.sag(plate.length() / 2, SHORT / 2)),
              6,
              () -> factor(middle(evenly(plate), plate))));
      all.add(
          ritz(
              what + ", even load, moment along in the middle over q b²",
              even.momentX(plate.length() / 2, SHORT / 2) / (SHORT * SHORT),
              5,
              () -> moments(plate).x() / (SHORT * SHORT)));
      all.add(
          ritz(
              what + ", force in the middle, sag over P b² / D",
              poked.sag(plate.length() / 2, SHORT / 2) * STIFF.alongX() / (SHORT * SHORT),
              5,
              () -> poked(plate)));
    }
  }

  private static void corners(List<Check> all) {
    Plate plate = onFour(SHORT, SHORT, STIFF, 0, 0);
    Ritz other = Ritz.onFour(SHORT, SHORT, STIFF, 0, 0);
    double half = SHORT / 2;
    double load = SHORT * SHORT;
    String what = "square on its corners, even load, ";
    all.add(
        ritz(
            what + "sag in the middle over q a⁴ / D",
            factor(other.sag(half, half)),
            6,
            () -> factor(middle(evenly(plate), plate))));
    all.add(
        ritz(
            what + "sag half way along an edge over q a⁴ / D",
            factor(other.sag(half, 0)),
            6,
            () -> factor(evenly(plate).deflection(half, 0))));
    all.add(
        ritz(
            what + "moment in the middle over q a²",
            other.momentX(half, half) / load,
            4,
            () -> moments(plate).x() / load));
    all.add(
        ritz(
            what + "moment half way along an edge over q a²",
            other.momentX(half, 0) / load,
            4,
            () -> evenly(plate).moments(half, 0).x() / load));
    all.add(
        statics(
            what + "push of a corner over q a²",
            "0.25",
            "a quarter of the load",
            () -> evenly(plate).reactions().getFirst() / load));
    all.add(
        statics(
            what + "moment over the whole section in the middle, over q a³",
            "0.125",
            "q a² / 2 a quarter of the span from its push",
            () -> whole(plate) / (load * SHORT)));
  }

  /** 800 x 300 mm on pins 5 mm from the ends and 37 mm from front and back, under 1 MPa. */
  private static void shelf(List<Check> all, String what, Rigidity rigidity) {
    double end = 5;
    double edge = 37;
    Plate plate = onFour(800, 300, rigidity, end, edge);
    Ritz other = Ritz.onFour(800, 300, rigidity, end, edge);
    String of = what + " 800 x 300 mm on four pins, ";
    all.add(
        ritz(
            of + "front edge, sag under 1 MPa in mm",
            other.sag(400, 0),
            2,
            () -> evenly(plate).deflection(400, 0)));
    all.add(
        ritz(
            of + "moment in the middle in N",
            other.momentX(400, 150),
            0,
            () -> moments(plate).x()));
    all.add(
        ritz(
            of + "moment at the front edge in N",
            other.momentX(400, 0),
            0,
            () -> evenly(plate).moments(400, 0).x()));
    double most = 300 * 800 * (800.0 / 8 - end / 2);
    all.add(
        statics(
            of + "moment over the whole section in the middle, over q b a (a / 8 - e / 2)",
            "1",
            "half the load a quarter of the span from its push",
            () -> whole(plate) / most));
  }

  /** The moment over the whole depth in the middle of the length, by Simpson's rule. */
  private static double whole(Plate plate) {
    BentPlate bent = evenly(plate);
    int pieces = 120;
    double step = plate.depth() / pieces;
    double sum = 0;
    for (int i = 0; i <= pieces; i++) {
      double weight = i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * bent.moments(plate.length() / 2, i * step).x();
    }
    return sum * step / 3;
  }

  private static Check ritz(String what, double known, int decimals, DoubleSupplier ours) {
    return second(what, known, decimals, RITZ, "16 x 16 even polynomials", ours);
  }

  private static Check statics(String what, String known, String place, DoubleSupplier ours) {
    return derived(
        what,
        known,
        "",
        ONE_PER_CENT * Double.parseDouble(known),
        "balance of forces",
        place,
        ours);
  }

  private static Check second(
      String what, double known, int decimals, String title, String place, DoubleSupplier ours) {
    String printed = String.format(Locale.ROOT, "%." + decimals + "f", known);
    return derived(what, printed, "", ONE_PER_CENT * Math.abs(known), title, place, ours);
  }

  private static Plate plate(double ratio, Edges edges) {
    return Plate.even(ratio * SHORT, SHORT, STIFF, edges, List.of());
  }

  private static Plate onFour(
      double length, double depth, Rigidity rigidity, double end, double edge) {
    List<Support> supports =
        List.of(
            new Support(end, edge),
            new Support(length - end, edge),
            new Support(end, depth - edge),
            new Support(length - end, depth - edge));
    return Plate.even(length, depth, rigidity, Edges.FREE, supports);
  }

  private static BentPlate evenly(Plate plate) {
    return new PlateSolver(plate).under(List.of(plate.evenly(1))).orElseThrow();
  }

  private static BentPlate.Moments moments(Plate plate) {
    return evenly(plate).moments(plate.length() / 2, plate.depth() / 2);
  }

  private static double poked(Plate plate) {
    PlateLoad poke = new PlateLoad.Point(1, plate.length() / 2, plate.depth() / 2);
    BentPlate bent = new PlateSolver(plate).under(List.of(poke)).orElseThrow();
    return middle(bent, plate) * STIFF.alongX() / (SHORT * SHORT);
  }

  private static double middle(BentPlate bent, Plate plate) {
    return bent.deflection(plate.length() / 2, plate.depth() / 2);
  }

  private static double factor(double deflection) {
    return deflection * STIFF.alongX() / Math.pow(SHORT, 4);
  }
}
