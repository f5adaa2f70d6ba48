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
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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

  /**
   * What the shelves of one bay bring to one end, their own weight left out.
   *
   * @param load N
   */
  record Ends(BaySpace bay, double load) {}

  /**
   * One partition.
   *
   * @param ends of the shelves on both sides
   * @param own weight of these ends, N
   * @param weight of the partition, N
   * @param above what it carries of the top and of what stands on it, N
   */
  record Foot(Part partition, List<Ends> ends, double own, double weight, double above) {

    Foot {
      ends = List.copyOf(ends);
    }

    double from() {
      return partition.box().low().x().mm();
    }

    double to() {
      return partition.box().high().x().mm();
    }

    double middle() {
      return (from() + to()) / 2;
    }

    double load() {
      return ends.stream().mapToDouble(Ends::load).sum();
    }

    /** All that lies as it does however the shelves are loaded. */
    double rest() {
      return own + weight + above;
    }

    /**
     * @param left from where it is measured along the bottom
     */
    List<Input> inputs(double left) {
      String name = partition.name() + " " + partition.mark();
      return List.of(
          new Input("R", "load of the shelves' ends on " + name, force(load()), STATICS),
          new Input("T", "all else that it brings down", force(rest()), STATICS),
          new Input("a", "from the side on the left to it", mm(from() - left), Source.GEOMETRY),
          new Input("b", "from there to its other face", mm(to() - left), Source.GEOMETRY));
    }
  }

  /** From the left. */
  List<Foot> feet() {
    List<BaySpace> bays = built.bays();
    return IntStream.range(1, bays.size())
        .mapToObj(i -> foot(bays.get(i - 1), bays.get(i)))
        .toList();
  }

  /** One for each partition. */
  List<Figure> all() {
    List<Foot> feet = feet();
    return IntStream.range(0, feet.size()).mapToObj(i -> figure(feet.get(i), i + 1)).toList();
  }

  /** That they stand on a bottom that bends little under them. */
  Finding stand(List<Remedy> cures) {
    return new Finding(
        Severity.NOTE,
        "partition-foot",
        words()
            + ", which stands off the floor; the kick holds it up in front alone, and it bends within what is allowed",
        all(),
        place(),
        cures);
  }

  /** What they do, at the beginning of what is said of it. */
  String words() {
    double most = all().stream().mapToDouble(f -> f.value().value()).max().orElse(0);
    return "a partition brings up to %s down to the bottom".formatted(force(most).text(job.unit()));
  }

  Place place() {
    Part partition = feet().getFirst().partition();
    return Place.of(built.order().name(), partition.mark(), partition.box());
  }

  private Foot foot(BaySpace left, BaySpace right) {
    Part partition = built.part(right.left());
    return new Foot(
        partition,
        List.of(new Ends(left, ends(left)), new Ends(right, ends(right))),
        own(left) + own(right),
        weight(partition),
        top(left, right) + standing.stream().mapToDouble(s -> s.on(partition)).sum());
  }

  private Figure figure(Foot foot, int number) {
    return new Figure(
        Figure.id(built.order().name(), "partition-load-" + number),
        "load that " + foot.partition().name() + " brings down",
        force(foot.load() + foot.rest()),
        "Σ R + G + T",
        List.of(
            new Input(
                "Σ R",
                "ends of the shelves on both sides, loaded as stated",
                force(foot.load() + foot.own()),
                STATICS),
            new Input("G", "its own weight", force(foot.weight()), STATICS),
            new Input(
                "T",
                "its share of the top and of what stands on it",
                force(foot.above()),
                STATICS)),
        STATICS);
  }

  private double weight(Part part) {
    return new Masses(job).of(part) * Gravity.STANDARD;
  }

  /** Half of it over each of both bays. */
  private double top(BaySpace left, BaySpace right) {
    Part top = built.part("T");
    double over = clear(left) + clear(right);
    return weight(top) * over / 2 / top.box().size(Axis.X).mm()
        + OpenTop.perMm(job, built) * over / 2;
  }

  private static double clear(BaySpace bay) {
    return bay.clear().size(Axis.X).mm();
  }

  private double ends(BaySpace bay) {
    return shelves(bay).mapToDouble(shelf -> shelf.load() * shelf.length() / 2).sum();
  }

  private double own(BaySpace bay) {
    return shelves(bay).mapToDouble(shelf -> shelf.under(0).reaction()).sum();
  }

  private Stream<LoadedShelf> shelves(BaySpace bay) {
    return reader.shelves().stream()
        .filter(shelf -> shelf.box().overlaps(bay.clear()))
        .map(shelf -> reader.read(shelf).loaded());
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }
}
