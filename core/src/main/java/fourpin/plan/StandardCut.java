package fourpin.plan;

import fourpin.boring.BayGrid.Run;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.List;

/** How long a standard is cut for its space, and how it is screwed on. */
record StandardCut(Settings settings, LengthStyle style) {

  /** Shorter than its space by the play or more: the next length below that the style prints. */
  Length length(Run run) {
    Length most = run.length().minus(settings.length(Setting.STANDARD_PLAY));
    Length step = Length.of(1, style.unit()).over(style.parts());
    return step.times(most.wholeTimes(step));
  }

  /**
   * The pieces of a standard, from the bottom: one, or where it is longer than it is sold, pieces
   * of as many whole pitches as are sold, and the rest. Each stands with its numbered end on the
   * one below, which ends at a whole pitch from its own, so that the slots keep their pitch across
   * the joint. A rest that ends below its first slot carries nothing and is left out.
   */
  List<Length> pieces(Run run, Support.Standards standards) {
    Length left = length(run);
    Length pitch = standards.slotPitch();
    Length whole = pitch.times(Math.max(1, standards.soldIn().wholeTimes(pitch)));
    List<Length> pieces = new ArrayList<>();
    while (left.isMoreThan(standards.soldIn())) {
      pieces.add(whole);
      left = left.minus(whole);
    }
    if (pieces.isEmpty() || left.isMoreThan(standards.firstSlot())) {
      pieces.add(left);
    }
    return pieces;
  }

  /** Of a whole standard, in one piece or more. */
  long screws(Run run, Support.Standards standards) {
    return pieces(run, standards).stream().mapToLong(this::screws).sum();
  }

  /** One screw near each end, the others no further apart than the setting. */
  long screws(Length piece) {
    Length spacing = settings.length(Setting.SCREW_SPACING);
    return Math.ceilDiv(piece.picometres(), spacing.picometres()) + 1;
  }
}
