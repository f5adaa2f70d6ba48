package fourpin.boring;

import fourpin.casework.Finding.Severity;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import java.util.Optional;

/**
 * A cut of a row that comes too near to something else.
 *
 * @param gap between the outlines, negative where they overlap
 * @param web between them through the thickness, negative where they meet
 */
record Clash(Cut ours, Cut other, Length gap, Length web, Severity severity) {

  /**
   * Cuts that share wood, or leave none, spoil the panel; with less wood between them than the
   * settings ask for they are doubtful. Straight grooves and joints may touch: a standard's groove
   * ends at the panel that the standard stands on.
   */
  static Optional<Clash> of(Cut ours, Cut other, Settings settings) {
    Length web = ours.web(other);
    if (web.isAtLeast(settings.length(Setting.LEAST_WEB)) && web.isPositive()) {
      return Optional.empty();
    }
    Length gap = Outline.gap(ours.outline(), other.outline());
    boolean straight =
        ours.outline() instanceof Outline.Rectangle && other.outline() instanceof Outline.Rectangle;
    boolean overlaps = straight ? gap.isNegative() : !gap.isPositive();
    boolean near = straight || gap.isAtLeast(settings.length(Setting.LEAST_EDGE));
    if (!overlaps && near) {
      return Optional.empty();
    }
    Severity severity = overlaps && !web.isPositive() ? Severity.ERROR : Severity.DOUBT;
    return Optional.of(new Clash(ours, other, gap, web, severity));
  }

  Cut.Owner.OfRow row() {
    return (Cut.Owner.OfRow) ours.owner();
  }

  /** Whether the two come from opposite faces, with wood or an overlap between their floors. */
  boolean opposite() {
    return !ours.from().equals(other.from()) && !ours.to().equals(other.to());
  }
}
