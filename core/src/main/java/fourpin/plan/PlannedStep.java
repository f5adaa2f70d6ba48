package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.bench.Step;
import fourpin.casework.Face;
import java.util.ArrayList;
import java.util.List;

/**
 * One step of the work as it is printed.
 *
 * @param number from 1
 * @param stage of the work that it belongs to
 * @param caseName or empty where it is for all cases
 * @param parts marks of the parts that it works on; may be empty
 * @param sheet the faces that lie up meanwhile, one for each panel that lies there: the step stands
 *     on the sheet of these faces, beside their picture. Empty where there is no such sheet
 * @param words what to do
 * @param typed what changes pieces, for the virtual bench and for pictures; may be empty
 * @param items one line for each part or group of parts that are worked alike, {@code typed} in
 *     words where there is any; may be empty
 * @param check how to tell that it came out right; may be empty
 * @param cautions that stand at this step
 */
public record PlannedStep(
    int number,
    Stage stage,
    String caseName,
    List<String> parts,
    List<FaceUp> sheet,
    String words,
    List<Step> typed,
    List<String> items,
    String check,
    List<Caution> cautions) {

  /** A face of a panel that lies up, or that looks at whoever works in a standing case. */
  public record FaceUp(String part, Face face) {}

  public PlannedStep {
    parts = List.copyOf(parts);
    sheet = List.copyOf(sheet);
    typed = List.copyOf(typed);
    items = List.copyOf(items);
    cautions = List.copyOf(cautions);
  }

  /** A step that shapes no piece and stands on no sheet, to be numbered when all are together. */
  PlannedStep(
      Stage stage,
      String caseName,
      List<String> parts,
      String words,
      List<String> items,
      String check,
      List<Caution> cautions) {
    this(0, stage, caseName, parts, List.of(), words, List.of(), items, check, cautions);
  }

  /** How many holes it bores in one case; as many again in each further copy. */
  public int holes() {
    return typed.stream().mapToInt(Step::bored).sum();
  }

  PlannedStep numbered(int other) {
    return new PlannedStep(
        other, stage, caseName, parts, sheet, words, typed, items, check, cautions);
  }

  PlannedStep cautioned(Caution more) {
    List<Caution> all = new ArrayList<>(cautions);
    all.add(more);
    return new PlannedStep(number, stage, caseName, parts, sheet, words, typed, items, check, all);
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
