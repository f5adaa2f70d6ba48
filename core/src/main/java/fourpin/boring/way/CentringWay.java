package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.CentringBit;
import fourpin.job.Tool.GuideStock;
import fourpin.job.Tool.HandDrill;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A self-centring bit whose nose runs in a guide made in the shop: guide hole = nose + slip, as the
 * next bit is.
 */
final class CentringWay implements WayCheck {

  private static final GuidedWork WORK =
      new GuidedWork(
          Method.How.BY_HAND, Setting.GUIDED_SECONDS, Setting.GUIDE_MINUTES, Setting.WEAR_NOSE);

  @Override
  public Proposal of(Group group) {
    List<HandDrill> drills = group.shop().all(HandDrill.class);
    List<CentringBit> bits = Bits.centring(group);
    List<GuideStock> stocks = group.shop().all(GuideStock.class);
    List<Reason> missing =
        Choosing.missing(
            new Choosing.Need("hand drill", drills),
            new Choosing.Need("self-centring bit of " + group.across(group.diameter()), bits),
            new Choosing.Need("stock for guides", stocks));
    if (!missing.isEmpty()) {
      return Proposal.cannot(missing);
    }
    List<Proposal> proposals = new ArrayList<>();
    for (HandDrill drill : drills) {
      for (CentringBit bit : bits) {
        stocks.forEach(stock -> proposals.add(proposal(group, drill, bit, stock)));
      }
    }
    return Choosing.best(proposals);
  }

  private static Proposal proposal(
      Group group, HandDrill drill, CentringBit bit, GuideStock stock) {
    GuideBore bore = GuideBore.of(group, bit.nose(), Setting.NOSE_SLIP);
    BitSetting setting =
        Bits.setting(group, bit.name(), bit.nose(), stock.thickness(), bit.point());
    Nose nose = new Nose(group, bit);
    List<Reason> against = new ArrayList<>(nose.inGuide(setting, bore.hole()));
    against.addAll(Room.lacking(group, drill.name(), drill.length()));
    against.addAll(new Chuck(group, drill.name(), setting.over()).against());
    List<Purchase> bought = bore.with(Purchase.of(group.style(), drill, bit, stock));
    return WORK.proposal(
        group,
        setting,
        MadeGuide.of(group, stock, bore.hole(), Passing.chuck(group)),
        against,
        Stream.concat(bore.notes().stream(), nose.untoldInGuide().stream()).toList(),
        bought);
  }
}
