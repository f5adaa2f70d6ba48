package fourpin.boring.way;

import fourpin.boring.BayGrid.Run;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Support;
import java.util.ArrayList;
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
    return standards.mounting() == Support.Mounting.LET_IN
        ? grooved(group, new Grooves(group))
        : new Proposal.Can(
            new Method.ScrewedOn(),
            work(0, 0, screws(group), Setting.HOLE_SECONDS, List.of()),
            Earlier.standards(group),
            Proposal.Together.no("each standard is screwed on where it belongs"));
  }

  /** One fence for each pass of each row, and one stop for each depth. */
  private static Proposal grooved(Group group, Grooves grooves) {
    Grooves.Choice choice = grooves.choice();
    List<Reason> notes = new ArrayList<>(choice.notes());
    notes.addAll(Earlier.grooves(group));
    Method.Grooved method = choice.method();
    int each = method.passes() * method.depths().size();
    int setUps = method.passes() * grooves.rows() + method.depths().size();
    return new Proposal.Can(
        method,
        work(
            setUps,
            grooves.faces(),
            (long) grooves.count() * each,
            Setting.PASS_SECONDS,
            choice.bought()),
        notes,
        Proposal.Together.no(
            "the fence runs along each panel's own edge, and grooves run the way that panels would"
                + " lie beside each other; one setting of the fence serves the same row of all"
                + " panels"));
  }

  private static Work work(
      int setUps, long clampings, long cuts, Setting seconds, List<Purchase> bought) {
    return new Work(
        setUps,
        clampings,
        cuts,
        seconds,
        new Work.Making(Setting.STANDARD_MINUTES),
        Optional.empty(),
        bought);
  }

  /** One near each end of a standard, the others no further apart than the setting. */
  private static long screws(Group group) {
    return group.columns().stream()
        .flatMap(c -> c.grid().runs().stream())
        .mapToLong(run -> screws(group, run))
        .sum();
  }

  private static long screws(Group group, Run run) {
    long spacing = group.settings().length(Setting.SCREW_SPACING).picometres();
    return Math.ceilDiv(run.length().picometres(), spacing) + 1;
  }
}
