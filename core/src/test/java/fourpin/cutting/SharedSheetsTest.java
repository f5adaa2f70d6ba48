package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.ThoroughCutter.Limit;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Groups that must each lie on one sheet, several of them on the same. */
class SharedSheetsTest {
  private static final Saw SAW = new Saw(Length.mm(3), Trim.NONE);
  private static final ThoroughCutter CUTTER = new ThoroughCutter(Examples.AIMS);

  /** Parts of one group have marks that begin with its name. */
  private static SheetProblem problem(List<Part> parts, List<StockSheet> stock, int groups) {
    List<Together> ties =
        IntStream.range(0, groups).mapToObj(group -> together("G" + group, parts)).toList();
    return new SheetProblem(parts, stock, SAW, new Ties(List.of(), ties));
  }

  private static Together together(String name, List<Part> parts) {
    return new Together(
        name, parts.stream().map(Part::mark).filter(mark -> mark.startsWith(name + " ")).toList());
  }

  /** Six pairs of panels, three on either of two sheets; 30 % of a sheet each. */
  private static SheetProblem panels(Supply supply) {
    int[][] sizes = {
      {700, 400, 500, 300}, {680, 390, 520, 310}, {720, 380, 480, 320},
      {710, 405, 490, 305}, {690, 395, 510, 290}, {705, 385, 505, 315}
    };
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < sizes.length; i++) {
      parts.add(Examples.part("G" + i + " large", sizes[i][0], sizes[i][1], 2));
      parts.add(Examples.part("G" + i + " small", sizes[i][2], sizes[i][3], 2));
    }
    return problem(parts, List.of(Examples.metric("ply", 2440, 1220, supply, 6000)), sizes.length);
  }

  static Stream<Supply> supplies() {
    return Stream.of(Supply.unlimited(), Supply.of(3), Supply.of(2));
  }

  @ParameterizedTest
  @MethodSource("supplies")
  void threeGroupsLieOnOneSheet(Supply supply) {
    Layout layout = CUTTER.cut(panels(supply));
    assertThat(VirtualSaw.check(panels(supply), layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.sheets()).isEqualTo(2);
  }

  /** Where the stock would not do for a sheet each, even one without time has a look. */
  @Test
  void theyDoSoWhereTimeIsUpAndStockIsShort() {
    Watch hurried = Watch.until(() -> true);
    SheetProblem problem = panels(Supply.of(3));
    Layout layout = new ThoroughCutter(Examples.AIMS, Limit.WATCH, hurried).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
  }

  /**
   * The lid is longer than the large sheets are wide, and its grain runs across: one stock has it.
   */
  private static SheetProblem scarce(int groups) {
    List<Part> parts = new ArrayList<>(List.of(Examples.part("lid", 450, 1356, groups)));
    for (int group = 0; group < groups; group++) {
      parts.add(Examples.part("G" + group + " panel", 500, 300, 6));
      parts.add(Examples.part("G" + group + " tray", 450, 440, 5));
    }
    return problem(
        parts,
        List.of(
            Examples.metric("large", 2440, 1220, Supply.unlimited(), 9500),
            Examples.metric("square", 1525, 1525, Supply.of(groups), 6000)),
        groups);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void groupsLeaveOtherPartsTheOnlySheetThatHoldsThem(int groups) {
    Layout layout = CUTTER.cut(scarce(groups));
    assertThat(VirtualSaw.check(scarce(groups), layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
  }

  /** Forty groups of four to ten parts, a fifth of a sheet each. */
  private static SheetProblem forty(long seed) {
    Random random = new Random(seed);
    List<Part> parts = new ArrayList<>();
    for (int group = 0; group < 40; group++) {
      for (int i = 3 + random.nextInt(7); i >= 0; i--) {
        parts.add(random("G" + group + " " + i, random));
      }
    }
    return problem(
        parts, List.of(Examples.metric("ply", 2440, 1220, Supply.unlimited(), 6000)), 40);
  }

  /** No more than one sheet in three is given away to keep groups together, by the area alone. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void manyGroupsShareSheetsToo(long seed) {
    SheetProblem problem = forty(seed);
    Layout layout = CUTTER.cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.sheets()).isLessThanOrEqualTo(Math.ceilDiv(3 * layout.bound().sheets(), 2));
  }

  /** Three to five groups of one to three parts, on sheets of two sizes and prices. */
  private static SheetProblem few(long seed) {
    Random random = new Random(seed);
    int groups = 3 + random.nextInt(3);
    List<Part> parts = new ArrayList<>();
    for (int group = 0; group < groups; group++) {
      for (int i = random.nextInt(3); i >= 0; i--) {
        parts.add(random("G" + group + " " + i, random));
      }
    }
    List<StockSheet> stock =
        List.of(
            Examples.metric("large", 1200, 900, Supply.unlimited(), 100),
            Examples.metric(
                "small", 900, 600, Supply.of(random.nextInt(4)), 35 + random.nextInt(30)));
    return problem(parts, stock, groups);
  }

  private static Part random(String mark, Random random) {
    return Examples.part(mark, 150 + random.nextInt(550), 100 + random.nextInt(400), 1);
  }

  /** All partings of the groups, each set of them on the cheapest sheet that the cutter finds. */
  private static final class EveryParting {
    private static final long NEVER = Integer.MAX_VALUE;
    private final SheetProblem problem;
    private final Map<List<Together>, boolean[]> known = new HashMap<>();

    EveryParting(SheetProblem problem) {
      this.problem = problem;
    }

    long cheapest() {
      int[] supply = problem.stock().stream().mapToInt(sheet -> sheet.supply().most()).toArray();
      return cheapest(problem.ties().together(), supply);
    }

    long separately() {
      return problem.ties().together().stream()
          .mapToLong(
              group ->
                  IntStream.range(0, problem.stock().size())
                      .filter(sheet -> fits(List.of(group))[sheet])
                      .mapToLong(sheet -> problem.stock().get(sheet).price())
                      .min()
                      .orElse(NEVER))
          .sum();
    }

    private long cheapest(List<Together> groups, int[] supply) {
      if (groups.isEmpty()) {
        return 0;
      }
      long best = NEVER;
      for (int others = 0; others < 1 << (groups.size() - 1); others++) {
        int set = 2 * others + 1;
        List<Together> its = among(groups, set);
        List<Together> rest = among(groups, ~set);
        for (int sheet = 0; sheet < supply.length; sheet++) {
          if (supply[sheet] > 0 && fits(its)[sheet]) {
            int[] left = supply.clone();
            left[sheet]--;
            long price = problem.stock().get(sheet).price();
            best = Math.min(best, price + cheapest(rest, left));
          }
        }
      }
      return best;
    }

    private static List<Together> among(List<Together> groups, int set) {
      return IntStream.range(0, groups.size())
          .filter(i -> (set >> i & 1) == 1)
          .mapToObj(groups::get)
          .toList();
    }

    private boolean[] fits(List<Together> its) {
      boolean[] fits = known.getOrDefault(its, new boolean[problem.stock().size()]);
      if (!known.containsKey(its)) {
        for (int i = 0; i < fits.length; i++) {
          fits[i] = fits(its, problem.stock().get(i));
        }
        known.put(its, fits);
      }
      return fits;
    }

    private boolean fits(List<Together> its, StockSheet sheet) {
      List<Part> parts =
          problem.parts().stream()
              .filter(part -> its.stream().anyMatch(g -> g.marks().contains(part.mark())))
              .toList();
      List<StockSheet> one = List.of(sheet.with(Supply.of(1)));
      return CUTTER.cut(new SheetProblem(parts, one, SAW)).unplaced().isEmpty();
    }
  }

  @Test
  void noPartingOfFewGroupsIsCheaper() {
    int shared = 0;
    for (long seed = 0; seed < 16; seed++) {
      SheetProblem problem = few(seed);
      Layout layout = CUTTER.cut(problem);
      EveryParting every = new EveryParting(problem);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      assertThat(layout.unplaced()).as("seed " + seed).isEmpty();
      assertThat(layout.price()).as("seed " + seed).isLessThanOrEqualTo(every.cheapest());
      shared += layout.price() < every.separately() ? 1 : 0;
    }
    assertThat(shared).isGreaterThan(8);
  }

  static LongStream seeds() {
    return LongStream.range(0, 12);
  }

  /** Up to a dozen groups, and parts without one that fill their sheets. */
  private static SheetProblem many(long seed) {
    Random random = new Random(seed);
    int groups = 2 + random.nextInt(11);
    List<Part> parts = new ArrayList<>();
    for (int group = 0; group < groups; group++) {
      for (int i = random.nextInt(4); i >= 0; i--) {
        parts.add(random("G" + group + " " + i, random));
      }
    }
    for (int i = random.nextInt(6); i > 0; i--) {
      parts.add(random("free " + i, random));
    }
    List<StockSheet> stock =
        List.of(
            Examples.metric("rest", 1000, 700, Supply.of(2), 0),
            Examples.metric("large", 1500, 900, Supply.unlimited(), 100),
            Examples.metric("small", 900, 700, Supply.unlimited(), 55));
    return problem(parts, stock, groups);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void neverDearerThanASheetForEachGroup(long seed) {
    SheetProblem problem = many(seed);
    Layout layout = CUTTER.cut(problem);
    Layout each = Sharing.cut(problem, Searches.all(new StripCutter()), Sharing.How.CHEAPEST);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
    assertThat(each.unplaced()).isEmpty();
    assertThat(layout.price()).isLessThanOrEqualTo(each.price());
  }

  /** Once time is up it is asked for each group, and all have a place. */
  @Test
  void timeIsAskedForWithEachGroup() {
    SheetProblem problem = many(3);
    int[] asked = {0};
    Watch hurried = Watch.until(() -> asked[0]++ >= 0);
    Layout layout = new ThoroughCutter(Examples.AIMS, Limit.WATCH, hurried).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
    assertThat(asked[0]).isGreaterThan(problem.ties().together().size());
  }
}
