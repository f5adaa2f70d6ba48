package fourpin.sheets.packet;

import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method.Guided;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.GuideView;
import fourpin.sheets.drawings.PanelKinds;
import fourpin.sheets.drawings.PanelView;
import fourpin.sheets.paint.Drawing;
import java.util.List;
import java.util.stream.Stream;

/**
 * What to look at in each step by itself, on a screen: the panel with the guide clamped as the step
 * says, the guide that it makes, or the panel that it cuts joints in. Nothing else of the packet is
 * composed for it.
 */
public final class BenchPictures {

  /** Millimetres of paper: smaller than a page, so that letters come out larger on a screen. */
  private static final double WIDTH = 120;

  private static final double HEIGHT = 150;

  private final Plan plan;
  private final Words words;
  private final Drafter drafter;
  private final List<Pictured> onSheets;

  /** A picture of a sheet with the numbers of the steps that it is for. */
  private record Pictured(DrillingSheet sheet, List<Integer> numbers, Drawing drawing) {}

  public BenchPictures(Plan plan) {
    this.plan = plan;
    this.words = new Words(plan.job());
    this.drafter = Drafter.of(plan.job(), WIDTH, HEIGHT);
    this.onSheets = DrillingSheet.of(plan).stream().flatMap(this::pictures).toList();
  }

  private Stream<Pictured> pictures(DrillingSheet sheet) {
    List<Integer> lying = numbers(sheet.lying());
    return DrillingPicture.of(plan, words, sheet, 1).stream()
        .map(picture -> pictured(sheet, lying, picture));
  }

  /** How a panel lies is seen on the first of its pictures. */
  private Pictured pictured(DrillingSheet sheet, List<Integer> lying, DrillingPicture picture) {
    List<Integer> all = Stream.concat(numbers(picture.steps()).stream(), lying.stream()).toList();
    return new Pictured(sheet, all, picture.draw(drafter));
  }

  private static List<Integer> numbers(List<PlannedStep> steps) {
    return steps.stream().map(PlannedStep::number).toList();
  }

  /** In the order to look at them; none for steps that no picture tells more of. */
  public List<Drawing> of(PlannedStep step) {
    List<Drawing> own =
        onSheets.stream()
            .filter(p -> p.numbers().contains(step.number()))
            .map(Pictured::drawing)
            .limit(1)
            .toList();
    return own.isEmpty() ? Stream.concat(guides(step), panels(step)).toList() : own;
  }

  private Stream<Drawing> guides(PlannedStep step) {
    return plan.borings().stream()
        .map(CaseBoring::method)
        .flatMap(
            method -> method instanceof Guided guided ? Stream.of(guided.guide()) : Stream.empty())
        .filter(guide -> step.typed().stream().anyMatch(t -> GuidePages.makes(t, guide.mark())))
        .map(guide -> new GuideView(drafter, guide).draw());
  }

  /** Of the one part that something is cut out of, each face that is worked. */
  private Stream<Drawing> panels(PlannedStep step) {
    boolean one = step.parts().size() == 1 && !step.typed().isEmpty();
    return plan.cases().stream()
        .filter(built -> one && built.order().name().equals(step.caseName()))
        .flatMap(built -> panels(built, built.part(step.parts().getFirst())));
  }

  private Stream<Drawing> panels(BuiltCase built, Part part) {
    List<BayGrid> grids =
        plan.grids().stream().filter(g -> g.caseName().equals(built.order().name())).toList();
    return part.features().isEmpty()
        ? Stream.empty()
        : PanelKinds.facesToDraw(part).stream()
            .map(face -> new PanelView(drafter, built, grids, part, face).draw());
  }
}
