package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.HandDrill;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.job.Tool.PlainBit;
import fourpin.job.Tool.StripKind;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** A plain bit by hand through a strip of perforated hardboard whose holes lead it. */
final class StripWay implements WayCheck {

  private static final GuidedWork WORK =
      new GuidedWork(
          Method.How.BY_HAND, Setting.GUIDED_SECONDS, Setting.STRIP_MINUTES, Setting.WEAR_BIT);

  @Override
  public Proposal of(Group group) {
    List<HandDrill> drills = group.shop().all(HandDrill.class);
    List<PlainBit> bits = Bits.allPlain(group);
    List<FittedStrip> strips = FittedStrip.all(group, StripKind.HARDBOARD);
    List<Reason> missing =
        Choosing.missing(
            new Choosing.Need("hand drill", drills),
            new Choosing.Need("plain bit of " + group.across(group.diameter()), bits),
            new Choosing.Need("strip of perforated hardboard", strips));
    if (!missing.isEmpty()) {
      return Proposal.cannot(missing);
    }
    List<Proposal> proposals = new ArrayList<>();
    for (HandDrill drill : drills) {
      for (PlainBit bit : bits) {
        strips.forEach(strip -> proposals.add(proposal(group, drill, bit, strip)));
      }
    }
    return Choosing.best(proposals);
  }

  private static Proposal proposal(Group group, HandDrill drill, PlainBit bit, FittedStrip fitted) {
    PerforatedStrip strip = fitted.strip();
    BitSetting setting =
        Bits.setting(group, bit.name(), bit.diameter(), strip.thickness(), bit.point());
    List<Reason> against = new ArrayList<>(play(group, bit, strip));
    against.addAll(Bits.tooShort(group, bit.name(), setting, bit.reach()));
    against.addAll(Room.lacking(group, drill.name(), drill.length()));
    against.addAll(Chuck.of(group, drill.name(), bit, setting).against());
    List<Purchase> bought = Purchase.of(group.style(), drill, bit, strip);
    return fitted.proposal(against, List.of(), setting, WORK, bought);
  }

  private static List<Reason> play(Group group, PlainBit bit, PerforatedStrip strip) {
    Length play = strip.hole().minus(bit.diameter());
    Length most = group.settings().length(Setting.STRIP_PLAY);
    Telling tell = new Telling(group, "play-in-strip", "play of the bit in the strip's holes");
    String size = "bit " + tell.across("b", "diameter of the bit", bit.diameter());
    String holes =
        "the strip's holes of " + tell.across("h", "diameter of the strip's holes", strip.hole());
    if (play.isNegative()) {
      return List.of(
          tell.reason(
              size + " does not go through " + holes,
              "take a strip with wider holes",
              "h - b",
              play));
    }
    tell.set("m", Setting.STRIP_PLAY);
    return play.isMoreThan(most)
        ? List.of(
            tell.reason(
                size + " has " + group.text(play) + " of play in " + holes,
                "take a strip with narrower holes, or set strip-play to " + group.text(play),
                "h - b, more than m",
                play))
        : List.of();
  }
}
