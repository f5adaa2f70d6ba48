package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Pieces that are too small to be held safely when they are cut: those that are short both ways,
 * since the longer side lies at fence or mitre gauge, whichever way the grain runs. What may be
 * done instead is the business of whoever prints the steps.
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
        if (held(step.from()).isLessThan(least)) {
          small.add(step.from().name());
        }
      }
    }
    return new ArrayList<>(small);
  }

  private static Length held(Piece piece) {
    return Length.max(piece.length(), piece.width());
  }
}
