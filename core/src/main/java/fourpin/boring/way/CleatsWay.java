package fourpin.boring.way;

import fourpin.job.Setting;
import fourpin.job.Support;
import java.util.List;
import java.util.Optional;

/** Cleat strips, bored as one blank and ripped in two. */
final class CleatsWay implements WayCheck {

  @Override
  public Proposal of(Group group) {
    if (!(group.support() instanceof Support.Cleats)) {
      return group.hasPins()
          ? Pins.instead("cleats")
          : Proposal.changed("the bays stand on standards", "state cleats");
    }
    return new Proposal.Can(
        new Method.Blanks(Bits.assumed(group), 1),
        new Work(
            1,
            0,
            group.holes(),
            Setting.PRESS_SECONDS,
            new Work.Making(Setting.STICK_MINUTES, 0),
            Optional.empty(),
            List.of()),
        List.of());
  }
}
