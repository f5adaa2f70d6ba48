package fourpin.shop.file;

import fourpin.measure.Length;
import java.util.List;

/** Heights above the foot of the case, from the lowest up. */
final class Heights {

  private Heights() {}

  /** Whether each is above the one before; if not, says so at the spot. */
  static boolean areRising(List<Length> heights, Spot spot) {
    for (int i = 1; i < heights.size(); i++) {
      if (!heights.get(i).isMoreThan(heights.get(i - 1))) {
        spot.refuse(
            "height " + (i + 1) + " is not above the one before", "list heights from the foot up");
        return false;
      }
    }
    return true;
  }
}
