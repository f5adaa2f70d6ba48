package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool;
import fourpin.job.Tool.Bushing;
import fourpin.job.Tool.GuideStock;
import fourpin.job.Tool.Router;
import fourpin.job.Tool.RouterBit;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plunge router whose bushing runs in a guide made in the shop: guide hole = bushing + slip, as
 * the next bit is; stop = hole + guide.
 */
final class RouterWay implements WayCheck {

  private static final GuidedWork WORK =
      new GuidedWork(
          Method.How.BY_HAND, Setting.ROUTER_SECONDS, Setting.GUIDE_MINUTES, Setting.WEAR_NOSE);

  @Override
  public Proposal of(Group group) {
    List<Router> routers = group.shop().all(Router.class);
    List<Bushing> bushings = group.shop().all(Bushing.class);
    List<RouterBit> bits =
        group.shop().all(RouterBit.class).stream()
            .filter(b -> b.diameter().equals(group.diameter()))
            .toList();
    List<GuideStock> stocks = group.shop().all(GuideStock.class);
    List<Reason> missing =
        Choosing.missing(
            new Choosing.Need("plunge router", routers),
            new Choosing.Need("guide bushing", bushings),
            new Choosing.Need("router bit of " + group.text(group.diameter()), bits),
            new Choosing.Need("stock for guides", stocks));
    if (!missing.isEmpty()) {
      return Proposal.cannot(missing);
    }
    List<Proposal> proposals = new ArrayList<>();
    for (Router router : routers) {
      for (Bushing bushing : bushings) {
        for (RouterBit bit : bits) {
          stocks.forEach(s -> proposals.add(new Set(group, router, bushing, bit, s).proposal()));
        }
      }
    }
    return Choosing.best(proposals);
  }

  /** One router with what is fitted to it. */
  private record Set(Group group, Router router, Bushing bushing, RouterBit bit, GuideStock stock) {

    Proposal proposal() {
      GuideBore bore = GuideBore.of(group, bushing.outside(), Setting.SLIP);
      BitSetting setting =
          Bits.setting(
              group,
              router.name() + ", " + bushing.name() + ", " + bit.name(),
              bushing.outside(),
              stock.thickness(),
              Length.ZERO);
      List<Tool> bought = Choosing.bought(router, bushing, bit, stock);
      Designed guide = MadeGuide.of(group, stock, bore.hole(), beyond());
      List<Reason> notes = new ArrayList<>(notes(guide));
      notes.addAll(new RouterBase(group, router, stock.thickness()).atTheBlock(guide));
      notes.addAll(bore.notes());
      return WORK.proposal(group, setting, guide, against(setting.stop()), notes, bought);
    }

    private List<Reason> against(Length stop) {
      List<Reason> reasons = new ArrayList<>();
      barrel(reasons);
      bore(reasons);
      stop(reasons, stop, bit.reach(), bit.name() + " reaches", "take a longer bit");
      stop(reasons, stop, router.travel(), router.name() + " plunges", "take another router");
      reasons.addAll(Room.lacking(group, router.name(), router.height().plus(stock.thickness())));
      reasons.addAll(new RouterBase(group, router, stock.thickness()).against());
      return reasons;
    }

    /** A barrel that stands through the guide lifts the base off it. */
    private void barrel(List<Reason> reasons) {
      if (bushing.barrel().isAtLeast(stock.thickness())) {
        boolean same = bushing.barrel().equals(stock.thickness());
        String guide = group.text(stock.thickness());
        reasons.add(
            new Reason(
                "barrel "
                    + group.text(bushing.barrel())
                    + (same
                        ? " is as long as the guide is thick"
                        : " is longer than the " + guide + " guide"),
                "use another guide thickness, or trim the barrel to less than " + guide));
      }
    }

    private void bore(List<Reason> reasons) {
      if (bit.diameter().isAtLeast(bushing.bore())) {
        reasons.add(
            new Reason(
                "bit "
                    + group.text(bit.diameter())
                    + " does not run free in the bushing's bore of "
                    + group.text(bushing.bore()),
                "use a wider bushing"));
      }
    }

    private void stop(List<Reason> reasons, Length stop, Length most, String which, String remedy) {
      if (stop.isMoreThan(most)) {
        reasons.add(
            new Reason(
                "hole and guide take "
                    + group.text(stop)
                    + ", and "
                    + which
                    + " "
                    + group.text(most),
                remedy + ", or use a thinner guide"));
      }
    }

    /** So that the base stands on the guide and clear of the clamp at the last hole. */
    private Length beyond() {
      return router.base().over(2).plus(group.settings().length(Setting.CLAMP_ROOM));
    }

    /** The base tips where it hangs over the guide. */
    private List<Reason> notes(Designed designed) {
      List<Reason> reasons = new ArrayList<>();
      if (designed instanceof Designed.Made made) {
        Guide guide = made.guide();
        Guide.GuideHole last = guide.holes().getLast();
        Length beside = Length.min(last.across(), guide.width().minus(last.across()));
        over(beside, "along the row the router's base stands ", " over the edge of the guide")
            .map(what -> new Reason(what, "lay a packing strip as thick as the guide alongside it"))
            .ifPresent(reasons::add);
        over(
                guide.length().minus(last.along()),
                "at the last hole the router's base stands ",
                " over the end of the guide")
            .map(what -> new Reason(what, "lay a piece as thick as the guide under it"))
            .ifPresent(reasons::add);
      }
      return reasons;
    }

    private Optional<String> over(Length there, String start, String end) {
      Length over = router.base().over(2).minus(there);
      return over.isPositive() ? Optional.of(start + group.text(over) + end) : Optional.empty();
    }
  }
}
