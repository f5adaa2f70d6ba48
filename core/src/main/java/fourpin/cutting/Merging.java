package fourpin.cutting;

import fourpin.cutting.Parting.Company;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Which groups to put on one sheet, so that the sheets for all of them come cheapest. Of few groups
 * every set is put to every sheet, and the cheapest sets that make up all are taken (see {@link
 * Cover}), or where the stock does not suffice, those of the most area; of more, sheet after sheet
 * is filled with the largest that still fit. Parts without a group are not looked at.
 */
final class Merging {

  /** Groups, more than which are too many for trying all sets of them. */
  private static final int FEW = 8;

  /** Sets that are put to a sheet; most are found a place at once, and a millisecond is enough. */
  private static final int MOST_TRIES = 400;

  /** Sets that are found no place, which takes up to a tenth of a second each. */
  private static final int MOST_FAILURES = 40;

  /** The same where time is up and parts have no place yet. */
  private static final int MOST_HURRIED = 10;

  /**
   * Groups that are found no place on a sheet beside others, after which it counts as full: with
   * many groups one sheet would use up the tries for all.
   */
  private static final int FULL = 3;

  private static final long COVER_STEPS = 5_000_000;

  /** So much of an area counts as none, for sums of areas are rounded. */
  private static final double ROUNDING = 1e-9;

  private final SheetProblem problem;
  private final List<Together> groups;
  private final SheetCutter cutter;
  private final Watch watch;
  private final Map<Company, Boolean> known = new HashMap<>();
  private int tries;
  private int failures;

  /**
   * @param cutter that tells what fits on a sheet
   * @param watch once it says enough, little more is tried
   */
  Merging(SheetProblem problem, SheetCutter cutter, Watch watch) {
    this.problem = problem;
    this.groups = problem.ties().together();
    this.cutter = cutter;
    this.watch = watch;
  }

  static boolean isOfFew(SheetProblem problem) {
    return problem.ties().together().size() <= FEW;
  }

  Parting parting() {
    return new Parting(isOfFew(problem) ? tried() : filled());
  }

  private List<Company> tried() {
    groups.forEach(group -> problem.stock().forEach(sheet -> fits(List.of(group), sheet)));
    int[] once = new int[groups.size()];
    Arrays.fill(once, 1);
    Portions portions = new Portions(i -> area(groups.get(i)), once);
    Cover cover = cover(portions);
    return IntStream.rangeClosed(1, portions.all())
        .boxed()
        .sorted(Comparator.comparingDouble(portions::area).reversed())
        .flatMap(portion -> cover.cheapest(portion, Long.MAX_VALUE).stream())
        .findFirst()
        .map(sheets -> sheets.stream().map(sheet -> company(sheet, portions)).toList())
        .orElse(List.of());
  }

  private Cover cover(Portions portions) {
    long[] costs = FewParts.costs(new Inflated(problem));
    Cover cover = new Cover(portions, Work.of(COVER_STEPS));
    for (int i = 0; i < costs.length; i++) {
      StockSheet sheet = problem.stock().get(i);
      cover.add(i, costs[i], sheet.supply().most(), p -> fits(groups(p, portions), sheet));
    }
    return cover;
  }

  private Company company(Cover.Sheet sheet, Portions portions) {
    return new Company(
        groups(sheet.portion(), portions), problem.stock().get(sheet.panel()).name());
  }

  private List<Together> groups(int portion, Portions portions) {
    return IntStream.range(0, groups.size())
        .filter(i -> portions.count(portion, i) > 0)
        .mapToObj(groups::get)
        .toList();
  }

  /** Sheet by sheet, the one that comes cheapest for what it holds. */
  private List<Company> filled() {
    List<Together> left = new ArrayList<>(groups);
    left.sort(Comparator.comparingDouble((Together group) -> area(group)).reversed());
    Map<String, Integer> used = new HashMap<>();
    List<Company> companies = new ArrayList<>();
    for (Optional<Company> next = next(left, used); next.isPresent(); next = next(left, used)) {
      Company company = next.get();
      left.removeAll(company.groups());
      used.merge(company.sheet(), 1, Integer::sum);
      companies.add(company);
    }
    return companies;
  }

  private Optional<Company> next(List<Together> left, Map<String, Integer> used) {
    return problem.stock().stream()
        .filter(sheet -> sheet.supply().most() > used.getOrDefault(sheet.name(), 0))
        .map(sheet -> new Company(filling(left, sheet), sheet.name()))
        .filter(company -> !company.groups().isEmpty())
        .min(
            Comparator.comparingDouble((Company c) -> sheet(c).price() / area(c.groups()))
                .thenComparingDouble(c -> area(sheet(c)) / area(c.groups())));
  }

  private StockSheet sheet(Company company) {
    return problem.stock().stream()
        .filter(sheet -> sheet.name().equals(company.sheet()))
        .findFirst()
        .orElseThrow();
  }

  private List<Together> filling(List<Together> left, StockSheet sheet) {
    List<Together> filling = new ArrayList<>();
    int before = failures;
    for (Together group : left) {
      filling.add(group);
      if (failures - before >= FULL || !fits(filling, sheet)) {
        filling.removeLast();
      }
    }
    return filling;
  }

  private boolean fits(List<Together> its, StockSheet sheet) {
    Company company = new Company(its, sheet.name());
    boolean fits = known.getOrDefault(company, false);
    if (!known.containsKey(company)) {
      fits = mayFit(its, sheet) && found(its, sheet);
      known.put(company, fits);
    }
    return fits;
  }

  /** By area, and as far as is known of those without one of them. */
  private boolean mayFit(List<Together> its, StockSheet sheet) {
    return sheet.supply().most() > 0
        && area(its) <= area(sheet) * (1 + ROUNDING)
        && its.stream()
            .map(one -> its.stream().filter(group -> !group.equals(one)).toList())
            .allMatch(less -> known.getOrDefault(new Company(less, sheet.name()), true));
  }

  private boolean found(List<Together> its, StockSheet sheet) {
    if (tries >= MOST_TRIES || failures >= mostFailures()) {
      return false;
    }
    List<Part> parts = parts(its);
    Ties ties = problem.ties().ofMatched().among(parts);
    List<StockSheet> one = List.of(sheet.with(Supply.of(1)));
    boolean fits =
        cutter.cut(new SheetProblem(parts, one, problem.saw(), ties)).unplaced().isEmpty();
    tries++;
    failures += fits ? 0 : 1;
    return fits;
  }

  /** Enough to fill a sheet for every other group. */
  private int mostFailures() {
    int most = watch.enough() ? MOST_HURRIED : MOST_FAILURES;
    return isOfFew(problem) ? most : Math.max(most, FULL * groups.size() / 2);
  }

  private List<Part> parts(Together group) {
    return parts(List.of(group));
  }

  /** In the problem's order, in which they are laid out again: another may not fit. */
  private List<Part> parts(List<Together> its) {
    Set<String> marks =
        its.stream().flatMap(group -> group.marks().stream()).collect(Collectors.toSet());
    return problem.parts().stream().filter(p -> marks.contains(p.mark())).toList();
  }

  private double area(List<Together> its) {
    return its.stream().mapToDouble(this::area).sum();
  }

  private double area(Together group) {
    double kerf = problem.saw().kerf().mm();
    return parts(group).stream()
        .mapToDouble(p -> p.count() * (p.length().mm() + kerf) * (p.width().mm() + kerf))
        .sum();
  }

  private double area(StockSheet sheet) {
    double kerf = problem.saw().kerf().mm();
    return (sheet.length().mm() + kerf) * (sheet.width().mm() + kerf);
  }
}
