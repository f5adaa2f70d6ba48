package fourpin.plan;

import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.DoorLeaf;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.job.Doors;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.plan.HardwareItem.Amount;
import fourpin.strength.CaseAnswer;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What a case takes beside its stock, its supports and the screws of its joints: anchors, hinges,
 * what guides are put together with, glue and finish. Glue and finish are bought by the length and
 * the area that they are for, since makers take unlike amounts of them.
 */
final class Sundries {

  private static final double MM2_PER_M2 = 1e6;

  /** Common practice, see {@link GuideMaking}. */
  private static final int SCREWS_OF_A_BLOCK = 2;

  /** Ends of each panel that lies or stands between others. */
  private static final Map<Role, Integer> JOINTS =
      Map.of(Role.TOP, 2, Role.BOTTOM, 2, Role.FIXED_SHELF, 2, Role.PARTITION, 2);

  private static final int FACES = 2;

  private final Job job;
  private final BuiltCase built;
  private final LengthStyle style;

  Sundries(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
    this.style = job.style();
  }

  List<HardwareItem> all(List<CaseBoring> borings, List<CaseAnswer> answers) {
    return Stream.of(anchors(answers), hinges(), guides(borings), glue(), finish())
        .flatMap(items -> items)
        .toList();
  }

  private long copies() {
    return built.order().quantity();
  }

  private HardwareItem pieces(String name, String size, long count) {
    return new HardwareItem(name, size, new Amount.Pieces(count, count), built.order().name());
  }

  /** As many as the pull at the top takes. */
  private Stream<HardwareItem> anchors(List<CaseAnswer> answers) {
    String size =
        style.diameter(built.order().settings().length(Setting.ANCHOR_SCREW))
            + " thick, with "
            + style.text(built.order().settings().length(Setting.ANCHOR_THREAD))
            + " of thread within the stud";
    String id = Figure.id(built.order().name(), "anchor-count");
    return answers.stream()
        .filter(a -> a.caseName().equals(built.order().name()))
        .flatMap(a -> a.standing().stream())
        .filter(f -> f.id().equals(id))
        .map(f -> pieces("lag screw to the wall", size, copies() * (long) f.value().value()));
  }

  private Stream<HardwareItem> hinges() {
    return built.order().doors().stream().map(this::hinges);
  }

  private HardwareItem hinges(Doors doors) {
    String hung = doors.kind() == Doors.Kind.INSET ? "inset" : "overlay";
    return pieces(
        "hinge with its plate and screws",
        "for " + hung + " doors, " + style.text(doors.thickness()) + " thick",
        copies() * DoorLeaf.of(built).size() * doors.plateHeights().size());
  }

  /** One guide serves all copies. */
  private Stream<HardwareItem> guides(List<CaseBoring> borings) {
    return borings.stream()
        .filter(b -> b.caseName().equals(built.order().name()))
        .flatMap(b -> b.method() instanceof Method.Guided g ? Stream.of(g) : Stream.empty())
        .flatMap(g -> Stream.concat(block(g.guide()), pin(g)));
  }

  private Stream<HardwareItem> block(Guide guide) {
    if (guide.block().isZero()) {
      return Stream.empty();
    }
    Length one = guide.block().plus(guide.thickness());
    return Stream.of(
        pieces(
            "screw for the block of a guide",
            "No. 6 (3.5 mm), longer than "
                + style.text(one)
                + ", shorter than "
                + style.text(one.plus(guide.block())),
            SCREWS_OF_A_BLOCK));
  }

  private Stream<HardwareItem> pin(Method.Guided guided) {
    if (!guided.isMovedAlong()) {
      return Stream.empty();
    }
    String bored = style.diameter(guided.bit().diameter());
    String size =
        guided.needsSteppedPin()
            ? style.diameter(guided.guide().holes().getFirst().diameter())
                + ", to be made "
                + bored
                + " thick below"
            : bored;
    return Stream.of(pieces("rod for the pin that a guide is moved along by", size, 1));
  }

  /** Where panels meet; edging, backs and face frames take theirs besides. */
  private Stream<HardwareItem> glue() {
    double joints =
        built.parts().stream()
            .mapToDouble(p -> JOINTS.getOrDefault(p.role(), 0) * p.box().size(Axis.Y).mm())
            .sum();
    return toSuit(
        "wood glue",
        "to suit, for the joints of sides, partitions, top, bottom and fixed shelves",
        Quantity.of(copies() * joints, QuantityUnit.LENGTH));
  }

  private Stream<HardwareItem> finish() {
    double area =
        built.parts().stream()
            .filter(p -> job.material(p.material()).kind() != Material.Kind.GLASS)
            .mapToDouble(Sundries::faces)
            .sum();
    return toSuit(
        "finish",
        "to suit, a coat on both faces of all parts",
        Quantity.of(copies() * area, QuantityUnit.AREA));
  }

  private static double faces(Part part) {
    return FACES * part.length().total().mm() * part.width().total().mm() / MM2_PER_M2;
  }

  private Stream<HardwareItem> toSuit(String name, String size, Quantity covers) {
    return Stream.of(new HardwareItem(name, size, new Amount.ToSuit(covers), built.order().name()));
  }
}
