package fourpin.boring.way;

import fourpin.boring.way.Answers.Answered;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The way to take: of those that hold heights well enough the one that costs least; if none does,
 * the one that holds them best.
 */
final class Recommendation {

  private static final Source TRIED =
      new Source("worked out from the errors of each way", "", Source.Standing.DERIVED);

  private final Group group;
  private final List<Answered> open;
  private final List<Answered> good;
  private final Answered best;
  private final List<Answered> cheaper;

  Recommendation(Group group, Answers answers) {
    this.group = group;
    this.open = answers.open();
    this.good = open.stream().filter(this::isGood).toList();
    this.best =
        good.isEmpty()
            ? open.stream().min(Comparator.comparingDouble(Recommendation::odds)).orElseThrow()
            : good.stream().min(Comparator.comparingDouble(Recommendation::cost)).orElseThrow();
    this.cheaper =
        good.isEmpty()
            ? List.of()
            : open.stream().filter(a -> !isGood(a) && cost(a) < cost(best)).toList();
  }

  Way way() {
    return best.way();
  }

  private Settings settings() {
    return group.settings();
  }

  private boolean isGood(Answered answered) {
    return odds(answered) <= settings().number(Setting.ODDS_LIMIT);
  }

  /** Of a rocking shelf; none are known of a way whose heights nobody has worked out. */
  private static double odds(Answered answered) {
    return answered.rocking().get().map(Precision.Rocking::odds).orElse(0.0);
  }

  private static double cost(Answered answered) {
    return answered.reckoning().orElseThrow().total().value().value();
  }

  /** Why, in a sentence with figures. */
  String because() {
    return open.size() == 1 ? only() : chosen() + next() + left();
  }

  private String only() {
    return "The only way with these tools: " + figures(best) + ".";
  }

  private String chosen() {
    return start() + ": " + figures(best);
  }

  private String start() {
    if (good.isEmpty()) {
      return "No way stays below the limit for rocking shelves; this one rocks least";
    }
    if (cheaper.isEmpty()) {
      return "Costs least of " + open.size() + " ways with these tools";
    }
    String limit =
        " whose shelves rock in no more than "
            + text(settings().number(Setting.ODDS_LIMIT))
            + " of cases";
    return good.size() == 1
        ? "The only one of " + open.size() + " ways" + limit
        : "Costs least of the " + good.size() + " ways" + limit;
  }

  private String text(double odds) {
    return percent(odds).text(group.job().unit());
  }

  private String figures(Answered answered) {
    Unit unit = group.job().unit();
    Reckoning reckoning = answered.reckoning().orElseThrow();
    String money = group.job().currency() + reckoning.total().value().text(unit);
    return reckoning.minutes().value().text(unit) + ", " + money + " in all" + reckoning.unpriced();
  }

  /** The next in cost, to compare with: never one that is left for its rocking shelves. */
  private String next() {
    return (cheaper.isEmpty() ? open : good)
        .stream()
            .filter(a -> a.way() != best.way())
            .min(Comparator.comparingDouble(Recommendation::cost))
            .map(a -> "; " + a.way().title() + " takes " + figures(a) + ".")
            .orElse(".");
  }

  /** Cheaper ways that were left because shelves would rock, with their odds. */
  private String left() {
    List<String> left =
        cheaper.stream()
            .map(a -> a.way().title() + " (" + text(odds(a)) + ", " + figures(a) + ")")
            .toList();
    return left.isEmpty()
        ? ""
        : " Cheaper, but shelves rock in more cases: " + String.join("; ", left) + ".";
  }

  /** Of all ways that can be taken: what they cost, and how often the worst placed shelf rocks. */
  Figure figure() {
    List<Input> inputs = new ArrayList<>();
    for (Answered answered : open) {
      String n = Integer.toString(inputs.size() / 2 + 1);
      Figure cost = answered.reckoning().orElseThrow().total();
      String way = answered.way().key() + ": ";
      inputs.add(new Input("c" + n, way + cost.title(), cost.value(), cost.source()));
      inputs.add(
          new Input("o" + n, way + "odds of a rocking shelf", percent(odds(answered)), TRIED));
    }
    Setting limit = Setting.ODDS_LIMIT;
    inputs.add(
        new Input(
            "l", limit.meaning(), percent(settings().number(limit)), settings().source(limit)));
    return new Figure(
        group.figureId("recommended"),
        "cost of the way that is recommended, " + way().key(),
        best.reckoning().orElseThrow().total().value(),
        good.isEmpty() ? "c of the least o" : "the least c with o not above l",
        inputs,
        Source.GEOMETRY);
  }

  private static Quantity percent(double odds) {
    return Quantity.of(odds, QuantityUnit.PER_CENT);
  }
}
