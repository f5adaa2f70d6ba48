package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.DoorLeaf;
import fourpin.job.Job;
import fourpin.measure.Gravity;
import fourpin.measure.Sourced;
import fourpin.strength.Balance.Of;
import fourpin.strength.Balance.Weight;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Doors of a case: what they weigh, and how they turn it forward when all stand straight out from
 * its front, each about its own hinges.
 */
final class OpenDoors {

  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  private final List<DoorLeaf> leaves;
  private final Sourced density;
  private final double before;

  /**
   * @param foot from the front of the sides to the foot about which the case turns, mm
   */
  OpenDoors(Job job, BuiltCase built, double foot) {
    this.leaves = DoorLeaf.of(built);
    this.density = new Masses(job).density(built.order().material());
    this.before = foot - built.outside().low().y().mm();
  }

  /** From the front of the case, which a face frame brings forward, to the foot, mm. */
  double before() {
    return before;
  }

  /** As if doors were panels of the case's material. */
  Sourced density() {
    return density;
  }

  DoorLeaf heaviest() {
    return Collections.max(leaves, Comparator.comparingDouble(this::weight));
  }

  /** N. */
  double weight(DoorLeaf leaf) {
    return leaf.shut().volume() * density.number() / CUBIC_MM_PER_CUBIC_M * Gravity.STANDARD;
  }

  /** Of all of them, N. */
  double weight() {
    return leaves.stream().mapToDouble(this::weight).sum();
  }

  static double width(DoorLeaf leaf) {
    return leaf.shut().size(Axis.X).mm();
  }

  double widest() {
    return leaves.stream().mapToDouble(OpenDoors::width).max().orElse(0);
  }

  /** How far before the foot the middle of all of them is, mm. */
  double middle() {
    return moment() / weight();
  }

  /** Each as it hangs shut. */
  List<Weight> shut() {
    return leaves.stream().map(this::shut).toList();
  }

  private Weight shut(DoorLeaf leaf) {
    double back = (leaf.shut().low().y().mm() + leaf.shut().high().y().mm()) / 2;
    return new Weight(Of.DOORS, weight(leaf), back, middle(leaf));
  }

  /** How high the middle of all of them is over the foot of the case, mm. */
  double up() {
    return leaves.stream().mapToDouble(l -> weight(l) * middle(l)).sum() / weight();
  }

  private static double middle(DoorLeaf leaf) {
    return (leaf.shut().low().z().mm() + leaf.shut().high().z().mm()) / 2;
  }

  /** How high the highest of them reaches over the foot of the case, mm. */
  double top() {
    return leaves.stream().mapToDouble(l -> l.shut().high().z().mm()).max().orElse(0);
  }

  /** By how much they turn the case forward on a level floor, N·mm. */
  double moment() {
    return leaves.stream().mapToDouble(l -> weight(l) * (width(l) / 2 + before)).sum();
  }
}
