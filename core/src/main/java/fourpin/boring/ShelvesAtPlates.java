package fourpin.boring;

import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.job.Doors;
import fourpin.job.Shelves;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether the adjustable shelves, where they lie first, leave the hinge plates their place. */
final class ShelvesAtPlates {

  private static final String KIND = "plate-at-shelf";

  private final BuiltCase built;
  private final Doors doors;
  private final Reporter reporter;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * @param built with the shelves on their levels
   */
  ShelvesAtPlates(BuiltCase built, Doors doors, Reporter reporter) {
    this.built = built;
    this.doors = doors;
    this.reporter = reporter;
  }

  List<Finding> findings() {
    for (BaySpace bay : built.bays()) {
      for (Part shelf : BayBorer.shelves(built, bay)) {
        doors.plateHeights().stream()
            .filter(height -> plate(shelf.box(), height).overlaps(withStrips(shelf)))
            .forEach(height -> findings.add(finding(shelf, height)));
      }
    }
    return findings;
  }

  /** A plate at either end of a shelf: a door hangs on either side. */
  private Box plate(Box shelf, Length height) {
    Length front = doors.plateSetback().minus(doors.plateWidth().over(2));
    Length bottom = height.minus(doors.plateLength().over(2));
    return Box.of(
        shelf.low().x(),
        shelf.high().x(),
        front,
        front.plus(doors.plateWidth()),
        bottom,
        bottom.plus(doors.plateLength()));
  }

  /** A strip taller than the shelf hangs below it. */
  private static Box withStrips(Part shelf) {
    Length height = shelf.thickness();
    for (EdgeBand band : shelf.edging()) {
      height = Length.max(height, band.edging().height());
    }
    return shelf.box().with(Face.BOTTOM, shelf.box().high().z().minus(height));
  }

  private Finding finding(Part shelf, Length height) {
    Box box = withStrips(shelf);
    Length half = doors.plateLength().over(2);
    Length behind = doors.plateSetback().plus(doors.plateWidth().over(2));
    String words =
        "%s lies first from %s to %s, where the hinge plates at %s are, %s to %s high on the side"
            + " that the door hangs on.";
    return reporter.finding(
        Severity.DOUBT,
        KIND,
        Reporter.say(
            words,
            shelf.mark(),
            reporter.text(box.low().z()),
            reporter.text(box.high().z()),
            reporter.text(height),
            reporter.text(height.minus(half)),
            reporter.text(height.plus(half))),
        List.of(),
        Optional.of(shelf.mark()),
        box.shared(plate(shelf.box(), height)),
        new Cures(reporter, KIND, Optional.of(shelf.mark()))
            .byHand("by hand: put the shelf on another level", "another opening")
            .byHand(
                Reporter.say(
                    "state plate-heights with %s or less, or %s or more, for this plate",
                    reporter.atMost(box.low().z().minus(half)),
                    reporter.atLeast(box.high().z().plus(half))),
                "the hinges sit elsewhere on the door")
            .stated(
                "state setback: " + reporter.atLeast(behind) + " for the shelves",
                "depth of the shelves",
                Cures.bays(b -> true, b -> b.shelves().map(s -> b.with(back(s, behind))).orElse(b)))
            .list());
  }

  private Shelves back(Shelves shelves, Length behind) {
    return new Shelves(
        shelves.placing(), shelves.material(), shelves.edging(), reporter.roundedUp(behind));
  }
}
