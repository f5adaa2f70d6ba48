package fourpin.sheets.packet;

import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The steps in order, each with its check, and its cautions before it. Those that stand beside a
 * picture, on the sheet of a face or the page of a guide, are only referred to.
 */
final class StepPages {

  private static final int COLUMNS = 2;

  private final Plan plan;
  private final Words words;
  private final Codes codes;

  /** Where steps stand that are only referred to, by their numbers. */
  private final Map<Integer, String> elsewhere;

  StepPages(Plan plan, Words words, Codes codes) {
    this.plan = plan;
    this.words = words;
    this.codes = codes;
    this.elsewhere = new HashMap<>(GuidePages.titles(plan));
    elsewhere.putAll(DrillingSetUp.titles(plan));
    for (DrillingSheet sheet : DrillingSheet.of(plan)) {
      sheet.steps().forEach(s -> elsewhere.put(s.number(), sheet.title()));
    }
  }

  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    codes
        .bench()
        .ifPresent(
            _ -> blocks.add(Block.Paragraph.of("On a paired phone each code opens its step.")));
    for (PlannedStep.Stage stage : PlannedStep.Stage.values()) {
      List<PlannedStep> steps = plan.steps().stream().filter(s -> s.stage() == stage).toList();
      if (!steps.isEmpty()) {
        CautionSigns signs = new CautionSigns();
        blocks.add(new Block.Heading(stage.title()));
        runs(steps).forEach(run -> add(blocks, run, signs));
      }
    }
    return plan.steps().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Section(
                "Steps", List.of(new Block.Columns(columns(), Block.Print.COMPACT, blocks))));
  }

  /** Codes beside the steps take the room of a second column. */
  private int columns() {
    return codes.bench().isEmpty() ? COLUMNS : 1;
  }

  /** Steps one by one, but those that follow each other on one sheet together. */
  private List<List<PlannedStep>> runs(List<PlannedStep> steps) {
    List<List<PlannedStep>> runs = new ArrayList<>();
    for (PlannedStep step : steps) {
      boolean goesOn =
          !runs.isEmpty()
              && title(step).isPresent()
              && title(step).equals(title(runs.getLast().getLast()));
      if (!goesOn) {
        runs.add(new ArrayList<>());
      }
      runs.getLast().add(step);
    }
    return runs;
  }

  private Optional<String> title(PlannedStep step) {
    return Optional.ofNullable(elsewhere.get(step.number()));
  }

  private void add(List<Block> blocks, List<PlannedStep> run, CautionSigns signs) {
    PlannedStep first = run.getFirst();
    Block told =
        title(first)
            .map(title -> referred(run, title))
            .orElseGet(
                () ->
                    new Block.Steps(
                        List.of(StepBlocks.of(first, where(first), signs.at(first.cautions())))));
    blocks.addAll(codes.beside(List.of(told), run, words.fullPage().width()));
  }

  /** Without a box: they are ticked off where they stand. */
  private static Block referred(List<PlannedStep> run, String title) {
    int from = run.getFirst().number();
    int to = run.getLast().number();
    String steps =
        from == to
            ? "Step " + from + " stands on the page “" + title + "”. Do it from there."
            : "Steps "
                + from
                + " to "
                + to
                + " stand on the page “"
                + title
                + "”. Do them from there.";
    return new Block.Bullets(List.of(Prose.plain(steps)));
  }

  private static Prose where(PlannedStep step) {
    String where = step.caseName() + (step.parts().isEmpty() ? "" : " " + Words.list(step.parts()));
    return where.isBlank() ? Prose.plain("") : Prose.bold(where.strip() + ": ");
  }
}
