package fourpin.shop.line;

import fourpin.casework.Finding;
import fourpin.measure.Figure;
import fourpin.measure.Unit;
import fourpin.plan.CutMaterial;
import fourpin.plan.CutPlan;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.Yield;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the terminal tells of a cutting. */
final class CutSummary {

  private final CutPlan plan;
  private final Unit unit;

  private CutSummary(CutPlan plan) {
    this.plan = plan;
    this.unit = plan.job().unit();
  }

  static List<String> of(CutPlan plan) {
    return new CutSummary(plan).lines().toList();
  }

  private Stream<String> lines() {
    return Stream.of(
            plan.materials().stream().flatMap(this::lines),
            plan.priceToBuy().map(CutSummary::toBuy).stream(),
            plan.yields().stream().map(this::line),
            plan.findings().stream().map(CutSummary::line))
        .flatMap(lines -> lines);
  }

  private Stream<String> lines(CutMaterial material) {
    return material.layouts().stream()
        .flatMap(l -> Stream.concat(Stream.of(line(material, l)), unproven(l.gap())));
  }

  private static String line(CutMaterial material, StockLayout layout) {
    return material.material()
        + ", "
        + layout.title()
        + ": "
        + layout.layout().sheets()
        + "; no layout needs fewer than "
        + layout.layout().bound().sheets();
  }

  /** The figure's inputs are what the layouts come to, and what none comes below. */
  private Stream<String> unproven(Figure gap) {
    return gap.value().value() > 0
        ? Stream.of(
            gap.title()
                + " "
                + gap.value().text(unit)
                + " ("
                + gap.inputs().getFirst().value().text(unit)
                + ", least "
                + gap.inputs().getLast().value().text(unit)
                + ")")
        : Stream.empty();
  }

  private static String toBuy(BigDecimal price) {
    return "To be bought, where it has a price: " + price.toPlainString();
  }

  private String line(Yield yield) {
    return yield.material()
        + ": "
        + yield.taken().value().text(unit)
        + " taken, "
        + yield.inParts().value().text(unit)
        + " in parts, yield "
        + yield.share().value().text(unit);
  }

  static String line(Finding finding) {
    return finding.severity().name().toLowerCase(Locale.ROOT) + ": " + finding.what();
  }
}
