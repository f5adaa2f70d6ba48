package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Cause;
import fourpin.boring.tolerance.NetError.Share;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Independent errors that pull at a shelf in proportion to each other, as one error.
 *
 * @param spread of their sum
 */
record Strand(Pull direction, Spread spread) {

  /**
   * Causes by their direction. Errors spread alike to both sides, so their signs don't matter.
   *
   * @param pulls by the index of the cause
   */
  static List<Strand> of(List<Cause> causes, Map<Integer, Pull> pulls) {
    Map<Pull, List<Share>> alike = new LinkedHashMap<>();
    pulls.forEach(
        (index, pull) ->
            alike
                .computeIfAbsent(pull.direction(), _ -> new ArrayList<>())
                .add(new Share(index, causes.get(index), pull.first())));
    List<Strand> strands = new ArrayList<>();
    alike.forEach((pull, shares) -> strands.add(new Strand(pull, new NetError(shares).spread())));
    return strands;
  }
}
