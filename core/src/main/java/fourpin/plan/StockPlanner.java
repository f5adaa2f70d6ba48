package fourpin.plan;

import fourpin.casework.Finding;
import fourpin.cutting.Grain;
import fourpin.cutting.Part;
import fourpin.job.BoardStock;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.SheetStock;
import fourpin.job.Supply;
import fourpin.measure.Length;
import fourpin.plan.CutItem.Direction;
import java.util.ArrayList;
import java.util.List;

/** Lays the cut list out on the stock, material by material. */
final class StockPlanner {

  private final Job job;
  private final StockCutter.Search search;
  private final List<Finding> findings = new ArrayList<>();

  StockPlanner(Job job, FoundLayouts found) {
    this.job = job;
    this.search = StockCutter.Search.byWork(found);
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** Plans every material that something is cut from; glass is cut by the glazier. */
  List<MaterialPlan> plan(List<CutItem> cutList) {
    return wanted(cutList).stream().map(this::plan).toList();
  }

  /** What is wanted of every material that something is cut from. */
  List<Wanted> wanted(List<CutItem> cutList) {
    List<Wanted> wanted = new ArrayList<>();
    for (Material material : job.materials()) {
      List<CutItem> items =
          cutList.stream().filter(i -> i.material().equals(material.name())).toList();
      boolean comesInStock = material.kind() != Material.Kind.GLASS && !material.isCutInLayers();
      if (!items.isEmpty() && comesInStock) {
        wanted.add(wanted(material, items));
      }
    }
    return wanted;
  }

  private Wanted wanted(Material material, List<CutItem> items) {
    Wanted.Kind kind =
        material.kind() == Material.Kind.SHEET ? Wanted.Kind.SHEETS : Wanted.Kind.BOARDS;
    List<Part> parts = items.stream().map(StockPlanner::part).toList();
    return new Wanted(material.name(), kind, parts, stock(material));
  }

  private MaterialPlan plan(Wanted wanted) {
    StockCutter.Cut cut =
        new StockCutter(job.settings(), job.style(), wanted, search).cut(Turns.Turn.ALONE);
    findings.addAll(
        new DividedBacks(job).cured(cut.findings(), wanted.material(), d -> trial(d, wanted)));
    return new MaterialPlan(job.material(wanted.material()), cut.layouts(), cut.stock());
  }

  /** What is found of the same material in another job. */
  private static List<Finding> trial(Job other, Wanted of) {
    StockPlanner planner = new StockPlanner(other, FoundLayouts.NONE);
    return planner.wanted(DividedBacks.cutList(other)).stream()
        .filter(w -> w.material().equals(of.material()))
        .map(
            w ->
                new StockCutter(other.settings(), other.style(), w, planner.search)
                    .cut(Turns.Turn.ALONE))
        .flatMap(cut -> cut.findings().stream())
        .toList();
  }

  private static Part part(CutItem item) {
    Grain grain = item.grain() == Direction.ALONG_LENGTH ? Grain.FIXED : Grain.FREE;
    return new Part(
        item.label(), item.cutLength().total(), item.cutWidth().total(), item.quantity(), grain);
  }

  private List<Stock> stock(Material material) {
    List<Stock> all = new ArrayList<>();
    for (SheetStock s : job.sheets()) {
      if (s.material().equals(material.name())) {
        String name = name(s.length(), s.width(), s.supply(), all.size());
        all.add(new Stock(name, s.length(), s.width(), s.count(), s.price(), s.supply()));
      }
    }
    for (BoardStock b : job.boards()) {
      if (b.material().equals(material.name())) {
        String name = name(b.length(), b.width(), b.supply(), all.size());
        all.add(new Stock(name, b.length(), b.width(), b.count(), b.price(), b.supply()));
      }
    }
    return all;
  }

  private String name(Length length, Length width, Supply supply, int before) {
    return Stock.name(before + 1, length, width, supply, job.style());
  }
}
