package fourpin.plan;

import fourpin.boring.way.Purchase;
import fourpin.boring.way.Purchase.Need;
import fourpin.boring.way.Purchase.Price;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What tools to buy cost, how much of it this job bears, and which of it nobody has stated. */
final class ToolCosts {

  private static final double PER_CENT = 100;

  private final Settings settings;
  private final List<Purchase> tools;

  ToolCosts(Settings settings, List<ToolItem> items) {
    this.settings = settings;
    this.tools = items.stream().map(ToolItem::tool).toList();
  }

  /** None where nothing with a price is to be bought. */
  List<Figure> figures() {
    return borne().map(borne -> List.of(inFull(), borne)).orElse(List.of());
  }

  /** What this job bears of the price of its tools; none where none has a price. */
  Optional<Figure> borne() {
    if (tools.stream().allMatch(t -> t.price().isEmpty())) {
      return Optional.empty();
    }
    Figure full = inFull();
    Setting setting = Setting.TOOLS_BORNE;
    double share = settings.number(setting);
    return Optional.of(
        new Figure(
            "job/tools-borne",
            "of the tools to buy, borne by this job",
            money(full.value().value() * share / PER_CENT),
            "P b / 100",
            List.of(
                new Input("P", full.title(), full.value(), full.source()),
                new Input(
                    "b",
                    setting.meaning(),
                    Quantity.of(share, QuantityUnit.RATIO),
                    settings.source(setting))),
            full.source()));
  }

  private Figure inFull() {
    List<Input> inputs = new ArrayList<>();
    for (Purchase tool : tools) {
      for (Price price : tool.price().stream().toList()) {
        String symbol = "p" + (inputs.size() + 1);
        Quantity amount = money(price.amount().doubleValue());
        inputs.add(new Input(symbol, tool.name(), amount, price.source()));
      }
    }
    boolean all = tools.stream().allMatch(t -> t.price().isPresent());
    return new Figure(
        "job/tools-to-buy",
        (all ? "tools" : "priced tools") + " to buy",
        money(Purchase.sum(tools).doubleValue()),
        "p1 + p2 + ...",
        inputs,
        Purchase.source(tools).orElse(Source.SHOP_FILE));
  }

  private static Quantity money(double amount) {
    return Quantity.of(amount, QuantityUnit.MONEY);
  }

  /** Names the tools that no file states, and what is counted for them. */
  static List<Finding> findings(Job job, List<ToolItem> items) {
    List<Purchase> granted =
        items.stream().map(ToolItem::tool).filter(t -> t.need() == Need.TAKEN_FOR_GRANTED).toList();
    return granted.isEmpty() ? List.of() : List.of(notStated(job, granted));
  }

  private static Finding notStated(Job job, List<Purchase> tools) {
    return new Finding(
        Severity.NOTE,
        "tool-not-stated",
        "The ways taken need what no file states: "
            + String.join("; ", tools.stream().map(t -> counted(job, t)).toList())
            + ".",
        List.of(),
        Place.JOB,
        List.of(
            new Remedy(
                "state each in the shop file, with its price if it is to be bought", "nothing")));
  }

  private static String counted(Job job, Purchase tool) {
    return tool.name()
        + tool.price()
            .map(p -> money(p.amount().doubleValue()).text(job.unit()))
            .map(p -> ", counted at " + job.currency() + p + " by bit-price")
            .orElse(", whose price is not stated and not counted");
  }
}
