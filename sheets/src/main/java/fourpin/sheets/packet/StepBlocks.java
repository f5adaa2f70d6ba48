package fourpin.sheets.packet;

import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import java.util.ArrayList;
import java.util.List;

/** A step as it is printed, on drilling sheets and among the steps alike. */
final class StepBlocks {

  private StepBlocks() {}

  /**
   * @param start bold, before what is to be done
   * @param cautions that stand at the step and not already above it
   */
  static Block.Step of(PlannedStep step, Prose start, List<Block> cautions) {
    List<Block> more = new ArrayList<>();
    if (!step.items().isEmpty()) {
      more.add(new Block.Bullets(step.items().stream().map(Prose::plain).toList()));
    }
    more.addAll(cautions);
    if (!step.check().isEmpty()) {
      more.add(new Block.Paragraph(Prose.bold("Check: ").then(Prose.plain(step.check()))));
    }
    Prose words = start.then(Prose.plain(step.words()));
    return new Block.Step(Integer.toString(step.number()), words, more);
  }
}
