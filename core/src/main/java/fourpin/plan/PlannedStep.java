package fourpin.plan;

import fourpin.bench.Caution;
import java.util.List;

/**
 * One step of the work as it is printed.
 *
 * @param number from 1
 * @param stage of the work that it belongs to
 * @param caseName or empty where it is for all cases
 * @param parts marks of the parts that it works on; may be empty
 * @param words what to do
 * @param items one line for each part or group of parts that are worked alike; may be empty
 * @param check how to tell that it came out right; may be empty
 * @param cautions that stand at this step
 */
public record PlannedStep(
    int number,
    Stage stage,
    String caseName,
    List<String> parts,
    String words,
    List<String> items,
    String check,
    List<Caution> cautions) {

  public PlannedStep {
    parts = List.copyOf(parts);
    items = List.copyOf(items);
    cautions = List.copyOf(cautions);
  }

  /** Stages in the order of work. */
  public enum Stage {
    MEASURE("Measure the stock"),
    CUT("Cut"),
    EDGE("Edge"),
    MARK("Mark faces"),
    JOINT("Cut the joints"),
    BORE("Bore the rows"),
    DRY_FIT("Fit dry"),
    FINISH("Finish"),
    ASSEMBLE("Assemble"),
    SHELVES("Cut to measure"),
    STAND("Stand and fasten");

    private final String title;

    Stage(String title) {
      this.title = title;
    }

    public String title() {
      return title;
    }
  }
}
