package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.ArrayList;
import java.util.List;

/**
 * What partitions bring down to a bottom that stands off the floor: the kick holds it up in front,
 * and nothing at the back.
 */
final class PartitionFeet {

  private static final Source STATICS =
      new Source(
          "statics: half of what stands in the bays beside it; the top a lever from upright to upright",
          "drawers and doors are not counted",
          Standing.DERIVED);

  private final Job job;
  private final BuiltCase built;
  private final ShelfReader reader;
  private final List<StackedUprights> standing;

  /**
   * @param standing on the case
   */
  PartitionFeet(Job job, BuiltCase built, ShelfReader reader, List<StackedUprights> standing) {
    this.job = job;
    this.built = built;
    this.reader = reader;
    this.standing = List.copyOf(standing);
  }

  /** One for each partition. */
  List<Figure> all() {
    List<BaySpace> bays = built.bays();
    List<Figure> all = new ArrayList<>();
    for (int i = 1; i < bays.size(); i++) {
      all.add(figure(bays.get(i - 1), bays.get(i)));
    }
    return all;
  }

  /** One for all of them; nothing where the bottom lies on the floor. */
  List<Finding> findings() {
    List<Figure> loads = all();
    Length off = built.order().kick().map(Kick::height).orElse(Length.ZERO);
    return loads.isEmpty() || !off.isPositive() ? List.of() : List.of(finding(loads));
  }

  private Finding finding(List<Figure> loads) {
    double most = loads.stream().mapToDouble(f -> f.value().value()).max().orElse(0);
    Part partition = built.part(built.bays().getFirst().right());
    return new Finding(
        Severity.NOTE,
        "partition-foot",
        "a partition brings up to %s down to the bottom, which stands off the floor; the kick holds it up in front"
                .formatted(Quantity.of(most, QuantityUnit.FORCE).text(job.unit()))
            + " alone",
        loads,
        Place.of(built.order().name(), partition.mark(), partition.box()),
        List.of(
            new Remedy(
                "stand a block or a second kick board under the bottom behind the kick, below each partition",
                "a scrap for each")));
  }

  private Figure figure(BaySpace left, BaySpace right) {
    Part partition = built.part(right.left());
    double shelves = ends(left) + ends(right);
    double own = weight(partition);
    double above = top(left, right) + standing.stream().mapToDouble(s -> s.on(partition)).sum();
    return new Figure(
        Figure.id(built.order().name(), "partition-load-" + left.number()),
        "load that " + partition.name() + " brings down",
        force(shelves + own + above),
        "Σ R + G + T",
        List.of(
            new Input(
                "Σ R",
                "ends of the shelves on both sides, loaded as stated",
                force(shelves),
                STATICS),
            new Input("G", "its own weight", force(own), STATICS),
            new Input("T", "its share of the top and of what stands on it", force(above), STATICS)),
        STATICS);
  }

  private double weight(Part part) {
    return new Masses(job).of(part) * Gravity.STANDARD;
  }

  /** Half of it over each of both bays. */
  private double top(BaySpace left, BaySpace right) {
    Part top = built.part("T");
    double over = clear(left) + clear(right);
    return weight(top) * over / 2 / top.box().size(Axis.X).mm();
  }

  private static double clear(BaySpace bay) {
    return bay.clear().size(Axis.X).mm();
  }

  private double ends(BaySpace bay) {
    return reader.shelves().stream()
        .filter(shelf -> shelf.box().overlaps(bay.clear()))
        .mapToDouble(shelf -> reader.read(shelf).loaded().reaction())
        .sum();
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }
}
