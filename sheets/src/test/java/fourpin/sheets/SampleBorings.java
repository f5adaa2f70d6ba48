package fourpin.sheets;

import fourpin.boring.BayGrid;
import fourpin.boring.Boring;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Method;
import fourpin.boring.way.WayAnswer;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.plan.BenchProgram;
import fourpin.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Ways of boring set up by hand for planned cases, so that pages can be tested by themselves. */
public final class SampleBorings {

  /** Holes of the guide below the lowest that is bored, which are masked or left. */
  private static final int SPARE = 2;

  private SampleBorings() {}

  /** Each case with a guide for all of its bays, which must be alike. */
  public static List<CaseBoring> guided(Plan plan) {
    return plan.cases().stream().map(built -> boring(built, grids(plan, built))).toList();
  }

  /** Each case with a method of one's own. */
  public static List<CaseBoring> with(Plan plan, Method method) {
    return plan.cases().stream()
        .map(built -> boring(built, grids(plan, built), Way.STORY_STICK, method))
        .toList();
  }

  /** The plan with its rows bored so. */
  public static Plan plan(Plan plan, List<CaseBoring> borings) {
    Boring boring = new Boring(plan.cases(), plan.grids(), List.of());
    return new Plan(
        plan.job(),
        plan.cases(),
        plan.grids(),
        borings,
        plan.levelness(),
        plan.mistakes(),
        plan.shelves(),
        plan.standing(),
        plan.cutList(),
        plan.materials(),
        plan.hardware(),
        plan.tools(),
        BenchProgram.of(plan.job(), boring, borings).printed(),
        plan.totals(),
        plan.findings(),
        plan.figures());
  }

  private static List<BayGrid> grids(Plan plan, BuiltCase built) {
    return plan.grids().stream().filter(g -> g.caseName().equals(built.order().name())).toList();
  }

  private static CaseBoring boring(BuiltCase built, List<BayGrid> grids) {
    return boring(built, grids, Way.CENTRING_GUIDE, method(built, grids));
  }

  private static CaseBoring boring(
      BuiltCase built, List<BayGrid> grids, Way chosen, Method method) {
    List<WayAnswer> answers =
        Stream.of(Way.values()).map(way -> answer(built, way, chosen, method)).toList();
    return new CaseBoring(
        built.order().name(),
        grids,
        answers,
        chosen,
        "It costs least of the ways that keep shelves level, 84.50 against 131.00 for the next.",
        List.of());
  }

  private static WayAnswer answer(BuiltCase built, Way way, Way chosen, Method method) {
    return way == chosen || way == Way.STORY_STICK
        ? new WayAnswer(
            way,
            Verdict.POSSIBLE,
            List.of(),
            List.of(),
            Optional.of(method),
            List.of(),
            figures(built, way))
        : new WayAnswer(
            way,
            Verdict.NOT_POSSIBLE,
            List.of(new Reason("no tool of this kind is at hand", "state one in the shop file")),
            List.of(),
            Optional.empty(),
            List.of(),
            List.of());
  }

  private static List<Figure> figures(BuiltCase built, Way way) {
    return List.of(
        figure(built, way, "set-ups", Quantity.count(1)),
        figure(built, way, "holes", Quantity.count(672)),
        figure(built, way, "minutes", Quantity.of(84.5, QuantityUnit.TIME)),
        figure(built, way, "panels/1/cost", Quantity.of(9876.5, QuantityUnit.MONEY)),
        figure(built, way, "cost", Quantity.of(84.5, QuantityUnit.MONEY)));
  }

  private static Figure figure(BuiltCase built, Way way, String what, Quantity value) {
    return new Figure(
        Figure.id(built.order().name(), "boring", way.key(), what),
        what + " of the sample",
        value,
        "",
        List.of(),
        Source.GEOMETRY);
  }

  /** A bored guide, twice as wide as the front row is far in. */
  private static Method.Guided method(BuiltCase built, List<BayGrid> grids) {
    BayGrid grid = grids.getFirst();
    Guide guide = guide(built, grid);
    BitSetting bit =
        new BitSetting(
            "self-centring bit with a 3/8 in nose",
            grid.diameter(),
            SampleJobs.in("3/8"),
            guide.thickness(),
            grid.depth(),
            SampleJobs.in("1/16"),
            SampleJobs.in("5/16"));
    return new Method.Guided(Method.How.BY_HAND, guide, bit, clampings(built, grids, guide));
  }

  private static Guide guide(BuiltCase built, BayGrid grid) {
    Part side = built.part("L");
    Length across = grid.rows().getFirst().y().minus(side.box().at(Face.FRONT));
    Length zero = side.box().at(Face.BOTTOM);
    Length first = grid.levels().getFirst().height().minus(zero);
    List<GuideHole> holes = new ArrayList<>();
    int spare = (int) Math.min(SPARE, first.wholeTimes(grid.pitch()));
    Length last = grid.levels().getLast().height().minus(zero);
    Length along = first.minus(grid.pitch().times(spare));
    for (int number = 1; !along.isMoreThan(last); number++) {
      boolean bored = isLevel(grid, along.plus(zero));
      holes.add(
          new GuideHole(
              number,
              along,
              across,
              SampleJobs.in("3/8"),
              bored ? Guide.Use.BORED : Guide.Use.MASKED));
      along = along.plus(grid.pitch());
    }
    return new Guide(
        "G1",
        new Guide.Make.Bored("offcut"),
        "MDF",
        last.plus(SampleJobs.in("2")),
        across.times(2).plus(SampleJobs.in("1/2")),
        SampleJobs.in("1/4"),
        holes,
        SampleJobs.in("3/4"));
  }

  private static boolean isLevel(BayGrid grid, Length height) {
    return grid.levels().stream().anyMatch(l -> l.height().equals(height));
  }

  private static List<Clamping> clampings(BuiltCase built, List<BayGrid> grids, Guide guide) {
    return grids.stream()
        .flatMap(
            grid -> {
              BaySpace bay = built.bays().get(grid.bay() - 1);
              return Stream.of(
                  clamping(built, grid, bay.left(), Face.RIGHT, guide, BayGrid.Row.Name.FRONT),
                  clamping(built, grid, bay.left(), Face.RIGHT, guide, BayGrid.Row.Name.BACK),
                  clamping(built, grid, bay.right(), Face.LEFT, guide, BayGrid.Row.Name.FRONT),
                  clamping(built, grid, bay.right(), Face.LEFT, guide, BayGrid.Row.Name.BACK));
            })
        .toList();
  }

  private static Clamping clamping(
      BuiltCase built, BayGrid grid, String mark, Face face, Guide guide, BayGrid.Row.Name name) {
    Part part = built.part(mark);
    BayGrid.Row row = grid.rows().stream().filter(r -> r.name() == name).findFirst().orElseThrow();
    Length fromFront = row.y().minus(part.box().at(Face.FRONT));
    Length fromBack = part.box().at(Face.BACK).minus(row.y());
    Length across = guide.holes().getFirst().across();
    Length foot = built.part("L").box().at(Face.BOTTOM).minus(part.box().at(Face.BOTTOM));
    boolean front = name == BayGrid.Row.Name.FRONT;
    return new Clamping(
        grid.bay(),
        mark,
        face,
        name,
        front ? Face.FRONT : Face.BACK,
        front ? fromFront.minus(across) : fromBack.minus(guide.width().minus(across)),
        foot,
        new Bearing.End(),
        List.of(new Reach(Optional.empty(), bored(guide))));
  }

  private static List<Integer> bored(Guide guide) {
    return guide.holes().stream()
        .filter(h -> h.use() == Guide.Use.BORED)
        .map(GuideHole::number)
        .toList();
  }

  /** The same guide in two places: the second is found by a pin in the last hole of the first. */
  public static List<Reach> stepped(Guide guide) {
    int last = guide.holes().getLast().number();
    List<Integer> first = IntStream.rangeClosed(1, last).boxed().toList();
    return List.of(
        new Reach(Optional.empty(), first),
        new Reach(Optional.of(new Clamping.Step(1, last)), first.subList(1, last)));
  }
}
