package fourpin.casework;

import fourpin.casework.BaySpace.Opening;
import fourpin.casework.Finding.Remedy;
import fourpin.job.Doors;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether the adjustable shelves of a bay can be made, put in, and shut behind the doors. */
final class ShelfChecks {

  private final Carcass carcass;
  private final Findings findings;

  ShelfChecks(Carcass carcass, Findings findings) {
    this.carcass = carcass;
    this.findings = findings;
  }

  /** Whether a shelf has any size at all. */
  boolean hasSize(BaySpace space, ShelfMaker maker) {
    boolean fits =
        maker.length().total().isMoreThan(maker.edgingAlong(Axis.X))
            && maker.width().total().isMoreThan(maker.edgingAlong(Axis.Y));
    if (!fits) {
      findings.refuse(
          "bay-too-narrow",
          "bay "
              + space.number()
              + " is too small for its shelves: length "
              + maker.length().text(carcass.style())
              + "; width "
              + maker.width().text(carcass.style()),
          new Remedy("make the bay wider or the case deeper", "room"),
          new Remedy("choose supports that take less room", "looks"));
    }
    return fits;
  }

  /** A shelf must lie inside its bay. */
  void inside(BaySpace space, Part shelf) {
    Box clear = space.clear();
    boolean fits =
        shelf.box().low().z().isAtLeast(clear.low().z())
            && clear.high().z().isAtLeast(shelf.box().high().z());
    if (!fits) {
      findings.refuse(
          "shelf-outside-bay",
          "the "
              + shelf.name()
              + " ("
              + shelf.mark()
              + ") at "
              + text(shelf.box().high().z())
              + " is not between bottom and top of its bay, "
              + text(clear.low().z())
              + " to "
              + text(clear.high().z()),
          shelf.mark(),
          shelf.box(),
          new Remedy("heights are measured from the foot of the case: check this one", "nothing"));
    }
  }

  void behindDoors(Part shelf) {
    carcass.order().doors().ifPresent(doors -> behindDoors(doors, shelf));
  }

  private void behindDoors(Doors doors, Part shelf) {
    Length inner =
        switch (doors.kind()) {
          case INSET -> doors.thickness().minus(carcass.faceFrameThickness());
          case OVERLAY -> carcass.faceFrameThickness().negated();
        };
    Length room = shelf.box().low().y().minus(inner);
    if (room.isLessThan(doors.gap())) {
      findings.error(
          "shelf-in-door",
          "the "
              + shelf.name()
              + " ("
              + shelf.mark()
              + ") stands "
              + text(room)
              + " behind the door, which needs "
              + text(doors.gap()),
          shelf.mark(),
          shelf.box(),
          new Remedy(
              "set its front back by " + text(inner.plus(doors.gap())), "depth of the shelf"));
    }
  }

  /** A shelf longer than the opening of the face frame goes in tilted, one end first. */
  void behindFrame(Part shelf, Opening opening, Passage passage) {
    Length length = shelf.box().size(Axis.X);
    Length thickness = shelf.thickness().plus(shelf.hang());
    Length height = passage.heightIn(opening.clear());
    if (!length.isMoreThan(passage.width())) {
      return;
    }
    Optional<Double> tilt = Passage.tilt(length.mm(), thickness.mm(), passage.width().mm());
    double needed =
        tilt.map(a -> length.mm() * Math.sin(a) + thickness.mm() * Math.cos(a))
            .orElse(Double.MAX_VALUE);
    if (needed > height.mm()) {
      findings.refuse(
          "shelf-behind-frame",
          "the "
              + shelf.name()
              + " ("
              + shelf.mark()
              + "), "
              + text(length)
              + " long, can't be put in through an opening "
              + carcass.style().number(passage.width())
              + " wide and "
              + text(height)
              + " high",
          shelf.mark(),
          shelf.box(),
          new Remedy("make the stiles narrower, or leave the middle stile loose", "looks"),
          new Remedy(
              "split the shelf in the middle over a third pair of supports", "looks and stiffness"),
          new Remedy("put the shelf in before the face frame is glued on", "it stays there"));
    }
  }

  /** A strip that hangs below a shelf needs room above what lies under it. */
  void hanging(BaySpace space, List<Part> shelves) {
    for (Part shelf : shelves) {
      Length strip = shelf.box().low().z().minus(shelf.hang());
      underneath(space, shelf, shelves)
          .filter(below -> below.isMoreThan(strip))
          .ifPresent(below -> hangsInto(shelf, below.minus(strip)));
    }
  }

  /** The highest upper face below a shelf. */
  private static Optional<Length> underneath(BaySpace space, Part shelf, List<Part> shelves) {
    Stream<Length> panels = space.openings().stream().map(o -> o.clear().low().z());
    return Stream.concat(panels, shelves.stream().map(s -> s.box().high().z()))
        .filter(top -> shelf.box().low().z().isAtLeast(top))
        .max(Length::compareTo);
  }

  private void hangsInto(Part shelf, Length by) {
    findings.refuse(
        "strip-overlap",
        "the strip of the "
            + shelf.name()
            + " ("
            + shelf.mark()
            + ") hangs "
            + text(shelf.hang())
            + " below it, "
            + text(by)
            + " into what lies under it",
        shelf.mark(),
        shelf.box(),
        new Remedy("put it " + text(by) + " higher, or plan fewer shelves", "room above it"),
        new Remedy("make the strip " + text(by) + " lower", "stiffness"));
  }

  private String text(Length length) {
    return carcass.style().text(length);
  }

  /**
   * The opening of the face frame in front of a bay.
   *
   * @param top lower edge of the top rail
   */
  record Passage(Length width, Length top) {

    private static final int HALVINGS = 60;

    /** The height that is free in front of an opening of the bay. */
    Length heightIn(Box clear) {
      return Length.min(clear.high().z(), top).minus(clear.low().z());
    }

    /**
     * The least tilt, in radians, at which a shelf passes a width: L cos a + t sin a &lt;= w (plane
     * geometry). Empty if it does not pass even on end.
     */
    static Optional<Double> tilt(double length, double thickness, double width) {
      if (thickness > width) {
        return Optional.empty();
      }
      double low = Math.atan2(thickness, length);
      double high = Math.PI / 2;
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        boolean passes = length * Math.cos(middle) + thickness * Math.sin(middle) <= width;
        high = passes ? middle : high;
        low = passes ? low : middle;
      }
      return Optional.of(high);
    }
  }
}
