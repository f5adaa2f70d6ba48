package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Seat;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A level of a bay, with the mark of the shelf that lies on it as the job places them. */
record ShelfPlace(BayGrid grid, Level level, Optional<String> shelf) {

  /** Where shelves lie, from the lowest up. */
  static List<ShelfPlace> shelves(BayGrid grid) {
    return grid.seats().stream()
        .sorted(Comparator.comparing(Seat::level))
        .flatMap(s -> on(grid, s))
        .toList();
  }

  private static Stream<ShelfPlace> on(BayGrid grid, Seat seat) {
    return grid.levels().stream()
        .filter(l -> l.number() == seat.level())
        .map(l -> new ShelfPlace(grid, l, Optional.of(seat.shelf())));
  }

  static List<ShelfPlace> levels(BayGrid grid) {
    return grid.levels().stream().map(l -> new ShelfPlace(grid, l, Optional.empty())).toList();
  }

  /** The lowest shelf, or the lowest level of a bay that has none. */
  static ShelfPlace lowest(BayGrid grid) {
    return Stream.of(shelves(grid), levels(grid)).flatMap(List::stream).findFirst().orElseThrow();
  }

  String words(MistakeFigures figures) {
    return shelf.map(s -> "shelf " + s + " on ").orElse("")
        + String.format(
            Locale.ROOT,
            "level %d of bay %d (underside %s up)",
            level.number(),
            grid.bay(),
            figures.measured(
                "shows-at", "underside of a shelf there above the foot", level.underside()));
  }
}
