package fourpin.boring.way;

import fourpin.job.Setting;
import fourpin.job.Tool.Router;
import fourpin.measure.Length;

/**
 * What a guide leaves free round its holes so that what holds the bit passes over it. The index
 * block stands proud of both sides, so that the first hole keeps this far from it; where the case
 * has a hole nearer to the end of its panels, a spacer keeps the block off that end.
 *
 * @param block least from the block's stop face to the first hole
 * @param end least from the last hole to the guide's far end
 */
record Passing(Length block, Length end) {

  /** A drill, by its chuck. */
  static Passing chuck(Group group) {
    return new Passing(group.settings().length(Setting.CHUCK_RADIUS), Length.ZERO);
  }

  /** A router: its base stands on the guide, clear of the block and of the clamp at the far end. */
  static Passing base(Group group, Router router) {
    Length half = router.base().over(2);
    return new Passing(
        half.plus(group.settings().length(Setting.BASE_ROOM)),
        half.plus(group.settings().length(Setting.CLAMP_ROOM)));
  }
}
