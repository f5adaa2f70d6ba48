package fourpin.cutting;

import fourpin.cutting.SawLimits.FirstCut;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Problems that allow less than one, so that their answers are answers to it: a search that starts
 * from them never makes a layout worse because more is allowed. Parts that may be turned lie
 * straight; cuts go through fewer stages, or the first one runs one way; parts as wide as some
 * boards are cut from these, and the rest from what boards are left.
 */
final class Stricter {

  /** Of more parts the layouts with fewer stages take longer than a maker at the page waits. */
  private static final long MOST_PARTS = 150;

  /** Of more parts both ways to begin take longer, and are seldom better than either. */
  private static final long MOST_BEGUN = 20;

  private final SheetProblem problem;
  private final SheetCutter cutter;

  private Stricter(SheetProblem problem, SheetCutter cutter) {
    this.problem = problem;
    this.cutter = cutter;
  }

  /**
   * Layouts that keep to a problem. Their bounds hold for stricter ones.
   *
   * @param whole for the problem in which nothing is turned, and for those with fewer stages of
   *     cuts and with one way to begin
   * @param apart for each of two goes; does not part them further
   */
  static List<Layout> answers(SheetProblem problem, SheetCutter whole, SheetCutter apart) {
    Stricter stricter = new Stricter(problem, whole);
    Stream<Layout> others =
        Stream.of(stricter.inFewerStages(), stricter.straight(), Apart.answer(problem, apart))
            .flatMap(Optional::stream);
    return Stream.concat(others, stricter.begun()).map(stricter::asStated).toList();
  }

  /** With every first cut that way, where it may be either and the parts are few. */
  private Stream<Layout> begun() {
    SawLimits limits = problem.saw().limits();
    return Stream.of(FirstCut.ALONG, FirstCut.ACROSS)
        .filter(_ -> limits.first() == FirstCut.EITHER && parts() <= MOST_BEGUN)
        .map(limits::withFirst)
        .map(problem::with)
        .map(cutter::cut)
        .filter(layout -> layout.unplaced().isEmpty());
  }

  private long parts() {
    return problem.parts().stream().mapToLong(Part::count).sum();
  }

  /** With fewer stages of cuts, unless the parts are many. */
  private Optional<Layout> inFewerStages() {
    return problem
        .saw()
        .limits()
        .fewerStages()
        .filter(_ -> parts() <= MOST_PARTS)
        .map(problem::with)
        .map(cutter::cut)
        .filter(layout -> layout.unplaced().isEmpty());
  }

  /** The layout in which nothing is turned, if that is another problem and has one. */
  static List<Layout> straight(SheetProblem problem, SheetCutter cutter) {
    Stricter stricter = new Stricter(problem, cutter);
    return stricter.straight().map(stricter::asStated).stream().toList();
  }

  /** The same sheets as the problem names them. */
  private Layout asStated(Layout layout) {
    Map<String, StockSheet> sheets = new HashMap<>();
    problem.stock().forEach(sheet -> sheets.put(sheet.name(), sheet));
    return new Layout(
        layout.patterns().stream()
            .map(
                p ->
                    new SheetPattern(
                        Objects.requireNonNull(sheets.get(p.sheet().name())),
                        p.quantity(),
                        p.root()))
            .toList(),
        layout.unplaced(),
        layout.bound());
  }

  /** Nothing that also fits straight is turned. What finds no place so may find one turned. */
  private Optional<Layout> straight() {
    Inflated inflated = new Inflated(problem);
    List<Part> parts = problem.parts().stream().map(part -> straight(part, inflated)).toList();
    List<StockSheet> stock = problem.stock().stream().map(Stricter::withGrain).toList();
    boolean same = parts.equals(problem.parts()) && stock.equals(problem.stock());
    return same
        ? Optional.empty()
        : Optional.of(new SheetProblem(parts, stock, problem.saw(), problem.ties()))
            .map(cutter::cut)
            .filter(layout -> layout.unplaced().isEmpty());
  }

  /** On sheets without grain everything may be turned. */
  private static StockSheet withGrain(StockSheet sheet) {
    return sheet.grain() == SheetGrain.NONE ? sheet.with(SheetGrain.ALONG_LENGTH) : sheet;
  }

  private Part straight(Part part, Inflated inflated) {
    int kind = inflated.kind(part.mark());
    boolean fits =
        inflated.panels.stream()
            .flatMap(panel -> panel.options().stream())
            .anyMatch(option -> option.kind() == kind && option.lay() == Lay.STRAIGHT);
    boolean alone = problem.ties().matched(part.mark()).isEmpty();
    return fits && alone ? part.with(Grain.FIXED) : part;
  }
}
