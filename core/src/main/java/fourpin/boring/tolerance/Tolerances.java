package fourpin.boring.tolerance;

import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.boring.way.Precision;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.job.Setting;
import fourpin.job.Way;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * How well heights are held by the ways of boring of one job, and what would hold them better.
 *
 * <p>The choice among ways and the levelness of what was chosen ask the same of many ways; each is
 * worked out once.
 */
public final class Tolerances {

  /** The sign before amounts of money. */
  private final String currency;

  private final Map<Asked, Optional<Told>> known = new ConcurrentHashMap<>();

  /**
   * @param currency the sign before amounts of money; may be empty
   */
  public Tolerances(String currency) {
    this.currency = currency;
  }

  /**
   * What the errors of a way depend on.
   *
   * @param caseName stands for the case: a job has one of a name
   */
  private record Asked(
      String caseName, List<BayGrid> grids, Way way, Method method, Alteration alteration) {}

  /**
   * What gaps the errors of a way make, and the errors themselves. Few ask for those, and those of
   * one way take as much memory as the whole case; so they are put together anew each time.
   */
  record Told(Supplier<ErrorModel> model, GapTable table) {}

  /** None where no shelf has a place. */
  Optional<Told> told(
      BuiltCase built, List<BayGrid> grids, Way way, Method method, Alteration alteration) {
    Supplier<ErrorModel> model = () -> ErrorModels.of(built, grids, way, method, alteration);
    return known.computeIfAbsent(
        new Asked(built.order().name(), grids, way, method, alteration),
        _ ->
            Optional.of(model.get())
                .filter(errors -> !errors.positions().isEmpty())
                .map(errors -> new Told(model, GapTable.of(errors, limit(built)))));
  }

  private static double limit(BuiltCase built) {
    return built.order().settings().length(Setting.FEEL_LIMIT).mm();
  }

  String currency() {
    return currency;
  }

  /** For the choice among ways: the odds at the worst place, without simulation. */
  public Precision precision() {
    return (built, grids, way, method) -> new BaysAlike(built, grids, this).rocking(way, method);
  }

  /**
   * The levelness of the chosen way, with what to change.
   *
   * @param built the case that is bored
   * @return none where no shelf has a place
   */
  public Optional<Levelness> of(CaseBoring boring, BuiltCase built) {
    return new BaysAlike(built, boring.grids(), this).levelness(boring);
  }

  /**
   * Whether shelves rock more often than the setting allows, with what makes them rock less.
   *
   * @param built the case that is bored
   */
  public Optional<Finding> rocking(CaseBoring boring, BuiltCase built) {
    return new BaysAlike(built, boring.grids(), this).finding(boring);
  }
}
