package fourpin.casework;

import fourpin.casework.Part.CutWhen;
import fourpin.casework.Part.EdgeBand;
import fourpin.casework.Part.Role;
import fourpin.job.Edging;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.List;

/** The panels of a carcass as plain blocks, before anything is cut into them. */
final class Panels {

  private final Carcass carcass;

  Panels(Carcass carcass) {
    this.carcass = carcass;
  }

  List<Part> sides() {
    return List.of(
        side("L", "left side", Length.ZERO),
        side("R", "right side", carcass.width().minus(carcass.thickness())));
  }

  private Part side(String mark, String name, Length left) {
    Box box =
        Box.of(
            left,
            left.plus(carcass.thickness()),
            Length.ZERO,
            carcass.sideDepth(),
            Length.ZERO,
            carcass.height());
    return upright(mark, name, Role.SIDE, box, carcass.heightSum(), carcass.sideDepthSum());
  }

  /** Top and bottom. */
  List<Part> ends() {
    Joint top = carcass.order().topJoint();
    Joint bottom = carcass.order().bottomJoint();
    return List.of(
        end("T", "top", Role.TOP, top, carcass.sideDepthSum(), carcass.topFace()),
        end("B", "bottom", Role.BOTTOM, bottom, carcass.bottomDepthSum(), carcass.foot()));
  }

  private Part end(String mark, String name, Role role, Joint joint, Sum depth, Length low) {
    Length into = carcass.depthOf(joint);
    Box box =
        Box.of(
            carcass.thickness().minus(into),
            carcass.width().minus(carcass.thickness()).plus(into),
            Length.ZERO,
            depth.total(),
            low,
            low.plus(carcass.thickness()));
    return level(mark, name, role, box, carcass.clearWidthSum().plus(2, words(joint), into), depth);
  }

  /** A partition whose left face is at {@code left}. */
  Part partition(int number, Length left) {
    Joint joint = carcass.order().partitionJoint();
    Length into = carcass.depthOf(joint);
    Box box =
        Box.of(
            left,
            left.plus(carcass.thickness()),
            Length.ZERO,
            carcass.backFace(),
            carcass.bottomFace().minus(into),
            carcass.topFace().plus(into));
    return upright(
        "P" + number,
        "partition " + number,
        Role.PARTITION,
        box,
        carcass.clearHeightSum().plus(2, words(joint), into),
        carcass.backFaceSum());
  }

  /**
   * A fixed shelf.
   *
   * @param left clear edge of the bay
   * @param width clear width of the bay
   * @param at height of the upper face
   */
  Part fixedShelf(String mark, int bay, Length left, Length width, Length at) {
    Joint joint = carcass.order().fixedShelfJoint();
    Length into = carcass.depthOf(joint);
    Length front = carcass.doorRoom();
    Box box =
        Box.of(
            left.minus(into),
            left.plus(width).plus(into),
            front,
            carcass.backFace(),
            at.minus(carcass.thickness()),
            at);
    Sum length = Sum.of("bay " + bay, width).plus(2, words(joint), into);
    return level(
        mark,
        "fixed shelf, bay " + bay,
        Role.FIXED_SHELF,
        box,
        length,
        carcass.backFaceSum().minus("inset door", front));
  }

  /** The kick, and what the settings say stands behind it, of the same material and as high. */
  List<Part> kick(List<Part> partitions) {
    return carcass.order().kick().map(kick -> kick(kick, partitions)).orElse(List.of());
  }

  private List<Part> kick(Kick kick, List<Part> partitions) {
    List<Part> parts = new ArrayList<>(List.of(board("K", "kick", kick, kick.recess())));
    if (kick.height().isPositive()) {
      parts.addAll(behind(kick, partitions));
    }
    return parts;
  }

  private List<Part> behind(Kick kick, List<Part> partitions) {
    Length back = carcass.bottomDepthSum().total();
    return switch (carcass.order().settings().choice(Setting.BEHIND_KICK)) {
      case "board" -> List.of(board("K2", "second kick", kick, back.minus(thickness(kick))));
      case "blocks" -> partitions.stream().map(p -> block(kick, p)).toList();
      default -> List.of();
    };
  }

  private Length thickness(Kick kick) {
    return carcass.job().material(kick.material()).thickness();
  }

  private Part board(String mark, String name, Kick kick, Length front) {
    Box box =
        Box.of(
            carcass.thickness(),
            carcass.width().minus(carcass.thickness()),
            front,
            front.plus(thickness(kick)),
            Length.ZERO,
            kick.height());
    return low(mark, name, Role.KICK, kick, box, Axis.X, carcass.clearWidthSum());
  }

  /** On edge under the middle of a partition, from the kick to the back edge of the bottom. */
  private Part block(Kick kick, Part partition) {
    Sum length =
        carcass.bottomDepthSum().minus("recess", kick.recess()).minus("kick", thickness(kick));
    Length back = carcass.bottomDepthSum().total();
    Length left = partition.box().low().x().plus(partition.thickness().over(2));
    Length low = left.minus(thickness(kick).over(2));
    Box box =
        Box.of(
            low,
            low.plus(thickness(kick)),
            back.minus(length.total()),
            back,
            Length.ZERO,
            kick.height());
    String under = partition.mark();
    return low("K-" + under, "block under " + under, Role.BLOCK, kick, box, Axis.Y, length);
  }

  private static Part low(
      String mark, String name, Role role, Kick kick, Box box, Axis along, Sum length) {
    return new Part(
        mark,
        name,
        role,
        kick.material(),
        box,
        along,
        along == Axis.X ? Axis.Y : Axis.X,
        length,
        Sum.of("kick height", kick.height()),
        List.of(),
        List.of(),
        CutWhen.NOW);
  }

  private Part upright(String mark, String name, Role role, Box box, Sum length, Sum width) {
    return panel(mark, name, role, box, Axis.Z, Axis.X, length, width);
  }

  private Part level(String mark, String name, Role role, Box box, Sum length, Sum width) {
    return panel(mark, name, role, box, Axis.X, Axis.Z, length, width);
  }

  private Part panel(
      String mark,
      String name,
      Role role,
      Box box,
      Axis along,
      Axis through,
      Sum length,
      Sum width) {
    String material = carcass.order().material();
    List<EdgeBand> edging = bands(carcass.order().edging(), box, along);
    return new Part(
        mark,
        name,
        role,
        material,
        box,
        along,
        through,
        length,
        width,
        edging,
        List.of(),
        CutWhen.NOW);
  }

  /**
   * The edging of a part whose front and back edges run along {@code along}: ends first, since what
   * is on the front and back covers their corners.
   */
  static List<EdgeBand> bands(List<Edging> edgings, Box box, Axis along) {
    List<EdgeBand> ends = new ArrayList<>();
    List<EdgeBand> edges = new ArrayList<>();
    Length covered = Length.ZERO.in(box.size(Axis.Y).unit());
    for (Edging edging : edgings) {
      for (Edging.Edge edge : edging.edges()) {
        Face face = face(edge);
        boolean end = face.axis() != Axis.Y;
        covered = end ? covered : covered.plus(edging.thickness());
        (end ? ends : edges).add(new EdgeBand(face, edging, box.size(end ? Axis.Y : along)));
      }
    }
    Length corners = covered;
    List<EdgeBand> bands =
        new ArrayList<>(
            ends.stream()
                .map(b -> new EdgeBand(b.face(), b.edging(), b.length().minus(corners)))
                .toList());
    bands.addAll(edges);
    return bands;
  }

  static Face face(Edging.Edge edge) {
    return switch (edge) {
      case FRONT -> Face.FRONT;
      case BACK -> Face.BACK;
      case LEFT -> Face.LEFT;
      case RIGHT -> Face.RIGHT;
    };
  }

  private static String words(Joint joint) {
    return switch (joint.kind()) {
      case DADO -> "dado";
      case RABBET -> "rabbet";
      case BUTT -> "butt";
    };
  }
}
