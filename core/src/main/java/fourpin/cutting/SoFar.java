package fourpin.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What has come of a layout up to now: what is cut stays, and the rest is planned again, be it that
 * a sheet is spoilt or that the sizes of the parts still to be cut have changed.
 *
 * @param good parts that are cut and can be used, by mark
 * @param used sheets that are cut or spoilt, by the name of the stock
 * @param whole sheets that were taken for the layout and are neither, by the name of the stock
 */
public record SoFar(
    Map<String, Integer> good, Map<String, Integer> used, Map<String, Integer> whole) {

  public static final SoFar NOTHING = new SoFar(Map.of(), Map.of());

  public SoFar {
    good = Map.copyOf(good);
    used = Map.copyOf(used);
    whole = Map.copyOf(whole);
  }

  /** Of a layout whose other sheets nobody has taken yet. */
  public SoFar(Map<String, Integer> good, Map<String, Integer> used) {
    this(good, used, Map.of());
  }

  /** A sheet of that name was taken, and is whole. */
  public static SoFar whole(String name) {
    return new SoFar(Map.of(), Map.of(), Map.of(name, 1));
  }

  /** Some sheets of a layout cut, all their parts good. */
  public static SoFar cut(List<SheetPattern> patterns) {
    Map<String, Integer> good = new LinkedHashMap<>();
    Map<String, Integer> used = new LinkedHashMap<>();
    for (SheetPattern pattern : patterns) {
      used.merge(pattern.sheet().name(), pattern.quantity(), Integer::sum);
      for (Placed part : pattern.parts()) {
        good.merge(((Node.Finished) part.node()).mark(), pattern.quantity(), Integer::sum);
      }
    }
    return new SoFar(good, used);
  }

  /** A sheet of that name is spoilt, and nothing good came of it. */
  public SoFar spoilt(String name) {
    return and(new SoFar(Map.of(), Map.of(name, 1)));
  }

  /** How many sheets of a stock are cut or spoilt. */
  public int usedOf(String name) {
    return used.getOrDefault(name, 0);
  }

  /** How many sheets of a stock were taken and are whole. */
  public int wholeOf(String name) {
    return whole.getOrDefault(name, 0);
  }

  /** Both, of the same layout. */
  public SoFar and(SoFar other) {
    return new SoFar(sum(good, other.good), sum(used, other.used), sum(whole, other.whole));
  }

  /** And then what came of a layout of the rest, for which what was whole was taken first. */
  public SoFar then(SoFar later) {
    Map<String, Integer> left = new LinkedHashMap<>();
    whole.forEach((name, count) -> left.put(name, Math.max(0, count - later.usedOf(name))));
    later.whole.forEach((name, count) -> left.merge(name, count, Math::max));
    return new SoFar(sum(good, later.good), sum(used, later.used), left);
  }

  private static Map<String, Integer> sum(Map<String, Integer> one, Map<String, Integer> other) {
    Map<String, Integer> sum = new LinkedHashMap<>(one);
    other.forEach((name, count) -> sum.merge(name, count, Integer::sum));
    return sum;
  }

  /**
   * What is still to be cut, from what is left of the stock. A matched set of which a part is
   * missing is cut again as a whole, since its grain would not run on; parts that were to share a
   * sheet with some that are cut already share another one among themselves.
   */
  public SheetProblem rest(SheetProblem problem) {
    List<Part> parts = parts(problem.parts(), problem.ties());
    List<StockSheet> stock =
        problem.stock().stream().map(sheet -> sheet.with(left(sheet))).toList();
    return new SheetProblem(parts, stock, problem.saw(), ties(problem.ties(), parts));
  }

  private Supply left(StockSheet sheet) {
    return sheet.supply() instanceof Supply.Limited(int count)
        ? Supply.of(Math.max(0, count - usedOf(sheet.name())))
        : sheet.supply();
  }

  /** The parts still to be cut, in their order. */
  public List<Part> parts(List<Part> asked, Ties ties) {
    List<Part> left = new ArrayList<>();
    for (Part part : asked) {
      int sets = ties.matched(part.mark()).map(this::wholeSets).orElse(0);
      int times = ties.matched(part.mark()).map(set -> times(set, part.mark())).orElse(0);
      int usable = times > 0 ? sets * times : good.getOrDefault(part.mark(), 0);
      if (part.count() > usable) {
        left.add(part.times(part.count() - usable));
      }
    }
    return left;
  }

  private static int times(Matched set, String mark) {
    return Math.toIntExact(set.counts().getOrDefault(mark, 0L));
  }

  private int wholeSets(Matched set) {
    return set.counts().keySet().stream()
        .mapToInt(mark -> good.getOrDefault(mark, 0) / times(set, mark))
        .min()
        .orElse(0);
  }

  /** Sets as they were; of groups what is left. */
  public Ties ties(Ties ties, List<Part> left) {
    List<String> marks = left.stream().map(Part::mark).toList();
    Predicate<String> isLeft = marks::contains;
    List<Together> groups =
        ties.together().stream()
            .map(g -> new Together(g.name(), g.marks().stream().filter(isLeft).toList()))
            .filter(group -> !group.marks().isEmpty())
            .toList();
    return new Ties(ties.among(left).matched(), groups);
  }
}
