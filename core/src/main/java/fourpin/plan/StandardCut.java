package fourpin.plan;

import fourpin.boring.BayGrid.Run;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;

/** How long a standard is cut for its space, and how it is screwed on. */
record StandardCut(Settings settings, LengthStyle style) {

  /** Shorter than its space by the play or more: the next length below that the style prints. */
  Length length(Run run) {
    Length most = run.length().minus(settings.length(Setting.STANDARD_PLAY));
    Length step = Length.of(1, style.unit()).over(style.parts());
    return step.times(most.wholeTimes(step));
  }

  /** One screw near each end, the others no further apart than the setting. */
  long screws(Run run) {
    Length spacing = settings.length(Setting.SCREW_SPACING);
    return Math.ceilDiv(run.length().picometres(), spacing.picometres()) + 1;
  }
}
