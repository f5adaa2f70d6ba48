package fourpin.boring.tolerance;

import fourpin.boring.tolerance.Change.Least;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Place;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * That the worst placed shelf of bays that are bored alike rocks more often than the setting
 * allows, with whatever makes it rock less.
 *
 * @param id of its figure
 * @param table of the way that is taken
 * @param changes that can be made
 */
record RockingShelves(
    CaseBoring boring, String id, GapTable table, List<Change> changes, Settings settings) {

  private static final Source ERRORS =
      new Source("worked out from the errors of each way", "", Standing.DERIVED);

  private static final double PER_CENT = 100;

  private static final Remedy MEASURED =
      new Remedy(
          "bore a trial panel and set the errors to what its holes miss by", "a trial panel");

  RockingShelves {
    changes = List.copyOf(changes);
  }

  static boolean exceeds(double odds, Settings settings) {
    return PER_CENT * odds > settings.number(Setting.ODDS_LIMIT);
  }

  Finding finding() {
    List<Change> better = better();
    PositionGap worst = table.worst();
    String what =
        "Bored with "
            + boring.chosen().key()
            + ", shelves rock more often than odds-limit allows ("
            + percent(settings.number(Setting.ODDS_LIMIT)).text(settings.unit())
            + "), most on level "
            + worst.level()
            + " of bay "
            + worst.bay()
            + ".";
    return new Finding(
        severity(better),
        "odds-of-rocking",
        what,
        List.of(figure(better)),
        Place.of(boring.caseName()),
        Stream.concat(better.stream().map(this::remedy), Stream.of(MEASURED)).toList());
  }

  /** Shims alone are no reason to think again before anything is cut. */
  private static Severity severity(List<Change> better) {
    return better.stream().allMatch(c -> c.what().equals(BaysAlike.SHIMS))
        ? Severity.NOTE
        : Severity.DOUBT;
  }

  /** The standard error of the odds, where they are drawn at random. */
  private Optional<Quantity> drawn() {
    return table
        .worst()
        .gap()
        .sampledBeyond(table.limit())
        .map(odds -> percent(PER_CENT * odds.error()));
  }

  /** Those that count, the best first. */
  private List<Change> better() {
    double least = settings.number(Setting.LEAST_ODDS_GAIN) / PER_CENT;
    return changes.stream()
        .filter(c -> c.before().odds() - c.after().odds() > least)
        .sorted(Comparator.comparingDouble(c -> c.after().odds()))
        .toList();
  }

  private Remedy remedy(Change change) {
    boolean slopes =
        change.effect(
                new Least(
                    settings.number(Setting.LEAST_ODDS_GAIN) / PER_CENT,
                    settings.length(Setting.LEAST_GAIN).mm()))
            == Change.Effect.MIXED;
    return new Remedy(
        change.what() + ": then " + text(change.after().odds()),
        change.cost() + (slopes ? ", and shelves lie less level from left to right" : ""),
        stated(change));
  }

  /** Another way that rocks seldom enough can be asked for in the job. */
  private Optional<Stated> stated(Change change) {
    return Stream.of(Way.values())
        .filter(way -> way.title().equals(change.what()))
        .filter(_ -> !exceeds(change.after().odds(), settings))
        .findFirst()
        .map(way -> new Stated.OfSetting(Setting.WAY, way.key()));
  }

  private Figure figure(List<Change> better) {
    Setting limit = Setting.ODDS_LIMIT;
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        new Input("l", limit.meaning(), percent(settings.number(limit)), settings.source(limit)));
    for (int i = 0; i < better.size(); i++) {
      Change change = better.get(i);
      Quantity then = percent(PER_CENT * change.after().odds());
      inputs.add(new Input("o" + (i + 1), "with " + change.what(), then, ERRORS));
    }
    drawn()
        .map(e -> new Input("e", "standard error of the odds", e, Sampled.PLUS_FOUR))
        .ifPresent(inputs::add);
    return new Figure(
        id,
        "odds that the worst placed shelf rocks so that it is felt"
            + drawn().map(e -> ", ± " + e.text(settings.unit())).orElse(""),
        percent(PER_CENT * table.worst().odds()),
        "held against l; o1, o2, ... with each change",
        inputs,
        ERRORS);
  }

  private String text(double odds) {
    return percent(PER_CENT * odds).text(settings.unit());
  }

  private static Quantity percent(double value) {
    return Quantity.of(value, QuantityUnit.PER_CENT);
  }
}
