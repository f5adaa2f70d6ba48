package fourpin.strength;

import fourpin.casework.Finding;
import java.util.List;

/**
 * What holds and what does not.
 *
 * @param shelves every adjustable and fixed shelf, in the order of the cases and their parts
 * @param cases what each case does as a whole
 * @param findings shelves that sag or are stressed too much, with cures; notes on long shelves,
 *     glass, and tall sides
 */
public record Strength(List<ShelfAnswer> shelves, List<CaseAnswer> cases, List<Finding> findings) {

  public Strength {
    shelves = List.copyOf(shelves);
    cases = List.copyOf(cases);
    findings = List.copyOf(findings);
  }
}
