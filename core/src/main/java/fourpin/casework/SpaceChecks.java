package fourpin.casework;

import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Finding.Remedy;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether the parts of a case, as blocks with what is cut into them, can be where they are. */
final class SpaceChecks {

  private final Carcass carcass;
  private final Findings findings;

  SpaceChecks(Carcass carcass, Findings findings) {
    this.carcass = carcass;
    this.findings = findings;
  }

  void run(List<Part> parts) {
    for (int i = 0; i < parts.size(); i++) {
      cuts(parts.get(i));
      for (Part other : parts.subList(i + 1, parts.size())) {
        apart(parts.get(i), other);
      }
    }
    parts.forEach(p -> screwsReachable(p, parts));
  }

  /** Two parts may share only room that is cut out of one of them. */
  private void apart(Part one, Part other) {
    if (!one.box().overlaps(other.box())) {
      return;
    }
    Box shared = one.box().shared(other.box());
    if (!cutOut(one, shared) && !cutOut(other, shared)) {
      findings.refuse(
          "parts-overlap",
          one.name()
              + " ("
              + one.mark()
              + ") and "
              + other.name()
              + " ("
              + other.mark()
              + ") are in the same place, by "
              + size(shared),
          other.mark(),
          shared,
          new Remedy("move one of them, or make it smaller", "room"));
    }
  }

  private static boolean cutOut(Part part, Box shared) {
    return part.features().stream()
        .anyMatch(f -> f instanceof Channel channel && channel.volume().contains(shared));
  }

  private void cuts(Part part) {
    List<Channel> channels =
        part.features().stream()
            .filter(Channel.class::isInstance)
            .map(Channel.class::cast)
            .toList();
    for (int i = 0; i < channels.size(); i++) {
      for (Channel other : channels.subList(i + 1, channels.size())) {
        web(part, channels.get(i), other);
      }
    }
  }

  /** What is left between two cuts from opposite faces. */
  private void web(Part part, Channel one, Channel other) {
    if (one.face() != other.face().opposite() || !overFace(one, other)) {
      return;
    }
    Axis axis = one.face().axis();
    Length web =
        part.box().size(axis).minus(one.volume().size(axis)).minus(other.volume().size(axis));
    String what =
        "the cuts for "
            + one.purpose()
            + " and "
            + other.purpose()
            + " in "
            + part.name()
            + " ("
            + part.mark()
            + ") lie opposite and leave "
            + text(web);
    Remedy[] remedies = {
      new Remedy("move one of the two by at least its thickness", "looks"),
      new Remedy("make both cuts shallower", "strength of the joints"),
      new Remedy("join one of them with screws instead", "screws that show")
    };
    if (!web.isPositive()) {
      findings.refuse("cuts-meet", what, part.mark(), one.volume(), remedies);
    } else if (web.isLessThan(carcass.order().settings().length(Setting.LEAST_WEB))) {
      findings.doubt("thin-web", what, part.mark(), one.volume(), remedies);
    }
  }

  private static boolean overFace(Channel one, Channel other) {
    for (Axis axis : Axis.values()) {
      boolean past =
          !one.volume().low().along(axis).isLessThan(other.volume().high().along(axis))
              || !other.volume().low().along(axis).isLessThan(one.volume().high().along(axis));
      if (axis != one.face().axis() && past) {
        return false;
      }
    }
    return true;
  }

  /** A screw is driven from its face: nothing may stand there. Said once for all of a joint. */
  private void screwsReachable(Part part, List<Part> parts) {
    Set<List<String>> named = new HashSet<>();
    for (Feature feature : part.features()) {
      if (feature instanceof Hole hole && hole.use() == Hole.Use.SCREW) {
        parts.stream()
            .filter(p -> !p.mark().equals(part.mark()) && covers(p.box(), hole))
            .findFirst()
            .filter(p -> named.add(List.of(hole.purpose(), p.mark())))
            .ifPresent(p -> covered(part, p, hole));
      }
    }
  }

  private static boolean covers(Box box, Hole hole) {
    Length face = box.at(hole.face().opposite());
    boolean touches = face.equals(hole.centre().along(hole.face().axis()));
    for (Axis axis : Axis.values()) {
      Length place = hole.centre().along(axis);
      boolean outside =
          place.isLessThan(box.low().along(axis)) || place.isMoreThan(box.high().along(axis));
      touches &= axis == hole.face().axis() || !outside;
    }
    return touches;
  }

  private void covered(Part host, Part cover, Hole hole) {
    Box spot = new Box(hole.centre(), hole.centre());
    findings.error(
        "screw-covered",
        "the screws through "
            + host.name()
            + " ("
            + host.mark()
            + ") into "
            + hole.purpose()
            + " come out where "
            + cover.name()
            + " ("
            + cover.mark()
            + ") stands",
        host.mark(),
        spot,
        new Remedy("use a dado for one of the two", "one more cut"),
        new Remedy("move one of the two by more than its thickness", "looks"));
  }

  private String size(Box box) {
    LengthStyle style = carcass.style();
    return style.number(box.size(Axis.X))
        + " x "
        + style.number(box.size(Axis.Y))
        + " x "
        + style.text(box.size(Axis.Z));
  }

  private String text(Length length) {
    return carcass.style().text(length);
  }
}
