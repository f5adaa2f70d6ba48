package fourpin.plan;

import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.plan.MaterialPlan.StockUse;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Holes, boring time, cost of the stock and of tools to buy, and a price for stock, tools and
 * boring; other work is not counted.
 */
final class Costs {

  private static final double MINUTES_PER_HOUR = 60;
  private static final double PER_CENT = 100;

  private final Settings settings;

  Costs(Job job) {
    this.settings = job.settings();
  }

  /**
   * @param borings the ways that the plan takes
   * @param tools what they need bought
   */
  List<Figure> figures(
      List<BuiltCase> cases,
      List<MaterialPlan> materials,
      List<CaseBoring> borings,
      List<ToolItem> tools) {
    List<Figure> figures = new ArrayList<>();
    ToolCosts bought = new ToolCosts(settings, tools);
    Figure minutes = minutes(borings);
    figures.add(holes(cases));
    figures.add(minutes);
    figures.addAll(bought.figures());
    List<StockUse> used = materials.stream().flatMap(m -> m.stock().stream()).toList();
    boolean some = used.stream().anyMatch(u -> u.each().isPresent());
    if (some) {
      boolean all = used.stream().allMatch(u -> u.each().isPresent());
      String which = all ? "stock" : "priced stock";
      figures.add(cost("stock-to-buy", which + " to buy", used, Counted.TO_BUY));
      Figure stock = cost("stock-used", which + " used, on hand and bought", used, Counted.ALL);
      figures.add(stock);
      figures.add(price(stock, minutes, bought, all ? "stock" : "the priced stock"));
    }
    return figures;
  }

  /** Names the stock that states no price, so that nobody takes a part of the price for all. */
  static List<Finding> findings(List<MaterialPlan> materials) {
    List<String> without = new ArrayList<>();
    boolean priced = false;
    for (MaterialPlan material : materials) {
      for (StockUse use : material.stock()) {
        priced |= use.each().isPresent();
        if (use.each().isEmpty()) {
          without.add(material.material().name() + " " + use.size());
        }
      }
    }
    return without.isEmpty() ? List.of() : List.of(unpriced(without, priced));
  }

  private static Finding unpriced(List<String> without, boolean others) {
    return new Finding(
        Severity.NOTE,
        "no-price",
        "No price is stated for "
            + String.join("; ", without)
            + (others
                ? ": the totals count the priced stock only."
                : ": no price is worked out for this job."),
        List.of(),
        Place.JOB,
        List.of(new Remedy("state the price of one of each with the stock", "nothing")));
  }

  private Figure holes(List<BuiltCase> cases) {
    long count = cases.stream().mapToLong(Costs::holes).sum();
    return new Figure(
        "job/holes",
        "holes to bore for supports",
        Quantity.count(count),
        "counted on every panel of every copy",
        List.of(),
        Source.GEOMETRY);
  }

  /** A hole on the line between two cleat strips is bored once. */
  private static long holes(BuiltCase built) {
    long each =
        CleatBlank.cut(built, built.parts()).stream()
            .flatMap(p -> p.features().stream())
            .filter(f -> f instanceof Hole hole && hole.use() == Hole.Use.SUPPORT)
            .count();
    return each * built.order().quantity();
  }

  /** Making guides, setting up, clamping and boring. */
  private static Figure minutes(List<CaseBoring> borings) {
    double sum = 0;
    List<Input> inputs = new ArrayList<>();
    for (CaseBoring boring : borings) {
      for (Figure each : boring.minutes().stream().toList()) {
        String symbol = "t" + (inputs.size() + 1);
        String meaning = boring.caseName() + ", " + boring.chosen().title();
        sum += each.value().value();
        inputs.add(new Input(symbol, meaning, each.value(), each.source()));
      }
    }
    return new Figure(
        "job/boring-time",
        "time to bore and groove for supports, by the ways taken",
        Quantity.of(sum, QuantityUnit.TIME),
        "t1 + t2 + ...",
        inputs,
        Source.GEOMETRY);
  }

  private enum Counted {
    TO_BUY,
    ALL
  }

  private Figure cost(String id, String title, List<StockUse> used, Counted counted) {
    BigDecimal sum = BigDecimal.ZERO;
    List<Input> inputs = new ArrayList<>();
    for (StockUse use : used) {
      long count = counted == Counted.TO_BUY ? use.buy() : use.count();
      if (count > 0 && use.each().isPresent()) {
        BigDecimal each = use.each().get();
        sum = sum.add(each.multiply(BigDecimal.valueOf(count)));
        int number = inputs.size() / 2 + 1;
        inputs.add(new Input("n" + number, use.size(), Quantity.count(count), Source.GEOMETRY));
        inputs.add(
            new Input("p" + number, "price of one", money(each.doubleValue()), Source.STATED));
      }
    }
    return new Figure(
        "job/" + id, title, money(sum.doubleValue()), "n1 p1 + n2 p2 + ...", inputs, Source.STATED);
  }

  private Figure price(Figure stock, Figure minutes, ToolCosts tools, String which) {
    double materials = stock.value().value() * share(Setting.WASTE) * share(Setting.MARK_UP);
    double work = minutes.value().value() / MINUTES_PER_HOUR * settings.number(Setting.RATE);
    Optional<Figure> borne = tools.borne();
    double bought = borne.map(f -> f.value().value()).orElse(0.0);
    List<Input> inputs = new ArrayList<>();
    inputs.add(new Input("S", "stock used", stock.value(), Source.STATED));
    inputs.add(setting("w", Setting.WASTE));
    inputs.add(setting("u", Setting.MARK_UP));
    inputs.add(new Input("t", "time to bore", minutes.value(), minutes.source()));
    inputs.add(setting("r", Setting.RATE));
    borne.ifPresent(f -> inputs.add(new Input("T", f.title(), f.value(), f.source())));
    inputs.add(setting("c", Setting.CONTINGENCY));
    return new Figure(
        "job/price",
        "price of "
            + which
            + (borne.isPresent() ? ", tools to buy and boring" : " and boring")
            + "; hardware and other work not counted",
        money((materials + work + bought) * share(Setting.CONTINGENCY)),
        "(S (1 + w/100) (1 + u/100) + t r / 60"
            + (borne.isPresent() ? " + T" : "")
            + ") (1 + c/100)",
        inputs,
        Source.practice("cost, mark-up and contingency"));
  }

  private double share(Setting setting) {
    return 1 + settings.number(setting) / PER_CENT;
  }

  private Input setting(String symbol, Setting setting) {
    Quantity value = Quantity.of(settings.number(setting), QuantityUnit.RATIO);
    return new Input(symbol, setting.meaning(), value, settings.source(setting));
  }

  private static Quantity money(double amount) {
    return Quantity.of(amount, QuantityUnit.MONEY);
  }
}
