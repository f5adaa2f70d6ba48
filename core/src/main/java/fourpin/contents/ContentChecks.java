package fourpin.contents;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.casework.Place;
import fourpin.job.Load;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether the usual thing of its kind fits on every shelf of a bay. */
public final class ContentChecks {

  private final BuiltCase built;
  private final LengthStyle style;
  private final List<Finding> list = new ArrayList<>();

  private ContentChecks(BuiltCase built, LengthStyle style) {
    this.built = built;
    this.style = style;
  }

  /** Findings for a case whose shelves lie on their levels. */
  public static List<Finding> of(BuiltCase built, LengthStyle style) {
    ContentChecks checks = new ContentChecks(built, style);
    built.bays().forEach(checks::bay);
    return List.copyOf(checks.list);
  }

  private void bay(BaySpace bay) {
    thing(bay)
        .ifPresent(
            thing -> {
              List<Part> floors = floors(bay);
              kinds(floors).forEach(floor -> depth(floor, thing));
              heights(bay, floors, thing);
            });
  }

  private Optional<HeldThing> thing(BaySpace bay) {
    Optional<Load> load =
        built.order().bays().get(bay.number() - 1).load().or(() -> built.order().load());
    return load.flatMap(
        stated ->
            stated instanceof Load.Holds(String thing)
                ? Reference.things().find(thing)
                : Optional.empty());
  }

  /** What things stand on in a bay, from the bottom up. */
  private List<Part> floors(BaySpace bay) {
    String prefix = bay.number() + "-";
    return built.parts().stream()
        .filter(
            p ->
                p.role() == Role.BOTTOM
                    || (p.mark().startsWith(prefix)
                        && (p.role() == Role.SHELF || p.role() == Role.FIXED_SHELF)))
        .sorted(Comparator.comparing(p -> p.box().high().z()))
        .toList();
  }

  /** The first of each depth, but for the bottom, on which things stand out no further. */
  private static List<Part> kinds(List<Part> floors) {
    Map<Length, Part> kinds = new LinkedHashMap<>();
    floors.stream()
        .filter(p -> p.role() != Role.BOTTOM)
        .forEach(p -> kinds.putIfAbsent(p.box().size(Axis.Y), p));
    return kinds.isEmpty() ? floors : List.copyOf(kinds.values());
  }

  /**
   * A thing may stand out over the front edge; that is for the maker to like or not. What rests
   * against the back with its middle before that edge falls.
   */
  private void depth(Part floor, HeldThing thing) {
    Length depth = floor.box().size(Axis.Y);
    Length over = thing.depth().minus(depth);
    if (over.isPositive() && over.isLessThan(depth)) {
      Place place = Place.of(built.order().name(), floor.mark(), floor.box());
      String what = deep(floor, thing) + "; against the back their middle lies ";
      String where = style.text(depth.minus(over).over(2)) + " behind the front edge";
      list.add(finding(Severity.NOTE, "thing-too-deep", what + where, place, deeper(over)));
    } else if (over.isPositive()) {
      Place place = Place.of(built.order().name(), floor.mark(), floor.box());
      String what =
          deep(floor, thing)
              + ": against the back their middle does not lie behind the front edge, and they fall";
      list.add(finding(Severity.ERROR, "things-fall", what, place, deeper(over)));
    }
  }

  private String deep(Part floor, HeldThing thing) {
    return "%s are usually %s deep, %s %s"
        .formatted(
            thing.name(),
            style.text(thing.depth()),
            floor.role() == Role.BOTTOM ? "the bottom" : "the shelves",
            style.text(floor.box().size(Axis.Y)));
  }

  private Remedy deeper(Length over) {
    return new Remedy("make the case deeper by " + style.text(over), "room");
  }

  private void heights(BaySpace bay, List<Part> floors, HeldThing thing) {
    List<String> low = new ArrayList<>();
    Length least = bay.clear().size(Axis.Z);
    Box spot = bay.clear();
    for (int i = 0; i < floors.size(); i++) {
      Length ceiling =
          i + 1 < floors.size() ? floors.get(i + 1).box().low().z() : bay.clear().high().z();
      Length height = ceiling.minus(floors.get(i).box().high().z());
      if (thing.height().isMoreThan(height)) {
        low.add(floors.get(i).mark());
        spot = height.isLessThan(least) ? floors.get(i).box() : spot;
        least = Length.min(least, height);
      }
    }
    if (!low.isEmpty()) {
      note(
          "opening-too-low",
          "bay "
              + bay.number()
              + ": "
              + thing.name()
              + " are usually "
              + style.text(thing.height())
              + " high; the openings above "
              + String.join(", ", low)
              + " are lower, the lowest "
              + style.text(least),
          low.getFirst(),
          spot,
          new Remedy("one shelf fewer in this bay", "a shelf"),
          new Remedy("move the shelves up where smaller things stand", "nothing"));
    }
  }

  private void note(String kind, String what, String part, Box spot, Remedy... remedies) {
    Place place = Place.of(built.order().name(), part, spot);
    list.add(finding(Severity.NOTE, kind, what, place, remedies));
  }

  private static Finding finding(
      Severity severity, String kind, String what, Place place, Remedy... remedies) {
    return new Finding(severity, kind, what, List.of(), place, List.of(remedies));
  }
}
