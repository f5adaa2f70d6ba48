package fourpin.plan;

import fourpin.boring.BayFigures;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.tolerance.Levelness;
import fourpin.boring.tolerance.Tolerances;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.StripPitch;
import fourpin.boring.way.Ways;
import fourpin.casework.BuiltCase;
import fourpin.casework.Casework;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.contents.ContentChecks;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import fourpin.strength.Strength;
import fourpin.strength.StrengthChecker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** From the job to the plan. */
public final class Planner {

  private final Job stated;

  /** As stated, but at the pitch that a strip gives where the maker bores through one. */
  private final Job job;

  private final List<Finding> findings = new ArrayList<>();

  private final FoundLayouts found;

  private Planner(Job stated, FoundLayouts found) {
    this.stated = stated;
    this.found = found;
    this.job = StripPitch.taken(stated);
  }

  /**
   * Plans a job. The same job gives the same plan.
   *
   * <p>A case that can't be built is left out of everything but the findings.
   */
  public static Plan plan(Job job) {
    return plan(job, FoundLayouts.NONE);
  }

  /**
   * The same with layouts that were found before. The same job and layouts give the same plan.
   *
   * @param found what stands in place of searches where it fits
   */
  public static Plan plan(Job job, FoundLayouts found) {
    return new Planner(job, found).plan();
  }

  /** Holes that go through a panel are told already; no steps can make such a panel as planned. */
  private List<BuiltCase> sound(List<BuiltCase> cases) {
    return cases.stream()
        .filter(built -> findings.stream().noneMatch(f -> pierces(f, built)))
        .toList();
  }

  private static boolean pierces(Finding finding, BuiltCase built) {
    return finding.kind().equals("hole-floor")
        && finding.severity() == Finding.Severity.ERROR
        && finding.place().caseName().equals(built.order().name());
  }

  private Plan plan() {
    Casework casework = CaseworkBuilder.build(job);
    findings.addAll(casework.findings());
    Boring boring = Borer.bore(job, casework);
    Tolerances tolerances = new Tolerances(job.currency());
    Ways ways = Ways.of(job, boring, tolerances.precision());
    findings.addAll(known(casework, boring, ways));
    findings.addAll(StripPitch.notes(stated));
    findings.addAll(ways.findings());
    findings.addAll(each(ways.borings(), boring.cases(), tolerances::rocking));
    Strength strength = StrengthChecker.check(job, boring.cases());
    findings.addAll(strength.findings());
    for (BuiltCase built : boring.cases()) {
      findings.addAll(ContentChecks.of(built, job.style()));
      findings.addAll(new GlassKinds(job, built).findings());
    }
    BenchProgram program = BenchProgram.of(job, boring, ways.borings());
    findings.addAll(ProgramCheck.of(sound(boring.cases()), program));
    List<CutItem> cutList = CutListBuilder.of(job, boring.cases());
    findings.addAll(MaterialChecks.of(job, cutList));
    StockPlanner stock = new StockPlanner(job, found);
    List<MaterialPlan> materials = stock.plan(cutList);
    findings.addAll(stock.findings());
    findings.addAll(Costs.findings(materials));
    List<ToolItem> tools = ToolItem.of(ways.borings());
    findings.addAll(ToolCosts.findings(job, tools));
    List<Figure> totals = totals(boring.cases(), materials, ways.borings(), tools);
    List<Levelness> levelness =
        LazyList.of(() -> each(ways.borings(), boring.cases(), tolerances::of));
    List<MistakeReport> mistakes =
        LazyList.of(() -> Mistakes.of(job, boring, program, ways.borings()));
    List<Finding> all = List.copyOf(findings);
    return new Plan(
        stated,
        boring.cases(),
        boring.grids(),
        ways.borings(),
        levelness,
        mistakes,
        strength.shelves(),
        strength.cases(),
        cutList,
        materials,
        HardwareList.of(job, boring.cases(), boring.grids(), ways.borings(), strength.cases()),
        tools,
        new SmallCautions(cutList, materials).at(program.printed()),
        totals,
        sorted(all),
        LazyList.of(
            () ->
                figures(
                    totals,
                    strength,
                    boring,
                    ways.borings(),
                    levelness,
                    mistakes,
                    materials,
                    all)));
  }

  /** Cures of holes that meet ask for the bit, which is known once the ways are. */
  private List<Finding> known(Casework casework, Boring boring, Ways ways) {
    return boring.rowsMeet()
        ? Borer.bore(job, casework, ways.points()).findings()
        : boring.findings();
  }

  /** What is told of each boring and the case that is bored so. */
  private static <T> List<T> each(
      List<CaseBoring> borings,
      List<BuiltCase> cases,
      BiFunction<CaseBoring, BuiltCase, Optional<T>> told) {
    List<T> all = new ArrayList<>();
    for (CaseBoring boring : borings) {
      cases.stream()
          .filter(built -> built.order().name().equals(boring.caseName()))
          .forEach(built -> told.apply(boring, built).ifPresent(all::add));
    }
    return all;
  }

  private List<Figure> totals(
      List<BuiltCase> cases,
      List<MaterialPlan> materials,
      List<CaseBoring> borings,
      List<ToolItem> tools) {
    Weights weights = new Weights(job);
    List<Figure> totals = new ArrayList<>();
    for (BuiltCase built : cases) {
      totals.addAll(weights.figures(built, Figure.id(built.order().name())));
    }
    totals.addAll(new Costs(job).figures(cases, materials, borings, tools));
    return totals;
  }

  private static List<Figure> patterns(Boring boring) {
    return boring.grids().stream()
        .flatMap(
            grid ->
                boring.cases().stream()
                    .filter(built -> built.order().name().equals(grid.caseName()))
                    .flatMap(built -> BayFigures.of(built, grid).stream()))
        .toList();
  }

  /** Worst first; within a severity in the order they were found. */
  private static List<Finding> sorted(List<Finding> findings) {
    return findings.stream().sorted(Comparator.comparing(Finding::severity)).toList();
  }

  private static List<Figure> figures(
      List<Figure> totals,
      Strength strength,
      Boring bored,
      List<CaseBoring> borings,
      List<Levelness> levelness,
      List<MistakeReport> mistakes,
      List<MaterialPlan> materials,
      List<Finding> findings) {
    Map<String, Figure> byId = new LinkedHashMap<>();
    totals.forEach(f -> byId.putIfAbsent(f.id(), f));
    materials.stream()
        .flatMap(m -> m.layouts().stream())
        .flatMap(l -> l.near().figures().stream())
        .forEach(f -> byId.putIfAbsent(f.id(), f));
    strength.shelves().forEach(s -> s.figures().forEach(f -> byId.putIfAbsent(f.id(), f)));
    strength.cases().forEach(c -> c.figures().forEach(f -> byId.putIfAbsent(f.id(), f)));
    patterns(bored).forEach(f -> byId.putIfAbsent(f.id(), f));
    bored.cases().stream()
        .flatMap(built -> CaseBoring.opposite(built, borings).stream().map(o -> o.figure(built)))
        .forEach(f -> byId.putIfAbsent(f.id(), f));
    borings.forEach(b -> b.figures().forEach(f -> byId.putIfAbsent(f.id(), f)));
    borings.stream()
        .flatMap(b -> b.answers().stream())
        .forEach(a -> a.figures().forEach(f -> byId.putIfAbsent(f.id(), f)));
    mistakes.forEach(m -> m.figures().forEach(f -> byId.putIfAbsent(f.id(), f)));
    levelness.forEach(l -> l.figures().forEach(f -> byId.putIfAbsent(f.id(), f)));
    findings.forEach(f -> f.figures().forEach(figure -> byId.putIfAbsent(figure.id(), figure)));
    return List.copyOf(byId.values());
  }
}
