package fourpin.shop.line;

import fourpin.casework.Finding;
import fourpin.measure.Figure;
import fourpin.measure.Unit;
import fourpin.plan.CutMaterial;
import fourpin.plan.CutPlan;
import fourpin.plan.HowNear;
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
        .map(l -> material.material() + ", " + l.title() + ": " + line(l.near()));
  }

  private String line(HowNear near) {
    String proof = near.proof().words();
    return text(near.sheets())
        + " (no layout needs fewer than "
        + text(near.fewest())
        + "), "
        + near.counted()
        + " "
        + text(near.cost())
        + " (none comes to less than "
        + text(near.least())
        + "): "
        + (near.proof() == HowNear.Proof.PROVEN
            ? proof + " to be the least"
            : proof + ", at most " + text(near.gap()) + " above the least");
  }

  private String text(Figure figure) {
    return figure.value().text(unit);
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
