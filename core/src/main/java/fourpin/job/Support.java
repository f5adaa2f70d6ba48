package fourpin.job;

import fourpin.measure.Length;

/** What the adjustable shelves of a bay lie on. */
public sealed interface Support {

  /** What a hole, a groove or a strip in a row takes from front to back. */
  default Length breadth(Settings settings) {
    return switch (this) {
      case Pins pins ->
          pins.diameter().plus(Length.nearestMm(settings.number(Setting.HOLE_ALLOWANCE)));
      case Sleeved sleeved -> sleeved.outside();
      case Standards standards -> standards.width().plus(settings.length(Setting.GROOVE_PLAY));
      case Cleats cleats -> cleats.width();
    };
  }

  /**
   * Pins in holes.
   *
   * @param diameter of the stem, by calliper
   * @param reach how far the pin stands out of the side to carry the shelf
   * @param rise from the hole's centre to the shelf's underside; half the diameter for a plain
   *     round pin
   */
  record Pins(Length diameter, Length stem, Length reach, Length rise) implements Support {}

  /**
   * Pins in sleeves.
   *
   * @param outside diameter of the sleeve: the hole's diameter
   * @param length of the sleeve in the hole
   * @param flange how far its flange stands proud of the side
   */
  record Sleeved(Pins pins, Length outside, Length length, Length flange) implements Support {}

  /**
   * Metal standards with clips.
   *
   * @param width and {@code thickness} of the standard; of the groove too when let in
   * @param slotPitch from slot to slot
   * @param firstSlot from the numbered end to the first slot's resting edge
   * @param clipThickness what a clip takes from the shelf's length at each end
   * @param clipRise from the slot's resting edge to the shelf's underside
   * @param soldIn length that standards are sold in
   */
  record Standards(
      Mounting mounting,
      Length width,
      Length thickness,
      Length slotPitch,
      Length firstSlot,
      Length clipThickness,
      Length clipRise,
      Length soldIn)
      implements Support {

    /** The same standards fastened otherwise. */
    public Standards with(Mounting other) {
      return new Standards(
          other, width, thickness, slotPitch, firstSlot, clipThickness, clipRise, soldIn);
    }
  }

  /** How a standard is fastened. */
  enum Mounting {
    /** In a groove, flush with the side. */
    LET_IN,
    /** On the side. */
    SURFACE
  }

  /**
   * Wooden strips with half-round notches, bored as a wide blank and ripped in two, and loose
   * cleats with rounded ends that lie in them.
   *
   * @param material of strips and cleats, a board
   * @param width of a strip, across the depth of the case
   * @param thickness how far a strip stands out from the side
   * @param bore diameter of the hole that makes the notch
   * @param cleatHeight height of the loose cleat; its lower half lies in the notch
   * @param cleatThickness how far the cleat stands out from the side; not over the strip's
   */
  record Cleats(
      String material,
      Length width,
      Length thickness,
      Length bore,
      Length cleatHeight,
      Length cleatThickness)
      implements Support {}
}
