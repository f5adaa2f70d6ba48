package fourpin.boring;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.BayGrid.Run;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.casework.Point;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A bay's pattern seen on the parts round it.
 *
 * @param features by the mark of the part that they are taken out of
 * @param parts that the supports add
 */
record Fitting(Map<String, List<Feature>> features, List<Part> parts) {

  /** How the purpose of a groove for a standard begins. */
  static final String STANDARD = "standard, ";

  /**
   * @param built with the bay's shelves on their levels
   */
  static Fitting of(BuiltCase built, BaySpace bay, BayGrid grid) {
    return switch (grid.support()) {
      case Support.Pins _, Support.Sleeved _ -> holes(built, bay, grid);
      case Support.Standards standards ->
          standards.mounting() == Support.Mounting.LET_IN
              ? grooves(built, bay, grid)
              : new Fitting(Map.of(), List.of());
      case Support.Cleats cleats -> new CleatStrips(built, bay, grid, cleats).fitting();
    };
  }

  private static Fitting holes(BuiltCase built, BaySpace bay, BayGrid grid) {
    return new Fitting(
        Map.of(
            bay.left(), holes(built.part(bay.left()), Face.RIGHT, grid),
            bay.right(), holes(built.part(bay.right()), Face.LEFT, grid)),
        List.of());
  }

  private static List<Feature> holes(Part upright, Face face, BayGrid grid) {
    List<Feature> holes = new ArrayList<>();
    for (Row row : grid.rows()) {
      for (Level level : grid.levels()) {
        Point centre = new Point(upright.box().at(face), row.y(), level.height());
        holes.add(
            new Feature.Hole(
                Feature.Hole.Use.SUPPORT,
                face,
                centre,
                grid.diameter(),
                grid.depth(),
                grid.purpose(row)));
      }
    }
    return holes;
  }

  private static Fitting grooves(BuiltCase built, BaySpace bay, BayGrid grid) {
    return new Fitting(
        Map.of(
            bay.left(), grooves(built.part(bay.left()), Face.RIGHT, grid),
            bay.right(), grooves(built.part(bay.right()), Face.LEFT, grid)),
        List.of());
  }

  private static List<Feature> grooves(Part upright, Face face, BayGrid grid) {
    Length surface = upright.box().at(face);
    Length floor = surface.minus(grid.depth().times(face.direction()));
    List<Feature> grooves = new ArrayList<>();
    for (Row row : grid.rows()) {
      Length front = row.y().minus(grid.diameter().over(2));
      for (Run run : grid.runs()) {
        Box volume =
            Box.of(
                Length.min(surface, floor),
                Length.max(surface, floor),
                front,
                front.plus(grid.diameter()),
                run.bottom(),
                run.top());
        grooves.add(
            new Feature.Channel(
                Feature.Channel.Kind.GROOVE, face, volume, STANDARD + grid.purpose(row)));
      }
    }
    return grooves;
  }
}
