package fourpin.shop.web;

import fourpin.measure.Figure;
import fourpin.plan.HowNear;
import fourpin.plan.MaterialPlan;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.sheets.packet.Words;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The layouts of a job, and a longer search for better ones.
 *
 * @param base address of the job
 * @param lots of parts, in the plan and as the search has them
 * @param stage how far the search is
 * @param seconds that it has gone on, or took
 * @param about what the search, or what was found before, has to do with the job as it is now
 */
public record LayoutsPage(
    String title,
    String base,
    String token,
    String notice,
    List<Lot> lots,
    Stage stage,
    long seconds,
    List<String> about) {

  /** Times to choose from, in seconds. */
  static final List<Integer> TIMES = List.of(10, 60, 300, 1_800);

  public LayoutsPage {
    lots = List.copyOf(lots);
    about = List.copyOf(about);
  }

  /** How far a search is. */
  public enum Stage {
    NONE,
    WAITING,
    GOING,
    STOPPING,
    STOPPED,
    DONE,
    FAILED
  }

  /** One lot of parts. */
  public record Lot(String name, List<Row> rows) {
    public Lot {
      rows = List.copyOf(rows);
    }

    /** With the first, which says which layout it is. */
    public int columns() {
      return 1 + HEADS.size();
    }
  }

  /**
   * One layout of it.
   *
   * @param which "in the packet"
   * @param cells in the order of {@link #HEADS}
   */
  public record Row(String which, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  private static final List<String> HEADS =
      List.of(
          "Takes",
          "No layout needs fewer than",
          "Comes to",
          "None comes to less than",
          "Above the least, at most",
          "The least");

  public List<String> heads() {
    return HEADS;
  }

  static LayoutsPage of(State newest, Optional<Search> search, String token, String notice) {
    List<Search.Lot> lots = search.map(LayoutsPage::lots).orElse(List.of());
    return new LayoutsPage(
        newest.job().title(),
        "/jobs/" + newest.revision().document().value(),
        token,
        notice,
        newest.plan().materials().stream()
            .flatMap(m -> lots(m, lots, new Words(newest.job())).stream())
            .toList(),
        search.map(LayoutsPage::stage).orElse(Stage.NONE),
        search.map(LayoutsPage::gone).orElse(Duration.ZERO).toSeconds(),
        about(newest, search));
  }

  private static List<String> about(State newest, Optional<Search> search) {
    List<String> about = new ArrayList<>();
    search
        .map(Search::state)
        .filter(s -> !s.revision().shows().equals(newest.revision().shows()))
        .ifPresent(
            s ->
                about.add(
                    "It was begun for change "
                        + s.revision().number()
                        + "; the job has changed since."));
    if (!newest.outgrown().isEmpty()) {
      about.add(newest.outgrown());
    }
    return about;
  }

  /** Whether it is to be looked at again soon. */
  public boolean isUnderWay() {
    return stage == Stage.WAITING || stage == Stage.GOING || stage == Stage.STOPPING;
  }

  /** Whether there is something to stop. */
  public boolean canBeStopped() {
    return stage == Stage.WAITING || stage == Stage.GOING;
  }

  /** Whether it has found something. */
  public boolean hasEnded() {
    return stage == Stage.DONE || stage == Stage.STOPPED;
  }

  /** What there is to say of it; may be empty. */
  public String says() {
    return switch (stage) {
      case NONE -> "";
      case WAITING -> "Waiting for another search to end.";
      case GOING -> "Searching for " + seconds + " s.";
      case STOPPING -> "Stopping; what it has is laid out to the end first.";
      case STOPPED ->
          "Stopped before its time, after " + seconds + " s. The best it had by then stands below.";
      case DONE -> "The search is done.";
      case FAILED -> "The search failed by a fault of Fourpin; the job is as it was.";
    };
  }

  public List<Integer> times() {
    return TIMES;
  }

  private static Stage stage(Search search) {
    return switch (search.progress()) {
      case Search.Progress.Waiting _ -> Stage.WAITING;
      case Search.Progress.Going(_, _, var course) ->
          course == Search.Course.WHOLE ? Stage.GOING : Stage.STOPPING;
      case Search.Progress.Done(_, _, _, var course) ->
          course == Search.Course.WHOLE ? Stage.DONE : Stage.STOPPED;
      case Search.Progress.Failed _ -> Stage.FAILED;
    };
  }

  private static Duration gone(Search search) {
    return switch (search.progress()) {
      case Search.Progress.Going(_, Duration gone, _) -> gone;
      case Search.Progress.Done(_, _, Duration gone, _) -> gone;
      case Search.Progress.Waiting _, Search.Progress.Failed _ -> Duration.ZERO;
    };
  }

  private static List<Search.Lot> lots(Search search) {
    return switch (search.progress()) {
      case Search.Progress.Going(var lots, _, _) -> lots;
      case Search.Progress.Done(var lots, _, _, _) -> lots;
      case Search.Progress.Waiting _, Search.Progress.Failed _ -> List.of();
    };
  }

  private static List<Lot> lots(MaterialPlan material, List<Search.Lot> found, Words words) {
    return material.layouts().stream()
        .map(
            layout -> lot(material.material().name() + ", " + layout.title(), layout, found, words))
        .toList();
  }

  private static Lot lot(String name, StockLayout layout, List<Search.Lot> found, Words words) {
    String planned = "in the packet" + layout.origin().map(o -> ", " + o).orElse("");
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(planned, cells(layout.near(), f -> Cell.of(f, words))));
    found.stream()
        .filter(l -> l.name().equals(name))
        .map(l -> new Row("best of the search", cells(l.near(), f -> Cell.of(words.value(f)))))
        .forEach(rows::add);
    return new Lot(name, rows);
  }

  /** Only figures of the plan can be asked for their working. */
  private static List<Cell> cells(HowNear near, Function<Figure, Cell> cell) {
    return Stream.concat(
            Stream.of(near.sheets(), near.fewest(), near.cost(), near.least()).map(cell),
            Stream.of(
                near.gapOfAll().map(cell).orElseGet(() -> Cell.of("")),
                Cell.of(near.proof().words())))
        .toList();
  }
}
