package fourpin.casework;

import fourpin.casework.Part.Role;
import fourpin.measure.Length;
import java.util.List;
import java.util.stream.Stream;

/** A face frame measured from its lower left corner. */
public record FrameMeasures(BuiltCase built) {

  /** Stiles and rails in the order of the case; none where there is no face frame. */
  public List<Part> members() {
    return built.parts().stream()
        .filter(part -> part.role() == Role.STILE || part.role() == Role.RAIL)
        .toList();
  }

  /** From the frame's left end or foot to a member's. */
  public Length from(Part member, Axis axis) {
    return distance(member.box().low(), axis);
  }

  /** From there to both edges of every member, each distance once, rising, without zero. */
  public List<Length> edges(Axis axis) {
    return members().stream()
        .flatMap(m -> Stream.of(distance(m.box().low(), axis), distance(m.box().high(), axis)))
        .filter(Length::isPositive)
        .distinct()
        .sorted()
        .toList();
  }

  private Length distance(Point place, Axis axis) {
    return place.along(axis).minus(start(axis));
  }

  private Length start(Axis axis) {
    return members().stream()
        .map(part -> part.box().low().along(axis))
        .min(Length::compareTo)
        .orElseThrow();
  }
}
