package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.PlainBit;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The holes of a guide that is made in the shop: what runs in them and its slip, rounded up to a
 * bit that there is. What is rounded up is play like the slip itself.
 *
 * @param hole diameter
 * @param notes that the bit for it is taken for granted; empty if the shop states it
 * @param bought that bit, where it is not at hand
 */
record GuideBore(Length hole, List<Reason> notes, List<Purchase> bought) {

  GuideBore {
    notes = List.copyOf(notes);
    bought = List.copyOf(bought);
  }

  /** What is bought in all. @param tools that are needed besides, and not at hand */
  List<Purchase> with(List<Purchase> tools) {
    return Stream.concat(tools.stream(), bought.stream()).toList();
  }

  /**
   * @param runs diameter of what runs in the guide
   * @param slip setting of the least that the holes are wider
   */
  static GuideBore of(Group group, Length runs, Setting slip) {
    Length least = runs.plus(group.settings().length(slip));
    Length sold = roundedUp(least, group.settings().length(Setting.GUIDE_BIT_STEP));
    return group.shop().all(PlainBit.class).stream()
        .filter(b -> b.diameter().isAtLeast(least) && !b.diameter().isMoreThan(sold))
        .min(
            Comparator.comparing((PlainBit b) -> b.toBuy().isPresent())
                .thenComparing(PlainBit::diameter))
        .map(b -> new GuideBore(b.diameter(), List.of(), Purchase.of(group.style(), b)))
        .orElseGet(() -> taken(group, sold, granted(group, runs, slip, sold)));
  }

  private static GuideBore taken(Group group, Length hole, Reason note) {
    String name = "plain bit of " + group.across(hole) + " for the guide (assumed)";
    return new GuideBore(hole, List.of(note), List.of(Purchase.bit(group, name)));
  }

  private static Length roundedUp(Length length, Length step) {
    Length below = step.times(length.wholeTimes(step));
    return below.equals(length) ? length : below.plus(step);
  }

  private static Reason granted(Group group, Length runs, Setting slip, Length hole) {
    Telling tell = new Telling(group, "guide-bit", "bit that the guide is bored with");
    tell.across("c", "diameter of what runs in the guide", runs);
    tell.set("s", slip);
    tell.set("k", Setting.GUIDE_BIT_STEP);
    return tell.reason(
        "a bit of " + group.across(hole) + " for making the guide is taken for granted",
        "state it among the tools",
        "c + s, rounded up to a whole number of k",
        Quantity.across(hole));
  }
}
