package fourpin.shop.web;

import fourpin.measure.Figure;
import fourpin.plan.MaterialPlan;
import fourpin.plan.Plan;
import fourpin.sheets.packet.Words;
import fourpin.shop.edit.Differences;
import fourpin.shop.edit.Value;
import fourpin.strength.ShelfAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * States of a job side by side.
 *
 * @param base address of the job
 * @param newest the revision that holds now
 * @param rows figures of each
 * @param stated what the jobs state differently
 */
public record BesidePage(
    String title,
    String base,
    String token,
    String newest,
    List<Side> sides,
    List<Row> rows,
    List<Row> stated) {

  /** More do not fit beside each other. */
  static final int MOST = 3;

  private static final String NOT_STATED = "not stated";
  private static final String NONE = "none";

  public BesidePage {
    sides = List.copyOf(sides);
    rows = List.copyOf(rows);
    stated = List.copyOf(stated);
  }

  /** One of them. @param svgs the fronts of its cases */
  public record Side(
      String revision, String what, String time, Judgement judgement, List<String> svgs) {}

  /** What can be compared. */
  public record Row(String title, List<Cell> cells) {

    /** Whether it is the same in all. */
    public boolean isAlike() {
      return Set.copyOf(cells).size() <= 1;
    }
  }

  /** What one of them says. @param change whether the first says something else */
  public record Cell(String words, Change change) {

    public boolean differs() {
      return change == Change.MADE;
    }
  }

  /** Whether something is other than in the first. */
  public enum Change {
    NONE,
    MADE
  }

  /** What stands over the columns. */
  public List<String> heads() {
    return sides.stream().map(Side::what).toList();
  }

  static BesidePage of(State newest, List<State> states, String token) {
    return new BesidePage(
        newest.job().title(),
        "/jobs/" + newest.revision().document().value(),
        token,
        newest.revision().id().value(),
        states.stream().map(BesidePage::side).toList(),
        rows(states),
        stated(states.stream().map(s -> s.text().value()).toList()));
  }

  private static Side side(State state) {
    HistoryPage.Entry entry =
        state.revision().variant().isPresent()
            ? HistoryPage.Entry.variant(state.revision())
            : HistoryPage.Entry.of(state.revision(), Optional.empty());
    return new Side(
        entry.id(),
        entry.kind() + entry.what(),
        entry.time(),
        Judgement.of(state.plan()),
        state.job().cases().stream()
            .flatMap(order -> Board.of(state, order).stream())
            .map(Board::svg)
            .toList());
  }

  /** What files state differently. */
  static List<Row> stated(List<Value> files) {
    return Differences.of(files).stream()
        .map(d -> row(way(d.path()), d.words().stream().map(w -> w.orElse(NOT_STATED)).toList()))
        .toList();
  }

  /** The way to something in a file, for people. */
  static String way(String path) {
    return path.replace(".", " · ");
  }

  private static Row row(String title, List<String> words) {
    return new Row(
        title,
        words.stream()
            .map(w -> new Cell(w, w.equals(words.getFirst()) ? Change.NONE : Change.MADE))
            .toList());
  }

  // Figures: each state in its own words, since its unit may be another

  private static List<Row> rows(List<State> states) {
    List<Row> rows = new ArrayList<>();
    rows.add(row("Findings", each(states, s -> findings(s.plan()))));
    rows.add(row("Most sag after years", each(states, BesidePage::sag)));
    totals(states).forEach(id -> rows.add(row(title(states, id), each(states, s -> total(s, id)))));
    materials(states)
        .forEach(m -> rows.add(row("Stock of " + m, each(states, s -> stock(s.plan(), m)))));
    return rows;
  }

  private static List<String> each(
      List<State> states, java.util.function.Function<State, String> words) {
    return states.stream().map(words).toList();
  }

  private static String findings(Plan plan) {
    Judgement judgement = Judgement.of(plan);
    return judgement.bad() + " to settle, " + judgement.doubts() + " to look at";
  }

  /** Of the shelf that sags most. */
  private static String sag(State state) {
    Words words = new Words(state.job());
    return state.plan().shelves().stream()
        .max(Comparator.comparingDouble((ShelfAnswer s) -> s.sagYears().value().value()))
        .map(s -> words.value(s.sagYears()) + " (" + s.mark() + ")")
        .orElse(NONE);
  }

  private static Set<String> totals(List<State> states) {
    Set<String> ids = new LinkedHashSet<>();
    states.forEach(s -> s.plan().totals().forEach(f -> ids.add(f.id())));
    return ids;
  }

  private static Stream<Figure> figures(State state, String id) {
    return state.plan().totals().stream().filter(f -> f.id().equals(id));
  }

  private static String title(List<State> states, String id) {
    return states.stream()
        .flatMap(s -> figures(s, id))
        .findFirst()
        .map(f -> DesignPage.capital(f.title()))
        .orElse(id);
  }

  private static String total(State state, String id) {
    return figures(state, id).findFirst().map(new Words(state.job())::value).orElse(NONE);
  }

  private static Set<String> materials(List<State> states) {
    Set<String> names = new LinkedHashSet<>();
    states.forEach(s -> s.plan().materials().forEach(m -> names.add(m.material().name())));
    return names;
  }

  private static String stock(Plan plan, String material) {
    List<String> used =
        plan.materials().stream()
            .filter(m -> m.material().name().equals(material))
            .flatMap(m -> m.stock().stream())
            .filter(use -> use.count() > 0)
            .map(BesidePage::use)
            .toList();
    return used.isEmpty() ? NONE : String.join("; ", used);
  }

  private static String use(MaterialPlan.StockUse use) {
    return use.count() + " of line " + use.size();
  }
}
