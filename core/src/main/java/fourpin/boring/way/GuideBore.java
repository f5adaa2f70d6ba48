package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.PlainBit;
import fourpin.measure.Length;
import java.util.List;

/**
 * The holes of a guide that is made in the shop: what runs in them and its slip, rounded up to a
 * bit that there is. What is rounded up is play like the slip itself.
 *
 * @param hole diameter
 * @param notes that the bit for it is taken for granted; empty if the shop states it
 */
record GuideBore(Length hole, List<Reason> notes) {

  GuideBore {
    notes = List.copyOf(notes);
  }

  /**
   * @param runs diameter of what runs in the guide
   * @param slip setting of the least that the holes are wider
   */
  static GuideBore of(Group group, Length runs, Setting slip) {
    Length least = runs.plus(group.settings().length(slip));
    Length sold = roundedUp(least, group.settings().length(Setting.GUIDE_BIT_STEP));
    return group.shop().all(PlainBit.class).stream()
        .map(PlainBit::diameter)
        .filter(d -> d.isAtLeast(least) && !d.isMoreThan(sold))
        .min(Length::compareTo)
        .map(stated -> new GuideBore(stated, List.of()))
        .orElseGet(() -> new GuideBore(sold, List.of(granted(group, runs, slip, sold))));
  }

  private static Length roundedUp(Length length, Length step) {
    Length below = step.times(length.wholeTimes(step));
    return below.equals(length) ? length : below.plus(step);
  }

  private static Reason granted(Group group, Length runs, Setting slip, Length hole) {
    Telling tell = new Telling(group, "guide-bit", "bit that the guide is bored with");
    tell.stated("c", "diameter of what runs in the guide", runs);
    tell.set("s", slip);
    tell.set("k", Setting.GUIDE_BIT_STEP);
    return tell.reason(
        "a bit of " + group.text(hole) + " for making the guide is taken for granted",
        "state it among the tools",
        "c + s, rounded up to a whole number of k",
        hole);
  }
}
