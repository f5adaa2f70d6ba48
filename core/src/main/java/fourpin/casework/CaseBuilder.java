package fourpin.casework;

import fourpin.casework.BaySpace.Opening;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Part.Role;
import fourpin.job.Bay;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Builds one case: blocks first, then what they need to be joined, then the shelves, then the
 * checks.
 */
final class CaseBuilder {

  private final Carcass carcass;
  private final Findings findings;
  private final Panels panels;
  private final Joinery joinery;

  CaseBuilder(Carcass carcass, Findings findings) {
    this.carcass = carcass;
    this.findings = findings;
    this.panels = new Panels(carcass);
    this.joinery = new Joinery(carcass.order().settings());
  }

  /** The case, or empty if it was refused; the reasons are among the findings. */
  Optional<BuiltCase> build() {
    new StatedChecks(carcass, findings).run();
    if (findings.refused()) {
      return Optional.empty();
    }
    return carcass.bayWidths(findings).flatMap(this::build);
  }

  private Optional<BuiltCase> build(List<Length> widths) {
    List<Length> lefts = lefts(widths);
    List<Part> blocks = blocks(widths, lefts);
    List<BaySpace> bays = bays(widths, lefts, blocks);
    List<Part> shelves = findings.refused() ? List.of() : shelves(widths, bays, blocks);
    if (findings.refused()) {
      return Optional.empty();
    }
    List<Part> parts = new ArrayList<>(blocks.stream().map(p -> cut(p, blocks)).toList());
    parts.addAll(shelves);
    new SpaceChecks(carcass, findings).run(parts);
    carcass.order().doors().ifPresent(d -> new PlateChecks(carcass, d, findings).run(bays, blocks));
    BuiltCase built = new BuiltCase(carcass.order(), outside(parts), parts, bays);
    carcass.order().doors().ifPresent(d -> new PlateChecks(carcass, d, findings).reach(built));
    return findings.refused() ? Optional.empty() : Optional.of(built);
  }

  /** The clear left edge of each bay. */
  private List<Length> lefts(List<Length> widths) {
    List<Length> lefts = new ArrayList<>();
    Length left = carcass.thickness();
    for (Length width : widths) {
      lefts.add(left);
      left = left.plus(width).plus(carcass.thickness());
    }
    return lefts;
  }

  private List<Part> blocks(List<Length> widths, List<Length> lefts) {
    List<Part> partitions = new ArrayList<>();
    for (int i = 1; i < lefts.size(); i++) {
      partitions.add(panels.partition(i, lefts.get(i).minus(carcass.thickness())));
    }
    List<Part> blocks = new ArrayList<>(panels.sides());
    blocks.addAll(partitions);
    blocks.addAll(panels.ends());
    blocks.addAll(fixedShelves(widths, lefts));
    carcass
        .order()
        .back()
        .ifPresent(back -> blocks.addAll(new BackPanel(carcass, back).parts(widths)));
    blocks.addAll(panels.kick(partitions));
    carcass
        .faceFrame()
        .ifPresent(frame -> blocks.addAll(new Front(carcass, frame).parts(partitions)));
    return blocks;
  }

  private List<Part> fixedShelves(List<Length> widths, List<Length> lefts) {
    List<Part> shelves = new ArrayList<>();
    for (int i = 0; i < widths.size(); i++) {
      int number = 0;
      for (Length at : carcass.order().bays().get(i).fixedShelves()) {
        number++;
        String mark = (i + 1) + "-F" + number;
        shelves.add(panels.fixedShelf(mark, i + 1, lefts.get(i), widths.get(i), at));
      }
    }
    return shelves;
  }

  private List<BaySpace> bays(List<Length> widths, List<Length> lefts, List<Part> blocks) {
    List<BaySpace> bays = new ArrayList<>();
    for (int i = 0; i < widths.size(); i++) {
      bays.add(bay(i, lefts.get(i), rightOf(i, widths, lefts), blocks));
    }
    return bays;
  }

  private Length rightOf(int bay, List<Length> widths, List<Length> lefts) {
    boolean last = bay == widths.size() - 1;
    return last
        ? carcass.width().minus(carcass.thickness())
        : lefts.get(bay + 1).minus(carcass.thickness());
  }

  private BaySpace bay(int index, Length left, Length right, List<Part> blocks) {
    Box clear =
        Box.of(
            left, right, Length.ZERO, carcass.backFace(), carcass.bottomFace(), carcass.topFace());
    int count = carcass.order().bays().size();
    return new BaySpace(
        index + 1,
        clear,
        index == 0 ? "L" : "P" + index,
        index == count - 1 ? "R" : "P" + (index + 1),
        openings(index + 1, clear, blocks));
  }

  private List<Opening> openings(int bay, Box clear, List<Part> blocks) {
    List<Opening> openings = new ArrayList<>();
    Length low = clear.low().z();
    String below = "B";
    for (Part shelf : fixedIn(bay, blocks)) {
      if (!shelf.box().low().z().isMoreThan(low)) {
        misplaced(shelf);
        return List.of(new Opening(clear, "B", "T"));
      }
      openings.add(new Opening(slice(clear, low, shelf.box().low().z()), below, shelf.mark()));
      low = shelf.box().high().z();
      below = shelf.mark();
      if (!clear.high().z().isMoreThan(low)) {
        misplaced(shelf);
        return List.of(new Opening(clear, "B", "T"));
      }
    }
    openings.add(new Opening(slice(clear, low, clear.high().z()), below, "T"));
    return openings;
  }

  private static List<Part> fixedIn(int bay, List<Part> blocks) {
    return blocks.stream()
        .filter(p -> p.role() == Role.FIXED_SHELF && p.mark().startsWith(bay + "-F"))
        .toList();
  }

  private static Box slice(Box clear, Length low, Length high) {
    return clear.with(Face.BOTTOM, low).with(Face.TOP, high);
  }

  private void misplaced(Part shelf) {
    findings.refuse(
        "fixed-shelf-misplaced",
        "the "
            + shelf.name()
            + " ("
            + shelf.mark()
            + ") at "
            + carcass.style().text(shelf.box().high().z())
            + " does not lie between bottom and top with room below and above it, in rising order",
        shelf.mark(),
        shelf.box(),
        new Remedy("heights are from the foot of the case to the upper face, rising", "nothing"));
  }

  private List<Part> shelves(List<Length> widths, List<BaySpace> bays, List<Part> blocks) {
    List<Part> shelves = new ArrayList<>();
    for (BaySpace space : bays) {
      Bay bay = carcass.order().bays().get(space.number() - 1);
      Length width = widths.get(space.number() - 1);
      bay.shelves()
          .map(s -> new ShelfMaker(carcass, bay, space, width, s))
          .ifPresent(maker -> shelves.addAll(shelves(space, maker, blocks)));
    }
    return shelves;
  }

  private List<Part> shelves(BaySpace space, ShelfMaker maker, List<Part> blocks) {
    ShelfChecks checks = new ShelfChecks(carcass, findings);
    if (!checks.hasSize(space, maker)) {
      return List.of();
    }
    List<Part> parts = maker.parts();
    checks.hanging(space, parts);
    for (Part shelf : parts) {
      checks.inside(space, shelf);
      checks.behindDoors(shelf);
      carcass.faceFrame().ifPresent(_ -> behindFrame(space, shelf, blocks, checks));
    }
    return parts;
  }

  private void behindFrame(BaySpace space, Part shelf, List<Part> blocks, ShelfChecks checks) {
    ShelfChecks.Passage passage = passage(space, blocks);
    space.openings().stream()
        .filter(o -> o.clear().overlaps(shelf.box()))
        .findFirst()
        .ifPresent(opening -> checks.behindFrame(shelf, opening, passage));
  }

  /** What the face frame leaves open in front of a bay. */
  private static ShelfChecks.Passage passage(BaySpace space, List<Part> blocks) {
    Length left = space.clear().low().x();
    Length right = space.clear().high().x();
    Length top = space.clear().high().z();
    for (Part part : blocks) {
      Box box = part.box();
      if (part.role() == Role.STILE) {
        boolean onLeft = box.low().x().isLessThan(left) && box.high().x().isMoreThan(left);
        boolean onRight = box.low().x().isLessThan(right) && box.high().x().isMoreThan(right);
        left = onLeft ? box.high().x() : left;
        right = onRight ? box.low().x() : right;
      }
      top = part.mark().equals("FT") ? Length.min(top, box.low().z()) : top;
    }
    return new ShelfChecks.Passage(right.minus(left), top);
  }

  /** A block with all that is cut into it for its neighbours. */
  private Part cut(Part host, List<Part> blocks) {
    List<Feature> features = new ArrayList<>();
    carcass.order().back().ifPresent(b -> features.addAll(new BackPanel(carcass, b).cutsIn(host)));
    for (Part mate : blocks) {
      features.addAll(jointFor(host, mate));
    }
    carcass.order().kick().ifPresent(kick -> features.addAll(notch(host, kick)));
    return host.with(features);
  }

  private List<Feature> jointFor(Part host, Part mate) {
    boolean upright = host.role() == Role.SIDE || host.role() == Role.PARTITION;
    boolean end = host.role() == Role.TOP || host.role() == Role.BOTTOM;
    return switch (mate.role()) {
      case TOP ->
          host.role() == Role.SIDE ? joint(host, mate, carcass.order().topJoint()) : List.of();
      case BOTTOM ->
          host.role() == Role.SIDE ? joint(host, mate, carcass.order().bottomJoint()) : List.of();
      case PARTITION -> end ? joint(host, mate, carcass.order().partitionJoint()) : List.of();
      case FIXED_SHELF ->
          upright ? joint(host, mate, carcass.order().fixedShelfJoint()) : List.of();
      case KICK ->
          host.role() == Role.SIDE
              ? joinery.screws(host, mate, towards(host, mate, Axis.X))
              : List.of();
      default -> List.of();
    };
  }

  private List<Feature> joint(Part host, Part mate, Joint joint) {
    Axis axis = mate.role() == Role.PARTITION ? Axis.Z : Axis.X;
    return touches(host, mate)
        ? joinery.join(host, mate, towards(host, mate, axis), joint, carcass.depthOf(joint))
        : List.of();
  }

  private static boolean touches(Part host, Part mate) {
    for (Axis axis : Axis.values()) {
      boolean past =
          host.box().high().along(axis).isLessThan(mate.box().low().along(axis))
              || mate.box().high().along(axis).isLessThan(host.box().low().along(axis));
      if (past) {
        return false;
      }
    }
    return true;
  }

  private static Face towards(Part host, Part mate, Axis axis) {
    boolean after = mate.box().high().along(axis).isMoreThan(host.box().high().along(axis));
    return switch (axis) {
      case X -> after ? Face.RIGHT : Face.LEFT;
      case Y -> after ? Face.BACK : Face.FRONT;
      case Z -> after ? Face.TOP : Face.BOTTOM;
    };
  }

  private static List<Feature> notch(Part host, Kick kick) {
    if (host.role() != Role.SIDE || !kick.recess().isPositive()) {
      return List.of();
    }
    Box volume = host.box().with(Face.BACK, kick.recess()).with(Face.TOP, kick.height());
    Face inner = host.mark().equals("L") ? Face.RIGHT : Face.LEFT;
    return List.of(new Feature.Channel(Feature.Channel.Kind.NOTCH, inner, volume, "kick"));
  }

  private static Box outside(List<Part> parts) {
    Point low = parts.getFirst().box().low();
    Point high = parts.getFirst().box().high();
    for (Part part : parts) {
      for (Axis axis : Axis.values()) {
        low = low.with(axis, Length.min(low.along(axis), part.box().low().along(axis)));
        high = high.with(axis, Length.max(high.along(axis), part.box().high().along(axis)));
      }
    }
    return new Box(low, high);
  }
}
