package fourpin.plan;

import fourpin.bench.Removal.Bore;
import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Seat;
import fourpin.casework.BaySpace;
import fourpin.casework.BaySpace.Opening;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.casework.Point;
import fourpin.job.Settings;
import fourpin.measure.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the holes of an upright are for. */
record RowNames(BuiltCase built, Part part, List<BayGrid> grids) {

  /** The same of another part of the case. */
  RowNames of(Part other) {
    return new RowNames(built, other, grids);
  }

  Settings settings() {
    return built.order().settings();
  }

  /** The bay whose rows a hole belongs to. */
  BayGrid grid(Bore hole) {
    return grid(hole.purpose());
  }

  private BayGrid grid(String purpose) {
    return grids.stream()
        .filter(g -> g.caseName().equals(built.order().name()))
        .filter(g -> isFor(g, purpose))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isFor(BayGrid grid, String purpose) {
    return grid.notch().equals(purpose)
        || grid.rows().stream().anyMatch(r -> grid.purpose(r).equals(purpose));
  }

  /** The level that a hole is wanted for. */
  Optional<Level> level(Bore hole) {
    Length height = part.box().at(Face.BOTTOM).plus(hole.length());
    return grid(hole).levels().stream().filter(l -> l.height().equals(height)).findFirst();
  }

  /** Whether the part is on the left of a bay. */
  boolean isLeftOf(BayGrid grid) {
    Length middle = bay(grid).clear().low().x().plus(bay(grid).clear().high().x());
    Length own = part.box().low().x().plus(part.box().high().x());
    return own.isLessThan(middle);
  }

  /** Whether the part stands in its case while it is bored. */
  boolean isStanding() {
    return BenchProgram.boresAfterAssembly(built) && !CleatBlank.isStrip(part);
  }

  /** What its rows are called in a sentence about the part. */
  String row(Bore hole) {
    return CleatBlank.isStrip(part) ? "blank" : hole.purpose();
  }

  /** What it has for one shelf. */
  String hole() {
    return CleatBlank.isStrip(part) ? "notch" : "hole";
  }

  /** Several of these. */
  String holes() {
    return CleatBlank.isStrip(part) ? "notches" : "holes";
  }

  /** The rows of the first hole's bay, other than its own, as holes are called in order. */
  List<String> besideFirst(List<Bore> holes) {
    Bore first = holes.getFirst();
    return holes.stream()
        .filter(h -> h.surface() == first.surface() && grid(h).equals(grid(first)))
        .map(Bore::purpose)
        .filter(p -> !p.equals(first.purpose()))
        .distinct()
        .toList();
  }

  /** The adjustable shelves of a bay. */
  Stream<Part> shelves(BayGrid grid) {
    Set<String> marks = grid.seats().stream().map(Seat::shelf).collect(Collectors.toSet());
    return built.parts().stream().filter(p -> marks.contains(p.mark()));
  }

  private BaySpace bay(BayGrid grid) {
    return built.bays().get(grid.bay() - 1);
  }

  /** How far a place lies above the lower end of the part. */
  Length up(Point place) {
    return place.z().minus(part.box().at(Face.BOTTOM));
  }

  /**
   * The opening that a hole lies in.
   *
   * @param purpose of its row
   */
  Optional<Opening> opening(String purpose, Length up) {
    Length height = part.box().at(Face.BOTTOM).plus(up);
    return bay(grid(purpose)).openings().stream()
        .filter(o -> o.clear().low().z().isLessThan(height))
        .filter(o -> height.isLessThan(o.clear().high().z()))
        .findFirst();
  }

  /**
   * Where a place comes from the other end of the part; in a standing case from the panel above in
   * place of that below.
   *
   * @param whole length of the part
   */
  Length turned(String purpose, Length up, Length whole) {
    return isStanding()
        ? opening(purpose, up)
            .map(o -> up(o.clear().low()).plus(up(o.clear().high())).minus(up))
            .orElse(up)
        : whole.minus(up);
  }

  /** The end that heights are measured from, by what is written on it. */
  String indexEnd() {
    return "the index end (" + written(PieceLayout.of(part).indexEnd()) + ")";
  }

  /** The edge that rows are measured from, by what is written on it. */
  String indexEdge() {
    return "the index edge (" + written(PieceLayout.of(part).indexEdge()) + ")";
  }

  static String written(Face face) {
    return face.name().toLowerCase(Locale.ROOT);
  }

  /** Whether a shelf of the job lies at the level of a hole. */
  boolean isSeat(Bore hole) {
    return level(hole).stream()
        .anyMatch(l -> grid(hole).seats().stream().anyMatch(s -> s.level() == l.number()));
  }

  /** A feature of the part that a hole makes. */
  Hole hole(Bore bore) {
    return part.features().stream()
        .filter(f -> f instanceof Hole h && h.purpose().equals(bore.purpose()))
        .map(f -> (Hole) f)
        .findFirst()
        .orElseThrow();
  }
}
