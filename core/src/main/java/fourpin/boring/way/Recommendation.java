package fourpin.boring.way;

import fourpin.boring.way.Answers.Answered;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.measure.Unit;
import java.util.Comparator;
import java.util.List;

/**
 * The way to take: of those that hold heights well enough the one that costs least; if none does,
 * the one that holds them best.
 */
final class Recommendation {

  private final Group group;
  private final List<Answered> open;
  private final List<Answered> good;
  private final Answered best;

  Recommendation(Group group, Answers answers) {
    this.group = group;
    this.open = answers.open();
    this.good = open.stream().filter(this::isGood).toList();
    this.best =
        good.isEmpty()
            ? open.stream().min(Comparator.comparingDouble(Recommendation::odds)).orElseThrow()
            : good.stream().min(Comparator.comparingDouble(Recommendation::cost)).orElseThrow();
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
    return answered.rocking().map(Precision.Rocking::odds).orElse(0.0);
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
    String start =
        good.isEmpty()
            ? "No way stays below the limit for rocking shelves; this one rocks least: "
            : "Costs least of " + open.size() + " ways with these tools: ";
    return start + figures(best);
  }

  private String figures(Answered answered) {
    Unit unit = group.job().unit();
    Reckoning reckoning = answered.reckoning().orElseThrow();
    String money = group.job().currency() + reckoning.total().value().text(unit);
    return reckoning.minutes().value().text(unit) + ", " + money + " in all";
  }

  /** The next in cost, to compare with. */
  private String next() {
    return open.stream()
        .filter(a -> a.way() != best.way())
        .min(Comparator.comparingDouble(Recommendation::cost))
        .map(a -> "; " + a.way().title() + " takes " + figures(a) + ".")
        .orElse(".");
  }

  /** Cheaper ways that were left because shelves would rock. */
  private String left() {
    List<String> left =
        open.stream()
            .filter(a -> !isGood(a) && cost(a) < cost(best))
            .map(a -> a.way().title())
            .toList();
    return left.isEmpty() || good.isEmpty()
        ? ""
        : " Cheaper but more apt to rock: " + String.join("; ", left) + ".";
  }
}
