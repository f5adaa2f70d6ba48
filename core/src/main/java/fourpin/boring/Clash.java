package fourpin.boring;

import fourpin.boring.Cut.Owner.OfRow;
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
   * ends at the panel that the standard stands on. What stands on a face spoils nothing behind it,
   * and may touch what it stands beside.
   */
  static Optional<Clash> of(Cut ours, Cut other, Settings settings) {
    Length web = ours.web(other);
    boolean onFace = ours.isOnFace() || (other.isOnFace() && other.owner() instanceof OfRow);
    if (web.isPositive() && (onFace || web.isAtLeast(settings.length(Setting.LEAST_WEB)))) {
      return Optional.empty();
    }
    Length gap = Outline.gap(ours.outline(), other.outline());
    boolean straight =
        ours.outline() instanceof Outline.Rectangle && other.outline() instanceof Outline.Rectangle;
    boolean overlaps = straight ? gap.isNegative() : !gap.isPositive();
    boolean clear = straight || onFace || gap.isAtLeast(settings.length(Setting.LEAST_EDGE));
    if (!overlaps && clear) {
      return Optional.empty();
    }
    Severity severity = overlaps && !web.isPositive() ? Severity.ERROR : Severity.DOUBT;
    return Optional.of(new Clash(ours, other, gap, web, severity));
  }

  OfRow row() {
    return (OfRow) ours.owner();
  }

  /** Whether the two come from opposite faces, with wood or an overlap between their floors. */
  boolean opposite() {
    return !ours.from().equals(other.from()) && !ours.to().equals(other.to());
  }
}
