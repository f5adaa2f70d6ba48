package fourpin.plan;

import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.casework.Feature.Hole;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.job.Tool.Bushing;
import fourpin.job.Tool.CentringBit;
import fourpin.job.Tool.Machine;
import fourpin.job.Tool.PlainBit;
import fourpin.job.Tool.RouterBit;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.plan.CaseWays.GuidedBoring;
import fourpin.reference.Reference;
import fourpin.reference.ShelfPin;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The bit that is most easily mistaken for the right one: of the shop's own that fit into the same
 * tool, the nearest in diameter, of two as near the wider. A shop that states no tools has unknown
 * bits; there it is the next wider one that pins are sold for, and for the widest the next
 * narrower.
 */
record OtherBit(Length diameter, boolean isOwn) {

  /**
   * @param hole one that the right bit bores
   * @return none if no other bit that the shop states fits
   */
  static Optional<OtherBit> than(Hole hole, CaseWays ways, Shop shop) {
    if (shop.tools().isEmpty()) {
      return next(hole.diameter()).map(d -> new OtherBit(d, false));
    }
    Length right = hole.diameter();
    return fitting(hole, ways, shop)
        .filter(d -> !d.equals(right))
        .min(
            Comparator.comparing((Length d) -> d.minus(right).abs())
                .thenComparing(Comparator.reverseOrder()))
        .map(d -> new OtherBit(d, true));
  }

  private static Optional<Length> next(Length right) {
    Stream<Length> sizes = Reference.pins().rows().stream().map(ShelfPin::hole);
    return sizes
        .filter(s -> !s.equals(right))
        .min(
            Comparator.comparing((Length s) -> s.isLessThan(right))
                .thenComparing(s -> s.minus(right).abs()));
  }

  private static Stream<Length> fitting(Hole hole, CaseWays ways, Shop shop) {
    return switch (ways.manner(hole)) {
      case BY_HAND, DRILL_PRESS -> own(shop, PlainBit.class).map(PlainBit::diameter);
      case MACHINE ->
          own(shop, Machine.class)
              .filter(m -> ways.machine().equals(Optional.of(m.name())))
              .flatMap(m -> m.diameters().stream());
      case GUIDED -> ways.guided(hole).stream().flatMap(boring -> through(boring, shop));
    };
  }

  private static <T extends Tool> Stream<T> own(Shop shop, Class<T> kind) {
    return shop.all(kind).stream().filter(tool -> tool.toBuy().isEmpty());
  }

  private static Stream<Length> through(GuidedBoring boring, Shop shop) {
    Method.Guided method = boring.method();
    Length led = holes(method.guide());
    if (boring.way() == Way.ROUTER_GUIDE) {
      return own(shop, RouterBit.class)
          .map(RouterBit::diameter)
          .filter(d -> runsFree(d, method.bit().runs(), shop));
    }
    return boring.way() == Way.HARDBOARD_STRIP
        ? own(shop, PlainBit.class).map(PlainBit::diameter).filter(d -> !d.isMoreThan(led))
        : own(shop, CentringBit.class)
            .filter(b -> !b.tip().isMoreThan(led))
            .map(CentringBit::diameter);
  }

  private static Length holes(Guide guide) {
    return guide.holes().getFirst().diameter();
  }

  /** In the bore of a bushing that is as thick as what runs in the guide. */
  private static boolean runsFree(Length bit, Length outside, Shop shop) {
    return shop.all(Bushing.class).stream()
        .anyMatch(b -> b.outside().equals(outside) && bit.isLessThan(b.bore()));
  }
}
