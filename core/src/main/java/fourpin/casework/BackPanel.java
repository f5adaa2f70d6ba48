package fourpin.casework;

import fourpin.casework.Feature.Channel;
import fourpin.casework.Part.CutWhen;
import fourpin.casework.Part.Role;
import fourpin.job.Back;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.List;

/** The back, and what is cut into the carcass for it. */
final class BackPanel {

  private static final String PURPOSE = "back";

  private final Carcass carcass;
  private final Back back;
  private final Length play;

  BackPanel(Carcass carcass, Back back) {
    this.carcass = carcass;
    this.back = back;
    this.play = carcass.order().settings().length(Setting.PANEL_PLAY);
  }

  /** The panels from left to right. @param widths clear widths of the bays */
  List<Part> parts(List<Length> widths) {
    return switch (back.pieces()) {
      case ONE -> List.of(part("BK", PURPOSE, outerEdge(), width()));
      case BY_BAY -> byBay(widths);
    };
  }

  private List<Part> byBay(List<Length> widths) {
    List<Part> parts = new ArrayList<>();
    Length left = outerEdge();
    for (int i = 0; i < widths.size(); i++) {
      Sum width = width(i, widths);
      parts.add(part("BK" + (i + 1), PURPOSE + ", bay " + (i + 1), left, width));
      left = left.plus(width.total());
    }
    return parts;
  }

  /** From groove, rabbet or outside to the middle of the next partition. */
  private Sum width(int bay, List<Length> widths) {
    int outer = (bay == 0 ? 1 : 0) + (bay == widths.size() - 1 ? 1 : 0);
    Length overSide = back.kind() == Back.Kind.APPLIED ? carcass.thickness() : carcass.backDepth();
    return Sum.of("bay " + (bay + 1), widths.get(bay))
        .plus(outer, edgeWords(), overSide)
        .plus(2 - outer, "half a partition", carcass.thickness().over(2));
  }

  private String edgeWords() {
    return switch (back.kind()) {
      case GROOVE -> "groove";
      case RABBET -> "rabbet";
      case APPLIED -> "side";
    };
  }

  /** Where the room for the back begins on the left. */
  private Length outerEdge() {
    return back.kind() == Back.Kind.APPLIED
        ? Length.ZERO
        : carcass.thickness().minus(carcass.backDepth());
  }

  private Part part(String mark, String name, Length from, Sum room) {
    Sum width = room.minus("play", play);
    Sum height = height().minus("play", play);
    Length left = from.plus(play.over(2));
    Length low = low();
    Box box =
        Box.of(
            left,
            left.plus(width.total()),
            carcass.backFace(),
            carcass.backFace().plus(carcass.backThickness()),
            low,
            low.plus(height.total()));
    return new Part(
        mark,
        name,
        Role.BACK,
        back.material(),
        box,
        Axis.Z,
        Axis.Y,
        height,
        width,
        List.of(),
        List.of(),
        when());
  }

  /** A back in a groove goes in with the case; the others are cut to the case as it came out. */
  private CutWhen when() {
    return back.kind() == Back.Kind.GROOVE ? CutWhen.NOW : CutWhen.AFTER_ASSEMBLY;
  }

  private Sum width() {
    return switch (back.kind()) {
      case GROOVE -> carcass.clearWidthSum().plus(2, "groove", carcass.backDepth());
      case RABBET -> carcass.clearWidthSum().plus(2, "rabbet", carcass.backDepth());
      case APPLIED -> Sum.of("case width", carcass.width());
    };
  }

  private Sum height() {
    return switch (back.kind()) {
      case GROOVE -> carcass.clearHeightSum().plus(2, "groove", carcass.backDepth());
      case RABBET ->
          carcass
              .clearHeightSum()
              .plus("bottom", carcass.thickness())
              .plus("rabbet", carcass.backDepth());
      case APPLIED -> carcass.heightSum().minus("kick", carcass.foot());
    };
  }

  private Length low() {
    return switch (back.kind()) {
      case GROOVE -> carcass.bottomFace().minus(carcass.backDepth()).plus(play.over(2));
      case RABBET, APPLIED -> carcass.foot();
    };
  }

  /** What is cut into a part for the back; runs from end to end of the part. */
  List<Channel> cutsIn(Part part) {
    if (back.kind() == Back.Kind.APPLIED) {
      return List.of();
    }
    return switch (part.role()) {
      case SIDE -> List.of(cut(part, part.mark().equals("L") ? Face.RIGHT : Face.LEFT));
      case TOP -> List.of(cut(part, Face.BOTTOM));
      case BOTTOM -> back.kind() == Back.Kind.GROOVE ? List.of(cut(part, Face.TOP)) : List.of();
      default -> List.of();
    };
  }

  private Channel cut(Part part, Face face) {
    Length floor = part.box().at(face).plus(carcass.backDepth().times(-face.direction()));
    Box volume =
        part.box()
            .with(face.opposite(), floor)
            .with(Face.FRONT, carcass.backFace())
            .with(Face.BACK, carcass.backFace().plus(carcass.backThickness()));
    Channel.Kind kind = back.kind() == Back.Kind.GROOVE ? Channel.Kind.GROOVE : Channel.Kind.RABBET;
    return new Channel(kind, face, volume, PURPOSE);
  }
}
