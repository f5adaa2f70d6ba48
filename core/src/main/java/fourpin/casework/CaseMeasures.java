package fourpin.casework;

import fourpin.casework.Part.Role;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is measured on a finished case, over all and between its parts. */
public record CaseMeasures(BuiltCase built) {

  /** From one place in the case to a later one on the same axis. */
  public record Extent(Length from, Length to) {

    public Length size() {
      return to.minus(from);
    }
  }

  public Extent outside(Axis axis) {
    return extent(built.outside(), axis);
  }

  /** The clear width of each bay, from left to right. */
  public List<Extent> bayWidths() {
    return built.bays().stream().map(bay -> extent(bay.clear(), Axis.X)).toList();
  }

  /** Of the adjustable shelves; empty where there are none. */
  public Optional<Extent> shelfDepth() {
    return built.parts().stream()
        .filter(part -> part.role() == Role.SHELF)
        .findFirst()
        .map(shelf -> extent(shelf.box(), Axis.Y));
  }

  /**
   * The clear heights of a bay from the bottom up, each from the upper face of a shelf as it lies
   * first to what hangs lowest of the next.
   */
  public List<Extent> openings(BaySpace bay) {
    List<Extent> openings = new ArrayList<>();
    Length from = bay.clear().low().z();
    for (Part shelf : shelves(bay)) {
      openings.add(new Extent(from, shelf.box().low().z().minus(shelf.hang())));
      from = shelf.box().high().z();
    }
    openings.add(new Extent(from, bay.clear().high().z()));
    return openings;
  }

  private List<Part> shelves(BaySpace bay) {
    return built.parts().stream()
        .filter(part -> part.role() == Role.SHELF || part.role() == Role.FIXED_SHELF)
        .filter(part -> part.box().overlaps(bay.clear()))
        .sorted(Comparator.comparing(part -> part.box().high().z()))
        .toList();
  }

  private static Extent extent(Box box, Axis axis) {
    return new Extent(box.low().along(axis), box.high().along(axis));
  }
}
