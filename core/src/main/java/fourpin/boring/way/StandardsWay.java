package fourpin.boring.way;

import fourpin.job.Setting;
import fourpin.job.Support;
import java.util.List;
import java.util.Optional;

/** Metal standards, let in or screwed on. */
final class StandardsWay implements WayCheck {

  @Override
  public Proposal of(Group group) {
    if (!(group.support() instanceof Support.Standards standards)) {
      return group.hasPins()
          ? Pins.instead("standards")
          : Proposal.changed("the bays stand on cleats", "state standards");
    }
    boolean letIn = standards.mounting() == Support.Mounting.LET_IN;
    Method method =
        letIn
            ? new Method.Grooved("router bit or saw", group.diameter(), 1, 1)
            : new Method.ScrewedOn();
    return new Proposal.Can(
        method,
        new Work(
            letIn ? 1 : 0,
            0,
            0,
            Setting.HOLE_SECONDS,
            new Work.Making(Setting.STICK_MINUTES, 0),
            Optional.empty(),
            List.of()),
        List.of());
  }
}
