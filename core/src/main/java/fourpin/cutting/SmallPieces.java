package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Pieces that are too small to be held safely when they are cut: for a rip, those that are short
 * along the fence; for a crosscut, those that are short both ways. What may be done instead is the
 * business of whoever prints the steps.
 */
public final class SmallPieces {

  private SmallPieces() {}

  /**
   * Their names, in the order of cutting.
   *
   * @param least length that can be held
   */
  public static List<String> of(List<SetUp> setUps, Length least) {
    Set<String> small = new LinkedHashSet<>();
    for (SetUp setUp : setUps) {
      for (SawStep step : setUp.steps()) {
        if (held(step.from(), setUp.direction()).isLessThan(least)) {
          small.add(step.from().name());
        }
      }
    }
    return new ArrayList<>(small);
  }

  private static Length held(Piece piece, Direction cut) {
    return cut == Direction.RIP ? piece.length() : Length.max(piece.length(), piece.width());
  }
}
