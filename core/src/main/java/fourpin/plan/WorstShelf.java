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

  WorstShelf(MistakeFigures figures, RowNames names, SpoiltRows rows) {
    this.figures = figures;
    this.names = names;
    this.rows = rows;
  }

  /** A hole as it is wanted, and the one that is taken for it. */
  private record Corner(Bore wanted, Optional<Bore> made) {

    Length off(Function<Bore, Length> what) {
      return what.apply(made.orElse(wanted)).minus(what.apply(wanted));
    }

    /** The most that anything of it is off, mm; infinite where there is no hole. */
    double off() {
      return made.isEmpty()
          ? Double.POSITIVE_INFINITY
          : Stream.<Function<Bore, Length>>of(
                  Bore::length, Bore::width, Bore::diameter, Bore::depth)
              .mapToDouble(what -> off(what).abs().mm())
              .max()
              .orElseThrow();
    }
  }

  /** What carries one end of a shelf. */
  private record Place(ShelfPlace at, List<Corner> corners) {

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
    List<Corner> corners =
        rows.wanted().stream()
            .filter(w -> names.grid(w).equals(at.grid()))
            .filter(w -> names.level(w).equals(Optional.of(at.level())))
            .map(w -> new Corner(w, rows.counted(w)))
            .toList();
    return new Place(at, corners);
  }

  private String words(Place place) {
    return place.at().words(figures) + ": " + effect(place);
  }

  private String effect(Place place) {
    List<Corner> spoilt = place.spoilt();
    String what = side(place, spoilt) + " " + names.hole();
    if (place.off() == Double.POSITIVE_INFINITY) {
      return "its " + what + (spoilt.size() > 1 ? "s are" : " is") + " not there";
    }
    Corner corner = spoilt.stream().max(Comparator.comparing(Corner::off)).orElseThrow();
    return off(corner, spoilt.size() > 1 ? what + "s are" : what + " is")
        + consequence(corner, place);
  }

  /** A corner with all its holes alike is one end, which slopes; else it rocks. */
  private static String consequence(Corner corner, Place place) {
    if (corner.off(Bore::length).isZero()) {
      return "";
    }
    boolean end = place.corners().stream().map(c -> c.off(Bore::length)).distinct().count() == 1;
    return end ? "; it slopes" : "; it rocks";
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
