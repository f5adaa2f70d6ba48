package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool;
import fourpin.job.Tool.CentringBit;
import fourpin.job.Tool.DrillPress;
import fourpin.job.Tool.HandDrill;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.job.Tool.StripKind;
import java.util.ArrayList;
import java.util.List;

/**
 * A self-centring bit through a perforated steel strap: the taper of its nose finds the strap's
 * hole, so that no play is left.
 */
final class StrapWay implements WayCheck {

  private static final GuidedWork BY_HAND =
      new GuidedWork(
          Method.How.BY_HAND, Setting.GUIDED_SECONDS, Setting.STRIP_MINUTES, Setting.WEAR_STEEL);
  private static final GuidedWork AT_THE_PRESS =
      new GuidedWork(
          Method.How.DRILL_PRESS, Setting.PRESS_SECONDS, Setting.STRIP_MINUTES, Setting.WEAR_STEEL);

  @Override
  public Proposal of(Group group) {
    List<Tool> drills = new ArrayList<>(group.shop().all(HandDrill.class));
    drills.addAll(group.shop().all(DrillPress.class));
    List<CentringBit> bits = Bits.centring(group);
    List<FittedStrip> straps = FittedStrip.all(group, StripKind.STEEL);
    List<Reason> missing =
        Choosing.missing(
            new Choosing.Need("hand drill or drill press", drills),
            new Choosing.Need("self-centring bit of " + group.across(group.diameter()), bits),
            new Choosing.Need("perforated steel strap", straps));
    if (!missing.isEmpty()) {
      return Proposal.cannot(missing);
    }
    List<Proposal> proposals = new ArrayList<>();
    for (Tool drill : drills) {
      for (CentringBit bit : bits) {
        straps.forEach(strap -> proposals.add(proposal(group, drill, bit, strap)));
      }
    }
    return Choosing.best(proposals);
  }

  private static Proposal proposal(Group group, Tool drill, CentringBit bit, FittedStrip fitted) {
    PerforatedStrip strap = fitted.strip();
    boolean press = drill instanceof DrillPress;
    String tool = bit.name() + (press ? " in " + drill.name() : "");
    BitSetting setting = Bits.setting(group, tool, strap.hole(), strap.thickness(), bit.point());
    Nose nose = new Nose(group, bit);
    List<Reason> against = new ArrayList<>(taper(group, bit, strap));
    against.addAll(against.isEmpty() ? nose.inStrap(setting, strap) : List.of());
    against.addAll(
        switch (drill) {
          case HandDrill hand -> {
            List<Reason> lacking = new ArrayList<>(Room.lacking(group, hand.name(), hand.length()));
            lacking.addAll(new Chuck(group, hand.name(), setting.over()).against());
            yield lacking;
          }
          case DrillPress at -> PressWay.against(group, at, strap.thickness(), bit.point());
          default -> List.<Reason>of();
        });
    List<Purchase> bought = Purchase.of(group.style(), drill, bit, strap);
    return fitted.proposal(against, nose.untold(), setting, press ? AT_THE_PRESS : BY_HAND, bought);
  }

  /** The strap's hole must lie between the two ends of the taper. */
  private static List<Reason> taper(Group group, CentringBit bit, PerforatedStrip strap) {
    if (!strap.hole().isMoreThan(bit.tip())) {
      Telling tell = new Telling(group, "tip-in-strap", "tip wider than the strap's holes, by");
      return List.of(
          tell.reason(
              "the nose does not enter the strap's holes of "
                  + tell.across("h", "diameter of the strap's holes", strap.hole())
                  + ": it is "
                  + tell.across("t", "diameter of the nose at its tip", bit.tip())
                  + " at its tip",
              "take a strap with wider holes, or a bit with a finer nose",
              "t - h",
              bit.tip().minus(strap.hole())));
    }
    Telling tell = new Telling(group, "nose-in-strap", "strap's holes wider than the nose, by");
    return strap.hole().isAtLeast(bit.nose())
        ? List.of(
            tell.reason(
                "the nose of "
                    + tell.across("n", "diameter of the nose", bit.nose())
                    + " falls through the strap's holes of "
                    + tell.across("h", "diameter of the strap's holes", strap.hole()),
                "take a strap with narrower holes, or a bit with a wider nose",
                "h - n",
                strap.hole().minus(bit.nose())))
        : List.of();
  }
}
