package fourpin.sheets.packet;

import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The steps in order, each with its check, and its cautions before it. */
final class StepPages {

  private final Plan plan;

  StepPages(Plan plan) {
    this.plan = plan;
  }

  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    for (PlannedStep.Stage stage : PlannedStep.Stage.values()) {
      List<PlannedStep> steps = plan.steps().stream().filter(s -> s.stage() == stage).toList();
      if (!steps.isEmpty()) {
        CautionSigns signs = new CautionSigns();
        blocks.add(new Block.Heading(stage.title()));
        blocks.add(new Block.Steps(steps.stream().map(s -> step(s, signs)).toList()));
      }
    }
    return blocks.isEmpty() ? Optional.empty() : Optional.of(new Section("Steps", blocks));
  }

  private static Block.Step step(PlannedStep step, CautionSigns signs) {
    List<Block> more = new ArrayList<>();
    if (!step.items().isEmpty()) {
      more.add(new Block.Bullets(step.items().stream().map(Prose::plain).toList()));
    }
    more.addAll(signs.at(step.cautions()));
    if (!step.check().isEmpty()) {
      more.add(new Block.Paragraph(Prose.bold("Check: ").then(Prose.plain(step.check()))));
    }
    return new Block.Step(Integer.toString(step.number()), words(step), more);
  }

  private static Prose words(PlannedStep step) {
    String where = step.caseName() + (step.parts().isEmpty() ? "" : " " + Words.list(step.parts()));
    return where.isBlank()
        ? Prose.plain(step.words())
        : Prose.bold(where.strip() + ": ").then(Prose.plain(step.words()));
  }
}
