package fourpin.sheets.packet;

import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet;
import java.util.List;
import java.util.stream.Stream;

/** Numbers of the steps that have a box to tick on the pages. */
final class StepNumbers {

  private StepNumbers() {}

  static List<Integer> of(Plan plan) {
    return plan.steps().stream().map(PlannedStep::number).toList();
  }

  static List<Integer> in(Booklet booklet) {
    return booklet.sections().stream()
        .flatMap(s -> s.blocks().stream())
        .flatMap(StepNumbers::in)
        .toList();
  }

  private static Stream<Integer> in(Block block) {
    return switch (block) {
      case Block.Steps steps -> steps.steps().stream().flatMap(StepNumbers::in);
      case Block.Together together -> together.blocks().stream().flatMap(StepNumbers::in);
      case Block.Columns columns -> columns.blocks().stream().flatMap(StepNumbers::in);
      case Block.Beside beside ->
          Stream.concat(beside.left().stream(), beside.right().stream()).flatMap(StepNumbers::in);
      default -> Stream.of();
    };
  }

  private static Stream<Integer> in(Block.Step step) {
    return Stream.concat(
        Stream.of(Integer.valueOf(step.number())), step.more().stream().flatMap(StepNumbers::in));
  }
}
