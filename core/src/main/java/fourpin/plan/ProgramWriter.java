package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.plan.BenchProgram.CaseSteps;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Writes the whole program: what is for all cases first, then case by case. */
final class ProgramWriter {

  private final Job job;
  private final List<CaseBoring> borings;
  private final List<PlannedStep> printed = new ArrayList<>();

  ProgramWriter(Job job, List<CaseBoring> borings) {
    this.job = job;
    this.borings = borings;
  }

  BenchProgram write(Boring boring) {
    measure(boring);
    List<CaseSteps> cases = new ArrayList<>();
    for (BuiltCase built : boring.cases()) {
      CaseProgram program =
          new CaseProgram(job, built, grids(boring, built), borings, boring.cases());
      cases.add(new CaseSteps(built.order().name(), program.steps()));
      program.printed().forEach(this::add);
    }
    return new BenchProgram(cases, printed);
  }

  private static List<BayGrid> grids(Boring boring, BuiltCase built) {
    return boring.grids().stream().filter(g -> g.caseName().equals(built.order().name())).toList();
  }

  /** Thickness decides every joint, so it comes first. */
  private void measure(Boring boring) {
    Stream<String> used =
        boring.cases().stream()
            .flatMap(c -> c.parts().stream())
            .map(Part::material)
            .flatMap(this::sold)
            .distinct();
    used.map(job::material).forEach(this::measure);
  }

  /** What a material is cut from: itself, or what its layers come from. */
  private Stream<String> sold(String name) {
    Material material = job.material(name);
    return material.isCutInLayers()
        ? material.layers().stream().flatMap(layer -> layer.cutFrom().stream())
        : Stream.of(name);
  }

  private void measure(Material material) {
    String thickness = job.style().text(material.thickness());
    add(
        new PlannedStep(
            Stage.MEASURE,
            "",
            List.of(),
            "Measure the thickness of "
                + material.name()
                + " with a calliper near every corner of every piece. This plan holds for "
                + thickness
                + ".",
            List.of(),
            "Where it differs from "
                + thickness
                + ", enter what you measured as the material's measured thickness and plan again"
                + " before anything is cut.",
            material.kind() == Material.Kind.GLASS ? List.of(Cautions.GLASS) : List.of()));
  }

  private void add(PlannedStep step) {
    printed.add(step.numbered(printed.size() + 1));
  }
}
