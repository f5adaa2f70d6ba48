package fourpin.job;

import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * The space between two uprights.
 *
 * @param width clear between the uprights; bays without one share what is left equally
 * @param fixedShelves height of each fixed shelf's upper face above the foot of the case, rising
 * @param shelves the adjustable shelves; a bay may have none
 * @param supports what they lie on; one kind in a bay
 * @param load what they carry, over the case's
 * @param rowsBack how far its rows stand behind where the settings put them, so that they do not
 *     meet those of the next bay in a partition
 * @param levelsUp how far its holes stand above those of the case, for the same reason
 */
public record Bay(
    Optional<Length> width,
    List<Length> fixedShelves,
    Optional<Shelves> shelves,
    Optional<Support> supports,
    Optional<Load> load,
    Length rowsBack,
    Length levelsUp) {

  public Bay {
    fixedShelves = List.copyOf(fixedShelves);
  }

  /** A bay whose rows and holes stand where the case puts them. */
  public Bay(
      Optional<Length> width,
      List<Length> fixedShelves,
      Optional<Shelves> shelves,
      Optional<Support> supports,
      Optional<Load> load) {
    this(width, fixedShelves, shelves, supports, load, Length.ZERO, Length.ZERO);
  }

  /** The same bay with its rows and its holes moved so far. */
  public Bay moved(Length back, Length up) {
    return new Bay(width, fixedShelves, shelves, supports, load, back, up);
  }

  /** The same bay with other supports. */
  public Bay with(Support other) {
    return new Bay(width, fixedShelves, shelves, Optional.of(other), load, rowsBack, levelsUp);
  }

  /** The same bay with other adjustable shelves. */
  public Bay with(Shelves other) {
    return new Bay(width, fixedShelves, Optional.of(other), supports, load, rowsBack, levelsUp);
  }
}
