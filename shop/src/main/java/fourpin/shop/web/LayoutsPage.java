package fourpin.shop.web;

import fourpin.plan.MaterialPlan;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The layouts of a job, and a longer search for better ones.
 *
 * @param base address of the job
 * @param rows sheets of each lot, in the plan and as the search has them
 * @param stage how far the search is
 * @param seconds that it has gone on, or took
 * @param about what the search, or what was found before, has to do with the job as it is now
 */
public record LayoutsPage(
    String title,
    String base,
    String token,
    String notice,
    List<Row> rows,
    Stage stage,
    long seconds,
    List<String> about) {

  /** Times to choose from, in seconds. */
  static final List<Integer> TIMES = List.of(10, 60, 300, 1_800);

  public LayoutsPage {
    rows = List.copyOf(rows);
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
  public record Row(String lot, String planned, String fewest, String found) {}

  static LayoutsPage of(State newest, Optional<Search> search, String token, String notice) {
    List<Search.Lot> lots = search.map(LayoutsPage::lots).orElse(List.of());
    return new LayoutsPage(
        newest.job().title(),
        "/jobs/" + newest.revision().document().value(),
        token,
        notice,
        newest.plan().materials().stream().flatMap(m -> rows(m, lots).stream()).toList(),
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

  private static List<Row> rows(MaterialPlan material, List<Search.Lot> lots) {
    return material.layouts().stream()
        .map(
            layout -> {
              String name = material.material().name() + ", " + layout.title();
              return new Row(
                  name,
                  Long.toString(layout.layout().sheets())
                      + layout.origin().map(o -> ", " + o).orElse(""),
                  Long.toString(layout.layout().bound().sheets()),
                  lots.stream()
                      .filter(l -> l.name().equals(name))
                      .map(l -> Long.toString(l.sheets()))
                      .findFirst()
                      .orElse(""));
            })
        .toList();
  }
}
