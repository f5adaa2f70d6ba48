package fourpin.boring.way;

import fourpin.boring.PlainBits;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.CentringBit;
import fourpin.job.Tool.PlainBit;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/** Plain bits and their stops. */
final class Bits {

  private Bits() {}

  /** The shop's bits of the group's diameter that reach deep enough, those at hand first. */
  static List<PlainBit> allPlain(Group group) {
    return PlainBits.of(group.shop(), group.diameter(), group.depth());
  }

  /** The shop's self-centring bits of the group's diameter. */
  static List<CentringBit> centring(Group group) {
    return group.shop().all(CentringBit.class).stream()
        .filter(b -> b.diameter().equals(group.diameter()))
        .toList();
  }

  /** That a bit does not reach through the guide to the depth of the hole. */
  static List<Reason> tooShort(Group group, String name, BitSetting setting, Length reach) {
    return lacking(group, setting, name + " reaches", reach, "take a longer bit");
  }

  /**
   * That something does not go as deep as hole and guide take.
   *
   * @param which with its verb, {@code most} how far it does
   */
  static List<Reason> lacking(
      Group group, BitSetting setting, String which, Length most, String remedy) {
    Telling tell = new Telling(group, "stop-beyond-reach", which + " too little, by");
    String stop = tell.derived("s", "hole and guide", setting.stop());
    String reach = tell.stated("r", which, most);
    return setting.stop().isMoreThan(most)
        ? List.of(
            tell.reason(
                "hole and guide take " + stop + ", and " + which + " " + reach,
                remedy + ", or use a thinner guide",
                "s - r",
                setting.stop().minus(most)))
        : List.of();
  }

  static Optional<PlainBit> plain(Group group) {
    return allPlain(group).stream().findFirst();
  }

  /** Set for the group's holes, without a guide. */
  static BitSetting set(Group group, PlainBit bit) {
    return setting(group, bit.name(), Length.ZERO, Length.ZERO, bit.point());
  }

  /** A bit that the shop does not state. */
  static BitSetting assumed(Group group) {
    String name = "plain bit of " + group.across(group.diameter()) + " (assumed)";
    return unstated(group, name);
  }

  /** A bit whose point nobody states, without a guide. */
  static BitSetting unstated(Group group, String tool) {
    Length point = group.settings().length(Setting.BIT_POINT);
    BitSetting set = setting(group, tool, Length.ZERO, Length.ZERO, point);
    return set.pointFrom(group.settings().source(Setting.BIT_POINT));
  }

  /**
   * @param runs diameter of what runs in the guide, {@code over} the guide's thickness
   */
  static BitSetting setting(Group group, String tool, Length runs, Length over, Length point) {
    Length reserve = group.thinnest().minus(group.depth()).minus(point);
    return new BitSetting(tool, group.diameter(), runs, over, group.depth(), point, reserve);
  }
}
