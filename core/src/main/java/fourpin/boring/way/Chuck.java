package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.PlainBit;
import fourpin.measure.Length;
import java.util.List;

/**
 * The chuck of a hand drill beside the stile of a standing case: where a stile stands higher on the
 * face than the chuck stays off it, the chuck strikes the stile's back unless the row lies far
 * enough behind it.
 *
 * @param drill in words
 * @param off least height of the chuck over the face, while the bit is at its depth
 */
record Chuck(Group group, String drill, Length off) {

  /** Of a plain bit, as far as it reaches out of the chuck and not into the wood. */
  static Chuck of(Group group, String drill, PlainBit bit, BitSetting setting) {
    Length left = bit.reach().minus(setting.depth());
    return new Chuck(group, drill, Length.max(left, setting.over()));
  }

  /** Why rows can't be bored; empty before assembly and where nothing is struck. */
  List<Reason> against() {
    Length radius = group.settings().length(Setting.CHUCK_RADIUS);
    return new Stiles(group)
        .inFrontOf(off).stream().filter(room -> room.isLessThan(radius)).map(this::reason).toList();
  }

  private Reason reason(Length room) {
    Length radius = group.settings().length(Setting.CHUCK_RADIUS);
    Length row = group.settings().length(Setting.FRONT_ROW).plus(radius.minus(room));
    Telling tell =
        new Telling(group, "chuck-front-row", "least front-row with the chuck of " + drill);
    tell.set("n", Setting.FRONT_ROW);
    return tell.reason(
        "the chuck of "
            + drill
            + " reaches "
            + tell.set("r", Setting.CHUCK_RADIUS)
            + " beside the bit, and before a row a stile of the face frame stands "
            + tell.derived("a", "from the row to the stile", room)
            + " away",
        "bore before assembly, put the face frame on when the rows are bored, take a longer bit, set"
            + " front-row to "
            + group.text(group.roundedUp(row))
            + " or more, or measure the chuck and set chuck-radius",
        "n + r - a",
        row);
  }
}
