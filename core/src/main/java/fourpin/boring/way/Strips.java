package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.job.Tool.StripKind;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.List;
import java.util.Optional;

/** Whether a strip's pitch goes into the case's. */
final class Strips {

  private Strips() {}

  /**
   * Boring through a strip.
   *
   * @param against what speaks against the tools; what the pitch would cost is worked out only if
   *     nothing does
   */
  static Proposal fitted(
      Group group,
      PerforatedStrip strip,
      List<Reason> against,
      List<Reason> notes,
      BitSetting bit,
      GuidedWork work,
      List<Tool> bought) {
    if (fits(group, strip)) {
      Designed guide = SoldGuide.of(group, strip);
      return work.proposal(group, bit, guide, against, notes, bought);
    }
    return against.isEmpty() ? changed(group, strip) : Proposal.cannot(against);
  }

  private static boolean fits(Group group, PerforatedStrip strip) {
    return group.pitch().remainder(strip.pitch()).isZero();
  }

  private static Proposal changed(Group group, PerforatedStrip strip) {
    Length given = StripPitch.nearest(strip, group.pitch());
    Optional<Designed> guide = at(group, given).map(g -> SoldGuide.of(g, strip));
    if (guide.isPresent() && guide.get() instanceof Designed.Failed(Reason reason)) {
      return Proposal.cannot(List.of(reason));
    }
    Repitched.Loss loss =
        Repitched.Loss.of(group.job(), group.built().order(), group.pitch(), given);
    return Proposal.changed(
        new Reason(
            loss.words(group.job().style(), strip.name()),
            remedy(group, strip, given),
            List.of(loss.figure("pitch-of-strip", strip.pitch(), asked(group)))));
  }

  private static Source asked(Group group) {
    return group.settings().source(Setting.PITCH);
  }

  /** A pitch that can't be written in the job's unit is left to the plan. */
  private static String remedy(Group group, PerforatedStrip strip, Length given) {
    Way way = strip.kind() == StripKind.STEEL ? Way.STEEL_STRAP : Way.HARDBOARD_STRIP;
    return StripPitch.canBeWritten(group.job(), given)
        ? "set pitch to " + group.text(given)
        : "state way: " + way.key() + ", and the plan follows the strip's pitch";
  }

  /** The same bays at another pitch; none if nothing would be bored there. */
  private static Optional<Group> at(Group group, Length pitch) {
    int bay = group.grids().getFirst().bay();
    return Repitched.groups(group.job(), group.built().order(), pitch).stream()
        .filter(g -> g.holes() > 0 && g.grids().stream().anyMatch(b -> b.bay() == bay))
        .findFirst();
  }
}
