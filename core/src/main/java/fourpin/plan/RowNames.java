package fourpin.plan;

import fourpin.bench.Removal.Bore;
import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.job.Settings;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/** What the holes of an upright are for. */
record RowNames(BuiltCase built, Part part, List<BayGrid> grids) {

  Settings settings() {
    return built.order().settings();
  }

  /** The bay whose rows a hole belongs to. */
  BayGrid grid(Bore hole) {
    return grids.stream()
        .filter(g -> g.caseName().equals(built.order().name()))
        .filter(g -> g.rows().stream().anyMatch(r -> g.purpose(r).equals(hole.purpose())))
        .findFirst()
        .orElseThrow();
  }

  /** The level that a hole is wanted for. */
  Optional<Level> level(Bore hole) {
    Length height = part.box().at(Face.BOTTOM).plus(hole.length());
    return grid(hole).levels().stream().filter(l -> l.height().equals(height)).findFirst();
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
