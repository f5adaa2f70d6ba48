package fourpin.casework;

import fourpin.casework.Feature.Channel;
import fourpin.casework.Part.CutWhen;
import fourpin.casework.Part.Role;
import fourpin.job.Back;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Sum;
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

  Part part() {
    Sum width = width().minus("play", play);
    Sum height = height().minus("play", play);
    Length left = carcass.width().minus(width.total()).over(2);
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
        "BK",
        "back",
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
