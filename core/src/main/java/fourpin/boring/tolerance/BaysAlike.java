package fourpin.boring.tolerance;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Seat;
import fourpin.boring.tolerance.Change.Effect;
import fourpin.boring.tolerance.Change.Least;
import fourpin.boring.tolerance.Change.Outcome;
import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.boring.way.Precision;
import fourpin.boring.way.WayAnswer;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import fourpin.measure.QuantityUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How well heights are held in bays that are bored alike, and what would hold them better. */
final class BaysAlike {

  /** Odds near one half are then good to 1.6 in 100 (one standard error). */
  private static final int CASES = 1_000;

  private static final long SEED = 20_260_101;
  private static final double PER_CENT = 100;

  /** What is done at the finished case. */
  static final String SHIMS = "shims on the low pin";

  private final BuiltCase built;
  private final List<BayGrid> grids;
  private final Tolerances tolerances;
  private final Settings settings;

  BaysAlike(BuiltCase built, List<BayGrid> grids, Tolerances tolerances) {
    this.built = built;
    this.grids = grids;
    this.tolerances = tolerances;
    this.settings = built.order().settings();
  }

  private double limit() {
    return settings.length(Setting.FEEL_LIMIT).mm();
  }

  private double resolution() {
    return settings.length(Setting.LEAST_GAIN).mm();
  }

  private double leastOdds() {
    return settings.number(Setting.LEAST_ODDS_GAIN) / PER_CENT;
  }

  private Optional<Tolerances.Told> told(Way way, Method method, Alteration alteration) {
    return tolerances.told(built, grids, way, method, alteration);
  }

  /** The odds at the worst place, without simulation. */
  Optional<Precision.Rocking> rocking(Way way, Method method) {
    return told(way, method, Alteration.NONE)
        .map(
            told ->
                new Precision.Rocking(
                    told.table().worst().odds() * PER_CENT,
                    LazyList.of(() -> figures(way, told).ofPlaces())));
  }

  private GapFigures figures(Way way, Tolerances.Told told) {
    return new GapFigures(prefix(way), told.model().get(), told.table(), settings);
  }

  private String prefix(Way way) {
    return Figure.id(built.order().name(), "boring" + group(), way.key());
  }

  /** Bays that are not bored like all others of the case are named. */
  private String group() {
    long shelved = built.order().bays().stream().filter(b -> b.shelves().isPresent()).count();
    if (shelved == grids.size()) {
      return "";
    }
    StringBuilder name = new StringBuilder("/bay");
    grids.forEach(g -> name.append('-').append(g.bay()));
    return name.toString();
  }

  /** The levelness of the chosen way, with what to change; none where no shelf has a place. */
  Optional<Levelness> levelness(CaseBoring boring) {
    return told(boring.chosen(), boring.method(), Alteration.NONE)
        .map(told -> levelness(boring, told));
  }

  /** That shelves rock more often than the setting allows; none where they don't. */
  Optional<Finding> finding(CaseBoring boring) {
    return told(boring.chosen(), boring.method(), Alteration.NONE)
        .map(Tolerances.Told::table)
        .filter(table -> RockingShelves.exceeds(table.worst().odds(), settings))
        .map(
            table ->
                new RockingShelves(
                        boring,
                        prefix(boring.chosen()) + "/odds-of-rocking",
                        table,
                        changes(boring, table.outcome()),
                        settings)
                    .finding());
  }

  private Levelness levelness(CaseBoring boring, Tolerances.Told told) {
    GapTable table = told.table();
    Tally tally = Simulation.run(told.model().get(), limit(), CASES, SEED, this::holdsShelf);
    GapFigures writer = figures(boring.chosen(), told);
    List<Figure> figures = new ArrayList<>(writer.ofPlaces());
    figures.addAll(writer.ofEachPlace());
    figures.addAll(writer.simulated(tally));
    figures.addAll(writer.leastGains());
    List<Change> changes = changes(boring, table.outcome());
    String id = prefix(boring.chosen());
    figures.addAll(ChangeFigures.of(id + "/gain", with(Effect.GAIN, changes)));
    figures.addAll(ChangeFigures.of(id + "/mixed", with(Effect.MIXED, changes)));
    figures.addAll(ChangeFigures.of(id + "/harm", with(Effect.HARM, changes)));
    return new Levelness(
        boring.caseName(),
        boring.chosen(),
        limit(),
        resolution(),
        leastOdds(),
        table.places(),
        table.worst(),
        table.expected(),
        tally.any(),
        tally.anyApart(),
        with(Effect.GAIN, changes),
        with(Effect.MIXED, changes),
        with(Effect.HARM, changes),
        figures);
  }

  private List<Change> with(Effect effect, List<Change> changes) {
    Least least = new Least(leastOdds(), resolution());
    return changes.stream().filter(c -> c.effect(least) == effect).toList();
  }

  /** Whether the plan lays a shelf there. */
  private boolean holdsShelf(Position position) {
    return grids.stream()
        .filter(g -> g.bay() == position.bay())
        .flatMap(g -> g.seats().stream())
        .mapToInt(Seat::level)
        .anyMatch(level -> level == position.level());
  }

  private List<Change> changes(CaseBoring boring, Outcome before) {
    List<Change> changes = new ArrayList<>();
    changes.add(shims(before));
    if (boring.method() instanceof Method.Guided guided) {
      for (Alteration alteration : Alteration.values()) {
        if (alteration.matters(guided)) {
          told(boring.chosen(), guided, alteration)
              .map(
                  t ->
                      new Change(
                          alteration.title(), before, t.table().outcome(), alteration.cost()))
              .ifPresent(changes::add);
        }
      }
    }
    boring.answers().stream()
        .filter(answer -> answer.way() != boring.chosen())
        .forEach(answer -> otherWay(answer, before).ifPresent(changes::add));
    return changes;
  }

  /** As many shims as come nearest to the gap leave half a shim at most. */
  private Change shims(Outcome before) {
    double left = Math.min(before.gap(), settings.length(Setting.SHIM).mm() / 2);
    return new Change(
        SHIMS,
        before,
        new Outcome(left > limit() ? before.odds() : 0, left, before.slope()),
        "minutes at each shelf that rocks");
  }

  private Optional<Change> otherWay(WayAnswer answer, Outcome before) {
    return answer
        .method()
        .flatMap(method -> told(answer.way(), method, Alteration.NONE))
        .map(t -> new Change(answer.way().title(), before, t.table().outcome(), cost(answer)));
  }

  private String cost(WayAnswer answer) {
    List<String> costs =
        answer.figures().stream()
            .filter(f -> f.id().endsWith("/minutes") || f.id().endsWith("/cost"))
            .map(this::text)
            .toList();
    return String.join(", ", costs);
  }

  private String text(Figure figure) {
    String value = figure.value().text(settings.unit());
    return figure.value().unit() == QuantityUnit.MONEY
        ? (tolerances.currency() + " " + value).strip()
        : value;
  }
}
