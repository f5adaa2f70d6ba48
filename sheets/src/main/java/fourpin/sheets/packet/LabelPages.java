package fourpin.sheets.packet;

import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A label with a code for each part that steps are about, to be cut out and stuck to it; only where
 * phones can follow codes.
 */
record LabelPages(Plan plan, Codes codes) {

  private static final int ACROSS = 3;

  /** Of a label to its code. */
  private static final double SHARE = 0.42;

  private record Part(String caseName, String mark) {}

  Optional<Section> section() {
    List<Block> labels = new ArrayList<>();
    steps().forEach((part, steps) -> labels.addAll(label(part, steps)));
    if (labels.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.Paragraph.of(
            "Cut the labels out and stick each to its part, where it is not finished: the code opens"
                + " the first step of the part that is not done yet."));
    for (int from = 0; from < labels.size(); from += ACROSS) {
      List<Block> row =
          new ArrayList<>(labels.subList(from, Math.min(from + ACROSS, labels.size())));
      while (row.size() < ACROSS) {
        row.add(Block.Paragraph.of(""));
      }
      blocks.add(row(row));
    }
    return Optional.of(new Section("Labels for parts", blocks));
  }

  /** Steps by the parts that they are about, in the order of the work. */
  private Map<Part, List<Integer>> steps() {
    Map<Part, List<Integer>> steps = new LinkedHashMap<>();
    for (PlannedStep step : plan.steps()) {
      for (String mark : step.parts()) {
        steps
            .computeIfAbsent(new Part(step.caseName(), mark), _ -> new ArrayList<>())
            .add(step.number());
      }
    }
    return steps;
  }

  private List<Block> label(Part part, List<Integer> steps) {
    String numbers = steps.stream().map(n -> Integer.toString(n)).collect(Collectors.joining(", "));
    String which = (steps.size() == 1 ? "Step " : "Steps ") + numbers;
    return codes
        .of(part.caseName, part.mark)
        .<List<Block>>map(
            code ->
                List.of(
                    new Block.Beside(
                        List.of(new Block.Figure(code, "")),
                        SHARE,
                        List.of(
                            new Block.Paragraph(Prose.bold(part.caseName + " " + part.mark)),
                            Block.Paragraph.of(which)))))
        .orElse(List.of());
  }

  private static Block row(List<Block> labels) {
    return labels.size() == 1
        ? labels.getFirst()
        : new Block.Beside(
            List.of(labels.getFirst()),
            1.0 / labels.size(),
            List.of(row(labels.subList(1, labels.size()))));
  }
}
