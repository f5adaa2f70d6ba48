package fourpin.sheets.packet;

import fourpin.bench.Step;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What is set and made once for the panels of a case, before the first of its drilling sheets, with
 * the marks of sticks in tables.
 */
record DrillingSetUp(Plan plan, Words words, Codes codes) {

  private static final String TITLE = "Before the first panel";

  /** Marks stand side by side in so many columns. */
  private static final int ACROSS = 5;

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
    for (PlannedStep step : steps) {
      Block told =
          new Block.Steps(List.of(StepBlocks.of(step, name(step), signs.at(step.cautions()))));
      blocks.addAll(codes.beside(List.of(told), List.of(step), words.fullPage().width()));
    }
    steps.stream()
        .flatMap(s -> s.typed().stream())
        .flatMap(s -> s instanceof Step.MarkStick stick ? marks(stick).stream() : Stream.empty())
        .forEach(blocks::add);
    return blocks;
  }

  /** Every mark in a table, since distances that are added up at the bench are added up wrong. */
  private List<Block> marks(Step.MarkStick stick) {
    Numbered marks = new Numbered("Mark", "From zero", words);
    return List.of(
        new Block.Paragraph(Prose.bold("Marks of stick “" + stick.stick() + "”, for holes")),
        marks.numbered(stick.marks(), ACROSS));
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

  static boolean holds(PlannedStep step) {
    return !step.typed().isEmpty() && step.typed().stream().allMatch(DrillingSetUp::setsUp);
  }

  private static boolean setsUp(Step step) {
    return step instanceof Step.SetBit || step instanceof Step.MarkStick;
  }
}
