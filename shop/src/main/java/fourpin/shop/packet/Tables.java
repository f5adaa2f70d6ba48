package fourpin.shop.packet;

import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import fourpin.plan.CutItem;
import fourpin.plan.HardwareItem;
import fourpin.plan.HardwareItem.Amount;
import fourpin.plan.MaterialPlan;
import fourpin.plan.MaterialPlan.StockUse;
import fourpin.plan.Plan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The cut list and the buying list for spreadsheets: lengths as printed, and as plain decimals in
 * inches and millimetres to reckon with.
 */
final class Tables {

  private static final int PLACES = 3;

  private final Plan plan;
  private final LengthStyle style;

  Tables(Plan plan) {
    this.plan = plan;
    this.style = plan.job().style();
  }

  Csv cutList() {
    List<String> header =
        List.of(
            "line",
            "case",
            "marks",
            "part",
            "material",
            "quantity",
            "length",
            "width",
            "thickness",
            "cut length",
            "cut width",
            "length in",
            "width in",
            "thickness in",
            "cut length in",
            "cut width in",
            "length mm",
            "width mm",
            "thickness mm",
            "cut length mm",
            "cut width mm",
            "grain",
            "edges",
            "when");
    return new Csv(header, plan.cutList().stream().map(this::row).toList());
  }

  private List<String> row(CutItem item) {
    return List.of(
        Integer.toString(item.line()),
        item.caseName(),
        String.join(" ", item.marks()),
        item.name(),
        item.material(),
        Integer.toString(item.quantity()),
        style.text(item.length().total()),
        style.text(item.width().total()),
        style.text(item.thickness()),
        style.text(item.cutLength().total()),
        style.text(item.cutWidth().total()),
        inches(item.length().total()),
        inches(item.width().total()),
        inches(item.thickness()),
        inches(item.cutLength().total()),
        inches(item.cutWidth().total()),
        mm(item.length().total()),
        mm(item.width().total()),
        mm(item.thickness()),
        mm(item.cutLength().total()),
        mm(item.cutWidth().total()),
        plain(item.grain()),
        item.banded().stream()
            .map(b -> b.edge() + ": " + b.what())
            .collect(Collectors.joining("; ")),
        plain(item.when()));
  }

  Csv buying() {
    List<String> header =
        List.of(
            "what",
            "size",
            "needed",
            "to buy",
            "price of one",
            "price from",
            "length",
            "length in",
            "length mm",
            "where");
    Stream<List<String>> stock =
        plan.materials().stream().flatMap(m -> m.stock().stream().map(s -> row(m, s)));
    return new Csv(
        header,
        Stream.of(stock, plan.hardware().stream().map(this::row), tools())
            .flatMap(rows -> rows)
            .toList());
  }

  /** Each is bought once. */
  private Stream<List<String>> tools() {
    return plan.tools().stream()
        .map(
            item ->
                List.of(
                    "tool: " + item.tool().name(),
                    item.tool().size(),
                    "1",
                    "1",
                    item.tool().price().map(p -> p.amount().toPlainString()).orElse(""),
                    item.tool().price().map(p -> p.source().text()).orElse(""),
                    "",
                    "",
                    "",
                    item.where()));
  }

  private static List<String> row(MaterialPlan material, StockUse use) {
    return List.of(
        material.material().name(),
        use.size(),
        Long.toString(use.count()),
        Long.toString(use.buy()),
        use.each().map(BigDecimal::toPlainString).orElse(""),
        use.each().map(_ -> Source.STATED.text()).orElse(""),
        "",
        "",
        "",
        "");
  }

  private List<String> row(HardwareItem item) {
    return switch (item.amount()) {
      case Amount.Pieces(long needed, long buy) ->
          row(item, Long.toString(needed), Long.toString(buy), List.of("", "", ""));
      case Amount.CutLengths(long needed) ->
          row(item, Long.toString(needed), "", List.of("", "", ""));
      case Amount.Running(_, Length buy) ->
          row(item, "", "", List.of(style.text(buy), inches(buy), mm(buy)));
      case Amount.ToSuit(Quantity covers) ->
          row(item, covers.text(style.unit()), "to suit", List.of("", "", ""));
    };
  }

  private static List<String> row(
      HardwareItem item, String needed, String buy, List<String> lengths) {
    List<String> cells = new ArrayList<>(List.of(item.name(), item.size(), needed, buy, "", ""));
    cells.addAll(lengths);
    cells.add(item.where());
    return cells;
  }

  static String mm(Length length) {
    return decimal(length, Unit.MILLIMETRE);
  }

  private static String inches(Length length) {
    return decimal(length, Unit.INCH);
  }

  /** With three places at most, which is finer than any saw. */
  private static String decimal(Length length, Unit unit) {
    BigDecimal exact =
        BigDecimal.valueOf(length.picometres())
            .divide(BigDecimal.valueOf(unit.picometres()), PLACES, RoundingMode.HALF_UP);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }

  private static String plain(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
