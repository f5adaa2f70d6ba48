package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Axis;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Tool.Machine;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A machine that bores at coordinates, or with spindles in a row. */
final class MachineWay implements WayCheck {

  @Override
  public Proposal of(Group group) {
    List<Machine> machines = group.shop().all(Machine.class);
    return machines.isEmpty()
        ? Proposal.cannot(List.of(Choosing.missing("boring machine")))
        : Choosing.best(machines.stream().map(m -> proposal(group, m)).toList());
  }

  private static Proposal proposal(Group group, Machine machine) {
    List<Reason> against = against(group, machine);
    if (!against.isEmpty()) {
      return Proposal.cannot(against);
    }
    return spindles(group, machine)
        .orElseGet(
            () ->
                new Proposal.Can(
                    new Method.Programmed(machine.name(), bit(group, machine)),
                    new Work(
                        1,
                        0,
                        group.holes(),
                        Setting.MACHINE_SECONDS,
                        new Work.Making(Setting.PROGRAM_MINUTES),
                        Optional.empty(),
                        Purchase.of(group.style(), machine)),
                    List.of(),
                    Proposal.Together.no(
                        "each lies at the machine's own stops; one program serves all that are"
                            + " alike")));
  }

  private static BitSetting bit(Group group, Machine machine) {
    return Bits.unstated(group, machine.name() + ", bit of " + group.across(group.diameter()));
  }

  private static List<Reason> against(Group group, Machine machine) {
    if (group.isBoredAfterAssembly()) {
      return List.of(
          new Reason("a standing case does not go on " + machine.name(), "bore before assembly"));
    }
    List<Reason> reasons = new ArrayList<>();
    if (!machine.diameters().contains(group.diameter())) {
      reasons.add(
          new Reason(
              machine.name() + " has no bit of " + group.across(group.diameter()),
              "buy one and state it, or choose other pins"));
    }
    bed(group, machine, Axis.Z, machine.bedLength(), "long").ifPresent(reasons::add);
    bed(group, machine, Axis.Y, machine.bedWidth(), "wide").ifPresent(reasons::add);
    return reasons;
  }

  private static Optional<Reason> bed(
      Group group, Machine machine, Axis axis, Length takes, String word) {
    return group.panels().stream()
        .map(Part::box)
        .map(box -> box.size(axis))
        .filter(size -> size.isMoreThan(takes))
        .max(Length::compareTo)
        .map(size -> over(group, machine, size, takes, word));
  }

  private static Reason over(Group group, Machine machine, Length size, Length takes, String word) {
    Telling tell = new Telling(group, "panel-too-" + word, "panel too " + word + " for it, by");
    return tell.reason(
        "a panel is "
            + tell.derived("s", "size of the panel", size)
            + " "
            + word
            + ", and "
            + machine.name()
            + " takes "
            + tell.stated("m", "what the machine takes", takes),
        "bore this case by another way",
        "s - m",
        size.minus(takes));
  }

  /** Spindles in a row bore every pitch that is a whole number of their spacing. */
  private static Optional<Proposal> spindles(Group group, Machine machine) {
    return machine
        .spacing()
        .filter(spacing -> !group.pitch().remainder(spacing).isZero())
        .map(spacing -> Proposal.changed(apart(group, machine, spacing)));
  }

  private static Reason apart(Group group, Machine machine, Length spacing) {
    Telling tell =
        new Telling(group, "pitch-over-spindles", "pitch beyond a whole number of spaces");
    return tell.reason(
        "the spindles of "
            + machine.name()
            + " stand "
            + tell.stated("s", "from spindle to spindle", spacing)
            + " apart, and the pitch of "
            + tell.set("p", Setting.PITCH)
            + " is no whole number of that",
        "set pitch to " + group.text(spacing),
        "remainder of p / s",
        group.pitch().remainder(spacing));
  }
}
