package fourpin.strength;

import fourpin.measure.Sourced;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.ShelfPlate.Prop;
import java.util.List;
import java.util.Optional;

/**
 * A shelf as it is or might be, in bare numbers, and what it is held against.
 *
 * @param standing how deep the things on it are; nothing where they are taken to fill it
 * @param hand that pushes on its front edge while nothing stands on it, N
 * @param supports what one of those at its ends may carry; none where nobody says
 * @param joint at each of its ends, where it is asked how much may stand on it; other checks have
 *     findings of their own for joints
 */
record Candidate(
    LoadedShelf beam,
    Bearing bearing,
    Prop prop,
    ShelfLimits limits,
    Optional<Sourced> standing,
    Sourced hand,
    List<SupportLimit> supports,
    Optional<EndJoint> joint) {

  Candidate {
    supports = List.copyOf(supports);
  }

  static Candidate of(ShelfOnSupports shelf, List<SupportLimit> supports) {
    return new Candidate(
        shelf.loaded(),
        shelf.bearing(),
        Prop.NONE,
        shelf.limits(),
        shelf.standing(),
        shelf.doubt().hand(),
        supports,
        Optional.empty());
  }

  /** All ways in which it is loaded. */
  LoadCases cases() {
    return new LoadCases(standing, ShelfPlate.depth(beam), hand);
  }

  Optional<ShelfPlate> plate() {
    return ShelfPlate.of(beam, bearing, prop);
  }

  /** Between the supports that carry it, over which it may sag, mm. */
  double span() {
    return prop == Prop.FRONT_AND_BACK ? beam.span() / 2 : beam.span();
  }

  Candidate with(LoadedShelf other) {
    return new Candidate(other, bearing, prop, limits, standing, hand, supports, joint);
  }

  Candidate over(double span) {
    return with(beam.over(span));
  }

  Candidate made(Section section, ShelfLimits allowed) {
    return new Candidate(beam.of(section), bearing, prop, allowed, standing, hand, supports, joint);
  }

  Candidate held(Prop other) {
    return new Candidate(beam, bearing, other, limits, standing, hand, supports, joint);
  }

  Candidate on(List<SupportLimit> others) {
    return on(bearing, others);
  }

  Candidate on(Bearing other, List<SupportLimit> limited) {
    return new Candidate(beam, other, prop, limits, standing, hand, limited, joint);
  }

  Candidate joined(EndJoint by) {
    return new Candidate(beam, bearing, prop, limits, standing, hand, supports, Optional.of(by));
  }
}
