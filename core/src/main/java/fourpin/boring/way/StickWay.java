package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.job.Setting;
import fourpin.job.Tool.HandDrill;
import fourpin.job.Tool.PlainBit;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every hole from its mark: story stick, punch and hand drill. It always works. */
final class StickWay implements WayCheck {

  @Override
  public Proposal of(Group group) {
    List<Reason> notes = new ArrayList<>();
    Optional<PlainBit> bit = Bits.plain(group);
    BitSetting setting = bit.map(b -> Bits.set(group, b)).orElseGet(() -> Bits.assumed(group));
    if (bit.isEmpty()) {
      notes.add(
          new Reason(
              "a plain bit of " + group.across(group.diameter()) + " is taken for granted",
              "state it among the tools"));
    }
    List<HandDrill> drills = group.shop().all(HandDrill.class);
    if (drills.isEmpty()) {
      notes.add(new Reason("a hand drill is taken for granted", "state it among the tools"));
    }
    narrow(group, drills).ifPresent(notes::add);
    notes.addAll(chuck(group, bit, setting));
    notes.addAll(new Stiles(group).gauged());
    List<Purchase> bought =
        Stream.concat(
                bit
                    .map(b -> Purchase.of(group.style(), b))
                    .orElseGet(() -> List.of(Purchase.bit(group, setting.tool())))
                    .stream(),
                drill(group, drills).stream())
            .toList();
    Work work =
        new Work(
            1,
            0,
            group.holes(),
            Setting.HOLE_SECONDS,
            new Work.Making(Setting.STICK_MINUTES),
            Optional.empty(),
            bought);
    return Gangs.of(group).marked(group, Method.How.BY_HAND, setting, work, notes);
  }

  /** One at hand before one to buy; a shop that states no tool at all has one. */
  private static List<Purchase> drill(Group group, List<HandDrill> drills) {
    return drills.stream()
        .min(Comparator.comparing(d -> d.toBuy().isPresent()))
        .map(d -> Purchase.of(group.style(), d))
        .orElseGet(
            () ->
                group.shop().tools().isEmpty()
                    ? List.of()
                    : List.of(Purchase.unpriced("hand drill")));
  }

  /** One that is taken for granted is taken to be long enough. */
  private static List<Reason> chuck(Group group, Optional<PlainBit> bit, BitSetting setting) {
    return bit.map(b -> Chuck.of(group, "the hand drill", b, setting).against()).orElse(List.of());
  }

  /** A standing case may leave no room for any of the drills. */
  static Optional<Reason> narrow(Group group, List<HandDrill> drills) {
    BaySpace bay = group.narrowest();
    return drills.stream()
        .map(HandDrill::length)
        .min(Length::compareTo)
        .filter(l -> group.isBoredAfterAssembly() && l.isMoreThan(bay.clear().size(Axis.X)))
        .map(shortest -> narrow(group, shortest, bay));
  }

  private static Reason narrow(Group group, Length shortest, BaySpace bay) {
    Length clear = bay.clear().size(Axis.X);
    Telling tell = new Telling(group, "room-for-the-drill", "room that the drill lacks");
    return tell.reason(
        "the drill with its bit is "
            + tell.stated("d", "length of the drill with its bit", shortest)
            + " long and bay "
            + bay.number()
            + " is "
            + tell.derived("w", "width of the narrowest bay", clear)
            + " wide",
        "take a right-angle drill, or bore before assembly",
        "d - w",
        shortest.minus(clear));
  }
}
