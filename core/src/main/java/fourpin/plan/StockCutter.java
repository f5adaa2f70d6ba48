package fourpin.plan;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.casework.Saws;
import fourpin.cutting.Blank;
import fourpin.cutting.Fault;
import fourpin.cutting.Layout;
import fourpin.cutting.Merit;
import fourpin.cutting.Origin;
import fourpin.cutting.Part;
import fourpin.cutting.Piece;
import fourpin.cutting.Reusable;
import fourpin.cutting.Saw;
import fourpin.cutting.SetUp;
import fourpin.cutting.SheetGrain;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.SmallPieces;
import fourpin.cutting.StockSheet;
import fourpin.cutting.ThoroughCutter;
import fourpin.cutting.VirtualJointer;
import fourpin.cutting.VirtualSaw;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Supply;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.QuantityUnit;
import fourpin.plan.MaterialPlan.Kept;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.MaterialPlan.StockUse;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lays the parts of one material out on its stock, all of them together, and has the layout sawn on
 * trial. Boards are ripped and crosscut like narrow sheets; parts exactly as wide as a board only
 * need crosscuts, and what is ripped is straightened along one edge before.
 */
final class StockCutter {

  private static final String NO_STOCK = "no-stock";

  /** What is found wrong here. */
  static final Set<String> KINDS = Set.of(NO_STOCK, NotLaidOut.KIND);

  private static final int COIN_DECIMALS = 2;

  private final Settings settings;
  private final LengthStyle style;
  private final Wanted wanted;
  private final QuantityUnit costs;
  private final Reusable reusable;
  private final Search search;
  private final Map<String, Long> taken = new LinkedHashMap<>();
  private final List<StockLayout> layouts = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  /** How everything is called. @param level the last level of the ids of its figures */
  private record Lot(String title, String level, Saw saw) {}

  /** How long is searched, who looks on, and what was found before. */
  record Search(ThoroughCutter.Limit limit, CutWatch watch, FoundLayouts found) {
    static Search byWork(FoundLayouts found) {
      return new Search(ThoroughCutter.Limit.WORK, CutWatch.NOBODY, found);
    }
  }

  StockCutter(Settings settings, LengthStyle style, Wanted wanted, Search search) {
    this.settings = settings;
    this.style = style;
    this.wanted = wanted;
    this.search = search;
    this.costs = costs(wanted.stock());
    this.reusable = aims(settings).kept();
  }

  /** What counts of a layout besides price and area. */
  static Merit.Aims aims(Settings settings) {
    return new Merit.Aims(
        new Reusable(settings.length(Setting.OFFCUT_LENGTH), settings.length(Setting.OFFCUT_WIDTH)),
        settings.length(Setting.SMALL_PIECE),
        new Saws(settings).holds());
  }

  /** Money where everything to be bought has a price; else area, so that less is still better. */
  private static QuantityUnit costs(List<Stock> stock) {
    List<Stock> bought = stock.stream().filter(s -> s.supply() == Supply.TO_BUY).toList();
    boolean priced = bought.stream().allMatch(s -> s.price().isPresent());
    return priced ? QuantityUnit.MONEY : QuantityUnit.AREA;
  }

  /** What came of one material. */
  record Cut(List<StockLayout> layouts, List<StockUse> stock, List<Finding> findings) {}

  private boolean hasStock() {
    return !wanted.stock().isEmpty();
  }

  /** Lays everything out, once. */
  Cut cut(Turns.Turn turn) {
    if (hasStock()) {
      cut(lot(), turn);
    } else {
      noStock();
    }
    return new Cut(layouts, uses(), findings);
  }

  private Lot lot() {
    if (wanted.kind() == Wanted.Kind.SHEETS) {
      return new Lot("sheets", "sheets", stated(new Saws(settings).sheets()));
    }
    Set<Length> boards = wanted.stock().stream().map(Stock::width).collect(Collectors.toSet());
    Set<Length> parts = wanted.parts().stream().map(Part::width).collect(Collectors.toSet());
    Saw saw = stated(new Saws(settings).boards());
    if (parts.equals(boards) && boards.size() == 1) {
      Length width = boards.iterator().next();
      String title = "boards " + style.text(width) + " wide, cut to length";
      return new Lot(title, "boards " + style.number(width), saw);
    }
    String level = Collections.disjoint(parts, boards) ? "boards ripped" : "boards";
    return new Lot("boards, cut to length and width", level, saw);
  }

  /** With the first cut of the material, where it has its own. */
  private Saw stated(Saw saw) {
    return wanted.first().map(first -> saw.with(saw.limits().withFirst(first))).orElse(saw);
  }

  private void cut(Lot lot, Turns.Turn turn) {
    SheetProblem problem = new SheetProblem(wanted.parts(), sheets(), lot.saw, wanted.ties());
    Merit.Aims aims = aims(settings);
    LayoutFigures figures =
        new LayoutFigures(
            Figure.id("job", level(wanted.material()), level(lot.level)),
            wanted.material() + ", " + lot.title,
            costs,
            wanted.before());
    Optional<FoundLayouts.Found> found =
        search.found.of(problem).filter(f -> VirtualSaw.check(problem, f.layout()).isEmpty());
    Layout layout =
        found
            .map(FoundLayouts.Found::layout)
            .orElseGet(
                () ->
                    new ThoroughCutter(aims, search.limit, turn.of(search.watch.begin(figures)))
                        .cut(problem));
    check(problem, layout);
    layout.patterns().forEach(p -> taken.merge(p.sheet().name(), (long) p.quantity(), Long::sum));
    List<List<SetUp>> setUps = StockLayout.setUps(layout, wanted.before(), lot.saw, aims.holds());
    layouts.add(
        new StockLayout(
            lot.title,
            problem,
            layout,
            aims.holds(),
            wanted.before(),
            figures.of(layout),
            kept(layout, setUps),
            small(setUps),
            found.flatMap(FoundLayouts.Found::origin)));
  }

  /** Fractions of an inch make no levels. */
  private static String level(String name) {
    return name.replace('/', '-');
  }

  private List<String> small(List<List<SetUp>> setUps) {
    Length least = settings.length(Setting.SMALL_PIECE);
    return setUps.stream().flatMap(order -> SmallPieces.of(order, least).stream()).toList();
  }

  private List<Kept> kept(Layout layout, List<List<SetUp>> setUps) {
    List<Kept> kept = new ArrayList<>();
    for (int i = 0; i < setUps.size(); i++) {
      SheetPattern pattern = layout.patterns().get(i);
      setUps.get(i).stream()
          .flatMap(setUp -> setUp.steps().stream())
          .flatMap(step -> Stream.concat(Stream.of(step.near()), step.far().stream()))
          .filter(piece -> piece.content() instanceof Piece.Content.LeftOver)
          .filter(piece -> reusable.keeps(piece.length(), piece.width(), pattern.sheet()))
          .map(p -> new Kept(p.name(), p.length(), p.width(), pattern.quantity()))
          .forEach(kept::add);
    }
    return kept;
  }

  private List<StockSheet> sheets() {
    boolean boards = wanted.kind() == Wanted.Kind.BOARDS;
    Length rough = boards ? settings.length(Setting.BOARD_EDGE_TRIM) : Length.ZERO;
    return wanted.stock().stream().map(stock -> sheet(stock, rough)).toList();
  }

  private StockSheet sheet(Stock stock, Length roughEdge) {
    return new StockSheet(
        stock.name(),
        stock.length(),
        stock.width(),
        SheetGrain.ALONG_LENGTH,
        stock.count().map(fourpin.cutting.Supply::of).orElse(fourpin.cutting.Supply.unlimited()),
        cost(stock),
        stock.supply() == Supply.ON_HAND ? Origin.ON_HAND : Origin.TO_BUY,
        stock.defects(),
        roughEdge);
  }

  /** In the smallest coin, or in square millimetres; of what is on hand, its worth in money. */
  private long cost(Stock stock) {
    boolean onHand = stock.supply() == Supply.ON_HAND;
    if (costs == QuantityUnit.AREA) {
      return onHand ? 0 : Math.round(stock.length().mm() * stock.width().mm());
    }
    return (onHand ? stock.worth() : stock.price())
        .map(p -> p.setScale(COIN_DECIMALS, RoundingMode.HALF_UP))
        .map(p -> p.unscaledValue().longValueExact())
        .orElse(0L);
  }

  private List<StockUse> uses() {
    List<StockUse> uses = new ArrayList<>();
    for (Stock s : wanted.stock()) {
      long count = taken.getOrDefault(s.name(), 0L);
      if (count > 0) {
        long buy = s.supply() == Supply.TO_BUY ? count : 0;
        uses.add(new StockUse(s.name(), count, buy, s.price()));
      }
    }
    return uses;
  }

  /** The layout is sawn by code that knows nothing of how it was found. */
  private void check(SheetProblem problem, Layout layout) {
    for (Fault fault : VirtualSaw.check(problem, layout)) {
      throw new IllegalStateException(
          "the layout of " + wanted.material() + " can't be sawn: " + fault);
    }
    List<Blank> blanks =
        wanted.finished().values().stream()
            .map(Finished::blank)
            .sorted(Comparator.comparing(Blank::mark))
            .toList();
    for (Fault fault : VirtualJointer.check(blanks, layout, Wanted.stripStep(style.unit()))) {
      throw new IllegalStateException("a part of " + wanted.material() + " fails: " + fault);
    }
    List<String> marks = wanted.parts().stream().map(Part::mark).toList();
    GroupBars bars = new GroupBars(problem, wanted.kind(), style);
    layout.unplaced().stream()
        .sorted(Comparator.comparingInt(left -> marks.indexOf(left.mark())))
        .map(left -> new NotLaidOut(wanted, style, problem, layout, bars, left).finding())
        .forEach(findings::add);
  }

  private void noStock() {
    long parts = wanted.parts().stream().mapToLong(Part::count).sum();
    error(
        NO_STOCK,
        parts
            + " parts are to be cut from "
            + wanted.material()
            + ", of which the job states no stock",
        new Remedy(
            "state the sheets or boards of " + wanted.material() + " that can be bought",
            "nothing"));
  }

  private void error(String kind, String what, Remedy... remedies) {
    findings.add(new Finding(Severity.ERROR, kind, what, List.of(), Place.JOB, List.of(remedies)));
  }
}
