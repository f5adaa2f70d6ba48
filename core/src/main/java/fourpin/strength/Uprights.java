package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.strength.Made.Piece;
import fourpin.strength.Section.Layer;
import java.util.List;

/** What might stand between the shelves of a case, and what it takes. */
final class Uprights {

  private final Job job;
  private final BuiltCase built;

  Uprights(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
  }

  /** Partitions are made of what the case is made of. */
  Material material() {
    return job.material(built.order().material());
  }

  Piece piece(double depth) {
    return new Piece(material(), depth);
  }

  /** Of an upright of a depth, N for each mm of its height. */
  double weight(double depth) {
    Layer layer =
        new Layer("upright", Matters.of(material()), depth, material().thickness().mm(), 0, 0);
    return new Section(List.of(layer)).weight();
  }

  /** What each shelf of a bay has to pay for of one that stands from bottom to top, mm. */
  double share(BaySpace bay) {
    return bay.clear().size(Axis.Z).mm() / shelves(bay);
  }

  /** Between the shelves of a bay as they stand on the average, mm. */
  double opening(BaySpace bay) {
    return bay.clear().size(Axis.Z).mm() / (shelves(bay) + 1);
  }

  boolean haveBack() {
    return built.order().back().isPresent();
  }

  private long shelves(BaySpace bay) {
    return built.parts().stream()
        .filter(p -> p.role() == Part.Role.SHELF || p.role() == Part.Role.FIXED_SHELF)
        .filter(p -> p.box().overlaps(bay.clear()))
        .count();
  }

  /** What to do for a shelf to rest on a loose one in the middle. */
  static String loose(String push) {
    return "stand a loose upright under its middle, front to back, and one under each below down"
        + " to the bottom; each edge of it carries "
        + push
        + " from each shelf above";
  }

  /**
   * That an end goes free with the other half loaded alone, or a corner of it.
   *
   * @param verdict of a shelf that is held in its middle too
   */
  static String lifting(Verdict verdict) {
    List<Double> pushes = verdict.atEmptyEnd();
    boolean corner = !pushes.isEmpty() && Math.min(pushes.getFirst(), pushes.getLast()) <= 0;
    boolean end = pushes.stream().allMatch(push -> push <= 0);
    return corner
        ? "; fasten the shelf to it, or %s lifts with the other half loaded alone"
            .formatted(end ? "its empty end" : "a corner of its empty end")
        : "";
  }
}
