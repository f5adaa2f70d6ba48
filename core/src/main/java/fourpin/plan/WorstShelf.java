package fourpin.plan;

import fourpin.bench.Removal.Bore;
import fourpin.boring.BayGrid;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * At which shelf of the job a spoilt panel shows most. Pins are put in by counting holes from
 * below, so that a shelf gets the holes with the numbers of its level.
 */
final class WorstShelf {

  private final MistakeFigures figures;
  private final RowNames names;
  private final SpoiltRows rows;
  private final Together together;

  WorstShelf(MistakeFigures figures, RowNames names, SpoiltRows rows, Together together) {
    this.figures = figures;
    this.names = names;
    this.rows = rows;
    this.together = together;
  }

  /** A hole as it is wanted, and the one that is taken for it. */
  private record Corner(Bore wanted, Optional<Bore> made) {

    Length off(Function<Bore, Length> what) {
      return what.apply(made.orElse(wanted)).minus(what.apply(wanted));
    }

    /** All that is off. */
    List<Length> all() {
      return List.of(off(Bore::length), off(Bore::width), off(Bore::diameter), off(Bore::depth));
    }

    /** The most that anything of it is off, mm; infinite where there is no hole. */
    double off() {
      return made.isEmpty()
          ? Double.POSITIVE_INFINITY
          : all().stream().mapToDouble(off -> off.abs().mm()).max().orElseThrow();
    }
  }

  /**
   * What carries one end of a shelf.
   *
   * @param facing what carries the other; empty where that is as it should be
   */
  private record Place(ShelfPlace at, List<Corner> corners, List<Corner> facing) {

    /** Whether both ends are off in the same way. */
    boolean isAlike() {
      return corners.stream()
              .map(Corner::all)
              .toList()
              .equals(facing.stream().map(Corner::all).toList())
          && corners.stream()
              .map(c -> c.made().isEmpty())
              .toList()
              .equals(facing.stream().map(c -> c.made().isEmpty()).toList());
    }

    double off() {
      return corners.stream().mapToDouble(Corner::off).max().orElse(0);
    }

    List<Corner> spoilt() {
      return corners.stream().filter(c -> c.off() > 0).toList();
    }
  }

  /** A sentence. */
  String words() {
    List<Place> shelves = shelves().filter(p -> p.off() > 0).toList();
    return shelves.stream()
        .max(Comparator.comparing(Place::off))
        .map(worst -> shown(shelves, worst.off()))
        .orElseGet(this::elsewhere);
  }

  private String shown(List<Place> shelves, double most) {
    List<Place> worst = shelves.stream().filter(p -> p.off() == most).toList();
    boolean alike = worst.size() > 1 && worst.size() == shelves().count();
    return say(
        "%s %s.",
        alike ? "At every shelf alike, lowest" : shelves.size() > 1 ? "Most at" : "At",
        words(worst.getFirst()));
  }

  /** Where no shelf of the job lies at a spoilt level yet. */
  private String elsewhere() {
    return levels()
        .filter(p -> p.off() > 0)
        .max(Comparator.comparing(Place::off))
        .map(p -> say("At no shelf as they are placed, but at %s.", words(p)))
        .orElse("At no level.");
  }

  /** The shelves of all bays of the panel, from the lowest up. */
  private Stream<Place> shelves() {
    return grids().flatMap(g -> ShelfPlace.shelves(g).stream()).map(this::place);
  }

  private Stream<Place> levels() {
    return grids().flatMap(g -> ShelfPlace.levels(g).stream()).map(this::place);
  }

  private Stream<BayGrid> grids() {
    return rows.wanted().stream().map(names::grid).distinct();
  }

  private Place place(ShelfPlace at) {
    return new Place(
        at,
        corners(at, names, rows),
        together.facing(at.grid()).map(p -> corners(at, p.names(), p.rows())).orElse(List.of()));
  }

  private static List<Corner> corners(ShelfPlace at, RowNames names, SpoiltRows rows) {
    return rows.wanted().stream()
        .filter(w -> names.grid(w).equals(at.grid()))
        .filter(w -> names.level(w).equals(Optional.of(at.level())))
        .map(w -> new Corner(w, rows.counted(w)))
        .toList();
  }

  private String words(Place place) {
    return place.at().words(figures) + ": " + effect(place);
  }

  private String effect(Place place) {
    List<Corner> spoilt = place.spoilt();
    String what = holes(place, spoilt);
    if (place.off() == Double.POSITIVE_INFINITY) {
      return "its " + what + " not there";
    }
    Corner corner = spoilt.stream().max(Comparator.comparing(Corner::off)).orElseThrow();
    return off(corner, what) + consequence(corner, place);
  }

  private String holes(Place place, List<Corner> spoilt) {
    if (place.isAlike()) {
      String row = spoilt.size() < place.corners().size() ? row(spoilt.getFirst()) + " " : "";
      return say("%s%s on both hands are", row, names.holes());
    }
    String side = side(place, spoilt);
    return spoilt.size() > 1
        ? say("%s %s are", side, names.holes())
        : say("%s %s is", side, names.hole());
  }

  /**
   * A corner with all its holes alike is one end, which slopes, if the other end is not off with
   * it; else it rocks.
   */
  private static String consequence(Corner corner, Place place) {
    if (corner.off(Bore::length).isZero()) {
      return "";
    }
    boolean end = place.corners().stream().map(c -> c.off(Bore::length)).distinct().count() == 1;
    if (place.isAlike()) {
      return end ? "; it lies level, only " + height(corner) : "; it slopes";
    }
    return end ? "; it slopes" : "; it rocks";
  }

  private static String height(Corner corner) {
    return corner.off(Bore::length).isPositive() ? "higher" : "lower";
  }

  private String side(Place place, List<Corner> spoilt) {
    String side = names.isLeftOf(place.at().grid()) ? "left" : "right";
    return spoilt.size() < place.corners().size() ? row(spoilt.getFirst()) + " " + side : side;
  }

  /** "front", "middle", "back". */
  private static String row(Corner corner) {
    return corner.wanted().purpose().split(" ", 2)[0];
  }

  private String off(Corner corner, String what) {
    List<String> off = new ArrayList<>();
    add(off, "height", corner, Bore::length, "too high", "too low");
    add(
        off,
        "setback",
        corner,
        Bore::width,
        "further from the index edge",
        "nearer to the index edge");
    add(off, "diameter", corner, Bore::diameter, "too wide", "too narrow");
    add(off, "depth", corner, Bore::depth, "too deep", "too shallow");
    String counted = corner.off(Bore::length).isZero() ? "" : "counted from below, ";
    return say("%sits %s %s", counted, what, String.join(" and ", off));
  }

  private void add(
      List<String> all,
      String what,
      Corner corner,
      Function<Bore, Length> of,
      String more,
      String less) {
    Length by = corner.off(of);
    if (!by.isZero()) {
      Length wanted = of.apply(corner.wanted());
      String off =
          figures.length(
              what + "-off",
              "how far the " + what + " of a hole there is off",
              by.abs(),
              "|m - w|",
              MistakeFigures.input("m", what + " as it is made", wanted.plus(by)),
              MistakeFigures.input("w", what + " as it is wanted", wanted));
      all.add(off + " " + (by.isPositive() ? more : less));
    }
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
