package fourpin.casework;

import fourpin.casework.Part.CutWhen;
import fourpin.casework.Part.Role;
import fourpin.job.FaceFrame;
import fourpin.job.FaceFrame.Scribe;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.List;

/** The face frame. */
final class Front {

  private final Carcass carcass;
  private final FaceFrame frame;
  private final Length scribe;

  Front(Carcass carcass, FaceFrame frame) {
    this.carcass = carcass;
    this.frame = frame;
    this.scribe = carcass.order().settings().length(Setting.SCRIBE);
  }

  /** Inner edge of the left stile. */
  Length leftEdge() {
    return frame.stile().minus(frame.overhang());
  }

  /** Inner edge of the right stile. */
  Length rightEdge() {
    return carcass.width().minus(leftEdge());
  }

  /** Lower edge of the top rail. */
  Length upperEdge() {
    return carcass.height().minus(frame.topRail());
  }

  List<Part> parts(List<Part> partitions) {
    List<Part> parts = new ArrayList<>();
    parts.add(outerStile("FL", "left stile", scribed(Scribe.LEFT), Face.LEFT));
    frame.middleStile().ifPresent(w -> partitions.forEach(p -> parts.add(middleStile(p, w))));
    parts.add(outerStile("FR", "right stile", scribed(Scribe.RIGHT), Face.RIGHT));
    parts.add(rail("FT", "top rail", frame.topRail(), upperEdge()));
    parts.add(
        rail(
            "FB",
            "bottom rail",
            frame.bottomRail(),
            carcass.bottomFace().minus(frame.bottomRail())));
    return parts;
  }

  private Length scribed(Scribe side) {
    return frame.scribe() == side || frame.scribe() == Scribe.BOTH ? scribe : Length.ZERO;
  }

  private Part outerStile(String mark, String name, Length extra, Face outwards) {
    boolean left = outwards == Face.LEFT;
    Length outer =
        left
            ? frame.overhang().negated().minus(extra)
            : carcass.width().plus(frame.overhang()).plus(extra);
    Box box =
        left
            ? front(outer, leftEdge(), Length.ZERO, carcass.height())
            : front(rightEdge(), outer, Length.ZERO, carcass.height());
    Sum width = Sum.of("stile", frame.stile()).plus("scribe", extra);
    return stile(mark, name, box, carcass.heightSum(), width);
  }

  private Part middleStile(Part partition, Length width) {
    Length left = partition.box().low().x().plus(partition.box().size(Axis.X).minus(width).over(2));
    Box box = front(left, left.plus(width), carcass.bottomFace(), upperEdge());
    Sum length =
        Sum.of("case height less kick and bottom", carcass.height().minus(carcass.bottomFace()))
            .minus("top rail", frame.topRail());
    String number = partition.mark().substring(1);
    return stile(
        "FM" + number, "middle stile " + number, box, length, Sum.of("middle stile", width));
  }

  private Part stile(String mark, String name, Box box, Sum length, Sum width) {
    return part(mark, name, Role.STILE, box, Axis.Z, length, width);
  }

  private Part rail(String mark, String name, Length width, Length low) {
    Box box = front(leftEdge(), rightEdge(), low, low.plus(width));
    Sum length =
        Sum.of("case width", carcass.width())
            .plus(2, "overhang", frame.overhang())
            .minus(2, "stile", frame.stile());
    return part(mark, name, Role.RAIL, box, Axis.X, length, Sum.of("rail", width));
  }

  private Part part(
      String mark, String name, Role role, Box box, Axis along, Sum length, Sum width) {
    return new Part(
        mark,
        name,
        role,
        frame.material(),
        box,
        along,
        Axis.Y,
        length,
        width,
        List.of(),
        List.of(),
        CutWhen.NOW);
  }

  private Box front(Length left, Length right, Length low, Length high) {
    return Box.of(left, right, carcass.faceFrameThickness().negated(), Length.ZERO, low, high);
  }
}
