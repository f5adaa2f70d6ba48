package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.Quantity;
import java.util.Optional;

/**
 * Sheet goods, boards or glass.
 *
 * @param name what the rest of the job calls it
 * @param of its row in the reference tables: "plywood, veneer core", "oak, white", "glass,
 *     annealed"
 * @param nominal the thickness that it is sold by
 * @param measured the thickness by calliper; all joints and lengths follow it
 * @param grain whether parts must keep to the length of the sheet or board
 * @param stiffness modulus of elasticity along the grain, over the reference table's
 * @param density over the reference table's
 */
public record Material(
    String name,
    Kind kind,
    String of,
    Length nominal,
    Optional<Length> measured,
    Grain grain,
    Optional<Quantity> stiffness,
    Optional<Quantity> density) {

  /** What it comes as. */
  public enum Kind {
    SHEET,
    BOARD,
    GLASS
  }

  /** Whether parts have a direction. */
  public enum Grain {
    LENGTHWISE,
    NONE
  }

  /** The thickness that parts are made to. */
  public Length thickness() {
    return measured.orElse(nominal);
  }
}
