package fourpin.sheets.packet;

import fourpin.bench.Step;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method.Guided;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is set and made once for the panels of a case, before the first of its drilling sheets, and
 * where guides lie on all of them.
 */
record DrillingSetUp(Plan plan, Words words) {

  private static final String TITLE = "Before the first panel";

  /**
   * @param signs that the sheets go on with: the whole of each caution stands here
   */
  List<Block> blocks(CautionSigns signs) {
    List<PlannedStep> steps = steps(plan);
    if (steps.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(TITLE));
    blocks.add(
        new Block.Steps(
            steps.stream().map(s -> StepBlocks.of(s, name(s), signs.at(s.cautions()))).toList()));
    for (CaseBoring boring : plan.borings()) {
      if (boring.method() instanceof Guided guided) {
        blocks.addAll(new GuideUse(words, guided).blocks());
      }
    }
    return blocks;
  }

  private static Prose name(PlannedStep step) {
    return Prose.bold(step.caseName() + ": ");
  }

  /** Numbers of these steps, with the title of their page. */
  static Map<Integer, String> titles(Plan plan) {
    Map<Integer, String> titles = new HashMap<>();
    steps(plan).forEach(s -> titles.put(s.number(), TITLE));
    return titles;
  }

  private static List<PlannedStep> steps(Plan plan) {
    return plan.steps().stream().filter(DrillingSetUp::holds).toList();
  }

  /** Panels that are marked side by side are on no sheet of one face. */
  static boolean holds(PlannedStep step) {
    return !step.typed().isEmpty() && step.typed().stream().allMatch(DrillingSetUp::setsUp);
  }

  private static boolean setsUp(Step step) {
    return step instanceof Step.SetBit
        || step instanceof Step.MarkStick
        || step instanceof Step.SquareAcross;
  }
}
