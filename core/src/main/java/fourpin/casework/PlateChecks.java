package fourpin.casework;

import fourpin.casework.Finding.Remedy;
import fourpin.casework.Part.Role;
import fourpin.job.Doors;
import fourpin.measure.Length;
import java.util.List;

/**
 * Whether hinge plates have a place on the uprights, clear of the fixed shelves, and overlay doors
 * on what surrounds their openings.
 */
final class PlateChecks {

  private final Carcass carcass;
  private final Doors doors;
  private final Findings findings;

  PlateChecks(Carcass carcass, Doors doors, Findings findings) {
    this.carcass = carcass;
    this.doors = doors;
    this.findings = findings;
  }

  void run(List<BaySpace> bays, List<Part> blocks) {
    doors.plateHeights().stream()
        .filter(height -> !bays.getFirst().clear().contains(plate(bays.getFirst(), height)))
        .forEach(height -> misplaced(bays.getFirst(), height));
    for (BaySpace bay : bays) {
      doors.plateHeights().forEach(height -> clear(bay, height, blocks));
    }
  }

  /** Where plates at a height lie, over the whole width of a bay: a door hangs on either side. */
  private Box plate(BaySpace bay, Length height) {
    Length front = doors.plateSetback().minus(doors.plateWidth().over(2));
    Length bottom = height.minus(doors.plateLength().over(2));
    return Box.of(
        bay.clear().low().x(),
        bay.clear().high().x(),
        front,
        front.plus(doors.plateWidth()),
        bottom,
        bottom.plus(doors.plateLength()));
  }

  private void misplaced(BaySpace bay, Length height) {
    findings.error(
        "plate-misplaced",
        "the hinge plates at "
            + text(height)
            + " do not lie wholly on the sides inside the case, which are clear from "
            + text(bay.clear().low().z())
            + " to "
            + text(bay.clear().high().z())
            + " and "
            + text(bay.clear().high().y())
            + " deep",
        bay.left(),
        plate(bay, height),
        new Remedy("heights are from the foot of the case to the plate's centre", "nothing"));
  }

  private void clear(BaySpace bay, Length height, List<Part> blocks) {
    Box plate = plate(bay, height);
    blocks.stream()
        .filter(p -> p.role() == Role.FIXED_SHELF && p.box().overlaps(plate))
        .forEach(shelf -> behindShelf(shelf, height, plate));
  }

  private void behindShelf(Part shelf, Length height, Box plate) {
    Length up = shelf.box().high().z().plus(doors.plateLength().over(2));
    Length down = shelf.box().low().z().minus(doors.plateLength().over(2));
    findings.error(
        "plate-on-shelf",
        "a hinge plate at "
            + text(height)
            + " lies where the "
            + shelf.name()
            + " ("
            + shelf.mark()
            + ") meets its uprights",
        shelf.mark(),
        plate.shared(shelf.box()),
        new Remedy(
            "move the plate to " + text(up) + " or above, or to " + text(down) + " or below",
            "nothing"),
        new Remedy("move the fixed shelf", "room"));
  }

  /** Doors that would strike each other or stand out beside the case. */
  void reach(BuiltCase built) {
    DoorLeaf.most(built, doors)
        .filter(most -> doors.over().filter(over -> over.isMoreThan(most)).isPresent())
        .ifPresent(
            most ->
                findings.error(
                    "doors-over",
                    "the doors lie "
                        + text(doors.over().orElseThrow())
                        + " over what surrounds their openings, where there is room for "
                        + text(most),
                    built.bays().getFirst().left(),
                    DoorLeaf.of(built).getFirst().shut(),
                    new Remedy("state over as " + text(most) + " or less", "looks"),
                    new Remedy(
                        "leave over out: each side then reaches as far as it can", "looks")));
  }

  private String text(Length length) {
    return carcass.style().text(length);
  }
}
