package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.Bushing;
import fourpin.job.Tool.GuideStock;
import fourpin.job.Tool.Router;
import fourpin.job.Tool.RouterBit;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

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
            new Choosing.Need("router bit of " + group.across(group.diameter()), bits),
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
      List<Purchase> bought = bore.with(Purchase.of(group.style(), router, bushing, bit, stock));
      Designed guide = MadeGuide.of(group, stock, bore.hole(), Passing.base(group, router));
      List<Reason> notes = new ArrayList<>(notes(guide));
      notes.addAll(bore.notes());
      return WORK.proposal(group, setting, guide, against(setting), notes, bought);
    }

    private List<Reason> against(BitSetting setting) {
      List<Reason> reasons = new ArrayList<>();
      barrel(reasons);
      bore(reasons);
      reasons.addAll(Bits.tooShort(group, bit.name(), setting, bit.reach()));
      reasons.addAll(
          Bits.lacking(
              group, setting, router.name() + " plunges", router.travel(), "take another router"));
      reasons.addAll(Room.lacking(group, router.name(), router.height().plus(stock.thickness())));
      reasons.addAll(new RouterBase(group, router, stock.thickness()).against());
      return reasons;
    }

    /** A barrel that stands through the guide lifts the base off it. */
    private void barrel(List<Reason> reasons) {
      if (bushing.barrel().isAtLeast(stock.thickness())) {
        boolean same = bushing.barrel().equals(stock.thickness());
        Telling tell =
            new Telling(group, "barrel-beyond-guide", "barrel longer than the guide, by");
        String guide = tell.stated("g", "thickness of the guide", stock.thickness());
        reasons.add(
            tell.reason(
                "barrel "
                    + tell.stated("b", "barrel of the bushing", bushing.barrel())
                    + (same
                        ? " is as long as the guide is thick"
                        : " is longer than the " + guide + " guide"),
                "use another guide thickness, or trim the barrel to less than " + guide,
                "b - g",
                bushing.barrel().minus(stock.thickness())));
      }
    }

    private void bore(List<Reason> reasons) {
      if (bit.diameter().isAtLeast(bushing.bore())) {
        Telling tell =
            new Telling(group, "bit-in-bushing", "play of the bit in the bushing's bore");
        reasons.add(
            tell.reason(
                "bit "
                    + tell.across("d", "diameter of the bit", bit.diameter())
                    + " does not run free in the bushing's bore of "
                    + tell.across("b", "bore of the bushing", bushing.bore()),
                "use a wider bushing",
                "b - d",
                bushing.bore().minus(bit.diameter())));
      }
    }

    /** The base tips where it hangs over the guide. */
    private List<Reason> notes(Designed designed) {
      List<Reason> reasons = new ArrayList<>();
      if (designed instanceof Designed.Made made) {
        Guide guide = made.guide();
        Guide.GuideHole last = guide.holes().getLast();
        Length beside = Length.min(last.across(), guide.width().minus(last.across()));
        RouterBase base = new RouterBase(group, router, stock.thickness());
        base.over("edge", "holes to the nearer edge of the guide", beside)
            .map(
                over ->
                    over.reason(
                        "along the row the router's base stands ",
                        " over the edge of the guide",
                        "lay a packing strip as thick as the guide alongside it"))
            .ifPresent(reasons::add);
        base.over("end", "last hole to the end of the guide", guide.length().minus(last.along()))
            .map(
                over ->
                    over.reason(
                        "at the last hole the router's base stands ",
                        " over the end of the guide",
                        "lay a piece as thick as the guide under it"))
            .ifPresent(reasons::add);
      }
      return reasons;
    }
  }
}
