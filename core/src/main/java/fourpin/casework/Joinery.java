package fourpin.casework;

import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.job.Joint;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** What one panel needs so that the end of another can be joined to it. */
final class Joinery {

  private static final int FEWEST_SCREWS = 2;

  private final Settings settings;

  Joinery(Settings settings) {
    this.settings = settings;
  }

  /**
   * The dado or rabbet, or the screw holes, for {@code mate} in {@code host}.
   *
   * @param face of the host that the mate comes to
   * @param depth of the dado or rabbet
   */
  List<Feature> join(Part host, Part mate, Face face, Joint joint, Length depth) {
    return switch (joint.kind()) {
      case DADO -> List.of(channel(host, mate, face, Channel.Kind.DADO, depth));
      case RABBET -> List.of(channel(host, mate, face, Channel.Kind.RABBET, depth));
      case BUTT -> screws(host, mate, face);
    };
  }

  /**
   * From the mate's front edge through to the host's back edge, as a saw or router cuts it, and as
   * deep as stated: a shelf of a bay of equal share may be some picometres shorter.
   */
  private static Channel channel(Part host, Part mate, Face face, Channel.Kind kind, Length depth) {
    Length floor = host.box().at(face).plus(depth.times(-face.direction()));
    Box volume =
        host.box()
            .shared(mate.box())
            .with(Face.BACK, host.box().at(Face.BACK))
            .with(face.opposite(), floor);
    return new Channel(kind, face, volume, mate.name());
  }

  /** Clearance holes from the far face, spread evenly along the longer edge of the mate's end. */
  List<Feature> screws(Part host, Part mate, Face face) {
    Face from = face.opposite();
    Axis along = longerAxis(mate, face.axis());
    Length run = mate.box().size(along);
    int count = (int) Math.max(FEWEST_SCREWS, ceiling(run, settings.length(Setting.SCREW_SPACING)));
    List<Feature> holes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Length place = mate.box().low().along(along).plus(run.times(2L * i + 1).over(2L * count));
      Point centre = middle(mate.box()).with(along, place).with(face.axis(), host.box().at(from));
      holes.add(
          new Hole(
              Hole.Use.SCREW,
              from,
              centre,
              settings.length(Setting.SCREW_DIAMETER),
              host.box().size(face.axis()),
              mate.name()));
    }
    return holes;
  }

  private static long ceiling(Length run, Length spacing) {
    return run.wholeTimes(spacing) + (run.remainder(spacing).isZero() ? 0 : 1);
  }

  private static Axis longerAxis(Part mate, Axis across) {
    Axis best = across == Axis.X ? Axis.Y : Axis.X;
    for (Axis axis : Axis.values()) {
      boolean longer = mate.box().size(axis).isMoreThan(mate.box().size(best));
      best = axis != across && longer ? axis : best;
    }
    return best;
  }

  private static Point middle(Box box) {
    return new Point(
        box.low().x().plus(box.size(Axis.X).over(2)),
        box.low().y().plus(box.size(Axis.Y).over(2)),
        box.low().z().plus(box.size(Axis.Z).over(2)));
  }
}
