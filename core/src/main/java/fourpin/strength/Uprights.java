package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding.Moved;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Back;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.strength.Made.Piece;
import fourpin.strength.Section.Layer;
import java.util.List;
import java.util.Optional;

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

  /**
   * Whether a pin or a cleat on the back has something to hold by: a back that lies loose in
   * grooves passes nothing on, and one in which no hole of a pin fits tears out.
   */
  boolean haveBackThatBears() {
    return built.order().back().filter(this::bears).isPresent();
  }

  private boolean bears(Back back) {
    Settings settings = built.order().settings();
    boolean glued = settings.choice(Setting.BACK_FIXING).equals("glued");
    Length least = settings.length(Setting.HOLE_DEPTH).plus(settings.length(Setting.LEAST_FLOOR));
    return (glued || back.kind() != Back.Kind.GROOVE)
        && job.material(back.material()).thickness().isAtLeast(least);
  }

  private long shelves(BaySpace bay) {
    return built.parts().stream()
        .filter(p -> p.role() == Part.Role.SHELF || p.role() == Part.Role.FIXED_SHELF)
        .filter(p -> p.box().overlaps(bay.clear()))
        .count();
  }

  /** Holes of supports, as they are bored into uprights. */
  private record Holes(Length deep, Length diameter) {

    static Optional<Holes> of(Support support, Settings settings) {
      return switch (support) {
        case Support.Pins pins ->
            Optional.of(new Holes(settings.length(Setting.HOLE_DEPTH), pins.diameter()));
        case Support.Sleeved sleeved -> Optional.of(new Holes(sleeved.length(), sleeved.outside()));
        case Support.Standards _, Support.Cleats _ -> Optional.empty();
      };
    }
  }

  /** Those that, bored from both faces of a partition, leave too little between them. */
  private Optional<Holes> meeting(Support support) {
    Settings settings = built.order().settings();
    Length most = boredFromBothFaces(material().thickness(), settings);
    return Holes.of(support, settings).filter(h -> h.deep().isMoreThan(most));
  }

  /** A job says how high its drawers are, and not in which bay. */
  boolean mayMeetDrawers() {
    return built.order().drawers().isPresent();
  }

  /** That what stands in a bay may run through drawers. */
  String drawers() {
    return !mayMeetDrawers()
        ? ""
        : built.bays().size() == 1
            ? "; it runs through the drawers, unless these are narrower or end above or below it"
            : "; where the drawers are in this bay it runs through them, unless these are narrower"
                + " or end above or below it";
  }

  /** That holes of supports meet in a partition. */
  String meets(Support support) {
    return meeting(support)
        .map(
            holes ->
                "; its holes, %s deep from both faces, leave too little of %s: %s"
                    .formatted(
                        job.style().text(holes.deep()),
                        job.style().text(material().thickness()),
                        apart(support).isPresent()
                            ? "state levels-up, half a pitch, for every second bay too"
                            : "cure that too"))
        .orElse("");
  }

  /** That fixed shelves at one height on both sides of a partition cover each other's screws. */
  String screws(BaySpace bay) {
    boolean screwed = built.order().fixedShelfJoint().kind() == Joint.Kind.BUTT;
    return screwed && bay.openings().size() > 1
        ? "; the fixed shelf on one side of it covers the screws of the one on its other side:"
            + " cure that too"
        : "";
  }

  /** Half a pitch up, holes of one face stand between those of the other, and bear the same. */
  Optional<Stated> apart(Support support) {
    Settings settings = built.order().settings();
    Length half = settings.length(Setting.PITCH).over(2);
    return meeting(support)
        .filter(h -> half.isAtLeast(h.diameter().plus(settings.length(Setting.LEAST_EDGE))))
        .map(_ -> new Stated.EverySecondBay(Moved.LEVELS_UP, job.style().rounded(half)));
  }

  /** How deep holes over each other may be in what is bored from both faces. */
  static Length boredFromBothFaces(Length thickness, Settings settings) {
    Length points = settings.length(Setting.BIT_POINT).times(2);
    Length behind = thickness.minus(settings.length(Setting.LEAST_FLOOR));
    return Length.min(
        thickness.minus(settings.length(Setting.LEAST_WEB)).over(2), behind.minus(points).over(2));
  }

  /** What to do for a shelf to rest on a loose one in the middle. */
  String loose(String push) {
    return "stand a loose upright under its middle, front to back, and one under each below down"
        + " to the bottom"
        + (onFloor()
            ? ""
            : ", and a block under that from its front edge to its back, on the floor")
        + "; each edge of it carries "
        + push
        + " from each shelf above";
  }

  /** A bottom that stands off the floor would bend under it, and the shelf with it. */
  private boolean onFloor() {
    return !built.part("B").box().low().z().isPositive();
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
