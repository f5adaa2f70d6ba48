package fourpin.strength.plate;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plates that lift off supports that push and never pull, or tip. */
class LiftTest {

  private static final double SIDE = 400;
  private static final Rigidity STIFF = Rigidity.isotropic(70_000, 0.3, 10);

  /** Corners first, then those between them along the edges. */
  private static List<Support> frame() {
    List<Support> frame = new ArrayList<>();
    for (double x : new double[] {0, SIDE}) {
      for (double y : new double[] {0, SIDE}) {
        frame.add(new Support(x, y));
      }
    }
    for (double along : new double[] {SIDE / 4, SIDE / 2, 3 * SIDE / 4}) {
      frame.add(new Support(along, 0));
      frame.add(new Support(along, SIDE));
      frame.add(new Support(0, along));
      frame.add(new Support(SIDE, along));
    }
    return frame;
  }

  /**
   * A plate that rests on a frame rises at its corners, and sags more than one whose edges are held
   * (Timoshenko and Woinowsky-Krieger, 2nd ed. 1959, art. 11 and 30).
   */
  @Test
  void cornersOfAPlateOnAFrameRise() {
    Plate resting = Plate.even(SIDE, SIDE, STIFF, Edges.FREE, frame());
    Plate held = Plate.even(SIDE, SIDE, STIFF, Edges.all(Hold.HINGED), List.of());
    BentPlate bent = new PlateSolver(resting).under(List.of(resting.evenly(0.01))).orElseThrow();
    BentPlate down = new PlateSolver(held).under(List.of(held.evenly(0.01))).orElseThrow();
    assertThat(bent.lifted()).isEqualTo(4);
    assertThat(bent.reactions().subList(0, 4)).allMatch(push -> push == 0);
    assertThat(bent.reactions().subList(4, 16)).allMatch(push -> push > 0);
    assertThat(bent.deflection(0, 0)).isNegative();
    assertThat(bent.deflection(SIDE / 2, SIDE / 2))
        .isBetween(down.deflection(SIDE / 2, SIDE / 2), 1.2 * down.deflection(SIDE / 2, SIDE / 2));
  }

  /** A force outside of what the supports span tips it, however stiff it is (statics). */
  @ParameterizedTest
  @CsvSource({
    "200, 200, true",
    "110, 110, true",
    "290, 110, true",
    "90, 200, false",
    "200, 310, false",
    "99, 101, false",
    "101, 101, true"
  })
  void aForceBesideItsSupportsTipsIt(double x, double y, boolean stays) {
    List<Support> supports =
        List.of(
            new Support(100, 100),
            new Support(300, 100),
            new Support(100, 300),
            new Support(300, 300));
    Plate plate = Plate.even(SIDE, SIDE, STIFF, Edges.FREE, supports);
    List<PlateLoad> force = List.of(new PlateLoad.Point(1, x, y));
    assertThat(new PlateSolver(plate).under(force).isPresent()).isEqualTo(stays);
  }
}
