package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.casework.Finding;
import fourpin.cutting.Merit;
import fourpin.cutting.Part;
import fourpin.cutting.ThoroughCutter;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.plan.MaterialPlan.StockLayout;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Lays parts out on stock, without a case that they belong to. */
public final class CutPlanner {

  /** What the cutting hangs on. */
  public static final List<Setting> SETTINGS =
      List.of(
          Setting.KERF,
          Setting.SHEET_TRIM,
          Setting.BOARD_TRIM,
          Setting.BOARD_EDGE_TRIM,
          Setting.OFFCUT_LENGTH,
          Setting.OFFCUT_WIDTH,
          Setting.SMALL_PIECE,
          Setting.LONGEST_RIP,
          Setting.WIDEST_CROSSCUT,
          Setting.HELD_CROSSCUT,
          Setting.HELD_LENGTH,
          Setting.FENCE_REACH,
          Setting.NARROW_RIP,
          Setting.FIRST_CUT,
          Setting.BOARD_FIRST_CUT,
          Setting.CUT_STAGES);

  private CutPlanner() {}

  /**
   * What a plan cuts, by material, to be laid out anew: after a mishap at the saw, or for longer.
   */
  public static List<Wanted> wanted(Plan plan) {
    return new StockPlanner(plan.job(), FoundLayouts.NONE).wanted(plan.cutList());
  }

  /**
   * What is wrong with a plan besides its cutting. Parts of cases that are refused are not among
   * {@link #wanted}.
   */
  public static List<Finding> wrongBesides(Plan plan) {
    return plan.findings().stream()
        .filter(f -> f.isGrave() && !StockCutter.KINDS.contains(f.kind()))
        .toList();
  }

  /**
   * Plans the cutting of every material, limited by work: the same input gives the same plan.
   *
   * @param frame whose settings, unit and style of printing hold; its own cases and stock are not
   *     looked at
   * @param wanted each material once
   */
  public static CutPlan plan(Job frame, List<Wanted> wanted) {
    return plan(frame, wanted, ThoroughCutter.Limit.WORK, CutWatch.NOBODY);
  }

  /**
   * The same, for somebody who looks on.
   *
   * @param limit what ends a search
   * @param watch hears of better layouts, and may end a search; where it is the limit, searches for
   *     several materials take turns by its clock
   */
  public static CutPlan plan(
      Job frame, List<Wanted> wanted, ThoroughCutter.Limit limit, CutWatch watch) {
    StockCutter.Search search = new StockCutter.Search(limit, watch, FoundLayouts.NONE);
    List<StockCutter> cutters =
        wanted.stream()
            .map(each -> new StockCutter(frame.settings(), frame.style(), each, search))
            .toList();
    List<StockCutter.Cut> cuts = cuts(wanted, cutters, search);
    List<CutMaterial> materials = new ArrayList<>();
    List<Yield> yields = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      StockCutter.Cut cut = cuts.get(i);
      CutMaterial material = new CutMaterial(wanted.get(i).material(), cut.layouts(), cut.stock());
      materials.add(material);
      Yield.of(wanted.get(i), material).ifPresent(yields::add);
      findings.addAll(cut.findings());
    }
    return new CutPlan(
        frame,
        wanted,
        materials,
        yields,
        cautions(materials),
        findings,
        figures(materials, yields));
  }

  /** Few parts first: their answers are soon there. */
  private static List<StockCutter.Cut> cuts(
      List<Wanted> wanted, List<StockCutter> cutters, StockCutter.Search search) {
    List<Integer> order = fewestPartsFirst(wanted);
    List<StockCutter.Cut> done = inTurns(order.stream().map(cutters::get).toList(), search);
    return IntStream.range(0, wanted.size()).mapToObj(i -> done.get(order.indexOf(i))).toList();
  }

  /** Where time is the limit, it is shared; work needs no sharing. */
  private static List<StockCutter.Cut> inTurns(
      List<StockCutter> cutters, StockCutter.Search search) {
    return switch (search.limit()) {
      case WORK -> cutters.stream().map(cutter -> cutter.cut(Turns.Turn.ALONE)).toList();
      case WATCH ->
          Turns.take(cutters.stream().map(CutPlanner::search).toList(), search.watch()::nanos);
    };
  }

  private static Function<Turns.Turn, StockCutter.Cut> search(StockCutter cutter) {
    return cutter::cut;
  }

  private static List<Integer> fewestPartsFirst(List<Wanted> wanted) {
    return IntStream.range(0, wanted.size())
        .boxed()
        .sorted(
            Comparator.comparingLong(
                i -> wanted.get(i).parts().stream().mapToLong(Part::count).sum()))
        .toList();
  }

  /**
   * Whether one plan of a material is better than another of the same parts and stock: first by its
   * price, then by the {@link Merit} of its first layout that differs in it.
   *
   * @param job whose settings hold
   */
  public static boolean isBetter(Job job, List<StockLayout> one, List<StockLayout> other) {
    int byPrice = Long.compare(price(one), price(other));
    Merit.Aims aims = StockCutter.aims(job.settings());
    return byPrice < 0
        || (byPrice == 0
            && IntStream.range(0, Math.min(one.size(), other.size()))
                    .map(i -> merit(one.get(i), aims).compareTo(merit(other.get(i), aims)))
                    .filter(order -> order != 0)
                    .findFirst()
                    .orElse(0)
                < 0);
  }

  private static long price(List<StockLayout> layouts) {
    return layouts.stream().mapToLong(l -> l.layout().price()).sum();
  }

  private static Merit merit(StockLayout layout, Merit.Aims aims) {
    return Merit.of(layout.problem(), layout.layout(), aims);
  }

  private static List<Figure> figures(List<CutMaterial> materials, List<Yield> yields) {
    return Stream.concat(
            materials.stream()
                .flatMap(m -> m.layouts().stream())
                .flatMap(l -> l.near().figures().stream()),
            yields.stream().flatMap(each -> each.figures().stream()))
        .toList();
  }

  private static List<Caution> cautions(List<CutMaterial> materials) {
    boolean small =
        materials.stream().flatMap(m -> m.layouts().stream()).anyMatch(l -> !l.small().isEmpty());
    List<Caution> cautions = new ArrayList<>(List.of(Cautions.SAW, Cautions.DUST));
    if (small) {
      cautions.add(Cautions.SMALL);
    }
    return cautions;
  }
}
