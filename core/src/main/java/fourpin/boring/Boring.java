package fourpin.boring;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import java.util.List;

/**
 * The cases with their holes, grooves and strips, and every shelf on its level.
 *
 * @param grids one for each bay that has adjustable shelves
 */
public record Boring(List<BuiltCase> cases, List<BayGrid> grids, List<Finding> findings) {

  public Boring {
    cases = List.copyOf(cases);
    grids = List.copyOf(grids);
    findings = List.copyOf(findings);
  }

  /** Whether holes of neighbouring bays meet, so that cures ask how far a bit's point reaches. */
  public boolean rowsMeet() {
    return findings.stream().anyMatch(f -> f.kind().equals(ClashReport.ROWS_MEET));
  }
}
