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
import java.util.List;
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
              floors.stream()
                  .filter(p -> p.role() == Role.SHELF)
                  .findFirst()
                  .ifPresent(s -> depth(s, thing));
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

  /** A thing may stand out over the front edge; that is for the maker to like or not. */
  private void depth(Part shelf, HeldThing thing) {
    Length depth = shelf.box().size(Axis.Y);
    if (thing.depth().isMoreThan(depth)) {
      note(
          "thing-too-deep",
          thing.name()
              + " are usually "
              + style.text(thing.depth())
              + " deep, the shelves "
              + style.text(depth),
          shelf.mark(),
          shelf.box(),
          new Remedy("make the case deeper by " + style.text(thing.depth().minus(depth)), "room"));
    }
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
    list.add(new Finding(Severity.NOTE, kind, what, List.of(), place, List.of(remedies)));
  }
}
