package fourpin.plan;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.cutting.Fault;
import fourpin.cutting.Grain;
import fourpin.cutting.Layout;
import fourpin.cutting.Origin;
import fourpin.cutting.Part;
import fourpin.cutting.Saw;
import fourpin.cutting.SheetCutter;
import fourpin.cutting.SheetGrain;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StockSheet;
import fourpin.cutting.Trim;
import fourpin.cutting.Unplaced;
import fourpin.cutting.VirtualSaw;
import fourpin.job.BoardStock;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.SheetStock;
import fourpin.job.Supply;
import fourpin.measure.Length;
import fourpin.plan.CutItem.Direction;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.MaterialPlan.StockUse;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lays the cut list out on the stock, material by material, and has every layout sawn on trial. */
final class StockPlanner {

  private static final int COIN_DECIMALS = 2;

  private final Job job;
  private final SheetCutter cutter;
  private final List<Finding> findings = new ArrayList<>();

  StockPlanner(Job job, SheetCutter cutter) {
    this.job = job;
    this.cutter = cutter;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** Plans every material that something is cut from; glass is cut by the glazier. */
  List<MaterialPlan> plan(List<CutItem> cutList) {
    List<MaterialPlan> plans = new ArrayList<>();
    for (Material material : job.materials()) {
      List<CutItem> items =
          cutList.stream().filter(i -> i.material().equals(material.name())).toList();
      if (!items.isEmpty() && material.kind() != Material.Kind.GLASS) {
        plans.add(plan(material, items));
      }
    }
    return plans;
  }

  private MaterialPlan plan(Material material, List<CutItem> items) {
    List<Stock> stock = stock(material);
    if (stock.isEmpty()) {
      noStock(material, items);
      return new MaterialPlan(material, List.of(), List.of());
    }
    List<StockLayout> layouts = new ArrayList<>();
    Map<String, Long> taken = new LinkedHashMap<>();
    for (Lot lot : lots(material, items, stock)) {
      SheetProblem problem = lot.problem(taken);
      Layout layout = cutter.cut(problem);
      layouts.add(new StockLayout(lot.title(), problem, layout));
      check(material, problem, layout);
      layout.patterns().forEach(p -> taken.merge(p.sheet().name(), (long) p.quantity(), Long::sum));
    }
    return new MaterialPlan(material, layouts, uses(stock, taken));
  }

  /** Sheets or boards of one size, alike for the saw. */
  private record Stock(
      String name,
      Length length,
      Length width,
      Optional<Integer> count,
      Optional<BigDecimal> price,
      Supply supply) {}

  private List<Stock> stock(Material material) {
    List<Stock> all = new ArrayList<>();
    for (SheetStock s : job.sheets()) {
      if (s.material().equals(material.name())) {
        all.add(
            new Stock(
                name(s.length(), s.width(), s.supply(), all.size()),
                s.length(),
                s.width(),
                s.count(),
                s.price(),
                s.supply()));
      }
    }
    for (BoardStock b : job.boards()) {
      if (b.material().equals(material.name())) {
        all.add(
            new Stock(
                name(b.length(), b.width(), b.supply(), all.size()),
                b.length(),
                b.width(),
                b.count(),
                b.price(),
                b.supply()));
      }
    }
    return all;
  }

  private String name(Length length, Length width, Supply supply, int before) {
    String size = job.style().number(length) + " x " + job.style().text(width);
    return (before + 1) + ": " + size + (supply == Supply.ON_HAND ? ", on hand" : "");
  }

  /**
   * Parts that are laid out together. Boards are ripped and crosscut like narrow sheets, except
   * that parts exactly as wide as a board only need crosscuts.
   */
  private record Lot(String title, List<CutItem> items, List<Stock> stock, Saw saw) {

    SheetProblem problem(Map<String, Long> taken) {
      return new SheetProblem(
          items.stream().map(Lot::part).toList(),
          stock.stream().map(s -> sheet(s, taken.getOrDefault(s.name(), 0L))).toList(),
          saw);
    }

    private static Part part(CutItem item) {
      Grain grain = item.grain() == Direction.ALONG_LENGTH ? Grain.FIXED : Grain.FREE;
      return new Part(
          item.label(), item.cutLength().total(), item.cutWidth().total(), item.quantity(), grain);
    }

    private static StockSheet sheet(Stock stock, long taken) {
      return new StockSheet(
          stock.name(),
          stock.length(),
          stock.width(),
          SheetGrain.ALONG_LENGTH,
          stock
              .count()
              .map(c -> fourpin.cutting.Supply.of((int) Math.max(0, c - taken)))
              .orElse(fourpin.cutting.Supply.unlimited()),
          cost(stock),
          stock.supply() == Supply.ON_HAND ? Origin.ON_HAND : Origin.TO_BUY);
    }

    /** In the smallest coin. Without a price, by area, so that less is still better. */
    private static long cost(Stock stock) {
      if (stock.supply() == Supply.ON_HAND) {
        return 0;
      }
      return stock
          .price()
          .map(
              p -> p.setScale(COIN_DECIMALS, RoundingMode.HALF_UP).unscaledValue().longValueExact())
          .orElseGet(() -> Math.round(stock.length().mm() * stock.width().mm()));
    }
  }

  private List<Lot> lots(Material material, List<CutItem> items, List<Stock> stock) {
    if (material.kind() == Material.Kind.SHEET) {
      return List.of(new Lot("sheets", items, stock, saw(Trim.allRound(trim(Setting.SHEET_TRIM)))));
    }
    Saw saw = saw(Trim.ends(trim(Setting.BOARD_TRIM)));
    List<Lot> lots = new ArrayList<>();
    List<CutItem> rest = new ArrayList<>(items);
    for (Length width : stock.stream().map(Stock::width).distinct().sorted().toList()) {
      List<CutItem> same = rest.stream().filter(i -> i.cutWidth().total().equals(width)).toList();
      rest.removeAll(same);
      if (!same.isEmpty()) {
        List<Stock> boards = stock.stream().filter(s -> s.width().equals(width)).toList();
        lots.add(
            new Lot(
                "boards " + job.style().text(width) + " wide, cut to length", same, boards, saw));
      }
    }
    if (!rest.isEmpty()) {
      lots.add(new Lot("boards, ripped and cut to length", rest, stock, saw));
    }
    return lots;
  }

  private Saw saw(Trim trim) {
    return new Saw(job.settings().length(Setting.KERF), trim);
  }

  private Length trim(Setting setting) {
    return job.settings().length(setting);
  }

  private List<StockUse> uses(List<Stock> stock, Map<String, Long> taken) {
    List<StockUse> uses = new ArrayList<>();
    for (Stock s : stock) {
      long count = taken.getOrDefault(s.name(), 0L);
      if (count > 0) {
        long buy = s.supply() == Supply.TO_BUY ? count : 0;
        uses.add(new StockUse(s.name(), count, buy, s.price()));
      }
    }
    return uses;
  }

  /** The layout is sawn by code that knows nothing of how it was found. */
  private void check(Material material, SheetProblem problem, Layout layout) {
    for (Fault fault : VirtualSaw.check(problem, layout)) {
      throw new IllegalStateException(
          "the layout of " + material.name() + " can't be sawn: " + fault);
    }
    layout.unplaced().forEach(u -> unplaced(material, u));
  }

  private void unplaced(Material material, Unplaced unplaced) {
    String why =
        switch (unplaced.reason()) {
          case TOO_LONG -> "it is longer than any of the stock, trimmed";
          case TOO_WIDE -> "it is wider than any of the stock, trimmed";
          case NO_SHEET_BOTH_WAYS -> "no piece of stock is both long and wide enough";
          case GRAIN_FORBIDS_TURNING -> "it would fit only across the grain";
          case NO_SHEETS_LEFT -> "the stock is used up";
        };
    error(
        "not-laid-out",
        unplaced.count()
            + " of line "
            + unplaced.mark()
            + " can't be cut from "
            + material.name()
            + ": "
            + why,
        new Remedy("state more or larger stock of " + material.name(), "its price"),
        new Remedy("make the case smaller, or divide the part", "looks"));
  }

  private void noStock(Material material, List<CutItem> items) {
    long parts = items.stream().mapToLong(CutItem::quantity).sum();
    error(
        "no-stock",
        parts
            + " parts are to be cut from "
            + material.name()
            + ", of which the job states no stock",
        new Remedy(
            "state the sheets or boards of " + material.name() + " that can be bought", "nothing"));
  }

  private void error(String kind, String what, Remedy... remedies) {
    findings.add(new Finding(Severity.ERROR, kind, what, List.of(), Place.JOB, List.of(remedies)));
  }
}
