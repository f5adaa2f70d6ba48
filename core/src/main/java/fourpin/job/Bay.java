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
 */
public record Bay(
    Optional<Length> width,
    List<Length> fixedShelves,
    Optional<Shelves> shelves,
    Optional<Support> supports,
    Optional<Load> load) {

  public Bay {
    fixedShelves = List.copyOf(fixedShelves);
  }
}
