package fourpin.validation;

import static fourpin.validation.Check.derived;
import static fourpin.validation.Check.published;

import fourpin.strength.plate.BentPlate;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.PlateSolver;
import fourpin.strength.plate.Rigidity;
import fourpin.strength.plate.Series;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * Supports that push and never pull. Where beams on rollers would have to be held down, the tables
 * of continuous beams say so by a negative push; the beam that lifts there instead lies as one that
 * ends at the support before. A strip that bends like a beam stands on a pair of supports at each
 * place.
 */
final class ContactChecks {

  private static final double SPAN = 500;
  private static final double DEPTH = 20;
  private static final double LINE = 0.01;
  private static final double SMALL = 0.001;
  private static final Rigidity BEAM = Rigidity.of(70_000, 70_000, 0, 35_000, 10);
  private static final Rigidity STIFF = Rigidity.isotropic(70_000, 0.3, 10);
  private static final String DIAGRAMS = "beam diagrams of the handbooks, as a web page has them";
  private static final String STATICS = "balance of forces";

  private ContactChecks() {}

  static List<Check> all() {
    List<Check> all = new ArrayList<>();
    twoSpans(all);
    threeSpans(all);
    unevenSpans(all);
    gap(all);
    overhang(all);
    threeSupports(all);
    lowCorner(all);
    heldCorner(all);
    return all;
  }

  /** Loaded on one span, the far end lifts. */
  private static void twoSpans(List<Check> all) {
    Plate beam = beam(0, SPAN, 2 * SPAN);
    List<PlateLoad> load = List.of(line(0, SPAN));
    String what = "two equal spans, the first loaded, all held down: push of support ";
    String[] held = {"0.4375", "0.625", "-0.0625"};
    for (int i = 0; i < held.length; i++) {
      int support = i;
      all.add(
          published(
              what + (i + 1) + " over w L",
              held[i],
              "",
              SMALL,
              "Civil Engineering Reference Manual, 15th ed., as a web page has it",
              "two equal spans, uniform load on one: 7/16, 5/8, -1/16",
              () -> heldDown(beam, load)[support] / (LINE * SPAN)));
    }
    String lifted = "the same, held by nothing: ";
    all.add(
        derived(
            lifted + "push of support 1 over w L",
            "0.5",
            "",
            SMALL,
            STATICS,
            "a beam of one span",
            () -> pair(lying(beam, load), 0) / (LINE * SPAN)));
    all.add(
        derived(
            lifted + "supports that it has lifted off",
            "2",
            "",
            0,
            STATICS,
            "the far pair, which would have to pull",
            () -> lying(beam, load).lifted()));
    all.add(
        derived(
            lifted + "how far the far end rises, over w L⁴ / (E I)",
            "0.0416667",
            "",
            SMALL * 0.0416667,
            "Bansal, Strength of Materials",
            "Problem 12.5 (p. 529): slope w L³ / (24 E I) at the end, times L",
            () ->
                -lying(beam, load).deflection(2 * SPAN, DEPTH / 2)
                    * BEAM.alongX()
                    * DEPTH
                    / (LINE * Math.pow(SPAN, 4))));
  }

  /** Both loaded, the far one with a sixth and with an eighth: it lifts from a seventh on. */
  private static void unevenSpans(List<Check> all) {
    Plate beam = beam(0, SPAN, 2 * SPAN);
    List<PlateLoad> sixth = List.of(line(0, SPAN).times(6), line(SPAN, 2 * SPAN));
    List<PlateLoad> eighth = List.of(line(0, SPAN).times(8), line(SPAN, 2 * SPAN));
    all.add(
        derived(
            "two equal spans, the first under 6 w, the second under w: push of the far end over w L",
            "0.0625",
            "",
            SMALL,
            "Civil Engineering Reference Manual, 15th ed., as a web page has it",
            "7/16 less 6/16",
            () -> pair(lying(beam, sixth), 2) / (LINE * SPAN)));
    all.add(
        derived(
            "the same, the first under 8 w, so that the far end lifts: push of the middle over w L",
            "5.5",
            "",
            SMALL * 5.5,
            STATICS,
            "9 w L less 3.5 w L, about the middle",
            () -> pair(lying(beam, eighth), 1) / (LINE * SPAN)));
  }

  /** What is left of three spans where the last lifts are two, both loaded. */
  private static void threeSpans(List<Check> all) {
    Plate beam = beam(0, SPAN, 2 * SPAN, 3 * SPAN);
    List<PlateLoad> load = List.of(line(0, 2 * SPAN));
    String[] held = {"0.383", "1.200", "0.450", "-0.033"};
    String[] lifted = {"0.375", "1.25", "0.375"};
    for (int i = 0; i < held.length; i++) {
      int support = i;
      all.add(
          published(
              "three equal spans, two of them loaded, all held down: push of support "
                  + (i + 1)
                  + " over w L",
              held[i],
              "",
              SMALL,
              DIAGRAMS,
              "three spans, uniform load on two to one side",
              () -> heldDown(beam, load)[support] / (LINE * SPAN)));
    }
    for (int i = 0; i < lifted.length; i++) {
      int support = i;
      all.add(
          published(
              "the same, held by nothing: push of support " + (i + 1) + " over w L",
              lifted[i],
              "",
              SMALL,
              DIAGRAMS,
              "two spans, both loaded, since the last support lets go",
              () -> pair(lying(beam, load), support) / (LINE * SPAN)));
    }
  }

  /** A support in the middle, too low to touch at first. */
  private static void gap(List<Check> all) {
    Plate beam = beam(0, SPAN / 2, SPAN);
    List<PlateLoad> load = List.of(line(0, SPAN));
    double sag = 5 * LINE * Math.pow(SPAN, 4) / (384 * BEAM.alongX() * DEPTH);
    String[][] table = {{"0", "0.625"}, {"0.25", "0.46875"}, {"0.5", "0.3125"}, {"0.9", "0.0625"}};
    for (String[] row : table) {
      double low = Double.parseDouble(row[0]) * sag;
      List<Double> lows = List.of(0.0, 0.0, low, low, 0.0, 0.0);
      all.add(
          derived(
              "beam over a middle support that lies low by "
                  + row[0]
                  + " of its sag: push of the middle over w L",
              row[1],
              "",
              SMALL,
              "Wood Handbook FPL-GTR-190 (2010)",
              "Table 9-1, from 5/384 and 1/48: 5/8 of what is left",
              () ->
                  pair(new PlateSolver(beam).under(load, lows).orElseThrow(), 1) / (LINE * SPAN)));
    }
    all.add(
        derived(
            "the same, low by 1.1 of its sag: push of an end over w L",
            "0.5",
            "",
            SMALL,
            STATICS,
            "the middle is not touched",
            () ->
                pair(
                        new PlateSolver(beam)
                            .under(load, List.of(0.0, 0.0, 1.1 * sag, 1.1 * sag, 0.0, 0.0))
                            .orElseThrow(),
                        0)
                    / (LINE * SPAN)));
  }

  /** The end of a beam that sticks out, pressed down until the other end lifts. */
  private static void overhang(List<Check> all) {
    Plate beam = Plate.even(SPAN * 1.4, DEPTH, BEAM, Edges.FREE, List.copyOf(pairs(0, SPAN)));
    double statics = LINE * SPAN * SPAN / 2 / (0.4 * SPAN);
    all.add(
        derived(
            "beam that sticks out by 0.4 of its span: force on its tip at which it tips, over w L² / (2 a)",
            "1",
            "",
            SMALL,
            STATICS,
            "about the support that it sticks out over",
            () -> tipsAt(beam, 1.4 * SPAN) / statics));
  }

  /** Halves the range of forces until that which tips is known. */
  private static double tipsAt(Plate beam, double tip) {
    PlateSolver solver = new PlateSolver(beam);
    double stays = 0;
    double tips = 100 * LINE * SPAN;
    while (tips - stays > SMALL * SMALL * tips) {
      double force = (stays + tips) / 2;
      List<PlateLoad> loads = List.of(line(0, SPAN), new PlateLoad.Point(force, tip, DEPTH / 2));
      if (solver.under(loads).isPresent()) {
        stays = force;
      } else {
        tips = force;
      }
    }
    return stays;
  }

  /** On three, pushes follow from balance alone, whatever bends. */
  private static void threeSupports(List<Check> all) {
    List<Support> three = List.of(new Support(0, 0), new Support(600, 0), new Support(300, 400));
    Plate plate = Plate.even(600, 400, STIFF, Edges.FREE, three);
    List<PlateLoad> load = List.of(new PlateLoad.Point(1, 200, 100));
    String[] pushes = {"0.541667", "0.208333", "0.25"};
    for (int i = 0; i < pushes.length; i++) {
      int support = i;
      all.add(
          derived(
              "plate on three supports, force off its middle: push of support "
                  + (i + 1)
                  + " over it",
              pushes[i],
              "",
              SMALL,
              STATICS,
              "by the areas of the triangles between the force and two supports",
              () -> lying(plate, load).reactions().get(support)));
    }
  }

  /**
   * A corner that lies low twists the plate evenly: {@code w = d x y / (a b)}, each corner taking 4
   * Dxy d / (a b), until that has eaten up its quarter of the load; then it rocks on two.
   */
  private static void lowCorner(List<Check> all) {
    List<Support> corners =
        List.of(new Support(0, 0), new Support(700, 0), new Support(0, 300), new Support(700, 300));
    Rigidity wood = Rigidity.of(12_000, 900, 0.4, 800, 20);
    Plate plate = Plate.even(700, 300, wood, Edges.FREE, corners);
    double area = 700 * 300;
    double lifts = LINE * area * area / (16 * wood.twist());
    String place = "corner forces 2 Mxy of an evenly twisted plate, as its art. 11 and 22";
    String title = "Timoshenko and Woinowsky-Krieger (1959)";
    all.add(low(plate, lifts, "0.5", 3, "0.125", "that corner", title, place));
    all.add(low(plate, lifts, "0.5", 0, "0.125", "the corner across", title, place));
    all.add(low(plate, lifts, "0.5", 1, "0.375", "a corner beside it", title, place));
    all.add(low(plate, lifts, "1.01", 1, "0.5", "a corner beside it", STATICS, "it rocks on two"));
  }

  private static Check low(
      Plate plate,
      double lifts,
      String share,
      int corner,
      String push,
      String which,
      String title,
      String place) {
    List<Double> lows = List.of(0.0, 0.0, 0.0, Double.parseDouble(share) * lifts);
    double all = LINE * plate.length() * plate.depth();
    return derived(
        "plate on its corners, one low by "
            + share
            + " of what lifts it off: push of "
            + which
            + " over the load",
        push,
        "",
        SMALL,
        title,
        place,
        () ->
            new PlateSolver(plate)
                    .under(List.of(plate.evenly(LINE)), lows)
                    .orElseThrow()
                    .reactions()
                    .get(corner)
                / all);
  }

  /** Corners of a hinged plate rise unless they are held down. */
  private static void heldCorner(List<Check> all) {
    Plate plate = Plate.even(SPAN, SPAN, STIFF, Edges.all(Hold.HINGED), List.of());
    all.add(
        derived(
            "hinged square, even load: force that holds a corner down, 2 Mxy, over q a²",
            String.format(Locale.ROOT, "%.5f", Series.corner(1)),
            "",
            0.01 * Series.corner(1),
            "Navier's series, summed by the test",
            "Timoshenko and Woinowsky-Krieger (1959), art. 30",
            () ->
                2
                    * Math.abs(lying(plate, List.of(plate.evenly(LINE))).moments(0, 0).twist())
                    / (LINE * SPAN * SPAN)));
  }

  private static Plate beam(double... places) {
    double length = DoubleStream.of(places).max().orElseThrow();
    return Plate.even(length, DEPTH, BEAM, Edges.FREE, pairs(places));
  }

  private static List<Support> pairs(double... places) {
    return DoubleStream.of(places)
        .boxed()
        .flatMap(x -> List.of(new Support(x, 0), new Support(x, DEPTH)).stream())
        .toList();
  }

  /** {@code LINE} for each mm. */
  private static PlateLoad line(double from, double to) {
    return new PlateLoad.Patch(LINE / DEPTH, from, to, 0, DEPTH);
  }

  private static BentPlate lying(Plate plate, List<PlateLoad> loads) {
    return new PlateSolver(plate).under(loads).orElseThrow();
  }

  private static double pair(BentPlate bent, int pair) {
    return bent.reactions().get(2 * pair) + bent.reactions().get(2 * pair + 1);
  }

  /** Of each pair. */
  private static double[] heldDown(Plate plate, List<PlateLoad> loads) {
    List<Double> level = Collections.nCopies(plate.supports().size(), 0.0);
    double[] each = new PlateSolver(plate).pushesIfAllTouch(loads, level);
    double[] pairs = new double[each.length / 2];
    for (int i = 0; i < each.length; i++) {
      pairs[i / 2] += each[i];
    }
    return pairs;
  }
}
