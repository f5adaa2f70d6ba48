package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.boring.tolerance.Levelness;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import fourpin.strength.CaseAnswer;
import fourpin.strength.ShelfAnswer;
import java.util.List;

/**
 * Everything that the maker needs to know. Whatever is shown anywhere comes from here.
 *
 * <p>What only the packet and explanations show is worked out when it is first looked into: {@code
 * levelness}, {@code mistakes}, {@code figures}, and much of the ways that were not taken.
 *
 * @param cases in space with every feature, shelves on their levels
 * @param borings how the bays of each case are bored, with the ways that were not taken
 * @param levelness how level shelves lie, for each of the borings that give them places
 * @param mistakes what may go wrong while rows are bored, tried on one panel of each case
 * @param standing how each case stands, bows and moves over the year
 * @param cutList of all cases together, in the order of the cases and their parts
 * @param materials layouts and stock by material, in the order of the job
 * @param hardware pins, screws, standards, banding ...
 * @param tools that the ways taken need and the shop does not have, or that no file states
 * @param steps in the order of work
 * @param totals figures of the whole job: weights, holes, minutes, costs, price
 * @param findings worst first
 * @param figures every figure of the plan that can be explained, {@code totals}, those of shelves,
 *     ways of boring, levelness and findings among them, each id once
 */
public record Plan(
    Job job,
    List<BuiltCase> cases,
    List<BayGrid> grids,
    List<CaseBoring> borings,
    List<Levelness> levelness,
    List<MistakeReport> mistakes,
    List<ShelfAnswer> shelves,
    List<CaseAnswer> standing,
    List<CutItem> cutList,
    List<MaterialPlan> materials,
    List<HardwareItem> hardware,
    List<ToolItem> tools,
    List<PlannedStep> steps,
    List<Figure> totals,
    List<Finding> findings,
    List<Figure> figures) {

  public Plan {
    cases = List.copyOf(cases);
    grids = List.copyOf(grids);
    borings = List.copyOf(borings);
    levelness = LazyList.copyOf(levelness);
    mistakes = LazyList.copyOf(mistakes);
    shelves = List.copyOf(shelves);
    standing = List.copyOf(standing);
    cutList = List.copyOf(cutList);
    materials = List.copyOf(materials);
    hardware = List.copyOf(hardware);
    tools = List.copyOf(tools);
    steps = List.copyOf(steps);
    totals = List.copyOf(totals);
    findings = List.copyOf(findings);
    figures = LazyList.copyOf(figures);
  }

  /** How many copies of its case a step is done in. */
  public int copies(PlannedStep step) {
    return job.cases().stream()
        .filter(order -> order.name().equals(step.caseName()))
        .mapToInt(CaseOrder::quantity)
        .findFirst()
        .orElse(1);
  }

  /** How many holes a step bores in all copies of its case together. */
  public int holes(PlannedStep step) {
    return step.holes() * copies(step);
  }

  /** The worst finding decides whether the plan may go to the bench. */
  public boolean readyForTheBench() {
    return findings.stream().noneMatch(Finding::isGrave);
  }
}
