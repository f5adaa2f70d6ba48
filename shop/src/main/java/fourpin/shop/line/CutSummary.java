package fourpin.shop.line;

import fourpin.casework.Finding;
import fourpin.measure.Figure;
import fourpin.measure.Money;
import fourpin.measure.Unit;
import fourpin.plan.CutMaterial;
import fourpin.plan.CutPlan;
import fourpin.plan.HowNear;
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
            plan.findings().stream().flatMap(CutSummary::withCures))
        .flatMap(lines -> lines);
  }

  private Stream<String> lines(CutMaterial material) {
    return material.layouts().stream()
        .map(l -> material.material() + ", " + l.title() + ": " + line(l.near()) + onHand(l));
  }

  private String onHand(StockLayout layout) {
    return layout
        .onHand()
        .map(
            worth ->
                "; "
                    + worth.text(unit)
                    + " of the cost is the worth stated of stock on hand, not money to be spent")
        .orElse("");
  }

  private String line(HowNear near) {
    return switch (near.proof()) {
      case PROVEN -> line("no layout", near) + " to be the least";
      case NOT_PROVEN ->
          line("no layout", near) + ", at most " + text(near.gap()) + " above the least";
      case PARTS_LEFT_OUT -> ofPlaced(near);
    };
  }

  private String ofPlaced(HowNear near) {
    return near.sheets().value().value() == 0
        ? "no part has a place"
        : line("no layout of what has a place", near);
  }

  private String line(String none, HowNear near) {
    return text(near.sheets())
        + " ("
        + none
        + " needs fewer than "
        + text(near.fewest())
        + "), "
        + near.counted()
        + " "
        + text(near.cost())
        + " (none comes to less than "
        + text(near.least())
        + "): "
        + near.proof().words();
  }

  private String text(Figure figure) {
    return figure.value().text(unit);
  }

  private static String toBuy(BigDecimal price) {
    return "To be bought, where it has a price: " + Money.text(price);
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

  private static Stream<String> withCures(Finding finding) {
    return Stream.concat(
        Stream.of(line(finding)),
        finding.remedies().stream().map(cure -> "  " + Summary.cure(cure)));
  }

  static String line(Finding finding) {
    return finding.severity().name().toLowerCase(Locale.ROOT) + ": " + finding.what();
  }
}
