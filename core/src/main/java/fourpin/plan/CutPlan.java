package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.casework.Finding;
import fourpin.job.Job;
import fourpin.measure.Figure;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * How parts come out of stock, for parts that belong to no case.
 *
 * @param job title, unit, paper, currency and settings; without cases, materials and stock
 * @param wanted what was asked for, by material
 * @param materials in the order in which they are wanted
 * @param yields of boards whose thickness is stated, in the same order
 * @param cautions for the saw
 * @param findings worst first
 * @param figures every figure that can be explained
 */
public record CutPlan(
    Job job,
    List<Wanted> wanted,
    List<CutMaterial> materials,
    List<Yield> yields,
    List<Caution> cautions,
    List<Finding> findings,
    List<Figure> figures) {

  public CutPlan {
    wanted = List.copyOf(wanted);
    materials = List.copyOf(materials);
    yields = List.copyOf(yields);
    cautions = List.copyOf(cautions);
    findings = List.copyOf(findings);
    figures = List.copyOf(figures);
  }

  /** What the stock to be bought comes to, as far as it has prices; nothing where none has one. */
  public Optional<BigDecimal> priceToBuy() {
    return materials.stream()
        .flatMap(material -> material.stock().stream())
        .flatMap(use -> use.together().stream())
        .reduce(BigDecimal::add);
  }

  /** Whether every part has a place. */
  public boolean complete() {
    return findings.stream().noneMatch(Finding::isGrave);
  }
}
