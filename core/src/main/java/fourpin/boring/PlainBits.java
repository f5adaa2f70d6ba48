package fourpin.boring;

import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.job.Tool.PlainBit;
import fourpin.measure.Length;
import java.util.Comparator;
import java.util.List;

/** Which plain bits of a shop bore a kind of hole. */
public final class PlainBits {

  private PlainBits() {}

  /** Those of a diameter that reach deep enough, those at hand first. */
  public static List<PlainBit> of(Shop shop, Length diameter, Length depth) {
    return shop.all(PlainBit.class).stream()
        .filter(b -> b.diameter().equals(diameter))
        .filter(b -> b.reach().isAtLeast(depth))
        .sorted(Comparator.comparing(b -> b.toBuy().isPresent()))
        .toList();
  }

  /** Whether a point is the usual one of a bit that neither the shop nor the job states. */
  static boolean isAssumed(Shop shop, Settings settings, OppositeHoles.Bored bored) {
    return !settings.source(Setting.BIT_POINT).isStated()
        && bored.point().equals(settings.length(Setting.BIT_POINT))
        && of(shop, bored.grid().diameter(), bored.grid().depth()).isEmpty();
  }

  /** The point that is to be reckoned with before the way is known: of the first bit that fits. */
  static Length point(Shop shop, Settings settings, BayGrid grid) {
    return of(shop, grid.diameter(), grid.depth()).stream()
        .findFirst()
        .map(PlainBit::point)
        .orElseGet(() -> settings.length(Setting.BIT_POINT));
  }
}
