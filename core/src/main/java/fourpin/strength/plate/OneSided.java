package fourpin.strength.plate;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A plate that carries more on its left half than on its right.
 *
 * @param alike all of it, or what is alike on both sides
 * @param turned what is upside down on the right side, to be added; nothing where the first is all
 */
public record OneSided(BentPlate alike, Optional<BentPlate> turned) {

  /** How far it lies below the tops of level supports, mm. */
  public double deflection(double x, double y) {
    return alike.deflection(x, y) + turned.map(t -> t.deflection(x, y)).orElse(0.0);
  }

  /** How hard each support pushes, in the order of the plate's supports, N. */
  public List<Double> reactions() {
    return IntStream.range(0, alike.reactions().size()).mapToObj(this::reaction).toList();
  }

  private double reaction(int support) {
    return alike.reactions().get(support) + turned.map(t -> t.reactions().get(support)).orElse(0.0);
  }

  /** How many supports it has lifted off. */
  public int lifted() {
    return (int) reactions().stream().filter(push -> push <= 0).count();
  }
}
